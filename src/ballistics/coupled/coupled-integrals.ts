// What is kept of a coupled run: integrals, peaks, and how it ended.
import { thrustAt } from '../simulation/chamber-nozzle';
import { runMass } from '../simulation/mass-error';
import { throatOpening } from '../transient/throat-opening';
import { type CoupledResult, mostLostInPort } from './coupled-model';
import type { CoupledRecorder, CoupledRun, CoupledState } from './coupled-state';
import { coolDown } from './coupled-tail-off';
import { gammaStep } from './tr-bdf2';

// Weights of a quadrature through the start of a step, its middle stage and its end: exact for a parabola.
const middleWeight = 1 / (6 * gammaStep * (1 - gammaStep));
const endWeight = 0.5 - gammaStep * middleWeight;
const startWeight = 1 - middleWeight - endWeight;

/** Adds a step to the integrals and notes the peaks; without a middle stage by the rule of Euler's step. */
export function addStep(
  run: CoupledRun,
  result: CoupledResult,
  start: CoupledState,
  h: number,
  middle?: CoupledState,
): void {
  const { state, model, workspace: w } = run;
  const { motor: m } = model;
  const over = (of: (at: CoupledState) => number): number =>
    middle === undefined
      ? h * of(state)
      : h * (startWeight * of(start) + middleWeight * of(middle) + endWeight * of(state));
  // A blocked throat gives the thrust of the area that is left; a step ends where that changes.
  const opening = throatOpening(m, start.time);
  const thrust = (at: CoupledState): number => opening * thrustAt(m, w, at.stagnation, at.throatRadius);
  result.totalImpulse += over(thrust);
  result.pressureIntegral += over((at) => at.stagnation);
  result.massThroughNozzle += over((at) => at.flow);
  result.peakThrust = Math.max(result.peakThrust, thrust(state));
  if (state.stagnation > result.peakPressure) {
    result.peakPressure = state.stagnation;
    result.peakTime = state.time;
  }
  if (state.headPressure > result.peakHeadPressure) {
    result.peakHeadPressure = state.headPressure;
    result.peakHeadTime = state.time;
  }
  // A top between two ends of steps, by the cubic through both.
  if (start.stagnation > 0 && start.headSlope > 0 && state.headSlope < 0) {
    const at = topOf(start.headPressure, start.headSlope * h, state.headPressure, state.headSlope * h);
    const top = cubic(start.headPressure, start.headSlope * h, state.headPressure, state.headSlope * h, at);
    if (top > result.peakHeadPressure) {
      const ratio = state.stagnation / state.headPressure;
      result.peakHeadPressure = top;
      result.peakHeadTime = start.time + at * h;
      if (top * ratio > result.peakPressure) {
        result.peakPressure = top * ratio;
        result.peakTime = start.time + at * h;
      }
    }
  }
}

/** Cubic through two values and slopes at 0 and 1. */
export const cubic = (a: number, da: number, b: number, db: number, u: number): number => {
  const v = 1 - u;
  return v * v * ((1 + 2 * u) * a + u * da) + u * u * ((3 - 2 * u) * b - v * db);
};

/** Where that cubic has its top. */
function topOf(a: number, da: number, b: number, db: number): number {
  let [low, high] = [0, 1];
  for (let i = 0; i < 30; i++) {
    const u = 0.5 * (low + high);
    const slope = (cubic(a, da, b, db, u + 1e-5) - cubic(a, da, b, db, u - 1e-5)) / 2e-5;
    if (slope > 0) low = u;
    else high = u;
  }
  return 0.5 * (low + high);
}

/** Records the state; true where the run ends with it. */
export function finish(
  run: CoupledRun,
  result: CoupledResult,
  start: CoupledState,
  firstVolume: number,
  recorder: CoupledRecorder | undefined,
): boolean {
  const { state, model, march, path, workspace: w } = run;
  const { motor: m } = model;
  const share = state.volume / firstVolume;
  if (share < 0.95 && share > 0.05)
    for (let c = 0; c < path.cells.count; c++) {
      if (!(path.cells.burning[c] > 0)) continue;
      result.minBurnPressure = Math.min(result.minBurnPressure, march.pressure[c]);
      result.maxBurnPressure = Math.max(result.maxBurnPressure, march.pressure[c]);
    }
  recorder?.(run);
  const burnedOut = !(state.area > 0) && state.volume <= 1e-9 * firstVolume;
  if (burnedOut && Number.isNaN(result.burnoutTime)) {
    result.burnoutTime = state.time;
    result.burnoutPressure = state.stagnation;
  }
  if (state.headPressure >= m.pressureLimit) result.end = 'pressure limit';
  else if (burnedOut && !w.flowing) result.end = 'closure held';
  else if (state.stagnation <= m.stopPressure && burnedOut) result.end = 'burned out';
  else if (m.stopsBurning && state.stagnation <= m.stopPressure && start.stagnation > m.stopPressure)
    result.end = 'stop pressure';
  else if (burnedOut && m.tailOff.law !== 'isothermal') {
    coolDown(run, result, recorder);
    closeRun(run, result, result.endGasEnergy);
    return true;
  } else if (state.time >= m.timeLimit * (1 - 1e-12)) result.end = 'time limit';
  else if (state.throatRadius < 1e-3 * m.throatRadius) result.end = 'throat closed';
  else return false;
  closeRun(run, result);
  return true;
}

/** Writes the end of a run into its result. */
export function closeRun(
  { state, model }: CoupledRun,
  result: CoupledResult,
  gasEnergy = model.motor.gasEnergy,
): void {
  result.endTime = state.time;
  result.endPressure = state.stagnation > 0 ? state.stagnation : state.headPressure;
  result.endHeadPressure = state.headPressure;
  result.endVolume = state.volume;
  result.endThroatRadius = state.throatRadius;
  result.endGasEnergy = gasEnergy;
  const { burned, igniter, atStart, atEnd } = runMass(model.motor, result, state.volume);
  result.massError =
    (burned + igniter + atStart - atEnd - result.massThroughNozzle) / (burned + igniter + atStart);
  if (!(Math.abs(result.massError) <= mostLostInPort)) result.end = 'not converged';
}
