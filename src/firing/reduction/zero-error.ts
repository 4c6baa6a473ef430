import type { AnalysedTrace, RestingTrace } from '../analysis/analysed-trace';
import { samplesWithin } from '../analysis/baseline';

const parts = 8;

/**
 * Relative uncertainty of an integral due to its zero: half of the change between the two baseline modes, combined with
 * the drift of the pre-fire baseline over the burn time.
 */
export function zeroError({ trace, rest }: RestingTrace): number {
  const baseline = trace.baseline();
  const first = trace.levelled('before', rest).integral(0.05, rest);
  const edges = trace.edges(0.1, baseline.before);
  const wander = (wanderOf(trace) * (edges.end - edges.start)) / Math.abs(first);
  if (baseline.after === undefined) return wander;
  const line = trace.levelled('line', rest).integral(0.05, rest);
  return Math.hypot((first - line) / (2 * Math.abs(first)), wander);
}

/**
 * Standard error of the baseline from the means of its parts. Neighbouring samples share their drift, so the number of
 * independent samples is smaller than the number of samples.
 */
function wanderOf({ time, values, baseline }: AnalysedTrace): number {
  const { beforeSpan, before, beforeDeviation } = baseline();
  const samples = samplesWithin(time, values, beforeSpan);
  const count = samples.length;
  if (count < 4 * parts) return beforeDeviation / Math.sqrt(count);
  let squares = 0;
  for (let k = 0; k < parts; k++) {
    const part = samples
      .subarray(Math.floor((k * count) / parts), Math.floor(((k + 1) * count) / parts))
      .filter((value) => Math.abs(value - before) <= 5 * beforeDeviation);
    if (part.length > 0) squares += (part.reduce((sum, value) => sum + value, 0) / part.length - before) ** 2;
  }
  return Math.sqrt(squares / (parts * (parts - 1)));
}
