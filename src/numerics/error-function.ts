/** The error function and its relatives, to a few units in the last place. */
import { chebyshevSum } from './chebyshev';
import { invalidArgument } from './checks';

/**
 * Chebyshev coefficients of (1 + 2x) exp(x^2) erfc(x) for x from 0 to infinity, in t = (x - 3.75)/(x + 3.75).
 * Form of the expansion: M. M. Shepherd and J. G. Laframboise, "Chebyshev approximation of (1 + 2x) exp(x^2) erfc x in
 * 0 <= x < infinity", Mathematics of Computation 36 (1981), 249-253. Coefficients computed with mpmath 1.3.0 to 50 digits.
 */
const SCALED = [
  1.1775789345674017, -0.004590054580646478, -0.08424913336651792, 0.05920993999819189, -0.026658668435305753,
  0.009074997670705265, -0.002413163540417608, 0.0004907758365258086, -6.916973302501207e-5,
  4.13902798607301e-6, 7.74038306619849e-7, -2.1886401049234397e-7, 1.076499946567091e-8,
  4.521959811218287e-9, -7.754400208831351e-10, -6.318088340886684e-11, 2.86879501093067e-11,
  1.9455868545777347e-13, -9.65469674843344e-13, 3.25254814814874e-14, 3.3478119482868056e-14,
  -1.864562880419314e-15, -1.2507950530688654e-15, 7.418235256623975e-17, 5.068148904796041e-17,
  -2.23705665943672e-18, -2.187342944303741e-18,
];

/**
 * Scaled complementary error function exp(x^2) erfc(x). It neither underflows nor overflows for x above -26.
 * Within 4 units in the last place for x of zero or above. Overflows to an `invalid-argument` error below about -26.6.
 *
 * @example
 * erfcx(0) // => 1
 */
export function erfcx(x: number): number {
  requireNumber(x);
  if (Math.abs(x) < 0.5) return Math.exp(x * x) * (1 - (x < 0 ? -nearErf(-x) : nearErf(x)));
  if (x > 0) return scaledTail(x);
  const value = 2 / gaussian(x) - scaledTail(-x);
  if (value === Infinity)
    throw invalidArgument('x', x, 'above -26.6, below which exp(x^2) erfc(x) overflows');
  return value;
}

/**
 * Complementary error function 1 - erf(x), accurate also where it is tiny.
 *
 * @example
 * erfc(0) // => 1
 */
export function erfc(x: number): number {
  requireNumber(x);
  if (x < 0) return 2 - erfc(-x);
  if (x < 0.5) return 1 - nearErf(x);
  return gaussian(x) * scaledTail(x);
}

/**
 * Error function, the integral of 2/sqrt(pi) exp(-t^2) from 0 to x. Odd.
 * Source: Abramowitz and Stegun, Handbook of Mathematical Functions, 7.1.1 and 7.1.6.
 *
 * @example
 * erf(Infinity) // => 1
 */
export function erf(x: number): number {
  requireNumber(x);
  const size = Math.abs(x);
  const value = size < 1 ? nearErf(size) : 1 - gaussian(size) * scaledTail(size);
  return x < 0 ? -value : value;
}

/** Series 7.1.6 of Abramowitz and Stegun: all terms have one sign, so nothing cancels. For 0 <= x <= 1. */
function nearErf(x: number): number {
  const twice = 2 * x * x;
  let term = x;
  let sum = x;
  for (let n = 1; term > 1e-17 * sum; n++) {
    term *= twice / (2 * n + 1);
    sum += term;
  }
  return (2 / Math.sqrt(Math.PI)) * Math.exp(-x * x) * sum;
}

/** exp(x^2) erfc(x) for x >= 0. */
function scaledTail(x: number): number {
  // Beyond this the first term of the asymptotic series is exact to rounding.
  if (x > 1e9) return 1 / (Math.sqrt(Math.PI) * x);
  return chebyshevSum(SCALED, (x - 3.75) / (x + 3.75)) / (1 + 2 * x);
}

/** exp(-x^2), with the rounding of x^2 taken into account: the head squares exactly. */
function gaussian(x: number): number {
  // Nothing is left beyond, and the two factors would go to opposite limits.
  if (Math.abs(x) > 30) return 0;
  const head = Math.fround(x);
  return Math.exp(-head * head) * Math.exp(-(x - head) * (x + head));
}

function requireNumber(x: number): void {
  if (Number.isNaN(x)) throw invalidArgument('x', x, 'a number');
}
