import { MeopError } from '../units';
import type { machBranch } from './gas-inputs';

/** The flow upstream of the throat or downstream of it: one area ratio has two Mach numbers. */
export type MachBranch = (typeof machBranch.options)[number];

/**
 * Mach number on one branch at an area/sonic area ratio; plain numbers, unchecked (`areaRatio` ≥ 1, `gamma` > 1).
 *
 * The root of ln(A/A*) in z = ln M, where the function is convex: third-order Householder steps, whose derivatives
 * cost no further logarithm, kept inside a bracket that only shrinks. The bracket is proven: dropping either term
 * of 1 + t·M² bounds the root from outside, and Mach 1 bounds it from inside.
 */
export function machFromAreaRatioSi(areaRatio: number, gamma: number, supersonic: boolean): number {
  if (areaRatio === 1) return 1;
  const t = (gamma - 1) / 2;
  const below = 1 + t;
  const power = below / (2 * t);
  const target = Math.log(areaRatio);
  // Near the throat ln M and ln(A/A*) are small and must not be merged; far from it merging them saves rounding.
  const near = target < 0.1;
  const s = Math.sqrt(below * target);
  const bend = (2 / 3) * ((1 - t) / below);

  let low: number;
  let high: number;
  let mach: number;
  if (supersonic) {
    low = 1;
    high = Math.exp(t * (target + power * Math.log(below / t))) * (1 + 1e-9);
    mach = 1 + s * (1 + 0.5 * (1 - bend) * s);
  } else {
    const outer = -(target + power * Math.log1p(t));
    const least = Math.exp(outer);
    const y = 0.5 * below * least * least;
    low = least * (1 - 1e-9);
    high = 1;
    mach = target < 0.25 ? 1 - s * (1 - 0.5 * (1 - bend) * s) : least * (1 + y * (1 + 0.5 * y));
  }
  if (!(mach > low && mach < high)) mach = 0.5 * (low + high);

  for (let count = 0; count < 200; count++) {
    const square = mach * mach;
    const above = (mach - 1) * (mach + 1);
    const b = 1 + t * square;
    const value =
      power * Math.log1p((t * above) / below) - (near ? Math.log(mach) + target : Math.log(mach * areaRatio));
    if (value === 0) return mach;
    if (value > 0 === supersonic) high = mach;
    else low = mach;
    // Derivatives in z = ln M: f' = (M²−1)/B, f'' = 2M²(1+t)/B², f''' = 2·f''·(1−t·M²)/B.
    const first = above / b;
    const second = (2 * square * below) / (b * b);
    const newton = -value / first;
    const a2 = second / (2 * first);
    const a3 = (second * (1 - t * square)) / (3 * b * first);
    let step = newton * (1 - newton * (a2 - newton * (2 * a2 * a2 - a3)));
    // Where the third-order step turns against Newton's, the latter is the safe one: the function is convex.
    if (!(step * newton > 0 && Math.abs(step) < 2 * Math.abs(newton))) step = newton;
    const next =
      Math.abs(step) < 0.02
        ? mach + mach * (step + 0.5 * step * step * (1 + step / 3))
        : mach * Math.exp(step);
    if (!(next > low && next < high)) {
      const middle = 0.5 * (low + high);
      if (middle === low || middle === high || Math.abs(step) <= 2 ** -52) return mach;
      mach = middle;
      continue;
    }
    mach = next;
    // The error after a step h is about h⁴ over the cube of the distance from the throat.
    if (Math.abs(step) <= 1e-4 * Math.min(1, Math.abs(mach - 1))) return mach;
  }
  throw new MeopError({
    code: 'not-converged',
    procedure: 'machFromAreaRatio',
    path: 'areaRatio',
    given: areaRatio,
    problem: `no Mach number found for ${areaRatio} at gamma ${gamma}`,
  });
}
