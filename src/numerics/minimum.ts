/** Minimum of a function of one variable in an interval. */
import { MeopError } from '../units/errors';
import { invalidArgument, requireFinite, requireInteger, requirePositive } from './checks';

/** Interval and accuracy of a minimum. */
export interface MinimumOptions {
  readonly lower: number;
  readonly upper: number;
  /**
   * Relative accuracy of the location. Default 1.5e-8, the square root of the spacing of doubles: a minimum is
   * flat, so function values do not determine its location more accurately.
   */
  readonly relativeTolerance?: number;
  /** Absolute accuracy of the location, for minima near zero. Default 1e-12 of the interval. */
  readonly absoluteTolerance?: number;
  /** Maximum number of iterations. Default 200. */
  readonly maxIterations?: number;
}

/** A minimum, with the details of the search. */
export interface MinimumResult {
  /** Location of the minimum. */
  readonly x: number;
  readonly value: number;
  /** `end`: the function decreases towards an end of the interval, so the minimum may be outside. */
  readonly status: 'inside' | 'end';
  readonly iterations: number;
  readonly evaluations: number;
}

/** (3 - sqrt(5)) / 2. */
const GOLDEN = 0.3819660112501051;

/**
 * Finds a local minimum of `f` on an interval by parabolas guarded by golden sections; when `f` has one valley there,
 * that is the minimum. For a maximum, minimise the negative. The ends themselves are not evaluated.
 * Throws `not-finite` when `f` gives NaN, `not-converged` at the iteration limit.
 *
 * Source: R. P. Brent, Algorithms for Minimization without Derivatives (Prentice-Hall 1973), chapter 5.
 *
 * @example
 * findMinimum((x) => (x - 2) ** 2 + 1, { lower: 0, upper: 5 }).x.toFixed(6) // => '2.000000'
 */
export function findMinimum(f: (x: number) => number, options: MinimumOptions): MinimumResult {
  const { lower, upper, relativeTolerance = 1.5e-8, maxIterations = 200 } = options;
  requireFinite('lower', lower);
  requireFinite('upper', upper);
  if (!(lower < upper)) throw invalidArgument('upper', upper, `above lower (${lower})`);
  const absoluteTolerance = options.absoluteTolerance ?? 1e-12 * (upper - lower);
  requirePositive('relativeTolerance', relativeTolerance);
  requirePositive('absoluteTolerance', absoluteTolerance);
  requireInteger('maxIterations', maxIterations, 1);

  let a = lower;
  let b = upper;
  // x is the best point, w the second best, v the one w replaced.
  let x = a + GOLDEN * (b - a);
  let w = x;
  let v = x;
  let fx = value(f, x);
  let fw = fx;
  let fv = fx;
  let step = 0;
  let stepBefore = 0;
  for (let iterations = 0; iterations < maxIterations; iterations++) {
    const middle = 0.5 * (a + b);
    const tolerance = relativeTolerance * Math.abs(x) + absoluteTolerance;
    if (Math.abs(x - middle) <= 2 * tolerance - 0.5 * (b - a)) {
      const atEnd = x - lower <= 2 * tolerance || upper - x <= 2 * tolerance;
      return { x, value: fx, status: atEnd ? 'end' : 'inside', iterations, evaluations: iterations + 1 };
    }
    let parabolic = false;
    if (Math.abs(stepBefore) > tolerance) {
      const r = (x - w) * (fx - fv);
      let q = (x - v) * (fx - fw);
      let p = (x - v) * q - (x - w) * r;
      q = 2 * (q - r);
      if (q > 0) p = -p;
      q = Math.abs(q);
      if (Math.abs(p) < Math.abs(0.5 * q * stepBefore) && p > q * (a - x) && p < q * (b - x)) {
        stepBefore = step;
        step = p / q;
        const u = x + step;
        if (u - a < 2 * tolerance || b - u < 2 * tolerance) step = x < middle ? tolerance : -tolerance;
        parabolic = true;
      }
    }
    if (!parabolic) {
      stepBefore = x < middle ? b - x : a - x;
      step = GOLDEN * stepBefore;
    }
    const u = Math.abs(step) >= tolerance ? x + step : x + (step > 0 ? tolerance : -tolerance);
    const fu = value(f, u);
    if (fu <= fx) {
      if (u < x) b = x;
      else a = x;
      v = w;
      fv = fw;
      w = x;
      fw = fx;
      x = u;
      fx = fu;
    } else {
      if (u < x) a = u;
      else b = u;
      if (fu <= fw || w === x) {
        v = w;
        fv = fw;
        w = u;
        fw = fu;
      } else if (fu <= fv || v === x || v === w) {
        v = u;
        fv = fu;
      }
    }
  }
  throw new MeopError({
    code: 'not-converged',
    problem: `after ${maxIterations} iterations the minimum lies between ${a} and ${b}, wider than the tolerance`,
    remedy: 'Raise maxIterations or the tolerance',
  });
}

function value(f: (x: number) => number, x: number): number {
  const fx = f(x);
  if (Number.isNaN(fx)) {
    throw new MeopError({
      code: 'not-finite',
      problem: `the function returned NaN at ${x}`,
      remedy: 'Narrow the interval to where it is defined',
    });
  }
  return fx;
}
