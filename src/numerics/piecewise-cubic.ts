/** A cubic on each interval between knots, with a stated policy outside them. All interpolants use it. */
import { MeopError } from '../units/errors';
import { requireFinite } from './checks';
import { findInterval } from './sorted-search';

/**
 * Policy outside the data. `error`: throws. `clamp`: the value at the nearer end. `extrapolate`: the straight line
 * that continues the end slope (a continued cubic diverges quickly).
 */
export type OutOfRange = 'error' | 'clamp' | 'extrapolate';

/** A value of an interpolant with the details of its evaluation. */
export interface InterpolatedValue {
  readonly value: number;
  readonly slope: number;
  /** Position of the abscissa relative to the data. */
  readonly where: 'inside' | 'below' | 'above';
  /** Method of evaluation, for a caution. */
  readonly how: 'interpolated' | 'clamped' | 'extrapolated';
}

/** A curve through data that can be evaluated, differentiated and integrated. */
export interface Interpolant {
  /** First and last abscissa of the data. */
  readonly lower: number;
  readonly upper: number;
  readonly knots: Float64Array;
  readonly outOfRange: OutOfRange;
  /** Value at `x`. Throws `out-of-range` outside the data under the policy `error`. */
  at(x: number): number;
  /** First derivative at `x`; at a knot, that of the interval on its right (of the last interval at the last knot). */
  slopeAt(x: number): number;
  /** Integral from one abscissa to another, in either order. */
  integral(from: number, to: number): number;
  /** Value and slope, with the position of `x` and the method of evaluation. */
  evaluate(x: number): InterpolatedValue;
}

/**
 * Builds an interpolant from values and left- and right-hand slopes at the ends of each interval. Does not check
 * its arguments; slopes of interval i are startSlopes[i] and endSlopes[i].
 */
export function piecewiseCubic(
  knots: Float64Array,
  values: Float64Array,
  startSlopes: Float64Array,
  endSlopes: Float64Array,
  outOfRange: OutOfRange,
): Interpolant {
  const intervals = knots.length - 1;
  const lower = knots[0];
  const upper = knots[intervals];
  const firstValue = values[0];
  const lastValue = values[intervals];
  const firstSlope = startSlopes[0];
  const lastSlope = endSlopes[intervals - 1];

  // Four coefficients per interval, in powers of the distance from its left knot; running integral at the knots.
  const coefficients = new Float64Array(4 * intervals);
  const running = new Float64Array(knots.length);
  for (let i = 0; i < intervals; i++) {
    const h = knots[i + 1] - knots[i];
    const chord = (values[i + 1] - values[i]) / h;
    const start = startSlopes[i];
    const bend = (start + endSlopes[i] - 2 * chord) / h;
    coefficients[4 * i] = values[i];
    coefficients[4 * i + 1] = start;
    coefficients[4 * i + 2] = (chord - start) / h - bend;
    coefficients[4 * i + 3] = bend / h;
    running[i + 1] = running[i] + area(coefficients, 4 * i, h);
  }

  let cursor = 0;
  const locate = (x: number): number => {
    cursor = findInterval(knots, x, cursor);
    return cursor;
  };

  const at = (x: number): number => {
    if (x >= lower && x < upper) {
      const i = locate(x);
      const d = x - knots[i];
      const k = 4 * i;
      return (
        coefficients[k] + d * (coefficients[k + 1] + d * (coefficients[k + 2] + d * coefficients[k + 3]))
      );
    }
    if (x === upper) return lastValue;
    refuse(x, lower, upper, outOfRange);
    const end = x < lower ? firstValue : lastValue;
    if (outOfRange === 'clamp') return end;
    return x < lower ? end + firstSlope * (x - lower) : end + lastSlope * (x - upper);
  };

  const slopeAt = (x: number): number => {
    if (x >= lower && x < upper) {
      const i = locate(x);
      const d = x - knots[i];
      const k = 4 * i;
      return coefficients[k + 1] + d * (2 * coefficients[k + 2] + 3 * d * coefficients[k + 3]);
    }
    if (x === upper) return lastSlope;
    refuse(x, lower, upper, outOfRange);
    if (outOfRange === 'clamp') return 0;
    return x < lower ? firstSlope : lastSlope;
  };

  /** Integral from `lower` to `x`; negative below. */
  const integralTo = (x: number): number => {
    if (x >= lower && x <= upper) {
      const i = locate(x);
      return running[i] + area(coefficients, 4 * i, x - knots[i]);
    }
    refuse(x, lower, upper, outOfRange);
    const d = x < lower ? x - lower : x - upper;
    const slope = outOfRange === 'clamp' ? 0 : x < lower ? firstSlope : lastSlope;
    const value = x < lower ? firstValue : lastValue;
    return (x < lower ? 0 : running[intervals]) + d * (value + 0.5 * slope * d);
  };

  return {
    lower,
    upper,
    knots,
    outOfRange,
    at,
    slopeAt,
    integral: (from, to) => integralTo(to) - integralTo(from),
    evaluate: (x) => {
      const where = x < lower ? 'below' : x > upper ? 'above' : 'inside';
      const how = where === 'inside' ? 'interpolated' : outOfRange === 'clamp' ? 'clamped' : 'extrapolated';
      return { value: at(x), slope: slopeAt(x), where, how };
    },
  };
}

function area(coefficients: Float64Array, k: number, d: number): number {
  return (
    d *
    (coefficients[k] +
      d * (coefficients[k + 1] / 2 + d * (coefficients[k + 2] / 3 + (d * coefficients[k + 3]) / 4)))
  );
}

/** Throws for a NaN or infinite abscissa, and for any outside the data under the policy `error`. */
function refuse(x: number, lower: number, upper: number, policy: OutOfRange): void {
  requireFinite('x', x);
  if (policy !== 'error') return;
  throw new MeopError({
    code: 'out-of-range',
    path: 'x',
    given: x,
    expected: `within the data, from ${lower} to ${upper}`,
    remedy: "Set outOfRange to 'clamp' or 'extrapolate' to go beyond them",
  });
}
