// The chamber after burnout where its gas cools: pressure and temperature from mass and energy balance.
import { integrateOde, type OdeResult } from '../../numerics';
import { igniterFlow, igniterGasRatio } from '../transient/igniter-flow';
import { tailOffSlopes } from '../transient/tail-off-slopes';
import { nozzleMassFlow, thrustAt, updateNozzle } from './chamber-nozzle';
import { erosionSpeed } from './chamber-slopes';
import { type ChamberWorkspace, Constant } from './chamber-workspace';
import type { MotorModel, RunEnd } from './motor-model';
import type { RunRecorder } from './run-record';
import type { RunResult } from './run-result';
import { nextChange, setSwitches } from './run-switches';

/** Places in the state. */
enum State {
  pressure,
  /** Gas constant times temperature. */
  gasEnergy,
  throat,
  /** Mass through the nozzle since burnout. */
  mass,
}

// Gauss-Legendre nodes and weights on [0, 1], three points (Abramowitz & Stegun, table 25.4).
const node = Math.sqrt(15) / 10;
const nodes = [0.5 - node, 0.5, 0.5 + node] as const;
const weights = [5 / 18, 8 / 18, 5 / 18] as const;

/** Runs from burnout to the end and completes `result`. The workspace is that of the run at burnout. */
export function runTailOff(
  m: MotorModel,
  w: ChamberWorkspace,
  result: RunResult,
  burnout: number,
  pressure: number,
  depth: number,
  throat: number,
  recorder: RunRecorder | undefined,
): void {
  let state: ArrayLike<number> = [pressure, m.gasEnergy, throat, 0];
  let t = burnout;
  let end: RunEnd | undefined;
  while (end === undefined) {
    setSwitches(m, w, t, state[State.throat]);
    const until = nextChange(m, t);
    const run = tailOffPiece(m, w, state, t, until);
    result.evaluations += run.counts.evaluations;
    result.steps += run.counts.steps;
    result.rejected += run.counts.rejected;
    for (let k = 1; k < run.t.length; k++) addPart(m, w, result, depth, run, k, recorder);
    const last = run.t.length - 1;
    state = run.y.map((column) => column[last]);
    t = run.t[last];
    if (run.status === 'event') {
      end = ends[run.events.at(-1)?.index ?? 0];
      recorder?.mark(m, w, end === 'burned out' ? 'stop' : 'limit', t, state[State.pressure], depth, throat);
    } else if (run.status !== 'finished') end = 'not converged';
    else if (until === m.timeLimit) end = 'time limit';
  }
  result.massThroughNozzle += state[State.mass];
  result.end = end;
  result.endTime = t;
  result.endDepth = depth;
  result.endPressure = state[State.pressure];
  result.endHeadPressure = state[State.pressure];
  result.endThroatRadius = state[State.throat];
  result.endGasEnergy = state[State.gasEnergy];
}

/** Ends of a run by the index of their event. */
const ends = ['burned out', 'pressure limit', 'throat closed'] as const;

function tailOffPiece(
  m: MotorModel,
  w: ChamberWorkspace,
  initial: ArrayLike<number>,
  start: number,
  end: number,
): OdeResult {
  const slopes = new Float64Array(2);
  const { igniting, eroding } = w;
  // The mixture of a burning surface and an igniter ends with the surface.
  w.igniting = false;
  const inflowShare = igniterGasRatio(m, m.gasEnergy);
  const small = 1e-3 * m.tolerance;
  return integrateOde({
    start,
    end,
    initial,
    method: 'dormand-prince',
    relativeTolerance: Math.max(1e-13, 0.1 * m.tolerance),
    absoluteTolerance: [small * m.stopPressure, small * m.gasEnergy, small * m.throatRadius, 1e-12],
    derivative: (t, y, out) => {
      const p = y[State.pressure];
      const e = y[State.gasEnergy];
      const flow = flowAt(m, w, y);
      const inflow = igniting ? inflowShare * igniterFlow(m, t) : 0;
      tailOffSlopes(m.tailOff, m.gamma, m.chamberVolume, p, e, flow, inflow, m.gasEnergy, slopes);
      out[State.pressure] = slopes[0];
      out[State.gasEnergy] = slopes[1];
      out[State.throat] = eroding ? erosionSpeed(m, p) : 0;
      out[State.mass] = flow;
    },
    events: [
      { value: (_, y) => y[State.pressure] - m.stopPressure, direction: 'falling' },
      { value: (_, y) => y[State.pressure] - m.pressureLimit, direction: 'rising' },
      { value: (_, y) => y[State.throat] - 1e-3 * m.throatRadius, direction: 'falling' },
    ],
  });
}

/** Mass flow through the nozzle [kg/s] at a state; leaves its factor in the workspace for samples of that state. */
function flowAt(m: MotorModel, w: ChamberWorkspace, y: ArrayLike<number>): number {
  if (m.erosionRate !== 0) updateNozzle(m, w, y[State.throat]);
  w.constants[Constant.flowFactor] =
    ((m.dischargeCoefficient * Math.PI) / m.characteristicVelocity) *
    w.opening *
    Math.sqrt(m.gasEnergy / y[State.gasEnergy]);
  return nozzleMassFlow(m, w, y[State.pressure], y[State.throat]);
}

/** Adds the k-th step of a piece: integrals over it, peaks, samples. */
function addPart(
  m: MotorModel,
  w: ChamberWorkspace,
  result: RunResult,
  depth: number,
  run: OdeResult,
  k: number,
  recorder: RunRecorder | undefined,
): void {
  const from = run.t[k - 1];
  const step = run.t[k] - from;
  const state = new Float64Array(4);
  for (let i = 0; i < 3; i++) {
    run.at(from + nodes[i] * step, state);
    flowAt(m, w, state);
    const thrust = thrustAt(m, w, state[State.pressure], state[State.throat]);
    result.totalImpulse += step * weights[i] * thrust;
    result.pressureIntegral += step * weights[i] * state[State.pressure];
    if (thrust > result.peakThrust) result.peakThrust = thrust;
  }
  const perStep = recorder?.perStep ?? 1;
  for (let i = 1; i <= perStep; i++) {
    const t = i === perStep ? run.t[k] : from + (i / perStep) * step;
    run.at(t, state);
    flowAt(m, w, state);
    if (state[State.pressure] > result.peakPressure) {
      result.peakPressure = state[State.pressure];
      result.peakTime = t;
      result.peakDepth = depth;
    }
    recorder?.sample(m, w, t, state[State.pressure], depth, state[State.throat]);
  }
}
