import { type Margin, type PartId, partName } from '../../structures';
import { count, instance, MeopError, optional, procedure, ratio, type Values } from '../../units';
import { signed } from './content';
import { width } from './plot-inputs';
import { type PlotSpec, plotColours, plotSpec, plotTitle } from './plot-spec';

type WithMargin = Pick<Margin, 'mode' | 'marginOfSafety'> & { readonly part?: PartId };
type WithMargins = { readonly margins: readonly WithMargin[] };

const isMargin = (value: unknown): value is WithMargin =>
  typeof value === 'object' &&
  value !== null &&
  'mode' in value &&
  'marginOfSafety' in value &&
  typeof value.marginOfSafety === 'number';

const areMargins = (value: unknown): value is readonly WithMargin[] =>
  Array.isArray(value) && value.every(isMargin);

const hasMargins = (value: unknown): value is readonly WithMargin[] | WithMargins =>
  areMargins(value) ||
  (typeof value === 'object' && value !== null && 'margins' in value && areMargins(value.margins));

const options = {
  width,
  maxMargin: optional(
    ratio(
      'MS_max',
      'length at which bars end, so that large margins do not compress small ones; the number is printed at the bar',
    ),
    2,
  ),
  maxRows: optional(count('n', 'maximum number of modes, lowest margins first', { min: 1 }), 14),
};

/**
 * @throws MeopError `nothing-to-plot` where there are no margins
 * @example plotMargins([margin({ mode: 'burst', applied: q('7 MPa'), allowable: q('21 MPa'), factor: 2, source: 'a test' })]).layer.length // => 4
 */
export const plotMargins = /* @__PURE__ */ procedure({
  name: 'plotMargins',
  title: 'Plot of margins of safety',
  source: 'definition',
  subject: instance('margins, or a review that has them', 'a list of margins, or a review', hasMargins),
  inputs: options,
  gives: 'a Vega-Lite specification with one bar for each margin, lowest first',
  example: 'plotMargins(review(demoMotor()))',
  run: (given, values) => marginPlot('margins' in given ? given.margins : given, values),
});

function marginPlot(
  margins: readonly WithMargin[],
  { width: size, maxMargin, maxRows }: Values<typeof options>,
): PlotSpec {
  if (margins.length === 0)
    throw new MeopError({
      code: 'nothing-to-plot',
      procedure: 'plotMargins',
      path: 'margins',
      given: margins,
      expected: 'a list of at least one margin',
    });
  const sorted = [...margins].sort((a, b) => a.marginOfSafety - b.marginOfSafety).slice(0, maxRows);
  const rows = sorted.map(({ part, mode, marginOfSafety }, rank) => ({
    rank,
    margin: marginOfSafety,
    drawn: Math.max(-1, Math.min(maxMargin, marginOfSafety)),
    label: shortened(part === undefined ? mode : `${partName(part)}: ${mode}`, Math.floor(size / 6.9)),
    number: signed(marginOfSafety).text,
    numberAt: Math.max(0, Math.min(maxMargin, marginOfSafety)),
    passes: marginOfSafety >= 0 ? 'zero or greater' : 'negative',
  }));
  const least = Math.min(0, ...rows.map(({ drawn }) => drawn));
  const last = Math.max(0.2, ...rows.map(({ drawn }) => drawn));
  const y = { field: 'rank', type: 'ordinal', axis: null, scale: { paddingInner: 0.1 } };
  return plotSpec({
    title: {
      ...plotTitle('margin of safety'),
      subtitle: rows.length < margins.length ? `lowest ${rows.length} of ${margins.length}` : '',
      subtitleColor: plotColours.quiet,
      subtitleFontSize: 13,
    },
    // The size is set, not measured: without a canvas, the width of letters is overestimated.
    autosize: { type: 'none' },
    padding: { left: 8, right: 56, top: 50, bottom: 34 },
    width: size - 64,
    height: { step: 42 },
    data: { values: rows },
    layer: [
      {
        mark: { type: 'bar', height: 13, yOffset: 9, cornerRadiusEnd: 2 },
        encoding: {
          y,
          x: {
            field: 'drawn',
            type: 'quantitative',
            title: null,
            scale: { domain: [least, last], nice: false },
            axis: { orient: 'bottom', format: '+.1~f', grid: false }, // lines would strike through the names
          },
          color: {
            field: 'passes',
            type: 'nominal',
            scale: {
              domain: ['zero or greater', 'negative'],
              range: [plotColours.second, plotColours.fail],
            },
            legend: null,
          },
        },
      },
      {
        mark: { type: 'text', align: 'left', baseline: 'bottom', dx: 4 },
        encoding: { y, x: { value: 0 }, text: { field: 'label' } },
      },
      {
        mark: { type: 'text', align: 'left', baseline: 'middle', dx: 5, dy: 9, fontWeight: 600 },
        encoding: { y, x: { field: 'numberAt', type: 'quantitative' }, text: { field: 'number' } },
      },
      {
        data: { values: [{ zero: 0 }] },
        mark: { type: 'rule', color: plotColours.ink, strokeWidth: 1.5 },
        encoding: { x: { field: 'zero', type: 'quantitative' } },
      },
    ],
  });
}

const shortened = (text: string, most: number): string =>
  text.length <= most ? text : `${text.slice(0, most - 1)}…`;
