import { type Argument, byName, inputs, words } from '../../units';
import type { ReportContent } from './content';
import { drawPlot, type PlotEngine } from './draw-plot';

/** The plots of a report. */
export const drawings = byName(
  'plots of an HTML page, drawn by reportDrawings; without them the page contains tables only',
  inputs(
    { wide: words('the plot as SVG for a wide page'), narrow: words('the plot as SVG for a narrow page') },
    { meaning: 'a plot' },
  ),
);

/** The plots of a report as SVG, by name, each in a wide and a narrow version. */
export type Drawings = Argument<typeof drawings>;

const wide = 820;
const narrow = 350;

/** Draws every plot of a report. @throws MeopError `no-plot-engine` */
export async function drawingsOf(content: ReportContent, engine: PlotEngine = {}): Promise<Drawings> {
  const figures = content.sections.flatMap((section) => section.figures);
  const drawn = figures.map(async ({ id, spec }) => {
    const [large, small] = await Promise.all([drawPlot(spec(wide), engine), drawPlot(spec(narrow), engine)]);
    // Two drawings in one page must not share the names of their clip paths.
    return [id, { wide: ownNames(large, `${id}-w`), narrow: ownNames(small, `${id}-n`) }] as const;
  });
  return Object.fromEntries(await Promise.all(drawn));
}

const ownNames = (svg: string, prefix: string): string =>
  svg.replace(/\bid="([^"]+)"/g, `id="${prefix}-$1"`).replace(/url\(#([^)]+)\)/g, `url(#${prefix}-$1)`);
