import { powerOfTwoDoubles, productError, quotientError, sumError } from './compensated-power';

// Plain SI numbers; arguments are not checked and nothing is allocated. With t = (γ − 1)/2 and B = 1 + t·M²:
// T/T0 = 1/B, ρ/ρ0 = B^(−1/(γ−1)), p/p0 = B^(−1/(γ−1))/B, A/A* = (B/(1+t))^(1/(γ−1))·√(B/(1+t))/M.
// This splitting of the exponents leaves 1/(γ−1) as the only power, and γ − 1 is exact in doubles for every γ ≥ 1.

/** The rounding error of the double `high` of `1 + t·M²`. */
function lostFrom(high: number, t: number, mach: number): number {
  const square = mach * mach;
  const product = t * square;
  const lost = productError(t, square, product) + t * productError(mach, mach, square);
  return sumError(1, product, high) + lost;
}

/** `T0/T` and its power `ρ0/ρ`. */
function densityPower(high: number, mach: number, gamma: number): number {
  return powerOfTwoDoubles(high, lostFrom(high, (gamma - 1) / 2, mach), gamma - 1);
}

/** Static/stagnation temperature ratio. */
export function isentropicTemperatureRatioSi(mach: number, gamma: number): number {
  return 1 / (1 + ((gamma - 1) / 2) * (mach * mach));
}

/** Static/stagnation density ratio. */
export function isentropicDensityRatioSi(mach: number, gamma: number): number {
  const high = 1 + ((gamma - 1) / 2) * (mach * mach);
  return 1 / densityPower(high, mach, gamma);
}

/** Static/stagnation pressure ratio. */
export function isentropicPressureRatioSi(mach: number, gamma: number): number {
  const high = 1 + ((gamma - 1) / 2) * (mach * mach);
  return 1 / (densityPower(high, mach, gamma) * high);
}

/** Mach number at which the static/stagnation pressure ratio has a given value. */
export function machFromPressureRatioSi(pressureRatio: number, gamma: number): number {
  // 0 − x, not −x: at a ratio of 1 the Mach number is 0, not −0.
  return Math.sqrt((2 * Math.expm1(0 - ((gamma - 1) / gamma) * Math.log(pressureRatio))) / (gamma - 1));
}

/** Area/sonic area ratio. */
export function areaRatioSi(mach: number, gamma: number): number {
  const t = (gamma - 1) / 2;
  const above = 1 + t * (mach * mach);
  const below = 1 + t;
  const ratio = above / below;
  const lost = quotientError(above, lostFrom(above, t, mach), below, sumError(1, t, below), ratio);
  return (powerOfTwoDoubles(ratio, lost, gamma - 1) * Math.sqrt(ratio)) / mach;
}

/** Mass-flow parameter `ṁ·√(R·T0)/(p0·A)`. */
export function massFlowParameterSi(mach: number, gamma: number): number {
  const high = 1 + ((gamma - 1) / 2) * (mach * mach);
  return (Math.sqrt(gamma) * mach) / (densityPower(high, mach, gamma) * Math.sqrt(high));
}

/** Vandenkerckhove function: the mass-flow parameter at Mach 1. */
export function vandenkerckhoveSi(gamma: number): number {
  // log1p(t)/t stays exact where the textbook base 2/(γ+1) would be rounded and then raised to a large power.
  const t = (gamma - 1) / 2;
  return Math.sqrt(gamma) * Math.exp(-((1 + t) / (2 * t)) * Math.log1p(t));
}
