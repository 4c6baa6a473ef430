import type { RestingTrace } from '../analysis/analysed-trace';

/** An interval in which a channel is saturated. */
export interface ClippedSpan {
  /** Start and end, s. */
  readonly from: number;
  readonly to: number;
  readonly first: number;
  readonly last: number;
  readonly samples: number;
}

/** Evidence that a channel is clipped. */
export type ClippingEvidence =
  /** Readings at the stated limit of the range. */
  | 'range'
  /** Samples pile up at the largest value as no smooth peak does. */
  | 'flat top'
  /** It stops following the other channel as it nears its top. */
  | 'soft limit';

/** Clipping of one channel. */
export interface Clipping {
  readonly evidence: ClippingEvidence;
  /** Value that the channel does not exceed, SI. */
  readonly level: number;
  readonly spans: readonly ClippedSpan[];
  /** True where a known range or the other channel confirms it; false where a true plateau would look the same. */
  readonly certain: boolean;
}

/** Whether a value is a clipping that was found. */
export const isClipping = (value: unknown): value is Clipping =>
  typeof value === 'object' &&
  value !== null &&
  'evidence' in value &&
  'level' in value &&
  'certain' in value &&
  'spans' in value &&
  Array.isArray(value.spans);

/** Kernel: finds the clipped intervals of a channel, at its top or at the known limit `high` of its range. */
export function findClipping({ trace, rest }: RestingTrace, high: number | undefined): Clipping | undefined {
  const { time, values } = trace;
  const edges = trace.edges(0.1, rest);
  const top = values[edges.peakIndex];
  const step = trace.converterStep();
  if (high !== undefined && top >= high - Math.max(step, 1e-3 * (high - rest))) {
    const level = high - Math.max(step, 1e-3 * (high - rest));
    return { evidence: 'range', level: top, spans: spansAbove(time, values, level), certain: true };
  }
  const width = pileUp(values, edges.first, edges.last, top, step, edges.peak);
  if (width === undefined) return undefined;
  // A neutral grain on a coarse converter gives a flat top too. Only the range or the other channel distinguishes them.
  return {
    evidence: 'flat top',
    level: top,
    spans: spansAbove(time, values, top - width),
    certain: high !== undefined && top >= 0.95 * high,
  };
}

/**
 * Width of a band at the top in which samples accumulate; undefined where the top is an ordinary peak.
 *
 * Below the top of a parabola the time spent in equal bands falls as 1 : 0.41 : 0.32 : …, and even for a quartic as 1 :
 * 0.19. A top is clipped where its band contains more than four times the samples of the next, and more than three
 * times those of the next three.
 */
function pileUp(
  values: Float64Array,
  first: number,
  last: number,
  top: number,
  step: number,
  peak: number,
): number | undefined {
  const widths = [0.5 * step, 1.5 * step, 0.002 * peak, 0.004 * peak, 0.008 * peak];
  for (const width of widths) {
    if (width > 0.02 * peak) continue;
    const band = Math.max(width, 0.5 * step);
    let inside = 0;
    let next = 0;
    let nextThree = 0;
    for (let i = first; i <= last; i++) {
      const below = top - values[i];
      if (below <= width) inside++;
      else if (below <= width + 2 * band) next++;
      if (below > width && below <= width + 6 * band) nextThree++;
    }
    // With noise, samples of a clipped top fall below the limit now and then, so not all samples have to be in the
    // band.
    if (inside >= 5 && inside > 4 * next && inside > 3 * nextThree) return width;
  }
  return undefined;
}

/** Intervals at or above a level; short dips below it are noise. */
function spansAbove(time: Float64Array, values: Float64Array, level: number): readonly ClippedSpan[] {
  const spans: ClippedSpan[] = [];
  const maxDip = 3;
  let first = -1;
  let last = -1;
  const close = (): void => {
    if (first >= 0) spans.push({ from: time[first], to: time[last], first, last, samples: last - first + 1 });
    first = -1;
  };
  for (let i = 0; i < values.length; i++) {
    if (values[i] < level) continue;
    if (first >= 0 && i - last > maxDip + 0.1 * (last - first)) close();
    if (first < 0) first = i;
    last = i;
  }
  close();
  return spans;
}
