import { MeopError } from '../../units';
import { type PlotSpec, plotColours } from './plot-spec';

declare class VegaView {
  constructor(runtime: object, options?: object);
  toSVG(): Promise<string>;
  finalize(): unknown;
}

/** The plotting packages: `{ vega: await import('vega'), vegaLite: await import('vega-lite') }`. */
export interface PlotEngine {
  /** The parts of the packages that are used. */
  readonly vega: { parse(spec: object): object; readonly View: typeof VegaView };
  readonly vegaLite: { compile(spec: object): { readonly spec: object } };
}

/**
 * Draws a plot as SVG. Requires the packages `vega` and `vega-lite`, which are not installed with the library:
 * `npm install vega vega-lite`. Pass them as `engine` in a bundled or CommonJS program; otherwise they are
 * imported. Colours are CSS variables with the printed colours as fallback, so that a page can define its own, for
 * example for a dark theme.
 *
 * @throws MeopError `no-plot-engine` where the packages are neither passed nor found
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

// The name is computed: a bundler would otherwise require packages that a program without plots does not need.
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
      `drawPlot: cannot load vega and vega-lite (${why}). Run npm install vega vega-lite, or pass them as the engine.`,
    );
  }
}

// Clip paths are numbered over the life of a program. Numbered from 1 in each drawing, the same plot gives the same SVG.
function ownNames(svg: string): string {
  const names = new Map<string, string>();
  return svg.replace(/\bclip\d+\b/g, (name) => {
    const own = names.get(name) ?? `clip${names.size + 1}`;
    names.set(name, own);
    return own;
  });
}

// Every mark has a role without a name, and a screen reader would announce hundreds of them. The caller names the drawing as a whole.
const withoutRoles = (svg: string): string =>
  svg.replace(/ (?:role="graphics-[^"]*"|aria-roledescription="[^"]*"|aria-label="[^"]*")/g, '');

/** Replaces each colour by a CSS variable with the colour as fallback. */
function themed(svg: string): string {
  return Object.entries(plotColours).reduce(
    (text, [name, colour]) => text.replaceAll(`"${colour}"`, `"var(--plot-${name}, ${colour})"`),
    svg,
  );
}
