import { type Arguments, inputs, instance, MeopError, optional, procedure } from '../../units';
import { type PlotSpec, plotColours } from './plot-spec';

declare class VegaView {
  constructor(runtime: object, options?: object);
  toSVG(): Promise<string>;
  finalize(): unknown;
}

export interface Vega {
  parse(spec: object): object;
  readonly View: typeof VegaView;
}

export interface VegaLite {
  compile(spec: object): { readonly spec: object };
}

const has = (value: unknown, ...functions: readonly string[]): boolean =>
  typeof value === 'object' &&
  value !== null &&
  functions.every((name) => typeof Reflect.get(value, name) === 'function');

const isVega = (value: unknown): value is Vega => has(value, 'parse', 'View');
const isVegaLite = (value: unknown): value is VegaLite => has(value, 'compile');

const engineFields = {
  vega: optional(instance('the package vega, imported if omitted', 'the package vega', isVega)),
  vegaLite: optional(
    instance('the package vega-lite, imported if omitted', 'the package vega-lite', isVegaLite),
  ),
};

/** The plotting packages: `{ vega: await import('vega'), vegaLite: await import('vega-lite') }`. */
export const plotEngine = inputs(engineFields, {
  meaning: 'the plotting packages, in a bundled or CommonJS program',
});

/** The plotting packages. */
export type PlotEngine = Arguments<typeof engineFields>;

const isSpec = (value: unknown): value is PlotSpec =>
  typeof value === 'object' && value !== null && '$schema' in value && typeof value.$schema === 'string';

/**
 * Requires the packages `vega` and `vega-lite`, which are not installed with the library: `npm install vega vega-lite`.
 * Pass them in a bundled or CommonJS program; otherwise they are imported. Colours are CSS variables with the printed
 * colours as fallback, so that a page can define its own, for example for a dark theme.
 *
 * @throws MeopError `no-plot-engine` where the packages are neither passed nor found
 * @example typeof drawPlot // => 'function'
 */
export const drawPlot = /* @__PURE__ */ procedure({
  name: 'drawPlot',
  title: 'Drawing of a plot',
  source: 'vega and vega-lite',
  subject: instance('the plot', 'a Vega-Lite specification', isSpec, { remedy: 'Make one with plotFiring' }),
  inputs: engineFields,
  gives: 'the plot as SVG',
  example: 'drawPlot(plotFiring(predict(demoMotor())))',
  asynchronous: true,
  run: async (spec, engine) => {
    const { vega, vegaLite } = await completed(engine);
    const view = new vega.View(vega.parse(vegaLite.compile(spec).spec), { renderer: 'none' });
    try {
      return themed(withoutRoles(ownNames(await view.toSVG())));
    } finally {
      view.finalize();
    }
  },
});

interface Engine {
  readonly vega: Vega;
  readonly vegaLite: VegaLite;
}

async function completed({ vega, vegaLite }: PlotEngine): Promise<Engine> {
  if (vega !== undefined && vegaLite !== undefined) return { vega, vegaLite };
  loading ??= loadEngine();
  const installed = await loading;
  return { vega: vega ?? installed.vega, vegaLite: vegaLite ?? installed.vegaLite };
}

let loading: Promise<Engine> | undefined;

// The name is computed: a bundler would otherwise require packages that a program without plots does not need.
async function loadEngine(): Promise<Engine> {
  const [first, second] = ['vega', 'vega-lite'];
  try {
    const [vega, vegaLite] = await Promise.all([
      import(/* webpackIgnore: true */ /* @vite-ignore */ first),
      import(/* webpackIgnore: true */ /* @vite-ignore */ second),
    ]);
    return { vega, vegaLite };
  } catch (cause) {
    throw new MeopError({
      code: 'no-plot-engine',
      procedure: 'drawPlot',
      problem: 'the packages vega and vega-lite cannot be loaded',
      remedy: 'Run npm install vega vega-lite, or pass them',
      cause,
    });
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
