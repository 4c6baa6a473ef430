import { MeopError } from '../../units';

/** Where a pulse starts and ends at a share of its peak. */
export interface BurnEdges {
  /** Largest value, above the resting value. */
  readonly peak: number;
  readonly peakIndex: number;
  readonly peakTime: number;
  /** Interpolated to the threshold, s. */
  readonly start: number;
  readonly end: number;
  /** First and last sample not below the threshold. */
  readonly first: number;
  readonly last: number;
  /** The record begins or ends above the threshold: the edge is the record's end, not the burn's. */
  readonly startCut: boolean;
  readonly endCut: boolean;
}

export interface BurnEdgeOptions {
  /** Share of the peak. */
  readonly threshold: number;
  /** What the channel reads at rest, SI. Default 0. */
  readonly rest?: number;
  /** Samples searched: from the first to before the second. Default all. */
  readonly from?: number;
  readonly to?: number;
}

/**
 * Kernel: walks outward from the largest sample to the last samples not below a share of the peak, and interpolates to
 * it. Inward from the ends would stop at the first spike of the quiet part.
 *
 * @throws MeopError `no-pulse` where no sample is above rest
 * @example burnEdges(Float64Array.of(0, 0.1, 1.9, 2.1), Float64Array.of(0, 500, 500, 0), { threshold: 0.1 }).end.toFixed(2) // => '2.08'
 */
export function burnEdges(time: Float64Array, values: Float64Array, options: BurnEdgeOptions): BurnEdges {
  const { threshold, rest = 0, from = 0, to = values.length } = options;
  let peakIndex = from;
  for (let i = from; i < to; i++) if (values[i] > values[peakIndex]) peakIndex = i;
  const peak = values[peakIndex] - rest;
  if (!(peak > 0))
    throw new MeopError(
      'no-pulse',
      'no sample is above the resting value: the record shows no firing',
      undefined,
      {
        value: peak,
      },
    );
  const level = rest + threshold * peak;
  let first = peakIndex;
  while (first > from && values[first - 1] >= level) first--;
  let last = peakIndex;
  while (last < to - 1 && values[last + 1] >= level) last++;
  return {
    peak,
    peakIndex,
    peakTime: time[peakIndex],
    start: first > from ? crossing(time, values, first - 1, first, level) : time[first],
    end: last < to - 1 ? crossing(time, values, last, last + 1, level) : time[last],
    first,
    last,
    startCut: first === from,
    endCut: last === to - 1,
  };
}

function crossing(time: Float64Array, values: Float64Array, i: number, j: number, level: number): number {
  return time[i] + ((level - values[i]) / (values[j] - values[i])) * (time[j] - time[i]);
}

/** Kernel: integral of values less rest by trapezoids between two times, its ends interpolated. */
export function integralBetween(
  time: Float64Array,
  values: Float64Array,
  from: number,
  to: number,
  rest = 0,
): number {
  const n = time.length;
  let i = lowerBound(time, from);
  let t = from;
  let v = valueAt(time, values, from) - rest;
  let sum = 0;
  for (; i < n && time[i] < to; i++) {
    const next = values[i] - rest;
    sum += 0.5 * (v + next) * (time[i] - t);
    t = time[i];
    v = next;
  }
  return sum + 0.5 * (v + valueAt(time, values, to) - rest) * (to - t);
}

/** Kernel: value at a time by straight lines, the end values beyond the ends. */
export function valueAt(time: Float64Array, values: Float64Array, t: number): number {
  const n = time.length;
  if (t <= time[0]) return values[0];
  if (t >= time[n - 1]) return values[n - 1];
  const i = lowerBound(time, t);
  if (time[i] === t) return values[i];
  return values[i - 1] + ((t - time[i - 1]) / (time[i] - time[i - 1])) * (values[i] - values[i - 1]);
}

/** Kernel: index of the first time not before t. */
export function lowerBound(time: Float64Array, t: number): number {
  let low = 0;
  let high = time.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (time[middle] < t) low = middle + 1;
    else high = middle;
  }
  return low;
}
