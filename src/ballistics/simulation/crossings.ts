// What a step crosses before its end, and the shorter step that ends there.
import { attemptStep } from './chamber-step';
import type { ChamberWorkspace } from './chamber-workspace';
import { inside } from './inside-step';
import type { MotorModel } from './motor-model';
import { topInside } from './run-record';
import type { RunResult } from './run-result';

/** What a step crosses. */
export type Crossing = 'none' | 'depth' | 'closure' | 'ignition' | 'limit' | 'stop';

/** What lies between the start of the step and its end. */
export function crossed(m: MotorModel, w: ChamberWorkspace): Crossing {
  const { next, start } = w;
  if (w.burning && next[1] >= m.table.pieceEnds[w.piece]) return 'depth';
  // A chamber weaker than the closure bursts first.
  const opening = m.ambientPressure + m.nozzleClosureBurstPressure;
  if (!w.flowing && opening <= m.pressureLimit && next[0] >= opening) return 'closure';
  if (w.held && next[0] >= m.fullIgnitionPressure) return 'ignition';
  if (next[0] >= m.pressureLimit && start[2] < m.pressureLimit) return 'limit';
  // A peak between the ends of the step counts, too.
  if (
    start[5] > 0 &&
    next[0] > 0.9 * m.pressureLimit &&
    inside(w, 0, start[2], topInside(w, start[2])) >= m.pressureLimit
  )
    return 'limit';
  if (next[0] <= m.stopPressure && (!w.burning || (m.stopsBurning && start[2] > m.stopPressure)))
    return 'stop';
  return 'none';
}

interface Landing {
  readonly step: number;
  readonly crossing: Crossing;
}

/** Shortens the step until it ends at the first crossing; `undefined` where it does not come to lie there. */
export function land(
  m: MotorModel,
  w: ChamberWorkspace,
  result: RunResult,
  first: Crossing,
): Landing | undefined {
  const p = w.start[2];
  const y = w.start[3];
  let crossing = first;
  const whole = w.start[1];
  let step = whole;
  if (crossing === 'limit' && w.next[0] < m.pressureLimit) {
    step *= topInside(w, w.start[2]);
    w.start[1] = step;
    attemptStep(m, w);
    result.evaluations += 8;
  }
  for (let round = 0; round < 12; round++) {
    const component = crossing === 'depth' ? 1 : 0;
    const target = targetOf(m, w, crossing);
    const from = component === 1 ? y : p;
    const accuracy = component === 1 ? 1e-13 * m.table.burnout : 1e-11 * target;
    if (Math.abs(w.next[component] - target) <= accuracy) {
      // At a depth that is reached above the limit pressure the run has ended before.
      if (crossing === 'depth' && w.next[0] > m.pressureLimit && p < m.pressureLimit) crossing = 'limit';
      else {
        w.next[component] = target;
        return { step, crossing };
      }
    }
    // Where the end is already close the slope there is better than the dense output.
    const over = w.next[component] - target;
    const close = Math.abs(over) <= 1e-4 * Math.abs(target - from);
    step = close
      ? step * (1 - over / (w.next[component] - from))
      : step * shareAt(w, component, from, target);
    w.start[1] = step;
    attemptStep(m, w);
    result.evaluations += 8;
    const other = crossed(m, w);
    if (other !== 'none' && other !== crossing) crossing = other;
  }
  if (settle(m, w, crossing)) return { step, crossing };
  return halve(m, w, result, whole);
}

/** Sets the target where the step ends so close to it that no gas is made or lost. */
function settle(m: MotorModel, w: ChamberWorkspace, crossing: Crossing): boolean {
  const component = crossing === 'depth' ? 1 : 0;
  const target = targetOf(m, w, crossing);
  if (!(Math.abs(w.next[component] - target) <= 1e-6 * target)) return false;
  w.next[component] = target;
  return true;
}

/** Halves between a step that crosses nothing and one that does. */
function halve(m: MotorModel, w: ChamberWorkspace, result: RunResult, longest: number): Landing | undefined {
  let low = 0;
  let high = longest;
  const attempt = (step: number): Crossing => {
    w.start[1] = step;
    const finite = attemptStep(m, w);
    result.evaluations += 8;
    return finite ? crossed(m, w) : 'none';
  };
  while (high - low > 1e-13 * longest) {
    const middle = 0.5 * (low + high);
    const found = attempt(middle);
    if (found === 'none') low = middle;
    else high = middle;
  }
  const crossing = attempt(high);
  return crossing !== 'none' && settle(m, w, crossing) ? { step: high, crossing } : undefined;
}

function targetOf(m: MotorModel, w: ChamberWorkspace, crossing: Crossing): number {
  if (crossing === 'depth') return m.table.pieceEnds[w.piece];
  if (crossing === 'closure') return m.ambientPressure + m.nozzleClosureBurstPressure;
  if (crossing === 'ignition') return m.fullIgnitionPressure;
  return crossing === 'limit' ? m.pressureLimit : m.stopPressure;
}

/** Share of the step at which the dense output first reaches a target: bisection, then no guess is needed. */
function shareAt(w: ChamberWorkspace, component: number, from: number, target: number): number {
  const rising = target > from;
  let low = 0;
  let high = 1;
  for (let i = 0; i < 40; i++) {
    const middle = 0.5 * (low + high);
    if (inside(w, component, from, middle) >= target === rising) high = middle;
    else low = middle;
  }
  return high;
}
