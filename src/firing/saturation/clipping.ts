import type { RestingTrace } from '../analysis/analysed-trace';

/** A stretch during which a channel could not follow. */
export interface ClippedSpan {
  /** s. */
  readonly from: number;
  readonly to: number;
  readonly first: number;
  readonly last: number;
  readonly samples: number;
}

/** How a channel was found to be clipped. */
export type ClippingEvidence =
  /** Readings at the stated end of its range. */
  | 'range'
  /** Samples pile up at the largest value as no smooth peak does. */
  | 'flat top'
  /** It stops following the other channel as it nears its top. */
  | 'soft limit';

/** Clipping of one channel. */
export interface Clipping {
  readonly evidence: ClippingEvidence;
  /** Value that it does not get past, SI. */
  readonly level: number;
  readonly spans: readonly ClippedSpan[];
  /** True where a known range or the other channel shows it; false where a true plateau would look the same. */
  readonly certain: boolean;
}

/** Kernel: whether a channel is clipped at its top, or at the largest value it can tell where that is known, and from when to when. */
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
  // A flat top can be a neutral grain on a coarse converter: only the range, or the other channel, tells them apart.
  return {
    evidence: 'flat top',
    level: top,
    spans: spansAbove(time, values, top - width),
    certain: high !== undefined && top >= 0.95 * high,
  };
}

/**
 * The width of a band at the top in which samples pile up; undefined where the top is an ordinary peak.
 *
 * Below the top of a parabola the time spent in equal bands falls as 1 : 0.41 : 0.32 : …, and even a quartic gives
 * 1 : 0.19. Where the top band holds over four times the next, and over three times the next three, it is cut.
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
    // A clipped top under noise falls short of the limit now and then, hence not every sample need be in the band.
    if (inside >= 5 && inside > 4 * next && inside > 3 * nextThree) return width;
  }
  return undefined;
}

/** Stretches at or above a level; short dips below it within a stretch are noise. */
function spansAbove(time: Float64Array, values: Float64Array, level: number): readonly ClippedSpan[] {
  const spans: ClippedSpan[] = [];
  const mostDip = 3;
  let first = -1;
  let last = -1;
  const close = (): void => {
    if (first >= 0) spans.push({ from: time[first], to: time[last], first, last, samples: last - first + 1 });
    first = -1;
  };
  for (let i = 0; i < values.length; i++) {
    if (values[i] < level) continue;
    if (first >= 0 && i - last > mostDip + 0.1 * (last - first)) close();
    if (first < 0) first = i;
    last = i;
  }
  close();
  return spans;
}
