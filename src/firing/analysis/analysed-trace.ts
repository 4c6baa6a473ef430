import { type Baseline, type BaselineMode, findBaseline, withoutBaseline } from './baseline';
import { type EdgesAt, edgeFinder } from './burn-edges';
import { converterStep } from './converter-step';
import { oncePer } from './once';
import { integralBetween } from './trace-values';

/** A trace in SI units and its analysis: each item is computed when it is first needed, and once. */
export interface AnalysedTrace {
  readonly time: Float64Array;
  readonly values: Float64Array;
  readonly lowest: () => number;
  readonly highest: () => number;
  /** Index of the highest sample, the first of several. */
  readonly peakIndex: () => number;
  /** Burn edges at a fraction of the peak above a resting value. */
  readonly edges: EdgesAt;
  /** Integral above a resting value, between the edges at a fraction of the peak. */
  readonly integral: (threshold: number, rest: number) => number;
  /** Pre-fire and post-fire baseline, over the intervals found. */
  readonly baseline: () => Baseline;
  /** The trace with its baseline shifted to a resting value. */
  readonly levelled: (mode: BaselineMode, rest: number) => AnalysedTrace;
  /** The trace above a constant level. */
  readonly above: (level: number) => AnalysedTrace;
  /** Resolution of the converter; 0 where none is detectable. */
  readonly converterStep: () => number;
}

/** A trace and its resting value, SI. */
export interface RestingTrace {
  readonly trace: AnalysedTrace;
  readonly rest: number;
}

/** Kernel: a trace whose analysis is computed on demand. */
export function analysedTrace(time: Float64Array, values: Float64Array): AnalysedTrace {
  const finder = oncePer(() => edgeFinder(time, values));
  const edges: EdgesAt = (threshold, rest) => finder().edges(threshold, rest);
  const baseline = oncePer(() => findBaseline({ time, values, edges }));
  const trace: AnalysedTrace = {
    time,
    values,
    edges,
    baseline,
    lowest: oncePer(() => lowestOf(values)),
    highest: () => values[finder().peakIndex],
    peakIndex: () => finder().peakIndex,
    converterStep: oncePer(() => converterStep(values)),
    integral: oncePer((threshold, rest) => {
      const { start, end } = edges(threshold, rest);
      return integralBetween(time, values, start, end, rest);
    }),
    levelled: oncePer((mode, rest) => {
      // Without a post-fire baseline the line is the pre-fire level.
      if (mode === 'line' && baseline().after === undefined) return trace.levelled('before', rest);
      return analysedTrace(time, withoutBaseline(time, values, baseline(), mode, rest));
    }),
    above: oncePer((level) =>
      analysedTrace(
        time,
        values.map((value) => value - level),
      ),
    ),
  };
  return trace;
}

function lowestOf(values: Float64Array): number {
  let lowest = values[0];
  for (let i = 1; i < values.length; i++) if (values[i] < lowest) lowest = values[i];
  return lowest;
}
