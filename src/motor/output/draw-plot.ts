import { MeopError } from '../../units';
import { type PlotSpec, plotColours } from './plot-spec';

declare class VegaView {
  constructor(runtime: object, options?: object);
  toSVG(): Promise<string>;
  finalize(): unknown;
}

/** The packages that draw: `{ vega: await import('vega'), vegaLite: await import('vega-lite') }`. */
export interface PlotEngine {
  /** As much of it as drawing needs. */
  readonly vega: { parse(spec: object): object; readonly View: typeof VegaView };
  readonly vegaLite: { compile(spec: object): { readonly spec: object } };
}

/**
 * Draws a plot as SVG text. It takes the packages `vega` and `vega-lite`, which are not installed with the library:
 * `npm install vega vega-lite`. Where the program is bundled or CommonJS they are handed in as `engine`; else they are found.
 * The colours are CSS variables with the printed colours behind them, so that a page may set its own, such as those of a
 * dark page.
 *
 * @throws MeopError `no-plot-engine` where the packages are neither handed in nor found
 * @example typeof drawPlot // => 'function'
 */
export async function drawPlot(spec: PlotSpec, engine?: PlotEngine): Promise<string> {
  const { vega, vegaLite } = engine ?? (await installedEngine());
  const view = new vega.View(vega.parse(vegaLite.compile(spec).spec), { renderer: 'none' });
  try {
    return themed(withoutRoles(ownNames(await view.toSVG())));
  } finally {
    view.finalize();
  }
}

let loading: Promise<PlotEngine> | undefined;

function installedEngine(): Promise<PlotEngine> {
  loading ??= loadEngine();
  return loading;
}

// Not by a fixed name: a bundler would look for packages that a program which draws nothing need not have.
async function loadEngine(): Promise<PlotEngine> {
  const [first, second] = ['vega', 'vega-lite'];
  try {
    const [vega, vegaLite] = await Promise.all([
      import(/* webpackIgnore: true */ /* @vite-ignore */ first),
      import(/* webpackIgnore: true */ /* @vite-ignore */ second),
    ]);
    return { vega, vegaLite };
  } catch (error) {
    const why = error instanceof Error ? error.message.split('\n')[0] : String(error);
    throw new MeopError(
      'no-plot-engine',
      `drawPlot: vega and vega-lite cannot be loaded (${why}): npm install vega vega-lite, or hand them in as the engine`,
    );
  }
}

// Clip paths are numbered through the life of a program: from 1 in each drawing, the same plot gives the same text.
function ownNames(svg: string): string {
  const names = new Map<string, string>();
  return svg.replace(/\bclip\d+\b/g, (name) => {
    const own = names.get(name) ?? `clip${names.size + 1}`;
    names.set(name, own);
    return own;
  });
}

// Every mark has a role and no name: a reader would hear hundreds of them. Who shows the drawing names it as a whole.
const withoutRoles = (svg: string): string =>
  svg.replace(/ (?:role="graphics-[^"]*"|aria-roledescription="[^"]*"|aria-label="[^"]*")/g, '');

/** Each colour as a variable that falls back on it. */
function themed(svg: string): string {
  return Object.entries(plotColours).reduce(
    (text, [name, colour]) => text.replaceAll(`"${colour}"`, `"var(--plot-${name}, ${colour})"`),
    svg,
  );
}
