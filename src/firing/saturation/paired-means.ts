import { median } from '../../numerics';
import type { RestingTrace } from '../analysis/analysed-trace';

/**
 * Pressure and thrust over a burn as means over short equal intervals. Without a limit, one is a function of the other.
 */
export interface PairedMeans {
  /** Means of both channels, above rest. */
  readonly driver: Float64Array;
  readonly limited: Float64Array;
  /** Rate of change of the driver, per second. */
  readonly change: Float64Array;
  /** Fraction of the burn elapsed, 0 to 1. */
  readonly share: Float64Array;
  /** First sample of each mean, and one past the last sample of the last mean. */
  readonly from: Int32Array;
  /** Standard deviation of one mean of each channel. */
  readonly driverNoise: number;
  readonly limitedNoise: number;
  /** Time between true readings of the slower channel, s; a logger repeats or interpolates the samples between them. */
  readonly period: number;
  /** Standard deviation of the time of a mean, where one channel is slower than the time stamps, s. */
  readonly jitter: number;
}

const maxMeans = 200;

/** Kernel: means of both channels between two samples. */
export function pairedMeans(
  driver: RestingTrace,
  limited: RestingTrace,
  within: { readonly first: number; readonly last: number },
): PairedMeans {
  const { first, last } = within;
  const { time } = driver.trace;
  const samples = last - first + 1;
  const count = Math.min(samples, maxMeans);
  const from = Int32Array.from({ length: count + 1 }, (_, k) => first + Math.floor((k * samples) / count));
  const means = (values: Float64Array, rest: number): Float64Array =>
    Float64Array.from({ length: count }, (_, k) => {
      let sum = 0;
      for (let i = from[k]; i < from[k + 1]; i++) sum += values[i];
      return sum / (from[k + 1] - from[k]) - rest;
    });
  const at = means(time, 0);
  const x = means(driver.trace.values, driver.rest);
  const y = means(limited.trace.values, limited.rest);
  const length = at[count - 1] - at[0];
  const root = Math.sqrt(samples / count);
  const spacing = (time[last] - time[first]) / (samples - 1);
  const period =
    spacing * Math.max(slowness(driver.trace.values, within), slowness(limited.trace.values, within));
  return {
    driver: x,
    limited: y,
    change: x.map((_, k) => {
      const a = Math.max(0, k - 1);
      const b = Math.min(count - 1, k + 1);
      return (x[b] - x[a]) / (at[b] - at[a]);
    }),
    share: at.map((t) => (t - at[0]) / length),
    from,
    // Differences do not contain noise that neighbours share; the means do.
    driverNoise: Math.max(noiseOf(driver.trace.values, first, last) / root, noiseOf(x, 0, count - 1)),
    limitedNoise: Math.max(noiseOf(limited.trace.values, first, last) / root, noiseOf(y, 0, count - 1)),
    period,
    jitter: period > 2 * spacing ? 0.3 * period : 0,
  };
}

/** Noise from second differences, which neither a slope nor the few samples of a rise affect. */
function noiseOf(values: Float64Array, first: number, last: number): number {
  if (last - first < 4) return 0;
  const stride = Math.max(1, Math.floor((last - first) / 5000));
  const differences: number[] = [];
  for (let i = first + 1; i < last; i += stride)
    differences.push(Math.abs(values[i - 1] - 2 * values[i] + values[i + 1]));
  // The median size of a normal sample is 0.6745 standard deviations, and a second difference has √6 standard
  // deviations of a sample.
  return median(differences) / (0.6745 * Math.sqrt(6));
}

/**
 * Kernel: samples per true reading, where the samples between repeat it or lie on a straight line; regular intervals
 * identify this.
 */
export function slowness(
  values: Float64Array,
  { first, last }: { readonly first: number; readonly last: number },
): number {
  const runs: number[] = [];
  let start = -1;
  let before = -1;
  for (let i = first + 1; i < last; i++) {
    const size = Math.abs(values[i - 1]) + Math.abs(values[i + 1]);
    if (Math.abs(values[i - 1] - 2 * values[i] + values[i + 1]) <= 1e-9 * size) continue;
    // A repeated reading has two bends, before and after the step.
    if (before < 0 || i - before > 1) {
      if (start >= 0) runs.push(i - start);
      start = i;
    }
    before = i;
  }
  if (runs.length < minRuns) return 1;
  const usual = median(runs);
  // A coarse converter or a channel at its limit is constant too, but never at regular intervals.
  const even = runs.filter((run) => Math.abs(run - usual) <= Math.max(1, 0.1 * usual)).length;
  return usual > 2 && even > 0.7 * runs.length ? usual : 1;
}
const minRuns = 10;
