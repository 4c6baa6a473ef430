// Pressure over the fraction of its integral: the same in a slow and a fast burn, and whenever it began.
import type { AnalysedTrace } from '../../firing/analysis/analysed-trace';

/** Pressure of a burn by the fraction of its integral. */
export interface PressureProfile {
  /** Mean of ln p [Pa] around a fraction of the integral. */
  readonly logAt: (fraction: number) => number;
  /** Samples until a fraction. */
  readonly samplesUntil: (fraction: number) => number;
}

const binCount = 45;
const lastFraction = 0.85;
const width = 1 / 60;
const within = 9;

/** Fractions at which two profiles are compared: closer at the start, where the port is narrow. */
export const profileBins = (from: number): readonly number[] =>
  Array.from({ length: binCount }, (_, i) => from + (lastFraction - from) * (i / (binCount - 1)) ** 1.5);

/** The profile of a burn between its 10 % points. */
export function pressureProfile(trace: AnalysedTrace, ambient: number): PressureProfile {
  const { time, values } = trace;
  const { first, last } = trace.edges(0.1, ambient);
  const count = last - first + 1;
  const part = new Float64Array(count);
  for (let k = 1; k < count; k++) {
    const i = first + k;
    part[k] = part[k - 1] + (0.5 * (values[i] + values[i - 1]) - ambient) * (time[i] - time[i - 1]);
  }
  const total = part[count - 1];
  const at = (fraction: number): number => {
    const wanted = Math.max(0, Math.min(1, fraction)) * total;
    let low = 0;
    let high = count - 1;
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (part[middle] <= wanted) low = middle;
      else high = middle;
    }
    const span = part[high] - part[low];
    const u = span > 0 ? (wanted - part[low]) / span : 0;
    return values[first + low] + u * (values[first + high] - values[first + low]);
  };
  return {
    logAt: (fraction) => {
      let sum = 0;
      for (let j = 0; j < within; j++)
        // Symmetrical about the fraction, and not ahead of the start.
        sum += Math.log(at(fraction + (j / (within - 1) - 0.5) * Math.min(width, 1.6 * fraction)));
      return sum / within;
    },
    samplesUntil: (fraction) => part.filter((value) => value <= fraction * total).length,
  };
}
