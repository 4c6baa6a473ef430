/** Evaluation of Chebyshev series. */

/**
 * Kernel: sum of coefficients[k] T_k(t) for t in [-1, 1], by Clenshaw's recurrence.
 * Source: C. W. Clenshaw, "A note on the summation of Chebyshev series", MTAC 9 (1955), 118-120.
 *
 * @example
 * chebyshevSum([1, 2, 3], 0.5) // => 0.5
 */
export function chebyshevSum(coefficients: readonly number[], t: number): number {
  let next = 0;
  let afterNext = 0;
  for (let k = coefficients.length - 1; k > 0; k--) {
    const current = 2 * t * next - afterNext + coefficients[k];
    afterNext = next;
    next = current;
  }
  return t * next - afterNext + coefficients[0];
}
