/** Small dense systems of linear equations by LU factors with partial pivoting. Matrices are row by row. */
import { MeopError } from '../units/errors';
import { requireFiniteArray, requireInteger } from './checks';

/**
 * Kernel: overwrites the n x n matrix with its LU factors (unit diagonal in L) and `pivots` with the row
 * exchanges. Returns false when a pivot is exactly zero or not finite. Does not check its arguments.
 *
 * Source: Golub and Van Loan, Matrix Computations, outer-product Gaussian elimination with partial pivoting.
 *
 * @example
 * luFactor(Float64Array.of(2, 1, 1, 3), 2, new Int32Array(2)) // => true
 */
export function luFactor(matrix: Float64Array, n: number, pivots: Int32Array): boolean {
  for (let k = 0; k < n; k++) {
    let pivot = k;
    let largest = Math.abs(matrix[k * n + k]);
    for (let i = k + 1; i < n; i++) {
      const size = Math.abs(matrix[i * n + k]);
      if (size > largest) {
        largest = size;
        pivot = i;
      }
    }
    pivots[k] = pivot;
    // Written so that NaN fails as well.
    if (!(largest > 0 && largest < Infinity)) return false;
    if (pivot !== k) {
      for (let j = 0; j < n; j++) {
        const held = matrix[k * n + j];
        matrix[k * n + j] = matrix[pivot * n + j];
        matrix[pivot * n + j] = held;
      }
    }
    const inverse = 1 / matrix[k * n + k];
    for (let i = k + 1; i < n; i++) {
      const factor = matrix[i * n + k] * inverse;
      matrix[i * n + k] = factor;
      for (let j = k + 1; j < n; j++) {
        matrix[i * n + j] = matrix[i * n + j] - factor * matrix[k * n + j];
      }
    }
  }
  return true;
}

/**
 * Kernel: overwrites `rhs` with the solution, given the factors and pivots of `luFactor`.
 *
 * @example
 * (() => { const x = Float64Array.of(6); luSolve(Float64Array.of(3), 1, new Int32Array(1), x); return x[0]; })() // => 2
 */
export function luSolve(factors: Float64Array, n: number, pivots: Int32Array, rhs: Float64Array): void {
  for (let k = 0; k < n; k++) {
    const pivot = pivots[k];
    if (pivot !== k) {
      const held = rhs[k];
      rhs[k] = rhs[pivot];
      rhs[pivot] = held;
    }
  }
  for (let i = 1; i < n; i++) {
    let sum = rhs[i];
    for (let j = 0; j < i; j++) sum -= factors[i * n + j] * rhs[j];
    rhs[i] = sum;
  }
  for (let i = n - 1; i >= 0; i--) {
    let sum = rhs[i];
    for (let j = i + 1; j < n; j++) sum -= factors[i * n + j] * rhs[j];
    rhs[i] = sum / factors[i * n + i];
  }
}

/**
 * Solves matrix x = rhs for a square matrix given row by row. Throws `singular-matrix` when a pivot vanishes
 * to rounding against the largest entry.
 *
 * @example
 * Array.from(solveLinear([2, 1, 1, 3], [3, 5])).map((v) => v.toFixed(3)) // => ['0.800', '1.400']
 */
export function solveLinear(matrix: ArrayLike<number>, rhs: ArrayLike<number>): Float64Array {
  const n = rhs.length;
  requireInteger('rhs.length', n, 1);
  requireFiniteArray('matrix', matrix, n * n);
  requireFiniteArray('rhs', rhs);
  if (matrix.length !== n * n) {
    throw new MeopError({
      code: 'invalid-argument',
      path: 'matrix',
      given: matrix.length,
      expected: `a list of ${n * n} entries for ${n} equations`,
    });
  }
  const factors = Float64Array.from(matrix);
  const largest = factors.reduce((most, entry) => Math.max(most, Math.abs(entry)), 0);
  const pivots = new Int32Array(n);
  let regular = luFactor(factors, n, pivots);
  for (let i = 0; i < n; i++) {
    if (!(Math.abs(factors[i * n + i]) > n * Number.EPSILON * largest)) regular = false;
  }
  if (!regular) {
    throw new MeopError({
      code: 'singular-matrix',
      problem: 'the equations have no unique solution: a pivot vanishes',
      remedy: 'Look for equations that repeat each other, or rescale them',
    });
  }
  const solution = Float64Array.from(rhs);
  luSolve(factors, n, pivots, solution);
  return solution;
}
