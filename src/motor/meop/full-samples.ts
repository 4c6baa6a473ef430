import { quantile, standardDeviation } from '../../numerics';
import { MeopError } from '../../units';
import type { Motor } from '../document';
import { type FlawSet, motorRegression } from '../motor-grain';
import type { RegressionCache } from '../regression-cache';
import { withValues } from '../varied-motor';
import { fullPeak } from './full-peak';
import type { SampledMotors } from './monte-carlo';
import { lnPeakAt, type PeakResponse, workState } from './peak-response';
import { sampledGrain } from './sampled-grain';

/** What the full simulation of samples needs. */
export interface SampledMotor {
  readonly motor: Motor;
  readonly cache: RegressionCache;
  readonly flaws: FlawSet;
  readonly response: PeakResponse;
  readonly drawn: SampledMotors;
}

/** Peak pressures of all samples, those in full that can reach the percentile. */
export interface FullSamples {
  /** ln of the peak pressure at the head end [Pa] of each sample. */
  readonly lnPeak: Float64Array;
  readonly fullRuns: number;
  /** Runs that ended in an error; their approximate pressure is used. */
  readonly failedRuns: number;
  /** Standard deviation of full/approximate pressure over samples taken at random, relative. */
  readonly spread: number;
  /** Whether every sample that can reach the percentile was simulated in full. */
  readonly isComplete: boolean;
}

const calibrationRuns = 20;
const mostRuns = 160;
// Standard deviations of full/approximate pressure beyond the ends of the band.
const reach = 4;

/**
 * Simulates in full the samples that can reach a percentile. The approximate pressure of every sample ranks them; samples
 * at random show by how much full and approximate pressures differ. Samples further from the percentile than four
 * standard deviations of that difference keep their approximate pressure, scaled by its mean. The grain of each is
 * regressed anew; dimensions of its flaws act by the approximation.
 */
export function fullSamples(sampled: SampledMotor, share: number): FullSamples {
  const { drawn } = sampled;
  const { lnPeak: approximate } = drawn;
  const count = approximate.length;
  const full = new Float64Array(count).fill(Number.NaN);
  let fullRuns = 0;
  let failedRuns = 0;
  const run = runner(sampled);
  const simulateSample = (k: number): void => {
    if (!Number.isNaN(full[k])) return;
    fullRuns++;
    try {
      full[k] = run(k);
    } catch (error) {
      if (!(error instanceof MeopError)) throw error;
      failedRuns++;
    }
  };
  // The samples are independent: the first are as random as any.
  const calibration = Math.min(calibrationRuns, count);
  for (let k = 0; k < calibration; k++) simulateSample(k);
  const differences = Array.from({ length: calibration }, (_, k) => full[k] - approximate[k]).filter(
    Number.isFinite,
  );
  const mean = differences.reduce((sum, d) => sum + d, 0) / Math.max(1, differences.length);
  const spread = differences.length > 1 ? standardDeviation(Float64Array.from(differences)) : 0;
  const deviation = Math.sqrt(share * (1 - share) * count);
  const within = (2.5 * deviation) / count;
  const low = quantile(approximate, Math.max(0, share - within)) - reach * spread;
  const high = quantile(approximate, Math.min(1, share + within)) + reach * spread;
  // Nearest to the percentile first.
  const middle = quantile(approximate, share);
  const wanted = Array.from(approximate, (_, k) => k)
    .filter((k) => approximate[k] >= low && approximate[k] <= high)
    .sort((a, b) => Math.abs(approximate[a] - middle) - Math.abs(approximate[b] - middle));
  for (const k of wanted.slice(0, mostRuns)) simulateSample(k);
  return {
    lnPeak: full.map((lnP, k) => (Number.isNaN(lnP) ? approximate[k] + mean : lnP)),
    fullRuns,
    failedRuns,
    spread,
    isComplete: wanted.length <= mostRuns,
  };
}

/** Simulates a sample in full: ln of its peak pressure. */
function runner({ motor, cache, flaws, response, drawn }: SampledMotor): (k: number) => number {
  const { inputs } = response;
  const width = inputs.length;
  const isFlaw = inputs.map(({ path }) => path.includes('flaws') || path.includes('assumedFlaw'));
  const shapes = inputs.some(({ shapesGrain }, i) => shapesGrain && !isFlaw[i]);
  const nominal = motorRegression(motor, flaws, cache);
  const grainFor = shapes ? sampledGrain(motor, flaws, cache) : undefined;
  const work = workState(response);
  const without = new Float64Array(width);
  return (k) => {
    const shares = drawn.shares.subarray(k * width, (k + 1) * width);
    const kelvin = drawn.temperature[k];
    const changes = inputs.flatMap(({ path, value, plusMinus }, i) =>
      isFlaw[i] || shares[i] === 0 ? [] : [{ path, si: value.si + shares[i] * plusMinus }],
    );
    for (let i = 0; i < width; i++) without[i] = isFlaw[i] ? 0 : shares[i];
    const byFlaw = lnPeakAt(response, shares, kelvin, work) - lnPeakAt(response, without, kelvin, work);
    const varied = withValues(motor, changes);
    return Math.log(fullPeak(varied, grainFor?.(varied) ?? nominal, kelvin)) + byFlaw;
  };
}
