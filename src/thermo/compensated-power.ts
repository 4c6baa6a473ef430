// Powers whose exponent is large: at γ = 1.01 and Mach 50 the pressure ratio is 13.5^(-101), and a base rounded to a
// double alone would lose about 100 units in the last place. The base is therefore carried as two doubles.

const splitter = 134217729; // 2^27 + 1

/**
 * Rounding error of a product: `a·b − p`, exactly, for `p = a * b`. Source: T. J. Dekker, "A floating-point
 * technique for extending the available precision", Numer. Math. 18 (1971).
 */
export function productError(a: number, b: number, p: number): number {
  const wideA = splitter * a;
  const highA = wideA - (wideA - a);
  const lowA = a - highA;
  const wideB = splitter * b;
  const highB = wideB - (wideB - b);
  const lowB = b - highB;
  return lowA * lowB - (p - highA * highB - lowA * highB - highA * lowB);
}

/** Rounding error of a sum: `a + b − s`, exactly, for `s = a + b` (Knuth's two-sum). */
export function sumError(a: number, b: number, s: number): number {
  const partB = s - a;
  return a - (s - partB) + (b - partB);
}

/** Error where `quotient = high / divisor` replaces `(high + low) / (divisor + divisorLow)`. */
export function quotientError(
  high: number,
  low: number,
  divisor: number,
  divisorLow: number,
  quotient: number,
): number {
  const product = quotient * divisor;
  const remainder = high - product - productError(quotient, divisor, product);
  return (remainder + low - quotient * divisorLow) / divisor;
}

/** The power `(high + low)^(1 / divisor)` of a base in two doubles, to about one unit in the last place. */
export function powerOfTwoDoubles(high: number, low: number, divisor: number): number {
  const exponent = 1 / divisor;
  const product = exponent * divisor;
  const exponentError = (1 - product - productError(exponent, divisor, product)) / divisor;
  const change = exponent * (low / high) + exponentError * Math.log(high);
  const main = high ** exponent;
  return Math.abs(change) < 1e-8 ? main + main * change : main * Math.exp(change);
}
