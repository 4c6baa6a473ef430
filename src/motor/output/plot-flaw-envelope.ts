import { MeopError } from '../../units';
import type { FlawEnvelope } from '../envelope/flaw-envelope';
import { type PlotSpec, plotColours, plotSpec, plotTitle, seriesColours, seriesDashes } from './plot-spec';

/** Options of a flaw-envelope plot. */
export interface PlotFlawEnvelopeOptions {
  /** Width of the drawing [px]. Default 640. */
  readonly width?: number;
}

/**
 * Plots peak gauge pressure against the burning area that a flaw adds, by kind of flaw, with the pressure of the
 * mode that fails first, as a Vega-Lite specification.
 *
 * @throws MeopError `nothing-to-plot` where the envelope has no flaws
 * @example plotFlawEnvelope(flawEnvelope(demoMotor())).layer.length // => 3
 */
export function plotFlawEnvelope(
  { curves, rows }: Pick<FlawEnvelope, 'curves' | 'rows'>,
  { width = 640 }: PlotFlawEnvelopeOptions = {},
): PlotSpec {
  const points = curves.flatMap(({ kind, points: known }) =>
    known.map(({ addedArea, peak, words }) => ({
      kind,
      area: Number(addedArea.in('cm^2').toPrecision(6)),
      peak: Number(peak.in('MPa').toPrecision(6)),
      words,
    })),
  );
  if (points.length === 0)
    throw new MeopError('nothing-to-plot', 'plotFlawEnvelope: the envelope has no flaws to plot');
  const kinds = curves.map(({ kind }) => kind);
  const first = rows.slice(0, 1).map(({ failurePressure }) => ({
    at: Number(failurePressure.in('MPa').toPrecision(6)),
    label: 'lowest failure pressure',
  }));
  const level = { field: 'at', type: 'quantitative' };
  return plotSpec({
    title: plotTitle('peak pressure (MPa gauge)'),
    width: width - 70,
    height: Math.round(Math.min(260, 150 + width / 6)),
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
