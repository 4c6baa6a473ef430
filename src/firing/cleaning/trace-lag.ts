import { crossCorrelation } from '../../numerics';
import { inputs, optional, procedure, ratio, type Values } from '../../units';
import { analysedTrace, type RestingTrace } from '../analysis/analysed-trace';
import { sameLength, samples } from '../analysis/samples-input';
import { interpolated } from './resample';

/** Lag of one trace behind another, s: positive where the second is later. */
export interface TraceLag {
  /** Shift of maximum correlation. */
  readonly lag: number;
  /** Correlation at that shift; 1 for traces of the same shape. */
  readonly correlation: number;
  /** Lag of the 10 % points at the start and at the end. */
  readonly startLag: number;
  readonly endLag: number;
}

const maxSamples = 1 << 12;

const plainTrace = (meaning: string) =>
  inputs(
    {
      time: samples('times of the samples in s, increasing'),
      values: samples('values at these times'),
      rest: optional(ratio('v_0', 'resting value of the trace'), 0),
    },
    { meaning, checks: [sameLength] },
  );

/**
 * Computes the lag of one trace behind another by cross-correlation, interpolated by a parabola through its peak, and the
 * lags of their edges. A clock offset shifts all three equally; friction or a blocked port shifts only the start.
 *
 * @example traceLag({ first: { time: Float64Array.of(0, 1, 2, 3, 4, 5, 6), values: Float64Array.of(0, 5, 9, 5, 0, 0, 0) }, second: { time: Float64Array.of(0, 1, 2, 3, 4, 5, 6), values: Float64Array.of(0, 0, 5, 9, 5, 0, 0) } }).lag.toFixed(1) // => '1.0'
 */
export const traceLag = /* @__PURE__ */ procedure({
  name: 'traceLag',
  title: 'Lag of one trace behind another',
  source: 'cross-correlation, textbooks on signal processing',
  inputs: { first: plainTrace('first trace'), second: plainTrace('second trace') },
  gives: 'the lag in s, the correlation, and the lags of the edges',
  example:
    'traceLag({ first: { time: Float64Array.of(0, 1, 2, 3), values: Float64Array.of(0, 9, 0, 0) }, second: { time: Float64Array.of(0, 1, 2, 3), values: Float64Array.of(0, 0, 9, 0) } })',
  run: ({ first, second }): TraceLag => lagBetween(analysed(first), analysed(second)),
});

const analysed = ({ time, values, rest }: Values<ReturnType<typeof plainTrace>['fields']>): RestingTrace => ({
  trace: analysedTrace(time, values),
  rest,
});

/** Kernel: {@link traceLag} of analysed traces, each with its resting value. */
export function lagBetween(first: RestingTrace, second: RestingTrace): TraceLag {
  const a = first.trace.edges(0.1, first.rest);
  const b = second.trace.edges(0.1, second.rest);
  const length = Math.max(a.end, b.end) - Math.min(a.start, b.start);
  const from = Math.min(a.start, b.start) - 0.5 * length;
  const to = Math.max(a.end, b.end) + 0.5 * length;
  const finest = Math.max(meanStep(first.trace.time), meanStep(second.trace.time));
  const period = Math.max(finest, (to - from) / maxSamples);
  const at = Float64Array.from({ length: Math.floor((to - from) / period) + 1 }, (_, i) => from + i * period);
  const x = normalised(interpolated(first.trace.time, first.trace.values, at), first.rest);
  const y = normalised(interpolated(second.trace.time, second.trace.values, at), second.rest);
  const { lag, value } = crossCorrelation(y, x);
  let best = 0;
  for (let i = 0; i < value.length; i++) if (value[i] > value[best]) best = i;
  const left = value[best - 1] ?? value[best];
  const right = value[best + 1] ?? value[best];
  const curve = left - 2 * value[best] + right;
  const within = curve < 0 ? (0.5 * (left - right)) / curve : 0;
  return {
    lag: (lag[best] + within) * period,
    correlation: value[best],
    startLag: b.start - a.start,
    endLag: b.end - a.end,
  };
}

/** Mean time between samples, s. */
export const meanStep = (time: Float64Array): number =>
  (time[time.length - 1] - time[0]) / Math.max(1, time.length - 1);

/**
 * Values above rest, not above their mean: beyond its ends the record is at rest, which the correlation treats as zero.
 */
function normalised(values: Float64Array, rest: number): Float64Array {
  const above = values.map((value) => value - rest);
  const norm = Math.sqrt(above.reduce((sum, value) => sum + value * value, 0)) || 1;
  return above.map((value) => value / norm);
}
