// What is kept of a run: integrals and the peak always, samples where a recorder asks for them.
import { nozzleMassFlow, thrustAt, updateNozzle } from './chamber-nozzle';
import { outflowRatioAt } from './chamber-slopes';
import type { ChamberWorkspace } from './chamber-workspace';
import { inside } from './inside-step';
import type { MotorModel } from './motor-model';
import type { RunResult } from './run-result';

/** Receives every state to be recorded, in order of time. */
export interface RunRecorder {
  /** Samples per step; the last one stands at its end. */
  readonly perStep: number;
  begin(m: MotorModel, w: ChamberWorkspace, t: number, p: number, y: number, throat: number): void;
  sample(m: MotorModel, w: ChamberWorkspace, t: number, p: number, y: number, throat: number): void;
  /** After a crossing, when the equations have changed. */
  mark(
    m: MotorModel,
    w: ChamberWorkspace,
    crossing: string,
    t: number,
    p: number,
    y: number,
    throat: number,
  ): void;
}

// Gauss-Legendre nodes and weights on [0, 1], three points (Abramowitz & Stegun, table 25.4).
const node = Math.sqrt(15) / 10;
const nodes = [0.5 - node, 0.5, 0.5 + node] as const;
const weights = [5 / 18, 8 / 18, 5 / 18] as const;

/** Adds the step just made: integrals over it by its dense output, the peak, the samples. */
export function addStep(
  m: MotorModel,
  w: ChamberWorkspace,
  result: RunResult,
  recorder: RunRecorder | undefined,
): void {
  const { start, next } = w;
  const t = start[0];
  const h = start[1];
  const p = start[2];
  const y = start[3];
  const throat = start[4];
  for (let i = 0; i < 3; i++) {
    const theta = nodes[i];
    const weight = h * weights[i];
    const pi = inside(w, 0, p, theta);
    const ri = m.erosionRate === 0 ? throat : inside(w, 2, throat, theta);
    if (m.erosionRate !== 0) updateNozzle(m, w, ri);
    const thrust = thrustAt(m, w, pi, ri);
    result.totalImpulse += weight * thrust;
    result.pressureIntegral += weight * pi;
    const flow = nozzleMassFlow(m, w, pi, ri);
    result.massThroughNozzle +=
      weight *
      (m.igniterGasEnergy === undefined
        ? flow
        : flow * outflowRatioAt(m, w, t + theta * h, pi, inside(w, 1, y, theta), ri));
    if (thrust > result.peakThrust) result.peakThrust = thrust;
  }
  const nextThrust = thrustAt(m, w, next[0], next[2]);
  if (nextThrust > result.peakThrust) result.peakThrust = nextThrust;
  if (w.burning && next[1] > 0.05 * m.table.burnout && y < 0.95 * m.table.burnout) {
    if (next[0] < result.minBurnPressure) result.minBurnPressure = next[0];
    if (next[0] > result.maxBurnPressure) result.maxBurnPressure = next[0];
  }
  notePeak(m, w, result);
  if (recorder === undefined) return;
  for (let i = 1; i < recorder.perStep; i++) {
    const theta = i / recorder.perStep;
    recorder.sample(
      m,
      w,
      t + theta * h,
      inside(w, 0, p, theta),
      inside(w, 1, y, theta),
      inside(w, 2, throat, theta),
    );
  }
  recorder.sample(m, w, t + h, next[0], next[1], next[2]);
}

/** A rise that has turned into a fall inside the step, or the end of the step where it is higher than all before. */
function notePeak(m: MotorModel, w: ChamberWorkspace, result: RunResult): void {
  const { next, start } = w;
  const t = start[0];
  const h = start[1];
  const p = start[2];
  const y = start[3];
  const throat = start[4];
  const slope = start[5];
  const endSlope = next[0] - inside(w, 0, p, 0.999);
  if (slope > 0 && endSlope < 0) {
    const theta = topInside(w, p);
    const top = inside(w, 0, p, theta);
    if (top > result.peakPressure) {
      result.peakPressure = top;
      result.peakTime = t + theta * h;
      result.peakDepth = inside(w, 1, y, theta);
      const thrust = thrustAt(m, w, top, inside(w, 2, throat, theta));
      if (thrust > result.peakThrust) result.peakThrust = thrust;
    }
  } else if (next[0] > result.peakPressure) {
    result.peakPressure = next[0];
    result.peakTime = t + h;
    result.peakDepth = next[1];
  }
}

/** Share of the step at which its dense output is highest in pressure, by golden section. */
export function topInside(w: ChamberWorkspace, p: number): number {
  const golden = (Math.sqrt(5) - 1) / 2;
  let a = 0;
  let b = 1;
  let c = b - golden;
  let d = a + golden;
  let fc = inside(w, 0, p, c);
  let fd = inside(w, 0, p, d);
  for (let i = 0; i < 40; i++) {
    if (fc > fd) {
      b = d;
      d = c;
      fd = fc;
      c = b - golden * (b - a);
      fc = inside(w, 0, p, c);
    } else {
      a = c;
      c = d;
      fc = fd;
      d = a + golden * (b - a);
      fd = inside(w, 0, p, d);
    }
  }
  return 0.5 * (a + b);
}
