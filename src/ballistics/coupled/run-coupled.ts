// One firing with the flow along its port: a quasi-steady port whose head pressure and local depths go with time.

import { portMarch } from '../port/port-march';
import { updateNozzle } from '../simulation/chamber-nozzle';
import { beginRun } from '../simulation/chamber-slopes';
import { chamberWorkspace } from '../simulation/chamber-workspace';
import { nextTransientTime } from '../transient/transient-times';
import { ColumnSum, columnPath, cutColumn } from './column-cells';
import { addStep, closeRun, finish } from './coupled-integrals';
import { type CoupledModel, type CoupledResult, coupledResult } from './coupled-model';
import { stage } from './coupled-stage';
import { type CoupledRecorder, type CoupledRun, type CoupledState, copyInto, stateOf } from './coupled-state';
import { bdfNew, bdfOld, bdfRate, errorFactor, gammaStep } from './tr-bdf2';

const mostSteps = 4000;
// Relative change of head pressure in a step of Euler's rule, whose error is of the order of its square.
const mostFirstChange = 1e-3;

/** Runs a motor with the flow along its port; plain numbers, unchecked. The same model gives the same bits. */
export function runCoupled(model: CoupledModel, recorder?: CoupledRecorder): CoupledResult {
  const { motor: m } = model;
  const result = coupledResult();
  const lengths = model.segments.reduce((end, { position, length }) => Math.max(end, position + length), 0);
  const path = columnPath(
    model.segments,
    model.stations,
    model.chamberArea,
    model.hasPlenum,
    0.5 * Math.max(0, m.chamberVolume - lengths * model.chamberArea),
  );
  const w = chamberWorkspace();
  beginRun(m, w);
  w.flowing =
    m.nozzleClosureBurstPressure === 0 ||
    m.initialPressure - m.ambientPressure >= m.nozzleClosureBurstPressure;
  const run: CoupledRun = {
    model,
    path,
    gas: {
      gamma: m.gamma,
      gasEnergy: m.gasEnergy,
      density: m.density,
      momentumFactor: model.momentumFactor,
      entranceLoss: model.entranceLoss,
      law: m.law,
      erosion: model.erosion,
      fillsBurnedVolume: true,
      settledWithin: 3e-7,
    },
    drive: {
      headPressure: 0,
      headPressureSlope: 0,
      headFlow: 0,
      headVolume: 0,
      ignited: 1,
      liftsChoked: false,
      steepness: 1,
    },
    march: portMarch(path.cells.length.length),
    workspace: w,
    state: stateOf(path.stateCount),
    curve: 0,
    held: m.partialFraction < 1 && m.initialPressure < m.fullIgnitionPressure,
  };
  const { state } = run;
  const start = stateOf(path.stateCount);
  const middle = stateOf(path.stateCount);
  const timeConstant =
    (m.chamberVolume * m.characteristicVelocity) / (m.gasEnergy * Math.PI * m.throatRadius ** 2);
  state.headPressure = m.initialPressure;
  state.throatRadius = m.throatRadius;
  cutColumn(path, state.depth);
  state.volume = path.sums[ColumnSum.volume];
  const firstVolume = state.volume;
  recorder?.(run);
  let fresh = true;
  let h = 1e-3 * timeConstant;
  while (true) {
    if (result.steps + result.rejected >= mostSteps) break;
    const until = nextChange(m, state.time);
    if (fresh) {
      // A backward Euler step forgets the slope before a jump of the equations.
      h = Math.min(h, 1e-2 * timeConstant);
      copyInto(state, start);
      const taken = Math.min(h, until - state.time);
      if (
        !stage(
          run,
          start,
          result,
          taken,
          { slope: 1 / taken, offset: -start.headPressure / taken },
          (i) => start.depth[i] + taken * start.rate[i],
          start.headPressure + taken * start.headSlope,
        )
      ) {
        copyInto(start, state);
        result.rejected++;
        h = 0.2 * taken;
        if (h < 1e-9 * timeConstant) break;
        continue;
      }
      const moved = Math.abs(state.headPressure / start.headPressure - 1);
      if (moved > mostFirstChange && taken > 1e-9 * timeConstant) {
        copyInto(start, state);
        result.rejected++;
        h = taken * Math.max(0.05, (0.5 * mostFirstChange) / moved);
        continue;
      }
      fresh = false;
      run.curve = 0;
      result.steps++;
      addStep(run, result, start, taken);
      if (finish(run, result, start, firstVolume, recorder)) return result;
      continue;
    }
    const toChange = state.time + h >= until - 1e-12 * until;
    const step = toChange ? until - state.time : h;
    copyInto(state, start);
    const error = attempt(run, start, middle, result, step, timeConstant);
    const overshoots =
      state.headPressure > 1.001 * m.pressureLimit ||
      (!w.flowing && state.headPressure - m.ambientPressure > 1.001 * m.nozzleClosureBurstPressure);
    if (!(error <= 1) || (overshoots && step > 1e-6 * timeConstant)) {
      copyInto(start, state);
      result.rejected++;
      h = step * (error <= 1 ? 0.5 : Math.max(0.2, Math.min(0.7, 0.9 * error ** (-1 / 3))));
      if (!(h > 1e-9 * timeConstant)) break;
      continue;
    }
    result.steps++;
    run.curve = (state.headSlope - start.headSlope) / step;
    h = step * Math.min(3, Math.max(0.3, 0.9 * Math.max(error, 1e-6) ** (-1 / 3)));
    addStep(run, result, start, step, middle);
    if (m.erosionRate !== 0) updateNozzle(m, w, state.throatRadius);
    if (!w.flowing && state.headPressure - m.ambientPressure >= m.nozzleClosureBurstPressure) {
      w.flowing = true;
      fresh = true;
    }
    if (run.held && state.headPressure >= m.fullIgnitionPressure) {
      run.held = false;
      fresh = true;
    }
    if (toChange) fresh = true;
    if (finish(run, result, start, firstVolume, recorder)) return result;
  }
  closeRun(run, result);
  return result;
}

/** Next time at which the equations change. */
function nextChange(m: CoupledModel['motor'], t: number): number {
  const next = nextTransientTime(m, t, m.timeLimit);
  return m.erosionRate !== 0 && m.erosionDelay > t && m.erosionDelay < next ? m.erosionDelay : next;
}

/** Tries a step; its error in units of what is allowed. The state is that at its end. */
function attempt(
  run: CoupledRun,
  start: CoupledState,
  middle: CoupledState,
  result: CoupledResult,
  h: number,
  timeConstant: number,
): number {
  const { state, model, path } = run;
  const { motor: m } = model;
  const n = path.stateCount;
  const first = gammaStep * h;
  state.throatRadius = start.throatRadius + first * start.throatSlope;
  if (
    !stage(
      run,
      start,
      result,
      first,
      { slope: 2 / first, offset: -(2 * start.headPressure) / first - start.headSlope },
      (i) => start.depth[i] + first * start.rate[i],
      start.headPressure + first * (start.headSlope + 0.5 * first * run.curve),
    )
  )
    return Number.POSITIVE_INFINITY;
  for (let i = 0; i < n; i++) state.depth[i] = start.depth[i] + 0.5 * first * (start.rate[i] + state.rate[i]);
  copyInto(state, middle);
  const known = bdfNew * middle.headPressure - bdfOld * start.headPressure;
  state.throatRadius = start.throatRadius + 0.5 * h * (start.throatSlope + middle.throatSlope);
  const rising = 1 / gammaStep;
  if (
    !stage(
      run,
      start,
      result,
      h,
      { slope: 1 / (bdfRate * h), offset: -known / (bdfRate * h) },
      (i) =>
        bdfNew * middle.depth[i] -
        bdfOld * start.depth[i] +
        bdfRate * h * (start.rate[i] + rising * (middle.rate[i] - start.rate[i])),
      middle.headPressure +
        (h - first) * (middle.headSlope + (0.5 * (h - first) * (middle.headSlope - start.headSlope)) / first),
    )
  )
    return Number.POSITIVE_INFINITY;
  let worst = 0;
  const scale = m.table.burnout;
  for (let i = 0; i < n; i++) {
    state.depth[i] = bdfNew * middle.depth[i] - bdfOld * start.depth[i] + bdfRate * h * state.rate[i];
    const e = errorOf(h, start.rate[i], middle.rate[i], state.rate[i]) / scale;
    worst = Math.max(worst, Math.abs(e));
  }
  // The stiff part of the error is damped as the method damps it.
  const stiff = 1 + (0.5 * h) / timeConstant;
  const inPressure =
    Math.abs(errorOf(h, start.headSlope, middle.headSlope, state.headSlope)) /
    (stiff * Math.max(state.headPressure - 0.98 * m.ambientPressure, 1e-3 * m.ambientPressure, 1));
  return Math.max(inPressure, worst) / model.tolerance;
}

const errorOf = (h: number, from: number, middle: number, to: number): number =>
  2 * errorFactor * h * (from / gammaStep - middle / (gammaStep * (1 - gammaStep)) + to / (1 - gammaStep));
