import { interpolated } from '../cleaning/resample';
import type { BurnSamples } from './burn-samples';

/** Typical lag of one channel behind the other, s: engineering practice, no published source. */
export const typicalLag = 0.001;

const maxDeviations = 3;
const steps = 6;
const minMeans = 20;
const parameters = 4;

/**
 * Kernel: shifts thrust in time so that it fits pressure on one line best, weighted by the probability of the lag: a
 * logger reads its channels in turn, and amplifiers lag. Where the valid samples only rise or only fall, next to
 * nothing is shifted.
 */
export function alignToLine(
  samples: BurnSamples,
  lineOf: (
    samples: BurnSamples,
  ) => { readonly scatter: number; readonly residuals: Float64Array } | undefined,
): BurnSamples {
  const { time, thrust } = samples;
  const spacing = (time[time.length - 1] - time[0]) / Math.max(1, time.length - 1);
  const usual = Math.hypot(typicalLag, spacing);
  const moved = (lag: number): BurnSamples =>
    lag === 0
      ? samples
      : {
          ...samples,
          thrust: interpolated(
            time,
            thrust,
            time.map((t) => t + lag),
          ),
        };
  const unlikeliness = (lag: number): number => {
    const line = lineOf(moved(lag));
    if (line === undefined) return Number.POSITIVE_INFINITY;
    return 2 * (line.residuals.length - parameters) * Math.log(line.scatter) + (lag / usual) ** 2;
  };
  const asRead = lineOf(samples);
  if (asRead === undefined || asRead.residuals.length < minMeans) return samples;
  let best = 0;
  let least = unlikeliness(0);
  // Whole samples only: interpolation averages the noise, which alone would reduce the scatter.
  const stride = spacing * Math.max(1, Math.round((maxDeviations * usual) / (steps * spacing)));
  const reach = Math.floor((maxDeviations * usual) / stride);
  for (let k = -reach; k <= reach; k++) {
    const lag = stride * k;
    const found = k === 0 ? least : unlikeliness(lag);
    // A small reduction of the scatter is coincidental.
    if (found < least - (best === 0 ? 8 : 0)) {
      best = lag;
      least = found;
    }
  }
  return moved(best);
}
