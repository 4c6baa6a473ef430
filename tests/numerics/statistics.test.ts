import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  compensatedSum,
  mean,
  median,
  medianAbsoluteDeviation,
  quantile,
  standardDeviation,
  variance,
} from '../../src/numerics/statistics';
import { codeOf } from '../error-code';

const sample = fc.array(fc.double({ min: -1e6, max: 1e6, noNaN: true }), { minLength: 2, maxLength: 40 });

describe('statistics', () => {
  it('agree with NumPy and SciPy', () => {
    // Computed with NumPy 2.4.6 and SciPy 1.17.1 (var with ddof=1; quantile, linear; stats.median_abs_deviation).
    const x = [2.5, 3.1, -1.2, 8.8, 4.4, 4.4, 0.3];
    expect(mean(x)).toBeCloseTo(3.185714285714286, 14);
    expect(variance(x)).toBeCloseTo(10.418095238095239, 13);
    const quantiles = [-1.2, -0.2999999999999999, 1.4, 3.1, 6.160000000000002, 8.8];
    [0, 0.1, 0.25, 0.5, 0.9, 1].forEach((p, i) => {
      expect(quantile(x, p)).toBeCloseTo(quantiles[i], 14);
    });
    expect(medianAbsoluteDeviation(x)).toBeCloseTo(1.3000000000000003, 14);
    expect(x[0]).toBe(2.5);
  });

  it('add up what plain addition loses', () => {
    expect(compensatedSum([1e16, 1, 1, -1e16])).toBe(2);
    expect(compensatedSum([1, 1e100, 1, -1e100])).toBe(2);
    expect(compensatedSum(new Float64Array(10).fill(0.1))).toBe(1);
    expect(compensatedSum([])).toBe(0);
  });

  it('keep the variance of data far from zero', () => {
    // Exact: the variance of 0, 1, 2 is 1 wherever they are moved to.
    expect(variance([1e9, 1e9 + 1, 1e9 + 2])).toBe(1);
    expect(standardDeviation([1e9, 1e9 + 2, 1e9 + 4])).toBe(2);
  });

  it('move and scale with the data', () => {
    fc.assert(
      fc.property(
        sample,
        fc.double({ min: -100, max: 100, noNaN: true }),
        fc.double({ min: 0.1, max: 10, noNaN: true }),
        (x, shift, scale) => {
          const moved = x.map((value) => scale * value + shift);
          const size = 1e-12 * (1 + Math.max(...x.map(Math.abs)) * scale + Math.abs(shift));
          expect(Math.abs(mean(moved) - (scale * mean(x) + shift))).toBeLessThan(size);
          expect(Math.abs(median(moved) - (scale * median(x) + shift))).toBeLessThan(size);
          expect(Math.abs(standardDeviation(moved) - scale * standardDeviation(x))).toBeLessThan(1e3 * size);
          expect(Math.abs(medianAbsoluteDeviation(moved) - scale * medianAbsoluteDeviation(x))).toBeLessThan(
            size,
          );
        },
      ),
    );
  });

  it('order their quantiles, and ignore the order of the data', () => {
    fc.assert(
      fc.property(
        sample,
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (x, p, q) => {
          expect(quantile(x, Math.min(p, q))).toBeLessThanOrEqual(quantile(x, Math.max(p, q)));
          expect(quantile([...x].reverse(), p)).toBe(quantile(x, p));
        },
      ),
    );
  });

  it('refuse misuse', () => {
    expect(codeOf(() => mean([]))).toBe('invalid-argument');
    expect(codeOf(() => variance([1]))).toBe('invalid-argument');
    expect(codeOf(() => median([1, Number.NaN]))).toBe('invalid-argument');
    expect(codeOf(() => quantile([1, 2], 1.1))).toBe('invalid-argument');
  });
});
