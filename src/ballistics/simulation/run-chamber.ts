// One firing from ignition to the end of the tail-off.

import { updateNozzle } from './chamber-nozzle';
import { anchorRate } from './chamber-rate';
import { beginRun, chamberJacobian, chamberSlopes } from './chamber-slopes';
import { attemptStep } from './chamber-step';
import { type ChamberWorkspace, Constant } from './chamber-workspace';
import { type Crossing, crossed, land } from './crossings';
import { massErrorOf, mostMassLost } from './mass-error';
import type { MotorModel, RunEnd } from './motor-model';
import { addStep, type RunRecorder } from './run-record';
import { clearResult, type RunResult } from './run-result';
import { nextChange, setSwitches } from './run-switches';
import { runTailOff } from './run-tail-off';

const mostSteps = 50_000;

/**
 * Runs a motor and fills `result`; plain numbers, unchecked. The same model gives the same bits.
 *
 * The step size keeps the estimated error of each step below `tolerance`. Times at which the equations change (end of
 * the igniter, surface ignited) are ends of steps; depths at which the burning area jumps, the opening of the closure, the limit
 * and the stop pressure are landed on by shortening the step until its end is there.
 */
export function runChamber(
  m: MotorModel,
  w: ChamberWorkspace,
  result: RunResult,
  recorder?: RunRecorder,
): void {
  attemptRun(m, w, result, recorder, 0);
  if (keepsMass(m, w, result)) return;
  // A chamber that smoulders has next to no excess over ambient pressure, of which the flow is the root.
  attemptRun(m, w, result, recorder, 1e-5 * m.ambientPressure);
  if (!keepsMass(m, w, result)) result.end = 'not converged';
}

/** Whether the run has come to an end with the mass it began with; writes the mass it lost into `result`. */
function keepsMass(m: MotorModel, w: ChamberWorkspace, result: RunResult): boolean {
  result.massError = massErrorOf(m, result, w.piece);
  return result.end !== 'not converged' && Math.abs(result.massError) <= mostMassLost;
}

function attemptRun(
  m: MotorModel,
  w: ChamberWorkspace,
  result: RunResult,
  recorder: RunRecorder | undefined,
  nearAmbient: number,
): void {
  clearResult(result);
  beginRun(m, w);
  w.constants[Constant.nearAmbient] = nearAmbient;
  w.piece = 0;
  w.interval = 0;
  w.burning = true;
  w.held = m.partialFraction < 1 && m.initialPressure < m.fullIgnitionPressure;
  w.flowing =
    m.nozzleClosureBurstPressure === 0 ||
    m.initialPressure - m.ambientPressure >= m.nozzleClosureBurstPressure;
  let t = 0;
  let p = m.initialPressure;
  let y = 0;
  let throat = m.throatRadius;
  let h = 0;
  let lastH = 0;
  let lnLastError = 0;
  let fresh = true;
  result.peakPressure = p;
  setSwitches(m, w, t, throat);
  recorder?.begin(m, w, t, p, y, throat);
  if (w.flowing && m.nozzleClosureBurstPressure > 0) recorder?.mark(m, w, 'closure', t, p, y, throat);
  let end: RunEnd | undefined;
  let timeEnd = 0;
  while (end === undefined) {
    if (fresh) {
      setSwitches(m, w, t, throat);
      timeEnd = nextChange(m, t);
    }
    w.point[0] = t;
    w.point[1] = p;
    w.point[2] = y;
    w.point[3] = throat;
    if (w.burning) anchorRate(m, w);
    chamberSlopes(m, w);
    const sp = w.slope[0];
    const { start } = w;
    start[0] = t;
    start[2] = p;
    start[3] = y;
    start[4] = throat;
    start[5] = sp;
    start[6] = w.slope[1];
    start[7] = w.slope[2];
    chamberJacobian(m, w);
    if (fresh) {
      h = firstStep(m, p, y, sp, start[6], timeEnd - t);
      lastH = 0;
      fresh = false;
    }
    // A disturbance that grows by more than its size in a step would be damped by the method, not followed.
    if (w.jacobian[0] * h > 1) h = 1 / w.jacobian[0];
    let made = false;
    for (let tries = 0; !made; tries++) {
      if (result.steps + result.rejected >= mostSteps || tries > 60) {
        end = 'not converged';
        break;
      }
      const toTime = t + h >= timeEnd - 1e-12 * timeEnd;
      const step = toTime ? timeEnd - t : h;
      start[1] = step;
      const finite = attemptStep(m, w);
      result.evaluations += 8;
      const error = finite && !closesFast(w) ? errorOf(m, w) : Number.POSITIVE_INFINITY;
      if (!(error <= 1)) {
        result.rejected++;
        h = step * Math.min(0.9, Math.max(0.2, 0.9 * Math.exp(-0.2 * Math.log(error))));
        lastH = 0;
        continue;
      }
      made = true;
      let taken = step;
      let crossing = crossed(m, w);
      if (crossing !== 'none') {
        const landed = land(m, w, result, crossing);
        if (landed === undefined) {
          end = 'not converged';
          break;
        }
        crossing = landed.crossing;
        taken = landed.step;
      }
      result.steps++;
      start[1] = taken;
      addStep(m, w, result, recorder);
      // Powers by their logarithms, one for all. An error of zero gives an infinite factor, which is limited below.
      const lnError = Math.log(error);
      let factor = 0.9 * Math.exp(-0.2 * lnError);
      // Predictive controller of Gustafsson (Hairer & Wanner II, 2nd ed. 1996, IV.8).
      if (lastH > 0)
        factor = Math.min(factor, 0.9 * (step / lastH) * Math.exp(0.2 * (lnLastError - 2 * lnError)));
      h = step * Math.min(6, Math.max(0.2, factor));
      lastH = step;
      lnLastError = Math.max(Math.log(1e-2), lnError);
      t = toTime && crossing === 'none' ? timeEnd : t + taken;
      p = w.next[0];
      y = w.next[1];
      throat = w.next[2];
      if (m.erosionRate !== 0) updateNozzle(m, w, throat);
      if (toTime || crossing !== 'none' || m.erosionRate !== 0) {
        fresh = toTime || crossing !== 'none';
        end = react(m, w, result, crossing, t, p, timeEnd, throat);
        recorder?.mark(m, w, crossing, t, p, y, throat);
      }
      if (end === undefined && !w.burning && m.tailOff.law !== 'isothermal') {
        runTailOff(m, w, result, t, p, y, throat, recorder);
        return;
      }
    }
  }
  result.end = end;
  result.endTime = t;
  result.endDepth = y;
  result.endPressure = p;
  result.endHeadPressure = p;
  result.endThroatRadius = throat;
  result.endGasEnergy = m.gasEnergy;
}

/** A first step over which pressure and depth change by about a hundredth. */
function firstStep(m: MotorModel, p: number, y: number, sp: number, sy: number, span: number): number {
  const byPressure = sp === 0 ? span : (0.01 * p) / Math.abs(sp);
  const byDepth = sy === 0 ? span : (0.01 * Math.max(m.table.burnout - y, 0.01 * m.table.burnout)) / sy;
  return Math.min(byPressure, byDepth, 0.1 * span);
}

function errorOf(m: MotorModel, w: ChamberWorkspace): number {
  const { next, error, start } = w;
  const p = start[2];
  const y = start[3];
  // Close to ambient the flow goes with the root of the difference: that is what must be right there.
  const top = Math.max(p, next[0]);
  const scale =
    top > w.constants[Constant.minChokedPressure] ? top : Math.max(top - m.ambientPressure, 1e-5 * top);
  const pressure = Math.abs(error[0]) / (m.tolerance * scale);
  const depth = Math.abs(error[1]) / (m.tolerance * Math.max(y, 0.1 * m.table.burnout));
  const radius = Math.abs(error[2]) / (m.tolerance * next[2]);
  return Math.max(pressure, depth, radius);
}

// A throat that halves in a step is near its end: pressure then goes to infinity or to nothing in no time.
const closesFast = ({ next, start, eroding }: ChamberWorkspace): boolean =>
  eroding && next[2] < 0.5 * start[4];

/** Changes the equations at a crossing; gives the end of the run where this is it. */
function react(
  m: MotorModel,
  w: ChamberWorkspace,
  result: RunResult,
  crossing: Crossing,
  t: number,
  p: number,
  timeEnd: number,
  throat: number,
): RunEnd | undefined {
  if (crossing === 'limit') return 'pressure limit';
  if (crossing === 'stop') return w.burning ? 'stop pressure' : 'burned out';
  if (crossing === 'closure') w.flowing = true;
  if (crossing === 'ignition') w.held = false;
  if (crossing === 'depth') {
    w.surface.fill(0);
    if (w.piece < m.table.pieceEnds.length - 1) w.piece++;
    else {
      w.burning = false;
      result.burnoutTime = t;
      result.burnoutPressure = p;
      if (!w.flowing) return 'closure held';
      if (p <= m.stopPressure) return 'burned out';
    }
  }
  if (t >= m.timeLimit && timeEnd === m.timeLimit) return 'time limit';
  return throat < 1e-3 * m.throatRadius ? 'throat closed' : undefined;
}
