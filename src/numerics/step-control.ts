/**
 * Choice of the step size of an integration.
 *
 * Source: Hairer and Wanner, Solving Ordinary Differential Equations II (2nd ed. 1996), IV.8 (predictive controller
 * of Gustafsson); starting step from Hairer, Norsett and Wanner, volume I (2nd ed. 1993), II.4.
 */
import type { OdeSettings } from './ode-options';
import { evaluateSlope, type OdeMethod, type StepWorkspace } from './ode-step';

export interface StepControl {
  readonly errorOrder: number;
  /** Size and error of the last accepted step of this piece; size zero at its start. */
  lastSize: number;
  lastError: number;
  afterRejection: boolean;
}

const SAFETY = 0.9;
const MOST_SHRINK = 5;
const MOST_GROWTH = 6;

export function startControl(errorOrder: number): StepControl {
  return { errorOrder, lastSize: 0, lastError: 1, afterRejection: false };
}

/** Size for the next step after one of size h was accepted with the given error (1 is the tolerance). */
export function sizeAfterAccepted(control: StepControl, h: number, error: number): number {
  const { errorOrder, lastSize, lastError } = control;
  let factor = limited(SAFETY * error ** (-1 / errorOrder));
  if (lastSize > 0) {
    const trend = (h / lastSize) * (lastError / (error * error)) ** (1 / errorOrder);
    factor = Math.min(factor, limited(SAFETY * trend));
  }
  if (control.afterRejection) factor = Math.min(factor, 1);
  control.lastSize = h;
  control.lastError = Math.max(1e-2, error);
  control.afterRejection = false;
  return h * factor;
}

/** Size for another attempt after one of size h failed; the error is infinite when the result was not finite. */
export function sizeAfterRejected(control: StepControl, h: number, error: number): number {
  control.afterRejection = true;
  return h * Math.min(SAFETY, limited(SAFETY * error ** (-1 / control.errorOrder)));
}

function limited(factor: number): number {
  // An error of zero gives an infinite factor; an infinite error gives zero.
  return Math.min(MOST_GROWTH, Math.max(1 / MOST_SHRINK, factor));
}

/** Largest estimated error of any component, in units of its tolerance. */
export function errorNorm(ws: StepWorkspace, settings: OdeSettings): number {
  const { y, next, error, n } = ws;
  const { relativeTolerance, absoluteTolerance } = settings;
  let worst = 0;
  for (let i = 0; i < n; i++) {
    const scale = absoluteTolerance[i] + relativeTolerance * Math.max(Math.abs(y[i]), Math.abs(next[i]));
    const ratio = Math.abs(error[i]) / scale;
    if (ratio > worst) worst = ratio;
  }
  return worst;
}

/** First step of a piece: from the size of the slope, and of its change over a small Euler step. */
export function startingStep(
  ws: StepWorkspace,
  method: OdeMethod,
  settings: OdeSettings,
  t: number,
  end: number,
): number {
  const span = end - t;
  if (!evaluateSlope(ws, t)) return span;
  const { n, y, slope, work, trial } = ws;
  const { relativeTolerance, absoluteTolerance } = settings;
  let size = 0;
  let speed = 0;
  for (let i = 0; i < n; i++) {
    const scale = absoluteTolerance[i] + relativeTolerance * Math.abs(y[i]);
    size = Math.max(size, Math.abs(y[i]) / scale);
    speed = Math.max(speed, Math.abs(slope[i]) / scale);
  }
  const small = Math.min(span, size < 1e-5 || speed < 1e-5 ? 1e-6 * span : (0.01 * size) / speed);
  for (let i = 0; i < n; i++) trial[i] = y[i] + small * slope[i];
  ws.derivative(t + 0.5 * small, trial, work);
  ws.counts.evaluations++;
  let bend = 0;
  for (let i = 0; i < n; i++) {
    const scale = absoluteTolerance[i] + relativeTolerance * Math.abs(y[i]);
    bend = Math.max(bend, Math.abs(work[i] - slope[i]) / (small * scale));
  }
  if (!Number.isFinite(bend)) return 1e-3 * small;
  const most = Math.max(speed, bend);
  const fromError = most * span <= 1e-15 ? 1e-3 * span : (0.01 / most) ** (1 / method.errorOrder);
  return Math.min(100 * small, fromError, span);
}
