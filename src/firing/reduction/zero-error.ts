import { type Baseline, findBaseline, restOver, withoutBaseline } from '../cleaning/baseline';
import { burnEdges, integralBetween, lowerBound } from '../cleaning/burn-edges';
import type { CleanedChannel } from '../cleaning/step';
import type { Firing } from '../firing';

const parts = 8;

/**
 * How well the zero is known: half of what the two choices of zero move the integral by, and the wander of the rest
 * before ignition over the length of the burn, as a share of the integral.
 */
export function zeroError(record: Firing, channel: CleanedChannel, rest: number): number {
  const values = record[channel]?.si;
  if (values === undefined) return 0;
  const time = record.time.si;
  const baseline = findBaseline(time, values);
  const integral = (mode: 'before' | 'line'): number => {
    const cleaned = withoutBaseline(time, values, baseline, mode, rest);
    const edges = burnEdges(time, cleaned, { threshold: 0.05, rest });
    return integralBetween(time, cleaned, edges.start, edges.end, rest);
  };
  const first = integral('before');
  const edges = burnEdges(time, values, { threshold: 0.1, rest: baseline.before });
  const wander = (wanderOf(time, values, baseline) * (edges.end - edges.start)) / Math.abs(first);
  if (baseline.after === undefined) return wander;
  return Math.hypot((first - integral('line')) / (2 * Math.abs(first)), wander);
}

/** Standard error of the rest by the means of its parts: neighbours share their drift, so samples count for less than they are. */
function wanderOf(time: Float64Array, values: Float64Array, baseline: Baseline): number {
  const { beforeSpan, before, beforeDeviation } = baseline;
  const from = lowerBound(time, beforeSpan.from);
  const { count } = restOver(time, values, beforeSpan);
  if (count < 4 * parts) return beforeDeviation / Math.sqrt(count);
  let squares = 0;
  for (let k = 0; k < parts; k++) {
    const part = values
      .subarray(from + Math.floor((k * count) / parts), from + Math.floor(((k + 1) * count) / parts))
      .filter((value) => Math.abs(value - before) <= 5 * beforeDeviation);
    if (part.length > 0) squares += (part.reduce((sum, value) => sum + value, 0) / part.length - before) ** 2;
  }
  return Math.sqrt(squares / (parts * (parts - 1)));
}
