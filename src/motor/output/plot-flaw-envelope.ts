import { instance, MeopError, procedure } from '../../units';
import type { FlawEnvelope } from '../envelope/flaw-envelope';
import { width } from './plot-inputs';
import { type PlotSpec, plotColours, plotSpec, plotTitle, seriesColours, seriesDashes } from './plot-spec';

type Plotted = Pick<FlawEnvelope, 'curves' | 'rows'>;

const isPlotted = (value: unknown): value is Plotted =>
  typeof value === 'object' &&
  value !== null &&
  'curves' in value &&
  Array.isArray(value.curves) &&
  'rows' in value &&
  Array.isArray(value.rows);

/**
 * Includes the pressure of the mode that fails first.
 *
 * @throws MeopError `nothing-to-plot` where the envelope has no flaws
 * @example plotFlawEnvelope(flawEnvelope(demoMotor())).layer.length // => 3
 */
export const plotFlawEnvelope = /* @__PURE__ */ procedure({
  name: 'plotFlawEnvelope',
  title: 'Plot of peak pressure against the burning area that a flaw adds',
  source: 'definition',
  subject: instance('the flaw envelope', 'a FlawEnvelope', isPlotted, {
    remedy: 'Make one with flawEnvelope',
  }),
  inputs: { width },
  gives: 'a Vega-Lite specification with one line for each kind of flaw',
  example: 'plotFlawEnvelope(flawEnvelope(demoMotor()))',
  run: (envelope, values) => envelopePlot(envelope, values.width),
});

function envelopePlot({ curves, rows }: Plotted, size: number): PlotSpec {
  const points = curves.flatMap(({ kind, points: known }) =>
    known.map(({ addedArea, peak, words }) => ({
      kind,
      area: Number(addedArea.in('cm^2').toPrecision(6)),
      peak: Number(peak.in('MPa').toPrecision(6)),
      words,
    })),
  );
  if (points.length === 0)
    throw new MeopError({
      code: 'nothing-to-plot',
      procedure: 'plotFlawEnvelope',
      path: 'curves',
      given: curves.length,
      expected: 'at least one kind of flaw',
    });
  const kinds = curves.map(({ kind }) => kind);
  const first = rows.slice(0, 1).map(({ failurePressure }) => ({
    at: Number(failurePressure.in('MPa').toPrecision(6)),
    label: 'lowest failure pressure',
  }));
  const level = { field: 'at', type: 'quantitative' };
  return plotSpec({
    title: plotTitle('peak pressure (MPa gauge)'),
    width: size - 70,
    height: Math.round(Math.min(260, 150 + size / 6)),
    layer: [
      {
        data: { values: points },
        mark: { type: 'line', point: { size: 24, filled: true } },
        encoding: {
          x: { field: 'area', type: 'quantitative', title: 'added burning area (cm²)' },
          y: { field: 'peak', type: 'quantitative', title: null },
          color: {
            field: 'kind',
            type: 'nominal',
            scale: { domain: kinds, range: seriesColours.slice(0, kinds.length) },
            legend: {},
          },
          strokeDash: {
            field: 'kind',
            type: 'nominal',
            scale: { domain: kinds, range: seriesDashes.slice(0, kinds.length) },
          },
          order: { field: 'area' },
        },
      },
      {
        data: { values: first },
        mark: { type: 'rule', strokeDash: [2, 3], strokeWidth: 1.5, color: plotColours.fail },
        encoding: { y: level },
      },
      {
        data: { values: first },
        mark: {
          type: 'text',
          align: 'left',
          baseline: 'bottom',
          dx: 4,
          dy: -3,
          limit: 0,
          color: plotColours.fail,
        },
        encoding: { x: { value: 0 }, y: level, text: { field: 'label' } },
      },
    ],
  });
}
