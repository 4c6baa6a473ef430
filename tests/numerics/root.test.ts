import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findRoot, newtonBracketed } from '../../src/numerics/root';
import { codeOf } from '../error-code';

describe('findRoot', () => {
  it('finds exact roots to the last place', () => {
    // Exact: the roots are sqrt(2), pi and e by definition.
    expect(Math.abs(findRoot((x) => x * x - 2, { lower: 0, upper: 2 }).root - Math.SQRT2)).toBeLessThan(
      3e-16,
    );
    expect(Math.abs(findRoot(Math.sin, { lower: 3, upper: 4 }).root - Math.PI)).toBeLessThan(1e-15);
    expect(Math.abs(findRoot((x) => Math.log(x) - 1, { lower: 1, upper: 10 }).root - Math.E)).toBeLessThan(
      1e-15,
    );
  });

  it('finds the Dottie number', () => {
    // OEIS A003957, fixed point of the cosine 0.73908513321516064165... (from memory).
    expect(findRoot((x) => Math.cos(x) - x, { lower: 0, upper: 1 }).root).toBeCloseTo(0.7390851332151607, 15);
  });

  it('stays bounded on functions made to defeat interpolation', () => {
    const hard: [string, (x: number) => number, number, number, number][] = [
      ['flat ninth power', (x) => (x - 1 / 3) ** 9, 0, 1, 1 / 3],
      ['pole', (x) => 1 / (x - 1 / 3), 0, 1, 1 / 3],
      ['step', (x) => (x < 1 / 3 ? -1 : 1), 0, 1, 1 / 3],
      ['steep exponential', (x) => Math.expm1(200 * (x - 0.01)), -1, 1, 0.01],
      ['root at a tiny number', (x) => x - 1e-200, -1, 1, 1e-200],
      ['wide bracket', (x) => Math.atan(x - 7), -1e12, 1e12, 7],
    ];
    for (const [name, f, lower, upper, root] of hard) {
      const result = findRoot(f, { lower, upper });
      const least = name === 'flat ninth power' ? 1e-15 : 4 * Number.EPSILON * Math.abs(root);
      expect(Math.abs(result.root - root), name).toBeLessThanOrEqual(least + Number.MIN_VALUE);
      // Halving from the bracket to adjacent doubles would take at most this many steps; three times is the promise.
      const halvings = Math.log2((upper - lower) / (Number.EPSILON * Math.abs(root)));
      expect(result.iterations, name).toBeLessThanOrEqual(3 * halvings + 3);
    }
  });

  it('needs few evaluations on smooth functions', () => {
    expect(findRoot((x) => x * x - 2, { lower: 0, upper: 2 }).evaluations).toBeLessThanOrEqual(14);
    expect(findRoot((x) => x ** 3 - 2 * x - 5, { lower: 2, upper: 3 }).evaluations).toBeLessThanOrEqual(14);
  });

  it('reports a root met exactly, and roots at the ends', () => {
    expect(findRoot((x) => x - 1, { lower: 0, upper: 2 })).toMatchObject({
      root: 1,
      status: 'exact',
      residual: 0,
    });
    expect(findRoot((x) => x, { lower: 0, upper: 2 })).toMatchObject({
      root: 0,
      status: 'exact',
      evaluations: 2,
    });
    expect(findRoot((x) => x - 2, { lower: 0, upper: 2 })).toMatchObject({ root: 2, status: 'exact' });
  });

  it('honours the tolerance and keeps the sign change inside the reported bracket', () => {
    const f = (x: number) => x ** 3 - 2;
    const result = findRoot(f, { lower: 0, upper: 5, tolerance: 1e-3 });
    expect(result.upper - result.lower).toBeLessThanOrEqual(1e-3);
    expect(Math.sign(f(result.lower))).toBe(-Math.sign(f(result.upper)));
    expect(result.evaluations).toBeLessThan(findRoot(f, { lower: 0, upper: 5 }).evaluations);
  });

  it('takes infinite values by their sign', () => {
    expect(findRoot((x) => 1 / x - 4, { lower: 0, upper: 1 }).root).toBe(0.25);
  });

  it('refuses misuse with a typed error', () => {
    expect(codeOf(() => findRoot((x) => x * x + 1, { lower: -1, upper: 1 }))).toBe('not-bracketed');
    expect(codeOf(() => findRoot(Math.sqrt, { lower: -1, upper: 1 }))).toBe('not-finite');
    expect(
      codeOf(() => findRoot((x) => (x === 0 || x === 1 ? x - 0.5 : Number.NaN), { lower: 0, upper: 1 })),
    ).toBe('not-finite');
    expect(codeOf(() => findRoot((x) => x, { lower: 1, upper: -1 }))).toBe('invalid-argument');
    expect(codeOf(() => findRoot((x) => x, { lower: -1, upper: Infinity }))).toBe('invalid-argument');
    expect(codeOf(() => findRoot((x) => x, { lower: -1, upper: 1, tolerance: -1 }))).toBe('invalid-argument');
    expect(codeOf(() => findRoot((x) => Math.exp(x) - 2, { lower: -1, upper: 1, maxIterations: 2 }))).toBe(
      'not-converged',
    );
  });

  it('finds the root of any increasing cubic wherever it lies', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e3, max: 1e3, noNaN: true }),
        fc.double({ min: 1e-3, max: 1e3, noNaN: true }),
        fc.double({ min: 0, max: 1e3, noNaN: true }),
        (root, slope, curl) => {
          const f = (x: number) => (x - root) * (slope + curl * (x - root) ** 2);
          const found = findRoot(f, { lower: -2000, upper: 3000 });
          expect(Math.abs(found.root - root)).toBeLessThanOrEqual(
            4 * Number.EPSILON * Math.abs(root) + 1e-300,
          );
        },
      ),
    );
  });
});

describe('newtonBracketed', () => {
  const square = (x: number, out: Float64Array, parameter: number) => {
    out[0] = x * x - parameter;
    out[1] = 2 * x;
  };

  it('agrees with the square root over the whole range', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-12, max: 1e12, noNaN: true }), (parameter) => {
        const root = newtonBracketed(square, 0, 2e6, { parameter, trend: 'rising' });
        expect(Math.abs(root - Math.sqrt(parameter))).toBeLessThanOrEqual(2 * Number.EPSILON * root);
      }),
    );
  });

  it('finds falling roots, with and without the trend, and roots at the ends', () => {
    const falling = (x: number, out: Float64Array) => {
      out[0] = Math.cos(x) - x;
      out[1] = -Math.sin(x) - 1;
    };
    // OEIS A003957 (from memory).
    expect(newtonBracketed(falling, 0, 1)).toBeCloseTo(0.7390851332151607, 15);
    expect(newtonBracketed(falling, 0, 1, { trend: 'falling', guess: 0.7 })).toBeCloseTo(
      0.7390851332151607,
      15,
    );
    expect(newtonBracketed(square, 0, 1, { parameter: 0 })).toBe(0);
    expect(newtonBracketed(square, 0, 1, { parameter: 1 })).toBe(1);
  });

  it('survives useless derivatives', () => {
    for (const slope of [0, Number.NaN, Infinity, -1, 1e-300]) {
      const root = newtonBracketed(
        (x, out) => {
          out[0] = Math.atan(x - 0.3);
          out[1] = slope;
        },
        -10,
        17,
      );
      expect(Math.abs(root - 0.3)).toBeLessThan(2e-15);
    }
  });

  it('does not cycle where plain Newton diverges', () => {
    let calls = 0;
    const root = newtonBracketed(
      (x, out) => {
        calls++;
        out[0] = Math.atan(x);
        out[1] = 1 / (1 + x * x);
      },
      -20,
      33,
    );
    expect(Math.abs(root)).toBeLessThan(1e-15);
    expect(calls).toBeLessThan(25);
  });

  it('converges near a double root within a bounded count', () => {
    // (x - 1)^2 = d: the shape of the area-Mach relation close to the throat. Exact root 1 + sqrt(d).
    for (const d of [1e-2, 1e-6, 1e-10, 1e-14]) {
      let calls = 0;
      const root = newtonBracketed(
        (x, out) => {
          calls++;
          out[0] = (x - 1) ** 2 - d;
          out[1] = 2 * (x - 1);
        },
        1,
        50,
        { trend: 'rising' },
      );
      expect(Math.abs(root - 1 - Math.sqrt(d))).toBeLessThan(1e-15);
      expect(calls).toBeLessThan(45);
    }
  });

  it('is quick from a fair guess', () => {
    let calls = 0;
    newtonBracketed(
      (x, out, parameter) => {
        calls++;
        square(x, out, parameter);
      },
      0,
      10,
      { parameter: 2, guess: 1.5, trend: 'rising' },
    );
    expect(calls).toBeLessThanOrEqual(5);
  });

  it('refuses misuse with a typed error', () => {
    expect(codeOf(() => newtonBracketed(square, 0, 1, { parameter: -1 }))).toBe('not-bracketed');
    expect(codeOf(() => newtonBracketed(square, 0, 1, { parameter: Number.NaN }))).toBe('not-finite');
    expect(codeOf(() => newtonBracketed(square, 0, 1, { parameter: Number.NaN, trend: 'rising' }))).toBe(
      'not-finite',
    );
    expect(codeOf(() => newtonBracketed(square, 1, 0))).toBe('invalid-argument');
    expect(codeOf(() => newtonBracketed(square, 0, 2, { parameter: 2, maxIterations: 2 }))).toBe(
      'not-converged',
    );
  });
});
