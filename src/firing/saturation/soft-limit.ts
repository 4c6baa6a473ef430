import type { RestingTrace } from '../analysis/analysed-trace';
import { movingMean } from '../cleaning/moving-average';
import type { Clipping } from './clipping';
import { typicalLag } from './lag';
import { fitLevelLine, type LevelLine, type LevelLinePriors } from './level-line';
import { type PairedMeans, pairedMeans } from './paired-means';

export interface SoftLimit {
  readonly channel: 'pressure' | 'thrust';
  /** True for a soft limit, below which the channel compresses; false for hard clipping. */
  readonly gradual: boolean;
  readonly clipping: Clipping;
}

const levels = 24;
/** Below one eighth of the peak of the driver the nozzle does not flow full. */
const lowest = 3;
const minMeans = 5;
const minLevels = 2;
const minSamples = 40;

/**
 * Kernel: finds the channel that stops following the other towards its top, as an amplifier near its supply rail does.
 * Thrust is a linear function of pressure. Where the upper part departs from the line of the part below by more than
 * its scatter and by more than 3 %, the lower channel is the limited one. The fit with a bend is repeated at each level
 * with all samples, so that few samples below the bend are sufficient.
 */
export function findSoftLimit(pressure: RestingTrace, thrust: RestingTrace): SoftLimit | undefined {
  const ambient = pressure.rest;
  // Thrust at zero gauge pressure is (C_F − ε)·p_a·A_t: about two ambient pressures times the slope, one to four for
  // usual nozzles.
  const thrustLimited = bend(pressure, thrust, (slope) => [-2.1 * ambient * slope, 1.9 * ambient * slope]);
  const pressureLimited = bend(thrust, pressure, () => [2.1 * ambient, 1.9 * ambient]);
  if (thrustLimited && !(pressureLimited && pressureLimited.significance > thrustLimited.significance))
    return { channel: 'thrust', ...thrustLimited };
  if (pressureLimited) return { channel: 'pressure', ...pressureLimited };
  return undefined;
}

interface Level {
  readonly members: readonly number[];
  readonly x: number;
  readonly y: number;
}

/** Whether `limited` is below its line on `driver` where `driver` is high. */
function bend(
  driver: RestingTrace,
  limited: RestingTrace,
  constantOf: (slope: number) => readonly [number, number],
): (Omit<SoftLimit, 'channel'> & { readonly significance: number }) | undefined {
  const { time } = driver.trace;
  const rough = driver.trace.edges(0.1, driver.rest);
  if (rough.last - rough.first + 1 < minSamples) return undefined;
  const length = rough.end - rough.start;
  const means = pairedMeans(driver, limited, rough);
  // When sorted by a noisy driver, the highest means are high by chance, and the other channel appears low.
  const height = movingMean(means.driver, 5 + Math.round((2 * means.jitter * means.from.length) / length));
  const most = height.reduce((a, b) => Math.max(a, b));
  const steps = byLevel(means, height, most);
  if (steps.length < 2 * minLevels) return undefined;
  const yMost = steps.reduce((top, { y }) => Math.max(top, y), 0);
  const [constant, deviation] = constantOf(yMost / most);
  const priors: LevelLinePriors = {
    // A drifting zero shifts the line as well.
    constant: [constant, Math.hypot(deviation, 0.015 * yMost)],
    growth: 0.1,
    lag: Math.hypot(typicalLag, means.period),
  };
  const found = kneeOf(means, steps, height, priors);
  if (found === undefined) return undefined;
  const { line, step } = found;
  const top = steps.length - 1;
  const meanOf = (values: Float64Array, { members }: Level): number =>
    members.reduce((sum, k) => sum + values[k], 0) / members.length;
  const meant = steps.map((each) => meanOf(line.meant, each));
  const worst = 1 - steps[top].y / meant[top];
  const significance = line.missing / line.missingDeviation;
  const luck = means.driverNoise / steps[top].x;
  // A channel with fewer readings than time stamps shares its noise among neighbours.
  const enough = means.jitter > 0 ? 5 : worst < 0.06 ? 3 : 2;
  // With slack in the stand, or different clocks, the two do not follow one line from the start.
  const late = Math.abs(limited.trace.edges(0.1, limited.rest).start - rough.start) / length;
  if (worst < 0.03 + luck + late || line.missing < 0.12 || significance < enough) return undefined;
  // Remaining slope against the other channel, over the upper third of the limited part.
  const third = Math.min(top - 1, Math.floor(step + (2 * (top - step)) / 3));
  const passed = (steps[top].y - steps[third].y) / (meant[top] - meant[third]);
  // Flow separated from the nozzle wall bends the line gradually and at low pressure, until the nozzle flows full. The
  // limit of a channel does not do both.
  if (passed > 0.75 && steps[step].x < 0.5 * steps[top].x) return undefined;
  const certain = worst > 0.04 && significance > 4 && passed < 0.6;
  // With hard clipping, a mean across the corner is low by one eighth of a step.
  const spacing = (meant[top] - meant[0]) / top;
  const gradual = steps.some(
    ({ y, members }, k) =>
      Math.min(meant[k], yMost) - y > 0.25 * spacing + (3 * line.noise) / Math.sqrt(members.length),
  );
  const to = straightUpTo(means, steps, step, priors);
  // The line follows the bend a little. The valid part therefore ends well below the visible bend, if enough samples
  // remain.
  const lower = steps.slice(0, Math.max(1, to - 2)).reduce((sum, { members }) => sum + members.length, 0);
  const believed = steps[gradual && to > 3 && lower >= minMeans ? to - 3 : to - 1];
  let first = -1;
  let last = -1;
  for (let k = 0; k < height.length; k++)
    if (height[k] >= believed.x) {
      if (first < 0) first = means.from[k];
      last = means.from[k + 1] - 1;
    }
  if (first < 0) return undefined;
  const span = { from: time[first], to: time[last], first, last, samples: last - first + 1 };
  return {
    significance,
    gradual,
    clipping: {
      evidence: 'soft limit',
      level: (certain ? yMost : steps[to - 1].y) + limited.rest,
      spans: [span],
      certain,
    },
  };
}

/**
 * The level above which the slope is reduced, from the fit with the smallest misfit; undefined where it is reduced
 * nowhere.
 */
function kneeOf(
  means: PairedMeans,
  steps: readonly Level[],
  height: Float64Array,
  priors: LevelLinePriors,
): { readonly line: LevelLine; readonly step: number } | undefined {
  const members = steps.flatMap((each) => each.members);
  let best: { readonly line: LevelLine; readonly step: number } | undefined;
  for (let step = minLevels; step <= steps.length - 1; step++) {
    const level = (steps[step - 1].x + steps[step].x) / 2;
    const line = fitLevelLine(means, members, priors, { level, height });
    if (line && line.missing > 0 && (best === undefined || line.misfit < best.line.misfit))
      best = { line, step };
  }
  return best;
}

/** The means grouped by the height of the driver, from below. */
function byLevel(means: PairedMeans, height: Float64Array, most: number): readonly Level[] {
  const members: number[][] = Array.from({ length: levels }, () => []);
  for (let k = 0; k < height.length; k++)
    members[Math.min(levels - 1, Math.max(0, Math.floor((levels * height[k]) / most)))].push(k);
  const mean = (values: Float64Array, each: readonly number[]): number =>
    each.reduce((sum, k) => sum + values[k], 0) / each.length;
  return members
    .slice(lowest)
    .filter((each) => each.length > 0)
    .map((each) => ({ members: each, x: mean(means.driver, each), y: mean(means.limited, each) }));
}

/** Number of levels, from below, that fit one line; at most `most`. */
function straightUpTo(
  means: PairedMeans,
  steps: readonly Level[],
  most: number,
  priors: LevelLinePriors,
): number {
  for (let to = most; to > minLevels; to--) {
    const members = steps.slice(0, to).flatMap((each) => each.members);
    if (members.length < minMeans) break;
    const line = fitLevelLine(means, members, priors);
    if (line === undefined) continue;
    const height = steps[to - 1].y;
    const fits = steps.slice(0, to).every(({ members: each, y }) => {
      const meant = each.reduce((sum, k) => sum + line.meant[k], 0) / each.length;
      return Math.abs(y - meant) <= Math.max(0.006 * height, (2.5 * line.noise) / Math.sqrt(each.length));
    });
    if (fits) return to;
  }
  return minLevels;
}
