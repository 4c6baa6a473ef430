import { MeopError } from '../../units';
import type { BurnEdges, EdgesAt } from './burn-edges';
import { lowerBound } from './trace-values';

/** An interval of time, s. */
export interface TimeSpan {
  readonly from: number;
  readonly to: number;
}

/** Pre-fire and post-fire level of a channel. */
export interface Baseline {
  readonly before: number;
  readonly beforeDeviation: number;
  /** Fraction of the pre-fire samples that are disturbed and excluded. */
  readonly disturbed: number;
  readonly beforeSpan: TimeSpan;
  /** Undefined where the record ends before the channel has returned to rest. */
  readonly after: number | undefined;
  readonly afterSpan: TimeSpan | undefined;
}

export type BaselineMode = 'before' | 'line';

/** A trace with its burn edges. */
interface EdgedTrace {
  readonly time: Float64Array;
  readonly values: Float64Array;
  readonly edges: EdgesAt;
}

interface Rest {
  readonly mean: number;
  readonly deviation: number;
  /** Fraction of the samples that are excluded. */
  readonly disturbed: number;
}

/** Returns the samples of an interval, its ends included. @throws MeopError `empty-window` */
export function samplesWithin(
  time: Float64Array,
  values: Float64Array,
  span: TimeSpan,
  path = 'interval',
): Float64Array {
  const from = lowerBound(time, span.from);
  let to = lowerBound(time, span.to);
  if (time[to] === span.to) to++;
  if (to - from >= 1) return values.subarray(from, to);
  throw new MeopError({
    code: 'empty-window',
    procedure: 'removeBaseline',
    path,
    given: `${span.from} to ${span.to} s`,
    expected: `an interval that contains samples, within ${time[0]} to ${time[time.length - 1]} s`,
  });
}

/** Mean and standard deviation of all samples of a span. */
function restOver(samples: Float64Array): Rest {
  return restWithin(samples, 0, Number.POSITIVE_INFINITY);
}

/** Mean and standard deviation of the samples within a limit of a value. */
function restWithin(samples: Float64Array, middle: number, limit: number): Rest {
  let count = 0;
  let sum = 0;
  for (let i = 0; i < samples.length; i++) {
    if (Math.abs(samples[i] - middle) > limit) continue;
    count++;
    sum += samples[i];
  }
  const mean = sum / count;
  let squares = 0;
  for (let i = 0; i < samples.length; i++)
    if (Math.abs(samples[i] - middle) <= limit) squares += (samples[i] - mean) ** 2;
  return {
    mean,
    deviation: Math.sqrt(squares / count),
    disturbed: (samples.length - count) / samples.length,
  };
}

/**
 * Baseline over an interval that was found, not specified. It may contain hands on the stand, igniter installation and
 * the first flame, so samples farther than five robust deviations from the median are excluded. The robust deviation is
 * that of the samples or that of the differences of neighbours, whichever is larger (with a coarse converter the former
 * is often zero).
 */
function quietRestOver(samples: Float64Array): Rest {
  if (samples.length < 8) return restOver(samples);
  const some = spread(samples, samples.length);
  const middle = medianOf(some);
  let squares = 0;
  for (let i = 1; i < samples.length; i++) squares += (samples[i] - samples[i - 1]) ** 2;
  const robust = 1.4826 * medianOf(some.map((value) => Math.abs(value - middle)));
  return restWithin(samples, middle, 5 * Math.max(robust, Math.sqrt(squares / (2 * (samples.length - 1)))));
}

const medianOf = (values: Float64Array): number => values.slice().sort()[values.length >> 1];

/**
 * Kernel: subtracts a constant, or a line through the pre-fire and post-fire baselines at the centres of their
 * intervals.
 */
export function withoutBaseline(
  time: Float64Array,
  values: Float64Array,
  baseline: Baseline,
  mode: BaselineMode,
  rest = 0,
): Float64Array {
  const { before, after, beforeSpan, afterSpan } = baseline;
  const middle = (beforeSpan.from + beforeSpan.to) / 2;
  const slope =
    mode === 'line' && after !== undefined && afterSpan !== undefined
      ? (after - before) / ((afterSpan.from + afterSpan.to) / 2 - middle)
      : 0;
  const cleaned = new Float64Array(values.length);
  for (let i = 0; i < values.length; i++)
    cleaned[i] = values[i] - (before + slope * (time[i] - middle)) + rest;
  return cleaned;
}

/** The pre-fire and post-fire intervals, kept clear of the burn edges. */
function baselineSpans(trace: EdgedTrace): {
  readonly before: TimeSpan;
  readonly after: TimeSpan | undefined;
} {
  const { time } = trace;
  const edges = burnOverRest(trace);
  const length = Math.max(edges.end - edges.start, 1e-9);
  const clear = 0.15 * length;
  const start = time[0];
  const stop = time[time.length - 1];
  const beforeEnd = Math.max(edges.start - clear, start + 0.5 * (edges.start - start));
  // Load cells creep after unloading: the first 20 % of the burn time after the burn is excluded.
  const afterStart = edges.end + Math.max(2 * clear, 0.2 * length);
  const after =
    stop - afterStart > 0.05 * length
      ? { from: afterStart, to: Math.min(stop, afterStart + 3 * length) }
      : undefined;
  return { before: { from: Math.max(start, beforeEnd - 3 * length), to: beforeEnd }, after };
}

/**
 * Burn edges while the baseline is unknown: with a first estimate of it, then with the median of the samples before the
 * burn.
 */
function burnOverRest({ values, edges }: EdgedTrace): BurnEdges {
  const sorted = spread(values, values.length).sort();
  const count = sorted.length;
  const middle = (sorted[0] + sorted[count - 1]) / 2;
  // Where most of the record is at rest, the median is the baseline; where most of it is burning, the lowest 10 % is.
  const quiet = sorted.findIndex((value) => value > middle) > 0.65 * count;
  const guessed = edges(0.1, sorted[Math.floor(count * (quiet ? 0.45 : 0.1))]);
  if (guessed.first < 4) return guessed;
  return edges(0.1, medianOf(spread(values, guessed.first)));
}

/** At most 2000 of the first `length` values, evenly spaced. */
function spread(values: Float64Array, length: number): Float64Array {
  const count = Math.min(length, 2000);
  return Float64Array.from({ length: count }, (_, i) => values[Math.floor((i * length) / count)]);
}

/** Kernel: baselines of a channel over the given intervals, or over the intervals found. */
export function findBaseline(
  trace: EdgedTrace,
  spans?: { readonly before?: TimeSpan | undefined; readonly after?: TimeSpan | undefined },
): Baseline {
  const { time, values } = trace;
  const quiet = spans?.before === undefined ? baselineSpans(trace) : undefined;
  const beforeSpan = spans?.before ?? quiet?.before ?? { from: time[0], to: time[0] };
  const afterSpan = spans?.after ?? quiet?.after;
  const rest = (span: TimeSpan, which: 'before' | 'after'): Rest => {
    const samples = samplesWithin(time, values, span, which);
    return spans?.[which] === undefined ? quietRestOver(samples) : restOver(samples);
  };
  const before = rest(beforeSpan, 'before');
  const after = afterSpan && rest(afterSpan, 'after');
  return {
    before: before.mean,
    beforeDeviation: before.deviation,
    disturbed: before.disturbed,
    beforeSpan,
    after: after?.mean,
    afterSpan,
  };
}
