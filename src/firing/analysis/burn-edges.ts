import { MeopError, optional, procedure, ratio } from '../../units';
import { oncePer } from './once';
import { sameLength, samples } from './samples-input';

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

/**
 * Searches outward from the largest sample for the last samples at or above a fraction of the peak, and interpolates to
 * it. A search inward from the ends would stop at the first spike of the baseline.
 *
 * @example burnEdges({ time: Float64Array.of(0, 0.1, 1.9, 2.1), values: Float64Array.of(0, 500, 500, 0), threshold: 0.1 }).end.toFixed(2) // => '2.08'
 */
export const burnEdges = /* @__PURE__ */ procedure({
  name: 'burnEdges',
  title: 'Start and end of a pulse at a fraction of its peak',
  source: 'definition, linear between samples',
  inputs: {
    time: samples('times of the samples in s, increasing'),
    values: samples('values at these times'),
    threshold: ratio('x', 'fraction of the peak', { min: 0, max: 1, example: 0.1 }),
    rest: optional(ratio('v_0', 'resting value of the channel, SI'), 0),
    from: optional(ratio('i_1', 'first sample searched', { min: 0, whole: true }), 0),
    to: optional(ratio('i_2', 'sample before which the search ends', { min: 1, whole: true })),
  },
  checks: [sameLength],
  gives: 'the peak, its time, and the times of the edges',
  example:
    'burnEdges({ time: Float64Array.of(0, 1, 2, 3), values: Float64Array.of(0, 9, 9, 0), threshold: 0.1 })',
  run: ({ time, values, threshold, rest, from, to: end = values.length }): BurnEdges => {
    const to = Math.min(end, values.length);
    return edgesAbout({ time, values, from, to, peakIndex: largest(values, from, to) }, threshold, rest);
  },
});

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
    throw new MeopError({
      code: 'no-pulse',
      given: peak,
      problem: 'No sample is above the resting value. The record shows no firing.',
    });
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
