import { findRoot } from '../numerics';
import { powerOfTwoDoubles, productError, quotientError, sumError } from './compensated-power';

// Plain numbers, unchecked, upstream Mach number ≥ 1. Rankine-Hugoniot relations as in NACA Report 1135.

/** Static pressure behind over ahead of a normal shock; plain numbers, unchecked. @example shockPressureRatioSi(2, 1.4) // => 4.5 */
export function shockPressureRatioSi(mach: number, gamma: number): number {
  return 1 + ((2 * gamma) / (gamma + 1)) * ((mach - 1) * (mach + 1));
}

/** Density behind over ahead of a normal shock; plain numbers, unchecked. @example shockDensityRatioSi(2, 1.4) // => 2.666666667 */
export function shockDensityRatioSi(mach: number, gamma: number): number {
  const t = (gamma - 1) / 2;
  return ((1 + t) * mach * mach) / (1 + t * mach * mach);
}

/** Mach number behind a normal shock; plain numbers, unchecked. @example machBehindShockSi(2, 1.4) // => 0.577350269 */
export function machBehindShockSi(mach: number, gamma: number): number {
  const t = (gamma - 1) / 2;
  const square = mach * mach;
  return Math.sqrt((1 + t * square) / (gamma * square - t));
}

/** Stagnation pressure behind over ahead of a normal shock; plain numbers, unchecked. @example shockStagnationPressureRatioSi(2, 1.4) // => 0.720873861 */
export function shockStagnationPressureRatioSi(mach: number, gamma: number): number {
  // ρ₂/ρ₁·(T₂/T₁)^(−1/(γ−1)): one power instead of two that overflow near γ = 1. With t = (γ−1)/2, T₂/T₁ is the product of
  // (1 + t·M²)/(1 + t) and (γ·M² − t)/((1 + t)·M²); each is carried in two doubles into its power.
  const t = (gamma - 1) / 2;
  const square = mach * mach;
  const squareLow = productError(mach, mach, square);
  const one = 1 + t;
  const oneLow = sumError(1, t, one);

  const scaled = t * square;
  const cold = 1 + scaled;
  const coldLow = sumError(1, scaled, cold) + productError(t, square, scaled) + t * squareLow;
  const first = cold / one;
  const firstPower = powerOfTwoDoubles(first, quotientError(cold, coldLow, one, oneLow, first), gamma - 1);

  const heavy = gamma * square;
  const hot = heavy - t;
  const hotLow = sumError(heavy, -t, hot) + productError(gamma, square, heavy) + gamma * squareLow;
  const below = one * square;
  const belowLow = productError(one, square, below) + one * squareLow + oneLow * square;
  const second = hot / below;
  const secondPower = powerOfTwoDoubles(
    second,
    quotientError(hot, hotLow, below, belowLow, second),
    gamma - 1,
  );

  // The loss starts with the cube of M² − 1: below about 1e-5 rounding alone could put the ratio above 1.
  return Math.min(1, shockDensityRatioSi(mach, gamma) / (firstPower * secondPower));
}

/**
 * Mach number ahead of the normal shock that leaves a given share of the stagnation pressure; plain numbers, unchecked
 * (above 0, at most 1). Near 1 the loss grows only as (M − 1)³, so a third of the digits is all that the ratio holds.
 *
 * @example machFromShockStagnationPressureRatioSi(0.720873861, 1.4) // => 2
 */
export function machFromShockStagnationPressureRatioSi(ratio: number, gamma: number): number {
  if (ratio >= 1) return 1;
  const wanted = Math.log(ratio);
  const loss = (mach: number): number => Math.log(shockStagnationPressureRatioSi(mach, gamma)) - wanted;
  let upper = 2;
  while (loss(upper) > 0) upper *= 2;
  return findRoot(loss, { lower: 1, upper }).root;
}
