import { findBaseline, restOver, withoutBaseline } from '../cleaning/baseline';
import { burnEdges, integralBetween } from '../cleaning/burn-edges';
import type { CleanedChannel } from '../cleaning/step';
import type { Firing } from '../firing';

/** How well the zero is known: half of what the two choices of zero move the integral by, as a share. */
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
  if (baseline.after !== undefined) return Math.abs(first - integral('line')) / (2 * Math.abs(first));
  const { count } = restOver(time, values, baseline.beforeSpan);
  const edges = burnEdges(time, values, { threshold: 0.1, rest: baseline.before });
  return ((baseline.beforeDeviation / Math.sqrt(count)) * (edges.end - edges.start)) / Math.abs(first);
}
