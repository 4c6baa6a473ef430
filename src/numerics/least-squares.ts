/** Linear least squares: plain, weighted and robust, with the covariance of the coefficients. */
import { MeopError } from '../units/errors';
import {
  invalidArgument,
  requireFiniteArray,
  requireInteger,
  requireNonNegative,
  requireSameLength,
} from './checks';
import { backSubstitute, inverseNormal, triangularize } from './householder';
import { median } from './statistics';

/** Observations, and the columns that explain them. */
export interface LinearFitOptions {
  /** One column for each coefficient, with its factor at each observation. Give a column of ones for a constant. */
  readonly columns: readonly ArrayLike<number>[];
  readonly observations: ArrayLike<number>;
  /** Weight of the square of each residual, the inverse of its variance. Zero or above. Default: all one. */
  readonly weights?: ArrayLike<number>;
  /**
   * `estimated` (default): the variance is estimated from the residuals, and weights are relative. `known`: the
   * weights are inverse variances, and the covariance follows from them.
   */
  readonly scatter?: 'estimated' | 'known';
  /**
   * Default `none`. `huber` limits the influence of outliers, `tukey` removes it: beyond 4.685 standard deviations
   * they are ignored.
   */
  readonly robust?: 'none' | 'huber' | 'tukey';
  /** Maximum number of robust reweightings. Default 200. */
  readonly maxIterations?: number;
}

/** A linear fit: coefficients, their uncertainty, and the residuals. */
export interface LinearFit {
  readonly coefficients: Float64Array;
  /** Covariance of the coefficients, row by row. */
  readonly covariance: Float64Array;
  /** Standard errors, the square roots of the diagonal of the covariance. */
  readonly standardErrors: Float64Array;
  /** Observed minus fitted values, not weighted. */
  readonly residuals: Float64Array;
  readonly degreesOfFreedom: number;
  /**
   * Standard deviation of an observation of weight one: from the residuals, or for a robust fit from their median
   * size.
   */
  readonly scale: number;
  /** Fraction of its weight that each observation kept; 1 throughout unless robust. */
  readonly robustness: Float64Array;
  /** Number of fits: 1 unless robust. */
  readonly iterations: number;
}

const DEPENDENT = 1e-11;
/** 95 % as efficient as least squares on normal data: Holland and Welsch (1977). */
const HUBER_LIMIT = 1.345;
const TUKEY_LIMIT = 4.685;
/** Median absolute deviation of a normal sample times this is its standard deviation. */
const MAD_TO_SIGMA = 1.482602218505602;

/**
 * Fits observations by a sum of coefficients times columns, by Householder QR.
 * Throws `singular-matrix` when a column depends on those before it, `not-converged` when robust reweighting does not settle.
 *
 * Robust fits: iteratively reweighted least squares, scale from the median absolute residual.
 * Source: P. J. Huber, Robust Statistics (Wiley 1981), 7.8 (algorithm) and 7.6 (covariance); P. W. Holland and
 * R. E. Welsch, "Robust regression using iteratively reweighted least-squares", Comm. Statist. A6 (1977), 813-827.
 *
 * @example
 * Array.from(linearFit({ columns: [[1, 1, 1], [0, 1, 2]], observations: [1, 3, 5] }).coefficients).map((c) => c.toFixed(6)) // => ['1.000000', '2.000000']
 */
export function linearFit(options: LinearFitOptions): LinearFit {
  const {
    columns,
    observations,
    weights,
    scatter = 'estimated',
    robust = 'none',
    maxIterations = 200,
  } = options;
  const m = observations.length;
  const n = columns.length;
  checkFit(options);
  requireInteger('maxIterations', maxIterations, 1);
  const robustness = new Float64Array(m).fill(1);
  const matrix = new Float64Array(m * n);
  const rhs = new Float64Array(m);
  const coefficients = new Float64Array(n);
  const residuals = new Float64Array(m);

  const solve = (): void => {
    for (let i = 0; i < m; i++) {
      const root = Math.sqrt((weights?.[i] ?? 1) * robustness[i]);
      for (let j = 0; j < n; j++) matrix[i * n + j] = root * columns[j][i];
      rhs[i] = root * observations[i];
    }
    const dependent = triangularize(matrix, m, n, rhs, DEPENDENT);
    if (dependent >= 0) {
      throw new MeopError({
        code: 'singular-matrix',
        path: `columns[${dependent}]`,
        problem:
          'is a combination of those before it, or carries no weight, so that its coefficient is undetermined',
        remedy: 'Omit it or give more varied observations',
      });
    }
    backSubstitute(matrix, n, rhs, coefficients);
    for (let i = 0; i < m; i++) {
      let fitted = 0;
      for (let j = 0; j < n; j++) fitted += coefficients[j] * columns[j][i];
      residuals[i] = observations[i] - fitted;
    }
  };

  solve();
  let iterations = 1;
  let scale = Math.sqrt(weightedSquares(residuals, weights) / Math.max(1, m - n));
  if (robust !== 'none') {
    // A redescending weight needs a starting point that is not affected by outliers.
    const stages = robust === 'tukey' ? (['huber', 'tukey'] as const) : (['huber'] as const);
    for (const stage of stages) {
      for (let settled = false; !settled; ) {
        if (iterations >= maxIterations) {
          throw new MeopError({
            code: 'not-converged',
            problem: `the robust fit did not converge in ${iterations} fits`,
            remedy: "Raise maxIterations, or use 'huber'",
          });
        }
        scale =
          MAD_TO_SIGMA *
          median(Float64Array.from(residuals, (r, i) => Math.abs(r) * Math.sqrt(weights?.[i] ?? 1)));
        // More than half of the observations are fitted exactly: no scale for the others exists.
        if (scale === 0) break;
        let change = 0;
        for (let i = 0; i < m; i++) {
          const share = robustWeight(stage, (residuals[i] * Math.sqrt(weights?.[i] ?? 1)) / scale);
          change = Math.max(change, Math.abs(share - robustness[i]));
          robustness[i] = share;
        }
        solve();
        iterations++;
        settled = change < 1e-10;
      }
    }
  }

  const covariance = inverseNormal(matrix, n);
  let factor = scatter === 'known' ? 1 : scale * scale;
  if (robust !== 'none' && scale > 0) {
    // Huber's covariance belongs to the unweighted design; the weights only serve to find the solution.
    robustness.forEach((_, i) => {
      const root = Math.sqrt(weights?.[i] ?? 1);
      for (let j = 0; j < n; j++) matrix[i * n + j] = root * columns[j][i];
    });
    triangularize(matrix, m, n, rhs, DEPENDENT);
    covariance.set(inverseNormal(matrix, n));
    factor *= huberFactor(robust, residuals, weights, scale, n);
  }
  for (let k = 0; k < n * n; k++) covariance[k] *= factor;
  const standardErrors = Float64Array.from({ length: n }, (_, j) => Math.sqrt(covariance[j * n + j]));
  return {
    coefficients,
    covariance,
    standardErrors,
    residuals,
    degreesOfFreedom: m - n,
    scale,
    robustness,
    iterations,
  };
}

function robustWeight(kind: 'huber' | 'tukey', u: number): number {
  const size = Math.abs(u);
  if (kind === 'huber') return size <= HUBER_LIMIT ? 1 : HUBER_LIMIT / size;
  return size < TUKEY_LIMIT ? (1 - (u / TUKEY_LIMIT) ** 2) ** 2 : 0;
}

/** Ratio of the variance of the robust estimate to scale^2: Huber (1981), equation 7.6.5, with psi = u weight(u). */
function huberFactor(
  kind: 'huber' | 'tukey',
  residuals: Float64Array,
  weights: ArrayLike<number> | undefined,
  scale: number,
  n: number,
): number {
  const m = residuals.length;
  let squares = 0;
  let slopes = 0;
  let slopeSquares = 0;
  for (let i = 0; i < m; i++) {
    const u = (residuals[i] * Math.sqrt(weights?.[i] ?? 1)) / scale;
    const psi = u * robustWeight(kind, u);
    const v = (u / TUKEY_LIMIT) ** 2;
    const slope = kind === 'huber' ? (Math.abs(u) <= HUBER_LIMIT ? 1 : 0) : v < 1 ? (1 - v) * (1 - 5 * v) : 0;
    squares += psi * psi;
    slopes += slope;
    slopeSquares += slope * slope;
  }
  const mean = slopes / m;
  const spread = slopeSquares / m - mean * mean;
  const correction = 1 + ((n / m) * spread) / (mean * mean);
  return (correction * correction * squares) / (m - n) / (mean * mean);
}

function weightedSquares(residuals: Float64Array, weights: ArrayLike<number> | undefined): number {
  let sum = 0;
  for (let i = 0; i < residuals.length; i++) sum += (weights?.[i] ?? 1) * residuals[i] * residuals[i];
  return sum;
}

function checkFit(options: LinearFitOptions): void {
  const { columns, observations, weights, scatter = 'estimated', robust = 'none' } = options;
  requireInteger('columns.length', columns.length, 1);
  requireFiniteArray('observations', observations);
  columns.forEach((column, j) => {
    requireSameLength('observations', observations, `columns[${j}]`, column);
    requireFiniteArray(`columns[${j}]`, column);
  });
  if (weights !== undefined) {
    requireSameLength('observations', observations, 'weights', weights);
    for (let i = 0; i < weights.length; i++) requireNonNegative(`weights[${i}]`, weights[i]);
  }
  const least = scatter === 'known' && robust === 'none' ? columns.length : columns.length + 1;
  if (observations.length < least) {
    throw invalidArgument(
      'observations.length',
      observations.length,
      `at least ${least} for ${columns.length} coefficients`,
    );
  }
}
