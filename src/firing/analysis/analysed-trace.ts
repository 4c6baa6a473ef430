import { type Baseline, type BaselineMode, findBaseline, withoutBaseline } from './baseline';
import { type EdgesAt, edgeFinder } from './burn-edges';
import { converterStep } from './converter-step';
import { oncePer } from './once';
import { integralBetween } from './trace-values';

/** One trace in SI, and what has been found out about it: each item is computed when it is first needed, and once. */
export interface AnalysedTrace {
  readonly time: Float64Array;
  readonly values: Float64Array;
  readonly lowest: () => number;
  readonly highest: () => number;
  /** Sample of the highest value, the first of several. */
  readonly peakIndex: () => number;
  /** Edges of the burn at a share of the peak above a resting value. */
  readonly edges: EdgesAt;
  /** Integral above a resting value, between the edges at a share of the peak. */
  readonly integral: (threshold: number, rest: number) => number;
  /** Baselines before and after the burn, over the spans that were found. */
  readonly baseline: () => Baseline;
  /** The trace with its baseline moved to a resting value. */
  readonly levelled: (mode: BaselineMode, rest: number) => AnalysedTrace;
  /** The trace above a constant level. */
  readonly above: (level: number) => AnalysedTrace;
  /** Step of the converter; 0 where none shows. */
  readonly converterStep: () => number;
}

/** A trace and what it reads at rest, SI. */
export interface RestingTrace {
  readonly trace: AnalysedTrace;
  readonly rest: number;
}

/** Kernel: a trace to be analysed as far as it is asked for. */
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
      // Without a baseline after the burn the line is the level before it.
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
