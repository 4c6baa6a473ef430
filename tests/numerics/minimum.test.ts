import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findMinimum } from '../../src/numerics/minimum';
import { codeOf } from '../error-code';

describe('findMinimum', () => {
  it('finds exact minima as well as values alone can tell', () => {
    // Exact: the places of least value by setting the derivative to zero.
    const cases: [string, (x: number) => number, number, number, number][] = [
      ['parabola', (x) => (x - 2) ** 2 + 1, 0, 5, 2],
      ['cosine', Math.cos, 2, 5, Math.PI],
      ['x log x', (x) => x * Math.log(x), 0.01, 3, Math.exp(-1)],
      ['kink', (x) => Math.abs(x - 0.7), -3, 8, 0.7],
      ['skewed', (x) => Math.exp(x) - 5 * x, -2, 4, Math.log(5)],
    ];
    for (const [name, f, lower, upper, place] of cases) {
      const result = findMinimum(f, { lower, upper });
      expect(Math.abs(result.x - place), name).toBeLessThan(4e-8 * (1 + place));
      expect(result.value, name).toBe(f(result.x));
      expect(result.status, name).toBe('inside');
      expect(result.evaluations, name).toBeLessThan(50);
    }
    expect(findMinimum((x) => (x - 2) ** 2, { lower: 0, upper: 5 }).evaluations).toBeLessThan(10);
  });

  it('says when the function still falls at an end', () => {
    const rising = findMinimum((x) => x, { lower: 1, upper: 2 });
    expect(rising.status).toBe('end');
    expect(rising.x).toBeCloseTo(1, 6);
    expect(findMinimum((x) => -x, { lower: 1, upper: 2 }).status).toBe('end');
  });

  it('moves with the function', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -50, max: 50, noNaN: true }),
        fc.double({ min: 0.1, max: 10, noNaN: true }),
        (place, scale) => {
          const result = findMinimum((x) => scale * Math.cosh(0.1 * (x - place)), { lower: -60, upper: 70 });
          expect(Math.abs(result.x - place)).toBeLessThan(1e-5);
        },
      ),
    );
  });

  it('refuses misuse', () => {
    expect(codeOf(() => findMinimum(Math.cos, { lower: 1, upper: 1 }))).toBe('invalid-argument');
    expect(codeOf(() => findMinimum(Math.cos, { lower: 1, upper: Infinity }))).toBe('invalid-argument');
    expect(codeOf(() => findMinimum(Math.sqrt, { lower: -2, upper: -1 }))).toBe('not-finite');
    expect(codeOf(() => findMinimum(Math.cos, { lower: 2, upper: 5, maxIterations: 2 }))).toBe(
      'not-converged',
    );
    expect(codeOf(() => findMinimum(Math.cos, { lower: 2, upper: 5, relativeTolerance: 0 }))).toBe(
      'invalid-argument',
    );
  });
});
