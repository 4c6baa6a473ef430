import { linearFit } from '../../numerics';
import { burnEdges } from '../cleaning/burn-edges';
import { movingMean } from '../cleaning/moving-average';
import type { Clipping } from './clipping';

export interface SoftLimit {
  readonly channel: 'pressure' | 'thrust';
  /** It bends over below its limit; otherwise it is cut at once. */
  readonly gradual: boolean;
  readonly clipping: Clipping;
}

const mostBins = 24;
const fewestBins = 10;
const samplesInBin = 4;

/**
 * Kernel: finds the channel that stops following the other towards its top, as an amplifier near its rail does. Thrust
 * goes with pressure along a straight line; where the upper part bends away from the line of the part below by
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
    return { channel: 'thrust', ...thrustLimited };
  if (pressureLimited) return { channel: 'pressure', ...pressureLimited };
  return undefined;
}

/** Whether `limited` falls short of its line on `driver` where `driver` is high. */
function bend(
  time: Float64Array,
  driver: Float64Array,
  limited: Float64Array,
  driverRest: number,
  limitedRest: number,
): (Omit<SoftLimit, 'channel'> & { readonly short: number }) | undefined {
  const rough = burnEdges(time, driver, { threshold: 0.1, rest: driverRest });
  // Sorted by a noisy driver, the highest means are its luck and the other channel seems to fall short of them.
  const width = Math.max(1, Math.floor((rough.last - rough.first + 1) / smoothed));
  const quiet = { driver: movingMean(driver, width), limited: movingMean(limited, width) };
  const edges = burnEdges(time, quiet.driver, { threshold: 0.1, rest: driverRest });
  const { x, y, error } = meansByDriver(quiet.driver, quiet.limited, { ...edges, driverRest, limitedRest });
  const knee = straightUpTo(x, y, error);
  if (knee === undefined) return undefined;
  const { to, constant, slope, deviation, believed } = knee;
  const short = x.slice(to).map((value, i) => 1 - y[to + i] / (constant + slope * value));
  const worst = short[short.length - 1];
  const top = x.length - 1;
  const growing = short.every(
    (value, i) => i === 0 || value >= short[i - 1] - 0.01 - (2 * error[to + i]) / y[to + i],
  );
  const doubt = Math.max(6 * deviation, 2.5 * believed) / (constant + slope * x[top]);
  if (!growing || worst < 0.03 || worst < doubt) return undefined;
  const driverLevel = x[to - 1] + driverRest;
  let first = -1;
  let last = -1;
  for (let i = edges.first; i <= edges.last; i++)
    if (quiet.driver[i] >= driverLevel) {
      if (first < 0) first = i;
      last = i;
    }
  if (first < 0) return undefined;
  const span = { from: time[first], to: time[last], first, last, samples: last - first + 1 };
  // What still comes through of a rise of the other channel, over the last third of what is short.
  const third = Math.min(top - 1, Math.floor(to + (2 * (top - to)) / 3));
  const passed = (y[top] - y[third]) / (slope * (x[top] - x[third]));
  // A throat that grows moves thrust against pressure by some per cent, and does not hold either at a level.
  const certain = worst > 0.1 && passed < 0.5;
  const most = y.reduce((a, b) => Math.max(a, b));
  const level = certain ? most : y[to - 1];
  // Cut at once, a mean across the corner lacks an eighth of a step.
  const spacing = slope * ((x[top] - x[0]) / top);
  const gradual = y.some(
    (value, k) => Math.min(constant + slope * x[k], most) - value > 0.25 * spacing + 3 * error[k],
  );
  return {
    short: worst,
    gradual,
    clipping: { evidence: 'soft limit', level: level + limitedRest, spans: [span], certain },
  };
}

const smoothed = 100; // means over the burn

interface Means {
  readonly x: readonly number[];
  readonly y: readonly number[];
  /** Standard error of each mean of y. */
  readonly error: readonly number[];
}

/** Means of both channels by the height of the driver, above rest. */
function meansByDriver(
  driver: Float64Array,
  limited: Float64Array,
  of: {
    readonly first: number;
    readonly last: number;
    readonly peak: number;
    readonly driverRest: number;
    readonly limitedRest: number;
  },
): Means {
  const { first, last, peak, driverRest, limitedRest } = of;
  const bins = Math.min(mostBins, Math.floor((last - first + 1) / samplesInBin));
  if (bins < fewestBins) return { x: [], y: [], error: [] };
  const members: number[][] = Array.from({ length: bins }, () => []);
  for (let i = first; i <= last; i++)
    members[Math.min(bins - 1, Math.max(0, Math.floor((bins * (driver[i] - driverRest)) / peak)))].push(i);
  const full = members.filter((each, k) => k >= Math.floor(0.12 * bins) && each.length >= 1);
  const mean = (values: Float64Array, rest: number) => (each: readonly number[]) =>
    each.reduce((sum, i) => sum + values[i] - rest, 0) / each.length;
  const x = full.map(mean(driver, driverRest));
  const y = full.map(mean(limited, limitedRest));
  const squares = (each: readonly number[], k: number): number =>
    each.reduce((sum, i) => sum + (limited[i] - limitedRest - y[k]) ** 2, 0);
  // Few samples do not tell their own scatter: that of all of them is taken.
  const freedom = full.reduce((sum, each) => sum + each.length - 1, 0);
  const common = Math.sqrt(full.reduce((sum, each, k) => sum + squares(each, k), 0) / Math.max(1, freedom));
  const spread = (each: readonly number[], k: number): number =>
    each.length < 4
      ? common / Math.sqrt(each.length)
      : Math.sqrt(squares(each, k) / (each.length * (each.length - 1)));
  return { x, y, error: full.map(spread) };
}

interface Straight {
  /** Means on the line, counted from below. */
  readonly to: number;
  readonly constant: number;
  readonly slope: number;
  /** Standard deviation of the line at the top, by its own scatter and by the errors of the means. */
  readonly deviation: number;
  readonly believed: number;
}

/** The longest run of means from below that keep to one straight line, with two or more above it. */
function straightUpTo(
  x: readonly number[],
  y: readonly number[],
  error: readonly number[],
): Straight | undefined {
  for (let to = x.length - 2; to >= fewestOnLine; to--) {
    const { coefficients, covariance, residuals, scale } = linearFit({
      columns: [x.slice(0, to).map(() => 1), x.slice(0, to)],
      observations: y.slice(0, to),
    });
    const [constant, slope] = coefficients;
    if (!(slope > 0)) continue;
    const height = constant + slope * x[to - 1];
    if (!residuals.every((r, i) => Math.abs(r) <= Math.max(0.006 * height, 2.5 * error[i]))) continue;
    const top = x[x.length - 1];
    const variance = covariance[0] + 2 * top * covariance[1] + top * top * covariance[3];
    // Few means may lie on a line by luck: no less than their own errors is believed.
    const least = Math.sqrt(error.slice(0, to).reduce((sum, e) => sum + e * e, 0) / to);
    const deviation = Math.sqrt(Math.max(0, variance));
    const believed = deviation * Math.max(1, least / Math.max(scale, 1e-12 * height));
    return { to, constant, slope, deviation, believed };
  }
  return undefined;
}
const fewestOnLine = 4;
