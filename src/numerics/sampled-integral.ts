/** Integrals of sampled data: trapezoids and parabolas, running or total, at any spacing. */
import { requireFiniteArray, requireIncreasing, requireSameLength } from './checks';

/**
 * Running integral by the trapezoidal rule: entry i is the integral from the first abscissa to x[i], entry 0 is 0.
 * Exact for straight lines between samples.
 *
 * @example
 * Array.from(cumulativeTrapezoid([0, 1, 3], [2, 4, 4])) // => [0, 3, 11]
 */
export function cumulativeTrapezoid(x: ArrayLike<number>, y: ArrayLike<number>): Float64Array {
  checkSamples(x, y);
  const running = new Float64Array(x.length);
  for (let i = 1; i < x.length; i++) {
    const step = x[i] - x[i - 1];
    running[i] = running[i - 1] + 0.5 * step * (y[i - 1] + y[i]);
  }
  return running;
}

/**
 * Running integral by parabolas through three neighbouring samples, irregular spacing allowed. Intervals are
 * grouped in pairs, so the total is the composite Simpson rule; an odd last interval uses the last three samples.
 * Exact for parabolas at any spacing. With two samples it is the trapezoidal rule.
 *
 * Source: Simpson's rule for unequal intervals, the integral of the Lagrange parabola through three points.
 *
 * @example
 * Array.from(cumulativeSimpson([0, 1, 2], [0, 1, 4])).map((v) => v.toFixed(6)) // => ['0.000000', '0.333333', '2.666667']
 */
export function cumulativeSimpson(x: ArrayLike<number>, y: ArrayLike<number>): Float64Array {
  checkSamples(x, y);
  const count = x.length;
  if (count < 3) return cumulativeTrapezoid(x, y);
  const running = new Float64Array(count);
  for (let i = 0; i < count - 1; i++) {
    const pairStart = i - (i % 2);
    const first = pairStart + 2 < count ? pairStart : count - 3;
    running[i + 1] = running[i] + parabolaPart(x, y, first, i - first);
  }
  return running;
}

/** Integral, over its first (part 0) or second (part 1) interval, of the parabola through samples i, i+1, i+2. */
function parabolaPart(x: ArrayLike<number>, y: ArrayLike<number>, i: number, part: number): number {
  // The second interval is the first one in reverse order.
  const near = part === 0 ? i : i + 2;
  const far = part === 0 ? i + 2 : i;
  const h = Math.abs(x[i + 1] - x[near]);
  const k = Math.abs(x[far] - x[i + 1]);
  const yNear = y[near];
  const yMiddle = y[i + 1];
  const yFar = y[far];
  const curvature = ((yFar - yMiddle) / k - (yMiddle - yNear) / h) / (h + k);
  return h * (0.5 * (yNear + yMiddle) - (h * h * curvature) / 6);
}

/**
 * Total integral by the trapezoidal rule.
 *
 * @example
 * trapezoid([0, 1, 3], [2, 4, 4]) // => 11
 */
export function trapezoid(x: ArrayLike<number>, y: ArrayLike<number>): number {
  return cumulativeTrapezoid(x, y)[x.length - 1];
}

/**
 * Total integral by parabolas, any spacing.
 *
 * @example
 * simpson([0, 1, 2], [0, 1, 8]) // => 4
 */
export function simpson(x: ArrayLike<number>, y: ArrayLike<number>): number {
  return cumulativeSimpson(x, y)[x.length - 1];
}

function checkSamples(x: ArrayLike<number>, y: ArrayLike<number>): void {
  requireSameLength('x', x, 'y', y);
  requireIncreasing('x', x);
  requireFiniteArray('y', y);
}
