/** Adaptive integration of a function to a stated accuracy. */
import { MeopError } from '../units/errors';
import { requireFinite, requireFiniteArray, requireInteger, requireNonNegative } from './checks';

/** Limits and accuracy of an integral. */
export interface IntegrateOptions {
  readonly lower: number;
  /** Upper limit; may be below `lower`, which changes the sign of the integral. Both limits must be finite. */
  readonly upper: number;
  /** Absolute tolerance. Default 0. */
  readonly absoluteTolerance?: number;
  /**
   * Relative tolerance. Default 1e-10. The goal is the larger of the absolute tolerance and this times the
   * integral.
   */
  readonly relativeTolerance?: number;
  /**
   * Points where the function has a kink, a jump or a singularity. In any order; points outside the limits are
   * ignored.
   */
  readonly breakpoints?: readonly number[];
  /** Maximum number of intervals. Default 500. */
  readonly maxIntervals?: number;
}

/** An integral with its estimated error. */
export interface IntegrateResult {
  readonly value: number;
  /** Estimated absolute error; usually far above the true one. */
  readonly error: number;
  /** `converged`, or the reason for missing the goal. `value` is then the best result. */
  readonly status: 'converged' | 'interval-limit' | 'too-narrow';
  readonly message: string;
  readonly evaluations: number;
  readonly intervals: number;
}

/**
 * Nodes and weights of the 7-point Gauss rule extended to 15 points by Kronrod; positive half, outermost first.
 * Source: R. Piessens and others, QUADPACK (Springer 1983), routine QK15, rounded to double.
 */
export const KRONROD_15 = {
  nodes: [
    0.9914553711208126, 0.9491079123427585, 0.8648644233597691, 0.7415311855993945, 0.5860872354676911,
    0.4058451513773972, 0.20778495500789848, 0,
  ],
  weights: [
    0.022935322010529224, 0.06309209262997856, 0.10479001032225019, 0.14065325971552592, 0.1690047266392679,
    0.19035057806478542, 0.20443294007529889, 0.20948214108472782,
  ],
  /** Weights of the 7-point Gauss rule at the odd-numbered nodes. */
  gaussWeights: [0.1294849661688697, 0.27970539148927664, 0.3818300505051189, 0.4179591836734694],
} as const;

/** Intervals of this fraction of the whole occur only at a singularity that cannot be integrated. */
const NARROWEST = 1e-40;

interface Piece {
  readonly lower: number;
  readonly upper: number;
  readonly value: number;
  readonly error: number;
}

/**
 * Integrates `f` by Gauss-Kronrod 7/15, dividing the intervals with the largest error. The ends of the interval
 * and the breakpoints are never evaluated, so an integrable singularity may be there. Throws `not-finite` when `f`
 * gives a value that is not finite inside.
 *
 * Source: R. Piessens and others, QUADPACK (Springer 1983), strategy of QAG and error estimate of QK15.
 *
 * @example
 * integrate((x) => Math.exp(x), { lower: 0, upper: 1 }).value.toFixed(12) // => '1.718281828459'
 */
export function integrate(f: (x: number) => number, options: IntegrateOptions): IntegrateResult {
  const {
    lower,
    upper,
    absoluteTolerance = 0,
    relativeTolerance = 1e-10,
    breakpoints = [],
    maxIntervals = 500,
  } = options;
  requireFinite('lower', lower);
  requireFinite('upper', upper);
  requireNonNegative('absoluteTolerance', absoluteTolerance);
  requireNonNegative('relativeTolerance', relativeTolerance);
  requireInteger('maxIntervals', maxIntervals, 1);
  requireFiniteArray('breakpoints', breakpoints, 0);

  const least = Math.min(lower, upper);
  const most = Math.max(lower, upper);
  const inside = breakpoints.filter((x) => x > least && x < most);
  const ends = [...new Set([least, ...inside, most])].sort((a, b) => a - b);
  const pieces: Piece[] = [];
  for (let i = 1; i < ends.length; i++) pieces.push(kronrod(f, ends[i - 1], ends[i]));

  let evaluations = 15 * pieces.length;
  let value = 0;
  let error = 0;
  let status: IntegrateResult['status'] = 'converged';
  for (;;) {
    // Summed again each time, so that the error of a divided interval does not remain in the total.
    value = 0;
    error = 0;
    let worst = 0;
    pieces.forEach((piece, i) => {
      value += piece.value;
      error += piece.error;
      if (piece.error > pieces[worst].error) worst = i;
    });
    if (error <= Math.max(absoluteTolerance, relativeTolerance * Math.abs(value))) break;
    if (pieces.length >= maxIntervals) {
      status = 'interval-limit';
      break;
    }
    const piece = pieces[worst];
    const middle = 0.5 * (piece.lower + piece.upper);
    const width = piece.upper - piece.lower;
    const size = Math.max(Math.abs(piece.lower), Math.abs(piece.upper));
    if (width <= 100 * Number.EPSILON * size || width <= NARROWEST * (most - least)) {
      status = 'too-narrow';
      break;
    }
    pieces[worst] = kronrod(f, piece.lower, middle);
    pieces.push(kronrod(f, middle, piece.upper));
    evaluations += 30;
  }
  const intervals = pieces.length;
  if (upper < lower) value = -value;
  return { value, error, status, message: describe(status, error, intervals), evaluations, intervals };
}

function kronrod(f: (x: number) => number, lower: number, upper: number): Piece {
  const { nodes, weights, gaussWeights } = KRONROD_15;
  const middle = 0.5 * (lower + upper);
  const half = 0.5 * (upper - lower);
  const atMiddle = finite(f, middle);
  let fine = atMiddle * weights[7];
  let coarse = atMiddle * gaussWeights[3];
  let size = Math.abs(atMiddle) * weights[7];
  const values = new Float64Array(14);
  for (let i = 0; i < 7; i++) {
    const offset = half * nodes[i];
    const left = finite(f, middle - offset);
    const right = finite(f, middle + offset);
    values[2 * i] = left;
    values[2 * i + 1] = right;
    fine += weights[i] * (left + right);
    size += weights[i] * (Math.abs(left) + Math.abs(right));
    if (i % 2 === 1) coarse += gaussWeights[(i - 1) / 2] * (left + right);
  }
  // Mean deviation of the function from its mean, which distinguishes a rough function from a smooth one (QUADPACK's resasc).
  const mean = 0.5 * fine;
  let spread = Math.abs(atMiddle - mean) * weights[7];
  for (let i = 0; i < 7; i++) {
    const deviation = Math.abs(values[2 * i] - mean) + Math.abs(values[2 * i + 1] - mean);
    spread += weights[i] * deviation;
  }
  spread *= half;
  let error = Math.abs(fine - coarse) * half;
  if (spread > 0 && error > 0) error = spread * Math.min(1, ((200 * error) / spread) ** 1.5);
  const roundOff = 50 * Number.EPSILON * size * half;
  // Below this the difference of the two rules is rounding.
  return {
    lower,
    upper,
    value: fine * half,
    error: error < roundOff ? Math.min(error, 2 * Number.EPSILON * size * half) : error,
  };
}

function finite(f: (x: number) => number, x: number): number {
  const fx = f(x);
  if (!Number.isFinite(fx)) {
    throw new MeopError({
      code: 'not-finite',
      problem: `the integrand returned ${fx} at ${x}`,
      remedy: 'Put a breakpoint at a singularity, or end the interval there',
    });
  }
  return fx;
}

function describe(status: IntegrateResult['status'], error: number, intervals: number): string {
  if (status === 'converged') return `Estimated error ${error.toExponential(1)} on ${intervals} intervals.`;
  const reason =
    status === 'interval-limit'
      ? 'the limit of intervals was reached'
      : 'intervals cannot be divided further';
  return `Estimated error ${error.toExponential(1)} is above the goal: ${reason} (${intervals}). Give the breakpoints or loosen the tolerance.`;
}
