import { linearFit } from '../../numerics';
import { burnEdges } from '../cleaning/burn-edges';
import type { Clipping } from './clipping';

export interface SoftLimit {
  readonly channel: 'pressure' | 'thrust';
  readonly clipping: Clipping;
}

const bins = 24;

/**
 * Kernel: finds the channel that stops following the other towards its top, as an amplifier near its rail does. Thrust
 * goes with pressure along a straight line; where the upper part bends away from the line of the middle part by
 * more than its scatter and by over 3 %, the channel that falls short is the one that is limited.
 */
export function findSoftLimit(
  time: Float64Array,
  pressure: Float64Array,
  thrust: Float64Array,
  ambient: number,
): SoftLimit | undefined {
  const thrustLimited = bend(time, pressure, thrust, ambient, 0);
  const pressureLimited = bend(time, thrust, pressure, 0, ambient);
  if (thrustLimited && (!pressureLimited || thrustLimited.short > pressureLimited.short))
    return { channel: 'thrust', clipping: thrustLimited.clipping };
  if (pressureLimited) return { channel: 'pressure', clipping: pressureLimited.clipping };
  return undefined;
}

/** Whether `limited` falls short of its line on `driver` where `driver` is high. */
function bend(
  time: Float64Array,
  driver: Float64Array,
  limited: Float64Array,
  driverRest: number,
  limitedRest: number,
): { readonly short: number; readonly clipping: Clipping } | undefined {
  const edges = burnEdges(time, driver, { threshold: 0.1, rest: driverRest });
  if (edges.last - edges.first < 4 * bins) return undefined;
  const xSum = new Float64Array(bins);
  const ySum = new Float64Array(bins);
  const count = new Float64Array(bins);
  for (let i = edges.first; i <= edges.last; i++) {
    const k = Math.min(bins - 1, Math.floor((bins * (driver[i] - driverRest)) / edges.peak));
    xSum[k] += driver[i] - driverRest;
    ySum[k] += limited[i] - limitedRest;
    count[k]++;
  }
  const x: number[] = [];
  const y: number[] = [];
  for (let k = Math.floor(0.2 * bins); k < bins; k++)
    if (count[k] >= 3) {
      x.push(xSum[k] / count[k]);
      y.push(ySum[k] / count[k]);
    }
  // The line is that of the middle of the range; the top is what is asked about.
  const split = x.findIndex((value) => value > 0.62 * edges.peak);
  if (split < 4 || x.length - split < 4) return undefined;
  const fit = linearFit({
    columns: [x.slice(0, split).map(() => 1), x.slice(0, split)],
    observations: y.slice(0, split),
  });
  const [constant, slope] = fit.coefficients;
  if (!(slope > 0)) return undefined;
  const short = x.slice(split).map((value, i) => 1 - y[split + i] / (constant + slope * value));
  const worst = short[short.length - 1];
  const growing = short.every((value, i) => i === 0 || value >= short[i - 1] - 0.005);
  const scatter = fit.scale / (constant + slope * edges.peak);
  if (!growing || worst < 0.03 || worst < 6 * scatter) return undefined;
  const from = short.findIndex((value) => value > Math.max(0.01, 3 * scatter));
  const level = y[split + Math.max(0, from)] + limitedRest;
  let first = -1;
  let last = -1;
  const driverLevel = x[split + Math.max(0, from)] + driverRest;
  for (let i = edges.first; i <= edges.last; i++)
    if (driver[i] >= driverLevel) {
      if (first < 0) first = i;
      last = i;
    }
  if (first < 0) return undefined;
  const span = { from: time[first], to: time[last], first, last, samples: last - first + 1 };
  return { short: worst, clipping: { evidence: 'soft limit', level, spans: [span], certain: false } };
}
