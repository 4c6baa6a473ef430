import type { AnalysedTrace } from '../analysis/analysed-trace';
import { averaged, evenTimes } from '../cleaning/resample';
import type { Clipping } from './clipping';
import { slowness } from './paired-means';

/** Pressure and thrust over the burn on one time base, and the validity of each sample. */
export interface BurnSamples {
  readonly time: Float64Array;
  readonly pressure: Float64Array;
  readonly thrust: Float64Array;
  readonly pressureGood: Uint8Array;
  readonly thrustGood: Uint8Array;
  /** Fraction of the integral of the driving channel at each sample. */
  readonly share: Float64Array;
  /** Standard deviation of a sample of each channel, from the pre-fire baseline; 0 where there is none. */
  readonly pressureNoise: number;
  readonly thrustNoise: number;
}

const maxSamples = 4000;

/**
 * Kernel: the burn as defined by the unclipped channel, averaged to fewer samples where there are very many or few of
 * them are true readings.
 */
export function burnSamples(
  pressure: AnalysedTrace,
  thrust: AnalysedTrace,
  options: {
    readonly ambient: number;
    readonly driver: 'pressure' | 'thrust';
    readonly pressureClipping: Clipping | undefined;
    readonly thrustClipping: Clipping | undefined;
  },
): BurnSamples {
  const { ambient, driver, pressureClipping, thrustClipping } = options;
  const rest = driver === 'pressure' ? ambient : 0;
  const leading = driver === 'pressure' ? pressure : thrust;
  const { time } = leading;
  const edges = leading.edges(0.04, rest);
  const from = Math.max(0, edges.first - 2);
  const to = Math.min(time.length, edges.last + 3);
  const near = time.subarray(from, to);
  let at: Float64Array = near.slice();
  let p: Float64Array = pressure.values.slice(from, to);
  let f: Float64Array = thrust.values.slice(from, to);
  let period = 0;
  let thinning = 1;
  // Samples that a logger repeats or interpolates between true readings carry no information: the slower channel sets
  // the interval.
  const within = { first: from, last: to - 1 };
  const every = Math.max(
    slowness(pressure.values, within),
    slowness(thrust.values, within),
    near.length / maxSamples,
  );
  if (every > 2) {
    period = (every * (near[near.length - 1] - near[0])) / (near.length - 1);
    thinning = near.length > maxSamples ? Math.sqrt(near.length / maxSamples) : 1;
    at = evenTimes(near, period);
    p = averaged(near, p, at, period);
    f = averaged(near, f, at, period);
  }
  const lead = driver === 'pressure' ? p : f;
  const share = new Float64Array(at.length);
  for (let i = 1; i < at.length; i++)
    share[i] = share[i - 1] + 0.5 * Math.max(0, lead[i] + lead[i - 1] - 2 * rest) * (at[i] - at[i - 1]);
  const total = share[share.length - 1] || 1;
  for (let i = 0; i < share.length; i++) share[i] /= total;
  return {
    time: at,
    pressure: p,
    thrust: f,
    pressureGood: goodness(at, period, pressureClipping),
    thrustGood: goodness(at, period, thrustClipping),
    share,
    pressureNoise: quietNoise(pressure.values, from) / thinning,
    thrustNoise: quietNoise(thrust.values, from) / thinning,
  };
}

/** Noise from differences of neighbours, which a drifting zero does not affect. */
function quietNoise(values: Float64Array, burnFrom: number): number {
  const to = Math.floor(0.95 * burnFrom);
  const from = Math.max(0, to - 5000);
  if (to - from < 8) return 0;
  let squares = 0;
  for (let i = from + 1; i < to; i++) squares += (values[i] - values[i - 1]) ** 2;
  return Math.sqrt(squares / (2 * (to - from - 1)));
}

/** Samples adjacent to a clipped interval are excluded too, because an amplifier needs time to recover. */
function goodness(time: Float64Array, period: number, clipping: Clipping | undefined): Uint8Array {
  const good = new Uint8Array(time.length).fill(1);
  for (const { from, to } of clipping?.spans ?? []) {
    const margin = Math.max(period, 1.5 * ((time[time.length - 1] - time[0]) / Math.max(1, time.length - 1)));
    for (let i = 0; i < time.length; i++) if (time[i] >= from - margin && time[i] <= to + margin) good[i] = 0;
  }
  return good;
}
