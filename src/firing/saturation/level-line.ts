import { linearFit } from '../../numerics';
import type { PairedMeans } from './paired-means';

/** One channel as a linear function of the other, and its reduced slope above some level. */
export interface LevelLine {
  /** Value of the limited channel at each mean without the limit, above rest. */
  readonly meant: Float64Array;
  /** Standard deviation of a mean about the line. */
  readonly noise: number;
  /** Sum of weighted squares, priors included. */
  readonly misfit: number;
  /** Fraction of the rise of the driver that is missing above the level, and its standard deviation. */
  readonly missing: number;
  readonly missingDeviation: number;
}

/** Prior knowledge, as normal distributions. */
export interface LevelLinePriors {
  /** Limited channel with the driver at rest: mean and standard deviation. */
  readonly constant: readonly [number, number];
  /** Standard deviation of the relative change of slope over the burn. */
  readonly growth: number;
  /** Standard deviation of the lag between the channels, s. */
  readonly lag: number;
}

/**
 * Kernel: fits limited = constant + slope·(driver·(1 + growth·(share − ½)) + lag·d(driver)/dt − missing·max(0, height −
 * level)) to some of the means, so that neither throat erosion nor a lag is mistaken for a limit. Undefined where it
 * does not rise. `height` is the driver without noise, since noise would curve the line.
 */
export function fitLevelLine(
  means: PairedMeans,
  members: readonly number[],
  priors: LevelLinePriors,
  above?: { readonly level: number; readonly height: Float64Array },
): LevelLine | undefined {
  const { driver, limited, change, share, driverNoise, limitedNoise, jitter } = means;
  const n = members.length;
  const most = driver.reduce((a, b) => Math.max(a, b));
  let slope = limited.reduce((a, b) => Math.max(a, b)) / most;
  const row = (k: number): readonly number[] => [
    1,
    driver[k],
    slope * driver[k] * (share[k] - 0.5),
    slope * change[k],
    ...(above ? [-slope * Math.max(0, above.height[k] - above.level)] : []),
  ];
  const [constant, deviation] = priors.constant;
  // Weights of the priors; the slope is free, and the missing fraction nearly so.
  const known = [1 / deviation, 0, 1 / priors.growth, 1 / priors.lag, ...(above ? [0.1] : [])];
  const extra = known.flatMap((weight, j) => (weight > 0 ? [j] : []));
  let noise = 0;
  let fit: ReturnType<typeof linearFit> | undefined;
  for (let round = 0; round < 3; round++) {
    noise = Math.hypot(limitedNoise, slope * driverNoise, 1e-3 * slope * most);
    const rows = members.map(row);
    const errors = members.map((k) => Math.hypot(noise, slope * change[k] * jitter));
    fit = linearFit({
      columns: known.map((weight, j) => [
        ...rows.map((each, i) => each[j] / errors[i]),
        ...extra.map((e) => (e === j ? weight : 0)),
      ]),
      observations: [
        ...members.map((k, i) => limited[k] / errors[i]),
        ...extra.map((e) => (e === 0 ? constant / deviation : 0)),
      ],
      scatter: 'known',
    });
    if (!(fit.coefficients[1] > 0)) return undefined;
    slope = fit.coefficients[1];
  }
  if (fit === undefined) return undefined;
  const { coefficients, covariance, residuals } = fit;
  const misfit = residuals.reduce((sum, r) => sum + r * r, 0);
  const scale = Math.max(1, Math.sqrt(misfit / Math.max(1, n - 2)));
  const size = known.length;
  const meant = new Float64Array(driver.length);
  for (let k = 0; k < driver.length; k++) {
    const of = row(k);
    for (let j = 0; j < 4; j++) meant[k] += of[j] * coefficients[j];
  }
  return {
    meant,
    noise: scale * noise,
    misfit,
    missing: above ? coefficients[4] : 0,
    missingDeviation: above ? scale * Math.sqrt(Math.max(0, covariance[size * size - 1])) : 0,
  };
}
