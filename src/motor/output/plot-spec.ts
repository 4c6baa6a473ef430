/** JSON data. */
export type JsonValue =
  | string
  | number
  | boolean
  | null
  | readonly JsonValue[]
  | { readonly [key: string]: JsonValue };

/** A Vega-Lite specification: plain data that Vega-Lite renders. A notebook renders it automatically. */
export interface PlotSpec {
  readonly $schema: string;
  readonly [key: string]: JsonValue;
}

/** Colours of the plots on white paper; a drawing in a page uses the colours of the page. */
export const plotColours = {
  ink: '#26323d',
  quiet: '#5d6671',
  line: '#d9d3c7',
  first: '#a84a26',
  second: '#0b6f7c',
  third: '#6a4c93',
  fail: '#b3261e',
  pass: '#3f6b4f',
} as const;

/** Colours of the series, in order. */
export const seriesColours: readonly string[] = [
  plotColours.first,
  plotColours.second,
  plotColours.third,
  plotColours.pass,
];

/** Line patterns of the series, to distinguish them without colour. */
export const seriesDashes: readonly (readonly number[])[] = [
  [1, 0],
  [7, 4],
  [2, 3],
  [9, 3, 2, 3],
];

const font = "'Source Sans 3', 'DejaVu Sans', system-ui, sans-serif";

/** A specification with the style of all plots. */
export function plotSpec(body: { readonly [key: string]: JsonValue }): PlotSpec {
  const spec: PlotSpec = {
    $schema: 'https://vega.github.io/schema/vega-lite/v6.json',
    background: 'transparent',
    padding: 4,
    ...body,
    config: {
      font,
      numberFormat: '~r', // as in the tables: no commas between thousands
      view: { stroke: null },
      aria: false,
      axis: {
        labelFontSize: 13,
        titleFontSize: 13,
        titleFontWeight: 'normal',
        labelColor: plotColours.quiet,
        titleColor: plotColours.ink,
        domainColor: plotColours.quiet,
        tickColor: plotColours.quiet,
        gridColor: plotColours.line,
        labelPadding: 5,
        tickCount: 6,
      },
      legend: {
        orient: 'top',
        direction: 'vertical',
        labelFontSize: 13,
        labelColor: plotColours.ink,
        labelLimit: 600,
        title: null,
        symbolType: 'stroke',
        symbolSize: 300,
        symbolStrokeWidth: 2.5,
        offset: 6,
        padding: 0,
      },
      text: { fontSize: 13, color: plotColours.ink },
      line: { strokeWidth: 2, strokeJoin: 'round' },
    },
  };
  return displayable(spec);
}

/** Title above a plot: the quantity of its y axis. */
export const plotTitle = (text: string): { readonly [key: string]: JsonValue } => ({
  text,
  anchor: 'start',
  frame: 'group',
  fontSize: 14,
  fontWeight: 600,
  color: plotColours.ink,
  offset: 8,
});

// For notebooks, which render the specification; not part of the public interface.
function displayable(spec: PlotSpec): PlotSpec {
  return Object.defineProperty(spec, Symbol.for('Jupyter.display'), {
    value: () => ({
      'application/vnd.vegalite.v6+json': spec,
      'application/vnd.vegalite.v5+json': spec,
      'text/plain': 'a plot: its Vega-Lite specification',
    }),
    enumerable: false,
  });
}
