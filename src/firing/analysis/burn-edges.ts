import { MeopError } from '../../units';
import { oncePer } from './once';

/** Start and end of a pulse at a fraction of its peak. */
export interface BurnEdges {
  /** Largest value above the resting value. */
  readonly peak: number;
  readonly peakIndex: number;
  readonly peakTime: number;
  /** Times interpolated to the threshold, s. */
  readonly start: number;
  readonly end: number;
  /** First and last sample at or above the threshold. */
  readonly first: number;
  readonly last: number;
  /** The record begins or ends above the threshold: the edge is that of the record, not of the burn. */
  readonly startCut: boolean;
  readonly endCut: boolean;
}

export interface BurnEdgeOptions {
  /** Fraction of the peak. */
  readonly threshold: number;
  /** Resting value of the channel, SI. Default 0. */
  readonly rest?: number;
  /** Samples searched: from the first up to, but not including, the second. Default: all. */
  readonly from?: number;
  readonly to?: number;
}

/**
 * Kernel: searches outward from the largest sample for the last samples at or above a fraction of the peak, and
 * interpolates to it. A search inward from the ends would stop at the first spike of the baseline.
 *
 * @throws MeopError `no-pulse` where no sample is above the resting value
 * @example burnEdges(Float64Array.of(0, 0.1, 1.9, 2.1), Float64Array.of(0, 500, 500, 0), { threshold: 0.1 }).end.toFixed(2) // => '2.08'
 */
export function burnEdges(time: Float64Array, values: Float64Array, options: BurnEdgeOptions): BurnEdges {
  const { threshold, rest = 0, from = 0, to = values.length } = options;
  return edgesAbout({ time, values, from, to, peakIndex: largest(values, from, to) }, threshold, rest);
}

/** The peak of a trace, and its edges at a fraction of the peak above a resting value. */
export interface EdgeFinder {
  readonly peakIndex: number;
  readonly edges: EdgesAt;
}
export type EdgesAt = (threshold: number, rest: number) => BurnEdges;

/** Kernel: burn edges of one trace. The peak is searched once, and each pair of edges once. */
export function edgeFinder(time: Float64Array, values: Float64Array): EdgeFinder {
  const to = values.length;
  const peakIndex = largest(values, 0, to);
  return {
    peakIndex,
    edges: oncePer((threshold, rest) =>
      edgesAbout({ time, values, from: 0, to, peakIndex }, threshold, rest),
    ),
  };
}

interface Pulse {
  readonly time: Float64Array;
  readonly values: Float64Array;
  readonly from: number;
  readonly to: number;
  readonly peakIndex: number;
}

function largest(values: Float64Array, from: number, to: number): number {
  let at = from;
  for (let i = from; i < to; i++) if (values[i] > values[at]) at = i;
  return at;
}

function edgesAbout(pulse: Pulse, threshold: number, rest: number): BurnEdges {
  const { time, values, from, to, peakIndex } = pulse;
  const peak = values[peakIndex] - rest;
  if (!(peak > 0))
    throw new MeopError(
      'no-pulse',
      'No sample is above the resting value. The record shows no firing.',
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
