import type { RestingTrace } from '../analysis/analysed-trace';
import { movingMean } from '../cleaning/moving-average';
import type { Clipping } from './clipping';
import { typicalLag } from './lag';
import { fitLevelLine, type LevelLine, type LevelLinePriors } from './level-line';
import { type PairedMeans, pairedMeans } from './paired-means';

export interface SoftLimit {
  readonly channel: 'pressure' | 'thrust';
  /** It bends over below its limit; otherwise it is cut at once. */
  readonly gradual: boolean;
  readonly clipping: Clipping;
}

const levels = 24;
/** Below an eighth of the driver's peak the nozzle does not flow full. */
const lowest = 3;
const fewestMeans = 5;
const fewestLevels = 2;
const fewestSamples = 40;

/**
 * Kernel: finds the channel that stops following the other towards its top, as an amplifier near its rail does. Thrust
 * goes with pressure along a straight line; where the upper part bends away from the line of the part below by
 * more than its scatter and by over 3 %, the channel that falls short is the one that is limited. A fit with a bend at each
 * level in turn uses all samples, so that few below the bend are enough.
 */
export function findSoftLimit(pressure: RestingTrace, thrust: RestingTrace): SoftLimit | undefined {
  const ambient = pressure.rest;
  // Thrust at no gauge pressure is (C_F − ε)·p_a·A_t: two ambient pressures' worth, one to four for usual nozzles.
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

/** Whether `limited` falls short of its line on `driver` where `driver` is high. */
function bend(
  driver: RestingTrace,
  limited: RestingTrace,
  constantOf: (slope: number) => readonly [number, number],
): (Omit<SoftLimit, 'channel'> & { readonly significance: number }) | undefined {
  const { time } = driver.trace;
  const rough = driver.trace.edges(0.1, driver.rest);
  if (rough.last - rough.first + 1 < fewestSamples) return undefined;
  const length = rough.end - rough.start;
  const means = pairedMeans(driver, limited, rough);
  // Sorted by a noisy driver, the highest means are its luck and the other channel seems to fall short of them.
  const height = movingMean(means.driver, 5 + Math.round((2 * means.jitter * means.from.length) / length));
  const most = height.reduce((a, b) => Math.max(a, b));
  const steps = byLevel(means, height, most);
  if (steps.length < 2 * fewestLevels) return undefined;
  const yMost = steps.reduce((top, { y }) => Math.max(top, y), 0);
  const [constant, deviation] = constantOf(yMost / most);
  const priors: LevelLinePriors = {
    // A zero that drifts shifts the line, too.
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
  // A channel that is read more seldom than the stamps say shares its noise among neighbours.
  const enough = means.jitter > 0 ? 5 : worst < 0.06 ? 3 : 2;
  // Slack in the stand, or clocks apart: then the two have not kept to one line from the start.
  const late = Math.abs(limited.trace.edges(0.1, limited.rest).start - rough.start) / length;
  if (worst < 0.03 + luck + late || line.missing < 0.12 || significance < enough) return undefined;
  // What still comes through of a rise of the other channel, over the last third of what is short.
  const third = Math.min(top - 1, Math.floor(step + (2 * (top - step)) / 3));
  const passed = (steps[top].y - steps[third].y) / (meant[top] - meant[third]);
  // A stream that leaves the wall bends the line gently and low, until the nozzle flows full: no channel's limit does both.
  if (passed > 0.75 && steps[step].x < 0.5 * steps[top].x) return undefined;
  const certain = worst > 0.04 && significance > 4 && passed < 0.6;
  // Cut at once, a mean across the corner lacks an eighth of a step.
  const spacing = (meant[top] - meant[0]) / top;
  const gradual = steps.some(
    ({ y, members }, k) =>
      Math.min(meant[k], yMost) - y > 0.25 * spacing + (3 * line.noise) / Math.sqrt(members.length),
  );
  const to = straightUpTo(means, steps, step, priors);
  // The line bears a little of the bend: what is believed ends well below where it shows, if enough is left to fit.
  const lower = steps.slice(0, Math.max(1, to - 2)).reduce((sum, { members }) => sum + members.length, 0);
  const believed = steps[gradual && to > 3 && lower >= fewestMeans ? to - 3 : to - 1];
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

/** The level above which least comes through, by the fit that leaves least over; undefined where none falls short. */
function kneeOf(
  means: PairedMeans,
  steps: readonly Level[],
  height: Float64Array,
  priors: LevelLinePriors,
): { readonly line: LevelLine; readonly step: number } | undefined {
  const members = steps.flatMap((each) => each.members);
  let best: { readonly line: LevelLine; readonly step: number } | undefined;
  for (let step = fewestLevels; step <= steps.length - 1; step++) {
    const level = (steps[step - 1].x + steps[step].x) / 2;
    const line = fitLevelLine(means, members, priors, { level, height });
    if (line && line.missing > 0 && (best === undefined || line.misfit < best.line.misfit))
      best = { line, step };
  }
  return best;
}

/** The means by the height of the driver, from below. */
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

/** How many levels from below keep to one line, of at most so many. */
function straightUpTo(
  means: PairedMeans,
  steps: readonly Level[],
  most: number,
  priors: LevelLinePriors,
): number {
  for (let to = most; to > fewestLevels; to--) {
    const members = steps.slice(0, to).flatMap((each) => each.members);
    if (members.length < fewestMeans) break;
    const line = fitLevelLine(means, members, priors);
    if (line === undefined) continue;
    const height = steps[to - 1].y;
    const fits = steps.slice(0, to).every(({ members: each, y }) => {
      const meant = each.reduce((sum, k) => sum + line.meant[k], 0) / each.length;
      return Math.abs(y - meant) <= Math.max(0.006 * height, (2.5 * line.noise) / Math.sqrt(each.length));
    });
    if (fits) return to;
  }
  return fewestLevels;
}
