import type { RestingTrace } from '../analysis/analysed-trace';
import type { ClippedSpan, Clipping } from './clipping';

const parts = 8;

/**
 * Kernel: whether the other channel shows that a flat top is clipped and is not a true plateau: over the longest flat
 * interval it varies by more than its noise and the width of the flat band explain. Thrust and pressure vary together,
 * so with a true plateau the other channel is constant too.
 */
export function isClippedByOtherChannel(
  clipping: Clipping,
  channel: RestingTrace,
  other: RestingTrace,
): boolean {
  const span = clipping.spans.reduce<ClippedSpan | undefined>(
    (longest, each) => (longest === undefined || each.samples > longest.samples ? each : longest),
    undefined,
  );
  if (span === undefined || span.samples < 2 * parts) return false;
  const flat = channel.trace.values.slice(span.first, span.last + 1).sort();
  const band = (clipping.level - flat[Math.floor(0.1 * flat.length)]) / (clipping.level - channel.rest);
  const means: number[] = [];
  let differences = 0;
  for (let k = 0; k < parts; k++) {
    const from = span.first + Math.floor((k * span.samples) / parts);
    const to = span.first + Math.floor(((k + 1) * span.samples) / parts);
    let sum = 0;
    for (let i = from; i < to; i++) {
      sum += other.trace.values[i] - other.rest;
      if (i > span.first) differences += (other.trace.values[i] - other.trace.values[i - 1]) ** 2;
    }
    means.push(sum / (to - from));
  }
  const highest = Math.max(...means);
  if (!(highest > 0)) return false;
  // Neighbours differ by √2 of the noise; the highest and the lowest of eight means differ by about three deviations.
  const noise = Math.sqrt(differences / (2 * (span.samples - 1)) / (span.samples / parts)) / highest;
  return (highest - Math.min(...means)) / highest > 0.015 + 2 * band + 4 * noise;
}
