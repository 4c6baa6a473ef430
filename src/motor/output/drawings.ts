import { type Argument, byName, inputs, words } from '../../units';
import type { ReportContent, ReportFigure } from './content';
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
  const drawn = figures.map(async (figure) => {
    if (isDrawn(figure)) return [figure.id, drawnDirectly(figure)] as const;
    const { id, spec } = figure;
    const [large, small] = await Promise.all([drawPlot(spec(wide), engine), drawPlot(spec(narrow), engine)]);
    return [id, pair(id, large, small)] as const;
  });
  return Object.fromEntries(await Promise.all(drawn));
}

type Drawn = Extract<ReportFigure, { readonly draw: unknown }>;

/** True for a figure that needs no plotting package. */
export const isDrawn = (figure: ReportFigure): figure is Drawn => 'draw' in figure;

/** Such a figure for a sheet and for a telephone [mm]. */
export const drawnDirectly = ({ id, draw }: Drawn): Drawings[string] => pair(id, draw(180), draw(92));

// Two drawings in one page must not share the names of their clip paths.
const pair = (id: string, large: string, small: string): Drawings[string] => ({
  wide: ownNames(large, `${id}-w`),
  narrow: ownNames(small, `${id}-n`),
});

const ownNames = (svg: string, prefix: string): string =>
  svg.replace(/\bid="([^"]+)"/g, `id="${prefix}-$1"`).replace(/url\(#([^)]+)\)/g, `url(#${prefix}-$1)`);
