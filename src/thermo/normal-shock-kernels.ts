import { findRoot } from '../numerics';
import { powerOfTwoDoubles, productError, quotientError, sumError } from './compensated-power';
import { isentropicPressureRatioSi } from './isentropic-kernels';

// Plain numbers, unchecked, upstream Mach number ≥ 1. Rankine-Hugoniot relations as in NACA Report 1135.

/** Static pressure ratio across a normal shock (downstream/upstream). */
export function shockPressureRatioSi(mach: number, gamma: number): number {
  return 1 + ((2 * gamma) / (gamma + 1)) * ((mach - 1) * (mach + 1));
}

/** Density ratio across a normal shock (downstream/upstream). */
export function shockDensityRatioSi(mach: number, gamma: number): number {
  const t = (gamma - 1) / 2;
  return ((1 + t) * mach * mach) / (1 + t * mach * mach);
}

/** Mach number behind a normal shock. */
export function machBehindShockSi(mach: number, gamma: number): number {
  const t = (gamma - 1) / 2;
  const square = mach * mach;
  return Math.sqrt((1 + t * square) / (gamma * square - t));
}

/** Stagnation pressure ratio across a normal shock (downstream/upstream). */
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
 * Mach number ahead of the normal shock that leaves a given fraction of the stagnation pressure (above 0, at most
 * 1). Near 1 the loss grows only as (M − 1)³, so the ratio determines only a third of the digits.
 */
export function machFromShockStagnationPressureRatioSi(ratio: number, gamma: number): number {
  if (ratio >= 1) return 1;
  const wanted = Math.log(ratio);
  const loss = (mach: number): number => Math.log(shockStagnationPressureRatioSi(mach, gamma)) - wanted;
  let upper = 2;
  while (loss(upper) > 0) upper *= 2;
  return findRoot(loss, { lower: 1, upper }).root;
}

/** Stagnation pressure downstream of a normal shock/static pressure upstream. */
export function pitotPressureRatioSi(mach: number, gamma: number): number {
  // By way of the subsonic state behind the shock, where no power is large.
  return shockPressureRatioSi(mach, gamma) / isentropicPressureRatioSi(machBehindShockSi(mach, gamma), gamma);
}

/**
 * Entropy rise divided by the specific gas constant across a normal shock. It starts as the cube of M² − 1, so for
 * weak shocks the first two terms of the three logarithms, which cancel, are omitted.
 */
export function shockEntropyRiseSi(mach: number, gamma: number): number {
  const x = (mach - 1) * (mach + 1);
  if (x > 0.05) return -Math.log(shockStagnationPressureRatioSi(mach, gamma));
  const a = (2 * gamma) / (gamma + 1);
  const b = (gamma - 1) / (gamma + 1);
  // Σ (−1)ⁿ⁺¹·xⁿ/n·(aⁿ − γ + γ·bⁿ)/(γ − 1); with d = a − 1 = b the bracket is ((1+b)ⁿ − 1 − n·b)… written free of cancellation.
  let sum = 0;
  for (let n = 14; n >= 3; n--) sum = sum * -x + coefficient(n, a, b) / n;
  return sum * x * x * x;
}

// (aⁿ − γ + γ·bⁿ)/(γ − 1) where a = 1 + b and γ = (1 + b)/(1 − b): aⁿ⁻¹·(1 − b) = 1 − b² + Σ…, so
// the numerator is a/(1 − b)·[(1 − b)·aⁿ⁻¹ − 1 + bⁿ] and γ − 1 = 2b/(1 − b). The bracket is a polynomial in b
// that begins with b: divided by b it is Σ_{k=1}^{n−1} (C(n−1,k) − C(n−1,k−1))·b^{k−1}, since the b^n terms cancel.
function coefficient(n: number, a: number, b: number): number {
  let sum = 0;
  let power = 1;
  let choose = 1;
  for (let k = 1; k < n; k++) {
    const next = (choose * (n - k)) / k;
    sum += (next - choose) * power;
    power *= b;
    choose = next;
  }
  return (a * sum) / 2;
}
