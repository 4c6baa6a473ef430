/** Roots of one equation in one unknown, always inside a proven bracket. */
import { MeopError } from '../units/errors';
import { invalidArgument, requireFinite, requireInteger, requireNonNegative } from './checks';

/** Bracket and accuracy of a root. */
export interface RootOptions {
  /** One end of the bracket; the function must have opposite signs (or a zero) at the two ends. */
  readonly lower: number;
  /** Other end of the bracket, above `lower`. */
  readonly upper: number;
  /** Absolute width of the bracket at which to stop. Default 0: continue to full double precision. */
  readonly tolerance?: number;
  /** Maximum number of iterations. Default 4000, more than the guarantee requires; a typical root takes about ten. */
  readonly maxIterations?: number;
}

/** A root, with the details of the search. */
export interface RootResult {
  readonly root: number;
  /** Function value at `root`. */
  readonly residual: number;
  /** `exact`: the function is zero there. `converged`: the bracket has the requested width. */
  readonly status: 'exact' | 'converged';
  readonly iterations: number;
  readonly evaluations: number;
  /** The final bracket, which contains the sign change. */
  readonly lower: number;
  readonly upper: number;
}

const HALF_ULP = 2 ** -53;
const TWO_ULP = 2 ** -51;

/**
 * Finds a root of `f` between `lower` and `upper` by inverse quadratic interpolation guarded by bisection.
 * The bracket at least halves in any three iterations, so the count is bounded whatever the function does.
 * Throws `not-bracketed` when the ends have one sign, `not-finite` when `f` gives NaN, `not-converged` at the limit.
 *
 * Source: T. R. Chandrupatla, "A new hybrid quadratic/bisection algorithm for finding the zero of a nonlinear
 * function without using derivatives", Advances in Engineering Software 28 (1997), 145-149.
 *
 * @example
 * findRoot((x) => x * x - 2, { lower: 0, upper: 2 }).root // => 1.4142135623730951
 */
export function findRoot(f: (x: number) => number, options: RootOptions): RootResult {
  const { lower, upper, tolerance = 0, maxIterations = 4000 } = options;
  checkBracket(lower, upper);
  requireNonNegative('tolerance', tolerance);
  requireInteger('maxIterations', maxIterations, 1);

  // (a, fa) is the newest point, (b, fb) the far end of the bracket, (c, fc) the point dropped last.
  let b = lower;
  let a = upper;
  let fb = value(f, b);
  let fa = value(f, a);
  let evaluations = 2;
  if (fb === 0) return finished(b, fb, 'exact', 0, evaluations, b, b);
  if (fa === 0) return finished(a, fa, 'exact', 0, evaluations, a, a);
  if (fa > 0 === fb > 0) throw notBracketed(lower, upper, fb, fa);
  let c = b;
  let fc = fb;
  let t = 0.5;
  let widthThreeAgo = Infinity;
  let widthTwoAgo = Infinity;
  let widthOneAgo = Infinity;

  for (let iterations = 1; ; iterations++) {
    const x = a + t * (b - a);
    const fx = value(f, x);
    evaluations++;
    if (fx > 0 === fa > 0) {
      c = a;
      fc = fa;
    } else {
      c = b;
      fc = fb;
      b = a;
      fb = fa;
    }
    a = x;
    fa = fx;
    const best = Math.abs(fa) < Math.abs(fb) ? a : b;
    const residual = best === a ? fa : fb;
    if (residual === 0) return finished(best, 0, 'exact', iterations, evaluations, best, best);
    const width = Math.abs(b - a);
    const resolution = 2 * HALF_ULP * Math.abs(best) + Number.MIN_VALUE;
    const least = Math.max(resolution, 0.5 * tolerance);
    if (width <= 2 * least) {
      return finished(best, residual, 'converged', iterations, evaluations, Math.min(a, b), Math.max(a, b));
    }
    if (iterations >= maxIterations) throw notConverged(iterations, Math.min(a, b), Math.max(a, b));

    const slow = width > 0.5 * widthThreeAgo;
    widthThreeAgo = widthTwoAgo;
    widthTwoAgo = widthOneAgo;
    widthOneAgo = width;
    t = 0.5;
    const xi = (a - b) / (c - b);
    const phi = (fa - fb) / (fc - fb);
    // Chandrupatla's test: inverse quadratic interpolation is monotone between the three points.
    if (!slow && phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi) {
      const quadratic =
        (fa / (fb - fa)) * (fc / (fb - fc)) + ((c - a) / (b - a)) * (fa / (fc - fa)) * (fb / (fc - fb));
      if (Number.isFinite(quadratic)) t = quadratic;
    }
    const margin = least / width;
    t = Math.min(1 - margin, Math.max(margin, t));
  }
}

/** Writes the function value into `out[0]` and its derivative into `out[1]`. */
export type ValueAndDerivative = (x: number, out: Float64Array, parameter: number) => void;

/** Options of `newtonBracketed` in addition to its bracket. */
export interface NewtonOptions {
  /** First trial point; default, or if outside: the middle of the bracket. */
  readonly guess?: number;
  /** Passed on to the function, so that one function without closures serves many solves. Default 0. */
  readonly parameter?: number;
  /**
   * Known sign of the crossing. If given, the two ends are not evaluated and the caller guarantees the bracket.
   * Default: both ends are evaluated and checked.
   */
  readonly trend?: 'rising' | 'falling';
  /** Scratch array of two numbers, to avoid allocation in repeated solves. */
  readonly workspace?: Float64Array;
  /** Maximum number of iterations. Default 200. */
  readonly maxIterations?: number;
}

const NO_OPTIONS: NewtonOptions = {};

/**
 * Finds a root by Newton's method kept inside a shrinking bracket, to full double precision; returns the root
 * alone. A step that would leave the bracket, or that fails to halve the step before the last, is replaced by
 * bisection. A zero, infinite or wrong-signed derivative only slows the search; one that is far too large would
 * end it early. Throws `not-bracketed`, `not-finite` or `not-converged` as `findRoot` does. Of infinite values
 * only the sign is used.
 *
 * Source: the usual combination of Newton's method with bisection, for example Dahlquist and Björck, "Numerical
 * Methods", section on Newton-Raphson (quoted from memory, not verified).
 *
 * @example
 * newtonBracketed((x, out) => { out[0] = x * x - 2; out[1] = 2 * x; }, 0, 2).toFixed(12) // => '1.414213562373'
 */
export function newtonBracketed(
  evaluate: ValueAndDerivative,
  lower: number,
  upper: number,
  options: NewtonOptions = NO_OPTIONS,
): number {
  if (!(lower < upper)) checkBracket(lower, upper);
  const parameter = options.parameter ?? 0;
  const out = options.workspace ?? new Float64Array(2);
  const maxIterations = options.maxIterations ?? 200;

  let rising = options.trend === 'rising';
  if (options.trend === undefined) {
    checkBracket(lower, upper);
    evaluate(lower, out, parameter);
    const atLower = out[0];
    if (atLower === 0) return lower;
    evaluate(upper, out, parameter);
    const atUpper = out[0];
    if (atUpper === 0) return upper;
    if (Number.isNaN(atLower)) throw notFinite(lower);
    if (Number.isNaN(atUpper)) throw notFinite(upper);
    if (atLower > 0 === atUpper > 0) throw notBracketed(lower, upper, atLower, atUpper);
    rising = atUpper > 0;
  }

  let low = lower;
  let high = upper;
  const guess = options.guess;
  let x = guess !== undefined && guess > low && guess < high ? guess : low + 0.5 * (high - low);
  let step = high - low;
  let stepBefore = step;
  for (let iteration = 0; iteration < maxIterations; iteration++) {
    evaluate(x, out, parameter);
    const fx = out[0];
    if (fx === 0) return x;
    if (fx > 0 === rising) high = x;
    else if (fx < 0 === rising) low = x;
    else throw notFinite(x);

    const newton = fx / out[1];
    let next = x - newton;
    // Convergence is quadratic: after a step of two units in the last place only rounding remains.
    if (newton !== 0 && Math.abs(newton) <= TWO_ULP * Math.abs(x)) return Math.min(high, Math.max(low, next));
    // Written so that a NaN or infinite step also falls through to bisection.
    if (next > low && next < high && 2 * Math.abs(newton) < Math.abs(stepBefore)) {
      stepBefore = step;
      step = newton;
    } else {
      stepBefore = step;
      step = 0.5 * (high - low);
      next = low + step;
    }
    if (next === low || next === high) return nearer(evaluate, low, high, out, parameter);
    x = next;
  }
  throw notConverged(maxIterations, low, high);
}

/** The end of a bracket of adjacent doubles at which the function is smaller. */
function nearer(
  evaluate: ValueAndDerivative,
  low: number,
  high: number,
  out: Float64Array,
  parameter: number,
): number {
  evaluate(low, out, parameter);
  const atLow = Math.abs(out[0]);
  evaluate(high, out, parameter);
  return atLow < Math.abs(out[0]) ? low : high;
}

function finished(
  root: number,
  residual: number,
  status: RootResult['status'],
  iterations: number,
  evaluations: number,
  lower: number,
  upper: number,
): RootResult {
  return { root, residual, status, iterations, evaluations, lower, upper };
}

function value(f: (x: number) => number, x: number): number {
  const fx = f(x);
  if (Number.isNaN(fx)) throw notFinite(x);
  return fx;
}

function checkBracket(lower: number, upper: number): void {
  requireFinite('lower', lower);
  requireFinite('upper', upper);
  if (!(lower < upper)) throw invalidArgument('upper', upper, `above lower (${lower})`);
}

function notFinite(x: number): MeopError {
  return new MeopError({
    code: 'not-finite',
    problem: `the function returned NaN at ${x}`,
    remedy: 'Narrow the bracket to where it is defined',
  });
}

function notBracketed(lower: number, upper: number, atLower: number, atUpper: number): MeopError {
  return new MeopError({
    code: 'not-bracketed',
    problem: `no sign change between lower = ${lower} (value ${atLower}) and upper = ${upper} (value ${atUpper})`,
    remedy: 'Widen or move the bracket until the function has opposite signs at its ends',
  });
}

function notConverged(iterations: number, lower: number, upper: number): MeopError {
  return new MeopError({
    code: 'not-converged',
    problem: `after ${iterations} iterations the root lies between ${lower} and ${upper}, wider than the tolerance`,
    remedy: 'Raise maxIterations or the tolerance',
  });
}
