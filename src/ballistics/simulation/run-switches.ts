// Which equations are valid at a time, and when that changes next.

import { throatOpening } from '../transient/throat-opening';
import { nextTransientTime } from '../transient/transient-times';
import { setOpening } from './chamber-nozzle';
import type { ChamberWorkspace } from './chamber-workspace';
import type { MotorModel } from './motor-model';

/** Sets the equations that are valid from time t on. */
export function setSwitches(m: MotorModel, w: ChamberWorkspace, t: number, throat: number): void {
  w.igniting = t < m.igniterDuration + m.igniterFallTime;
  w.igniterFalling = w.igniting && t >= m.igniterDuration;
  w.lit = t >= m.ignitionDelay;
  w.spreading = w.burning && w.lit && t < m.ignitionDelay + m.flameSpreadTime;
  w.eroding = m.erosionRate !== 0 && t >= m.erosionDelay && w.flowing;
  if (m.blockedFraction > 0) {
    const opening = throatOpening(m, t);
    if (opening !== w.opening) setOpening(m, w, opening, throat);
  }
  w.plain = w.flowing && w.lit && !w.held && !w.igniting && !w.spreading && !w.eroding;
}

/** Next time at which the equations change. */
export function nextChange(m: MotorModel, t: number): number {
  let next = nextTransientTime(m, t, m.timeLimit);
  if (m.erosionRate !== 0 && m.erosionDelay > t && m.erosionDelay < next) next = m.erosionDelay;
  return next;
}
