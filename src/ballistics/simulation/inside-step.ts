// The dense output of the step of the chamber.
import type { ChamberWorkspace } from './chamber-workspace';

/**
 * A component inside the step just made, at the share `theta` of it: y0 + θ·((y1 − y0) + (1 − θ)·(c1 + θ·(c2 + θ·c3))).
 */
export function inside(w: ChamberWorkspace, component: number, from: number, theta: number): number {
  const { next, dense } = w;
  const c1 = dense[component];
  const c2 = dense[3 + component];
  const c3 = dense[6 + component];
  return from + theta * (next[component] - from + (1 - theta) * (c1 + theta * (c2 + theta * c3)));
}
