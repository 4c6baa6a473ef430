import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hermiteInterpolant, linearInterpolant, monotoneInterpolant } from '../../src/numerics/interpolation';
import { findInterval } from '../../src/numerics/sorted-search';
import { codeOf } from '../error-code';

const x = [0, 0.4, 1, 1.5, 3, 3.2, 5];
const y = [1, 1.3, 4, 3.9, 3.9, 6, 2];

/** Ascending abscissae with ordinates. */
const data = fc
  .array(
    fc.tuple(fc.double({ min: 0.01, max: 3, noNaN: true }), fc.double({ min: -100, max: 100, noNaN: true })),
    { minLength: 3, maxLength: 30 },
  )
  .map((pairs) => {
    const abscissae: number[] = [];
    let position = -5;
    for (const [width] of pairs) {
      position += width;
      abscissae.push(position);
    }
    return { x: abscissae, y: pairs.map(([, value]) => value) };
  });

/** A point of an interval; the sum alone may round to just outside. */
const between = (from: number, to: number, share: number): number =>
  Math.min(Math.max(from + share * (to - from), from), to);

describe('monotoneInterpolant', () => {
  it('agrees with the reference implementation of PCHIP in value, slope and integral', () => {
    // Computed with SciPy 1.17.1, interpolate.PchipInterpolator.
    const p = monotoneInterpolant(x, y);
    const at = [0.1, 0.7, 1.2, 2, 3.1, 4.5];
    const values = [
      1.0238636363636364, 2.7420454545454542, 3.9648, 3.9, 4.949999999999999, 4.493141289437586,
    ];
    const slopes = [
      0.4602272727272729, 6.443181818181818, -0.28800000000000026, 0, 15.749999999999984, -3.4773662551440325,
    ];
    at.forEach((point, i) => {
      expect(p.at(point)).toBeCloseTo(values[i], 13);
      expect(p.slopeAt(point)).toBeCloseTo(slopes[i], 12);
    });
    expect(p.slopeAt(0)).toBe(0);
    expect(p.slopeAt(5)).toBeCloseTo(-6.666666666666667, 13);
    expect(p.integral(0.2, 4.7)).toBeCloseTo(18.811262626262625, 12);
  });

  it('never leaves the range of the two points around it', () => {
    fc.assert(
      fc.property(data, fc.double({ min: 0, max: 1, noNaN: true }), (set, share) => {
        const p = monotoneInterpolant(set.x, set.y);
        for (let i = 0; i + 1 < set.x.length; i++) {
          const left = set.y[i];
          const right = set.y[i + 1];
          const value = p.at(between(set.x[i], set.x[i + 1], share));
          const slack = 1e-12 * (Math.abs(left) + Math.abs(right)) + 1e-300;
          expect(value).toBeGreaterThanOrEqual(Math.min(left, right) - slack);
          expect(value).toBeLessThanOrEqual(Math.max(left, right) + slack);
        }
      }),
    );
  });

  it('is the mirror image for mirrored data', () => {
    fc.assert(
      fc.property(data, fc.double({ min: 0, max: 1, noNaN: true }), (set, share) => {
        const mirrored = monotoneInterpolant(
          [...set.x].reverse().map((v) => -v),
          [...set.y].reverse(),
        );
        const p = monotoneInterpolant(set.x, set.y);
        const point = between(p.lower, p.upper, share);
        expect(mirrored.at(-point)).toBeCloseTo(p.at(point), 9);
      }),
    );
  });

  it('reduces the error at third order or better where the data are monotone', () => {
    const worst = (count: number) => {
      const t = Array.from({ length: count + 1 }, (_, i) => i / count);
      const p = monotoneInterpolant(t, t.map(Math.exp));
      let error = 0;
      for (let i = 0; i < 1000; i++) error = Math.max(error, Math.abs(p.at(i / 999) - Math.exp(i / 999)));
      return error;
    };
    expect(Math.log2(worst(20) / worst(40))).toBeGreaterThan(2.7);
  });

  it('does not overflow on nearly flat data', () => {
    const p = monotoneInterpolant([0, 1, 2, 3], [0, 1e-300, 1, 1]);
    expect(p.at(0.5)).toBeGreaterThanOrEqual(0);
    expect(p.at(1.5)).toBeLessThan(1);
  });
});

describe('linearInterpolant and hermiteInterpolant', () => {
  it('reproduce a straight line and a cubic exactly', () => {
    const line = linearInterpolant([0, 1, 4], [1, 3, 9]);
    expect([line.at(0.5), line.at(3), line.slopeAt(2), line.integral(0, 4)]).toEqual([2, 7, 2, 20]);
    const t = [-1, 0.5, 2];
    const cubic = hermiteInterpolant(
      t,
      t.map((v) => v ** 3),
      t.map((v) => 3 * v * v),
    );
    for (const v of [-0.7, 0.1, 0.5, 1.9, 2]) {
      expect(cubic.at(v)).toBeCloseTo(v ** 3, 14);
      expect(cubic.slopeAt(v)).toBeCloseTo(3 * v * v, 13);
    }
    expect(cubic.integral(-1, 2)).toBeCloseTo((2 ** 4 - 1) / 4, 14);
  });

  it('converges at fourth order with exact slopes', () => {
    const worst = (count: number) => {
      const t = Array.from({ length: count + 1 }, (_, i) => (3 * i) / count);
      const p = hermiteInterpolant(t, t.map(Math.sin), t.map(Math.cos));
      let error = 0;
      for (let i = 0; i < 1000; i++)
        error = Math.max(error, Math.abs(p.at((3 * i) / 999) - Math.sin((3 * i) / 999)));
      return error;
    };
    expect(Math.log2(worst(20) / worst(40))).toBeCloseTo(4, 1);
  });
});

describe('every interpolant', () => {
  const makers = [linearInterpolant, monotoneInterpolant];

  it('meets its points exactly', () => {
    fc.assert(
      fc.property(data, (set) => {
        for (const make of makers) {
          const p = make(set.x, set.y);
          set.x.forEach((point, i) => {
            expect(p.at(point) === set.y[i]).toBe(true);
          });
        }
      }),
    );
  });

  it('has an integral that is additive, antisymmetric, and whose derivative is the value', () => {
    const p = monotoneInterpolant(x, y, { outOfRange: 'extrapolate' });
    expect(p.integral(1, 4) + p.integral(4, 1)).toBeCloseTo(0, 14);
    expect(p.integral(-1, 2) + p.integral(2, 7)).toBeCloseTo(p.integral(-1, 7), 12);
    for (const point of [-0.5, 0.2, 1.3, 2.9, 4.99, 6]) {
      const h = 1e-5;
      expect(p.integral(point - h, point + h) / (2 * h)).toBeCloseTo(p.at(point), 6);
      expect((p.at(point + h) - p.at(point - h)) / (2 * h)).toBeCloseTo(p.slopeAt(point), 5);
    }
  });

  it('follows its policy outside the data and reports it', () => {
    const strict = linearInterpolant([0, 1], [2, 4]);
    expect(codeOf(() => strict.at(-1e-9))).toBe('out-of-range');
    expect(codeOf(() => strict.slopeAt(2))).toBe('out-of-range');
    expect(codeOf(() => strict.integral(0, 2))).toBe('out-of-range');
    expect(codeOf(() => strict.at(Number.NaN))).toBe('invalid-argument');
    expect(strict.evaluate(0.5)).toEqual({ value: 3, slope: 2, where: 'inside', how: 'interpolated' });
    const clamped = linearInterpolant([0, 1], [2, 4], { outOfRange: 'clamp' });
    expect(clamped.evaluate(-1)).toEqual({ value: 2, slope: 0, where: 'below', how: 'clamped' });
    expect(clamped.integral(-1, 2)).toBe(2 + 3 + 4);
    expect(codeOf(() => clamped.at(Infinity))).toBe('invalid-argument');
    const extended = linearInterpolant([0, 1], [2, 4], { outOfRange: 'extrapolate' });
    expect(extended.evaluate(3)).toEqual({ value: 8, slope: 2, where: 'above', how: 'extrapolated' });
    expect(extended.integral(0, 3)).toBe(15);
    const curved = monotoneInterpolant([0, 1, 2], [0, 1, 4], { outOfRange: 'extrapolate' });
    expect(curved.at(4)).toBe(4 + 2 * curved.slopeAt(2));
  });

  it('keeps its own copy of the data', () => {
    const mine = [1, 2];
    const p = linearInterpolant([0, 1], mine);
    mine[0] = 99;
    expect(p.at(0)).toBe(1);
  });

  it('refuses bad data', () => {
    for (const make of makers) {
      expect(codeOf(() => make([0], [1]))).toBe('invalid-argument');
      expect(codeOf(() => make([0, 1], [1]))).toBe('invalid-argument');
      expect(codeOf(() => make([0, 0], [1, 2]))).toBe('invalid-argument');
      expect(codeOf(() => make([1, 0], [1, 2]))).toBe('invalid-argument');
      expect(codeOf(() => make([0, 1], [1, Infinity]))).toBe('invalid-argument');
    }
    expect(codeOf(() => hermiteInterpolant([0, 1], [1, 2], [1]))).toBe('invalid-argument');
  });
});

describe('findInterval', () => {
  it('agrees with a linear scan from any hint', () => {
    fc.assert(
      fc.property(
        data,
        fc.double({ min: -10, max: 90, noNaN: true }),
        fc.integer({ min: -3, max: 40 }),
        (set, point, hint) => {
          const knots = Float64Array.from(set.x);
          let expected = 0;
          for (let i = 0; i < knots.length - 1; i++) if (point >= knots[i]) expected = i;
          expect(findInterval(knots, point, hint)).toBe(expected);
          for (let i = 0; i < knots.length; i++) {
            expect(findInterval(knots, knots[i], hint)).toBe(Math.min(i, knots.length - 2));
          }
        },
      ),
    );
  });
});
