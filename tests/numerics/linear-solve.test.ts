import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { luFactor, luSolve, solveLinear } from '../../src/numerics/linear-solve';
import { codeOf } from '../error-code';

describe('solveLinear', () => {
  it('solves small systems exactly', () => {
    // By hand: 2x + y = 3, x + 3y = 5.
    const [x, y] = solveLinear([2, 1, 1, 3], [3, 5]);
    expect(x).toBeCloseTo(0.8, 15);
    expect(y).toBeCloseTo(1.4, 15);
    expect(Array.from(solveLinear([0, 1, 1, 0], [7, 9]))).toEqual([9, 7]);
    expect(Array.from(solveLinear([4], [2]))).toEqual([0.5]);
  });

  it('gives back the vector a diagonally dominant matrix was applied to', () => {
    const entry = fc.double({ min: -1, max: 1, noNaN: true });
    fc.assert(
      fc.property(
        fc
          .integer({ min: 1, max: 7 })
          .chain((n) =>
            fc.tuple(
              fc.array(entry, { minLength: n * n, maxLength: n * n }),
              fc.array(entry, { minLength: n, maxLength: n }),
            ),
          ),
        ([entries, x]) => {
          const n = x.length;
          const matrix = entries.map((value, k) => (k % (n + 1) === 0 ? value + 2 * n : value));
          const rhs = x.map((_, i) => x.reduce((sum, value, j) => sum + matrix[i * n + j] * value, 0));
          solveLinear(matrix, rhs).forEach((value, i) => {
            expect(Math.abs(value - x[i])).toBeLessThan(1e-14);
          });
        },
      ),
    );
  });

  it('pivots: a tiny leading entry does no harm', () => {
    const [x, y] = solveLinear([1e-20, 1, 1, 1], [1, 2]);
    expect(x).toBeCloseTo(1, 15);
    expect(y).toBeCloseTo(1, 15);
  });

  it('leaves its arguments alone and refuses bad ones', () => {
    const matrix = [2, 1, 1, 3];
    solveLinear(matrix, [3, 5]);
    expect(matrix).toEqual([2, 1, 1, 3]);
    expect(codeOf(() => solveLinear([1, 2, 2, 4], [1, 1]))).toBe('singular-matrix');
    expect(codeOf(() => solveLinear([0, 0, 0, 0], [1, 1]))).toBe('singular-matrix');
    expect(codeOf(() => solveLinear([1, 2, 3], [1, 1]))).toBe('invalid-argument');
    expect(codeOf(() => solveLinear([1, 2, 3, 4, 5], [1, 1]))).toBe('invalid-argument');
    expect(codeOf(() => solveLinear([1, 2, 3, Number.NaN], [1, 1]))).toBe('invalid-argument');
    expect(codeOf(() => solveLinear([], []))).toBe('invalid-argument');
  });

  it('offers the factors for reuse', () => {
    const factors = Float64Array.of(0, 2, 1, 3, 1, 1, 1, 1, 5);
    const pivots = new Int32Array(3);
    expect(luFactor(factors, 3, pivots)).toBe(true);
    // Rows (0 2 1), (3 1 1), (1 1 5) applied to (1, 2, 3) by hand give (7, 8, 18).
    const rhs = Float64Array.of(7, 8, 18);
    luSolve(factors, 3, pivots, rhs);
    expect(rhs[0]).toBeCloseTo(1, 14);
    expect(rhs[1]).toBeCloseTo(2, 14);
    expect(rhs[2]).toBeCloseTo(3, 14);
    expect(luFactor(Float64Array.of(0, 0, 0, 0), 2, pivots)).toBe(false);
    expect(luFactor(Float64Array.of(Number.NaN, 0, 0, 1), 2, pivots)).toBe(false);
  });
});
