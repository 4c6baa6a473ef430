/** Least squares of an overdetermined system by orthogonal reflections. Matrices are row by row. */

/**
 * Kernel: reduces the m x n matrix (m >= n) to upper triangular form by Householder reflections, applying them to
 * `rhs` as well. Afterwards the triangle R is in the first n rows, the first n entries of `rhs` are the right-hand
 * side of R x, and the rest of `rhs` has the norm of the residual. Returns the index of the first column that is
 * linearly dependent on those before it, within `tolerance` of the column norm, or -1 when there is none.
 *
 * Source: Golub and Van Loan, Matrix Computations, Householder QR; a reflection that avoids cancellation.
 */
export function triangularize(
  matrix: Float64Array,
  m: number,
  n: number,
  rhs: Float64Array,
  tolerance: number,
): number {
  let dependent = -1;
  for (let k = 0; k < n; k++) {
    // Reflections preserve the norm of the whole column; its part above the diagonal is final.
    let above = 0;
    let below = 0;
    for (let i = 0; i < k; i++) above = Math.hypot(above, matrix[i * n + k]);
    for (let i = k; i < m; i++) below = Math.hypot(below, matrix[i * n + k]);
    if (!(below > tolerance * Math.hypot(above, below))) {
      if (dependent < 0) dependent = k;
      if (!(below > 0)) continue;
    }
    const head = matrix[k * n + k];
    const diagonal = head > 0 ? -below : below;
    const pivot = head - diagonal;
    matrix[k * n + k] = pivot;
    // Reflection I - v v' / (v' v / 2), with v' v / 2 = -diagonal * pivot.
    const scale = -diagonal * pivot;
    for (let j = k + 1; j < n; j++) {
      let sum = 0;
      for (let i = k; i < m; i++) sum += matrix[i * n + k] * matrix[i * n + j];
      const factor = sum / scale;
      for (let i = k; i < m; i++) matrix[i * n + j] -= factor * matrix[i * n + k];
    }
    let sum = 0;
    for (let i = k; i < m; i++) sum += matrix[i * n + k] * rhs[i];
    const factor = sum / scale;
    for (let i = k; i < m; i++) rhs[i] -= factor * matrix[i * n + k];
    matrix[k * n + k] = diagonal;
  }
  return dependent;
}

/** Kernel: solves R x = rhs with the triangle in the first n rows; x may be `rhs` itself. */
export function backSubstitute(matrix: Float64Array, n: number, rhs: Float64Array, x: Float64Array): void {
  for (let i = n - 1; i >= 0; i--) {
    let sum = rhs[i];
    for (let j = i + 1; j < n; j++) sum -= matrix[i * n + j] * x[j];
    x[i] = sum / matrix[i * n + i];
  }
}

/** The inverse of R'R, row by row: the covariance of the coefficients for observations of unit variance. */
export function inverseNormal(matrix: Float64Array, n: number): Float64Array {
  // Columns of the inverse of R, which is upper triangular too.
  const inverse = new Float64Array(n * n);
  for (let j = 0; j < n; j++) {
    inverse[j * n + j] = 1 / matrix[j * n + j];
    for (let i = j - 1; i >= 0; i--) {
      let sum = 0;
      for (let k = i + 1; k <= j; k++) sum += matrix[i * n + k] * inverse[k * n + j];
      inverse[i * n + j] = -sum / matrix[i * n + i];
    }
  }
  const product = new Float64Array(n * n);
  for (let i = 0; i < n; i++) {
    for (let j = i; j < n; j++) {
      let sum = 0;
      for (let k = j; k < n; k++) sum += inverse[i * n + k] * inverse[j * n + k];
      product[i * n + j] = sum;
      product[j * n + i] = sum;
    }
  }
  return product;
}
