import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { integrate, KRONROD_15 } from '../../src/numerics/adaptive-quadrature';
import { gaussLegendre, integratePanels } from '../../src/numerics/gauss-legendre';
import {
  cumulativeSimpson,
  cumulativeTrapezoid,
  simpson,
  trapezoid,
} from '../../src/numerics/sampled-integral';
import { codeOf } from '../error-code';

const relative = (value: number, expected: number) => Math.abs(value - expected) / Math.abs(expected);

describe('gaussLegendre', () => {
  it('gives the tabulated rules', () => {
    // Computed with mpmath 1.3.0 to 20 digits.
    const five = gaussLegendre(5);
    expect(five.nodes[4]).toBeCloseTo(0.906179845938664, 15);
    expect(five.weights[4]).toBeCloseTo(0.23692688505618908, 15);
    expect(five.nodes[3]).toBeCloseTo(0.5384693101056831, 15);
    expect(five.weights[3]).toBeCloseTo(0.47862867049936647, 15);
    expect(five.nodes[2]).toBe(0);
    expect(five.weights[2]).toBeCloseTo(0.5688888888888889, 15);
    const sixteen = gaussLegendre(16);
    expect(sixteen.nodes[15]).toBeCloseTo(0.9894009349916499, 15);
    expect(sixteen.weights[15]).toBeCloseTo(0.027152459411754096, 15);
    expect(sixteen.nodes[8]).toBeCloseTo(0.09501250983763744, 15);
    expect(sixteen.weights[8]).toBeCloseTo(0.1894506104550685, 15);
    // Computed with SciPy 1.17.1, special.roots_legendre(64).
    const large = gaussLegendre(64);
    expect(large.nodes[63]).toBeCloseTo(0.9993050417357721, 15);
    expect(large.weights[63]).toBeCloseTo(0.0017832807216983117, 14);
    expect(large.nodes[32]).toBeCloseTo(0.024350292663424374, 15);
    expect(large.weights[32]).toBeCloseTo(0.04869095700913963, 15);
  });

  it('is exact to degree 2n - 1 and not beyond, at every order', () => {
    for (const order of [1, 2, 3, 4, 7, 12, 25]) {
      const rule = gaussLegendre(order);
      const moment = (degree: number) =>
        integratePanels((x) => (x + 0.25) ** degree, { lower: -1, upper: 1, rule });
      const exact = (degree: number) => (1.25 ** (degree + 1) - (-0.75) ** (degree + 1)) / (degree + 1);
      for (let degree = 0; degree < 2 * order; degree++) {
        expect(relative(moment(degree), exact(degree)), `order ${order}, degree ${degree}`).toBeLessThan(
          5e-15,
        );
      }
      if (order <= 12) expect(relative(moment(2 * order), exact(2 * order))).toBeGreaterThan(1e-12);
    }
  });

  it('has ascending symmetric nodes inside the interval and positive weights that sum to two', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 200 }), (order) => {
        const { nodes, weights } = gaussLegendre(order);
        let sum = 0;
        for (let i = 0; i < order; i++) {
          expect(Math.abs(nodes[i])).toBeLessThan(1);
          if (i > 0) expect(nodes[i]).toBeGreaterThan(nodes[i - 1]);
          expect(weights[i]).toBeGreaterThan(0);
          expect(nodes[i]).toBeCloseTo(-nodes[order - 1 - i], 15);
          sum += weights[i];
        }
        expect(sum).toBeCloseTo(2, 13);
      }),
      { numRuns: 50 },
    );
  });

  it('gains the order it should when panels are doubled', () => {
    // Exact: the integral of exp over [0, 2] is e^2 - 1. A rule of order n has error of order 2n in the panel width.
    const error = (panels: number) =>
      Math.abs(
        integratePanels(Math.exp, { lower: 0, upper: 2, rule: gaussLegendre(2), panels }) - Math.expm1(2),
      );
    expect(Math.log2(error(8) / error(16))).toBeCloseTo(4, 1);
  });

  it('refuses misuse', () => {
    expect(codeOf(() => gaussLegendre(0))).toBe('invalid-argument');
    expect(codeOf(() => gaussLegendre(2.5))).toBe('invalid-argument');
    const rule = gaussLegendre(3);
    expect(codeOf(() => integratePanels(Math.exp, { lower: 0, upper: 1, rule, panels: 0 }))).toBe(
      'invalid-argument',
    );
    expect(codeOf(() => integratePanels(Math.log, { lower: -1, upper: 1, rule }))).toBe('invalid-argument');
  });
});

describe('integrate', () => {
  it('uses a Kronrod rule that is exact to degree 23 around a Gauss rule exact to degree 13', () => {
    const sum = (weights: readonly number[], step: number, degree: number) => {
      let total = 0;
      weights.forEach((weight, i) => {
        const node = KRONROD_15.nodes[step === 1 ? i : 2 * i + 1];
        total += weight * (node === 0 ? (degree === 0 ? 1 : 0) : 2 * node ** degree);
      });
      return total;
    };
    for (let degree = 0; degree <= 22; degree += 2) {
      expect(sum(KRONROD_15.weights, 1, degree), `degree ${degree}`).toBeCloseTo(2 / (degree + 1), 14);
      if (degree <= 12) expect(sum(KRONROD_15.gaussWeights, 2, degree)).toBeCloseTo(2 / (degree + 1), 14);
    }
    expect(Math.abs(sum(KRONROD_15.weights, 1, 24) - 2 / 25)).toBeGreaterThan(1e-12);
  });

  it('reaches exact integrals within the error it estimates', () => {
    const cases: [string, (x: number) => number, number, number, number, number][] = [
      // name, integrand, lower, upper, exact value, cap on evaluations
      ['exponential', Math.exp, 0, 1, Math.E - 1, 15],
      ['sine', Math.sin, 0, Math.PI, 2, 45],
      ['arctangent', (x) => 4 / (1 + x * x), 0, 1, Math.PI, 45],
      ['square root at its end', Math.sqrt, 0, 1, 2 / 3, 700],
      ['inverse square root', (x) => 1 / Math.sqrt(x), 0, 1, 2, 2500],
      ['logarithm', Math.log, 0, 1, -1, 1500],
      ['narrow peak', (x) => 1e-3 / ((x - 0.3) ** 2 + 1e-6), 0, 1, Math.atan(700) + Math.atan(300), 1000],
      ['reversed', Math.exp, 1, 0, 1 - Math.E, 15],
      ['empty', Math.exp, 1, 1, 0, 15],
    ];
    for (const [name, f, lower, upper, exact, cap] of cases) {
      const result = integrate(f, { lower, upper, relativeTolerance: 1e-10 });
      expect(result.status, name).toBe('converged');
      expect(Math.abs(result.value - exact), name).toBeLessThanOrEqual(
        Math.max(result.error, 4e-16 * Math.abs(exact)),
      );
      expect(result.evaluations, name).toBeLessThanOrEqual(cap);
    }
  });

  it('splits at breakpoints', () => {
    const kink = (x: number) => (x < 0.37 ? 1 : x);
    const exact = 0.37 + (1 - 0.37 ** 2) / 2;
    const blind = integrate(kink, { lower: 0, upper: 1 });
    const told = integrate(kink, { lower: 0, upper: 1, breakpoints: [0.37, 5, 0.37] });
    expect(told.value).toBeCloseTo(exact, 15);
    expect(told.evaluations).toBe(30);
    expect(blind.evaluations).toBeGreaterThan(200);
    expect(Math.abs(blind.value - exact)).toBeLessThan(1e-9);
  });

  it('says when and why it failed', () => {
    const limited = integrate((x) => Math.sin(1 / x), { lower: 0, upper: 1, maxIntervals: 10 });
    expect(limited.status).toBe('interval-limit');
    expect(limited.message).toContain('limit of intervals');
    const divergent = integrate((x) => 1 / x, { lower: 0, upper: 1, maxIntervals: 5000 });
    expect(divergent.status).toBe('too-narrow');
  });

  it('refuses misuse', () => {
    expect(codeOf(() => integrate(Math.exp, { lower: 0, upper: Infinity }))).toBe('invalid-argument');
    expect(codeOf(() => integrate(Math.log, { lower: -1, upper: 1 }))).toBe('not-finite');
    expect(codeOf(() => integrate(Math.exp, { lower: 0, upper: 1, relativeTolerance: -1 }))).toBe(
      'invalid-argument',
    );
    expect(codeOf(() => integrate(Math.exp, { lower: 0, upper: 1, breakpoints: [Number.NaN] }))).toBe(
      'invalid-argument',
    );
  });

  it('is linear and additive over intervals', () => {
    const number = fc.double({ min: -3, max: 3, noNaN: true });
    fc.assert(
      fc.property(number, number, number, (a, middle, b) => {
        const f = (x: number) => Math.cos(2 * x) + x;
        const whole = integrate(f, { lower: a, upper: b, absoluteTolerance: 1e-12 }).value;
        const left = integrate(f, { lower: a, upper: middle, absoluteTolerance: 1e-12 }).value;
        const right = integrate((x) => 3 * f(x), { lower: middle, upper: b, absoluteTolerance: 1e-12 }).value;
        expect(Math.abs(left + right / 3 - whole)).toBeLessThan(1e-11);
      }),
      { numRuns: 50 },
    );
  });
});

describe('sampled integrals', () => {
  const x = [0, 0.3, 0.5, 1.1, 1.2, 2.0, 2.7];
  const y = x.map((t) => Math.sin(t) + 0.2 * t);

  it('agree with the reference implementation at irregular spacing', () => {
    // Computed with SciPy 1.17.1, integrate.cumulative_simpson(y, x=x, initial=0).
    const odd = [
      0, 0.053917897261612266, 0.14758724697702913, 0.6690735279500768, 0.7833020373412012, 1.81338482032497,
      2.6353762235150295,
    ];
    const even = [...odd.slice(0, 5), 1.8172464755117417];
    cumulativeSimpson(x, y).forEach((value, i) => {
      expect(value).toBeCloseTo(odd[i], 14);
    });
    cumulativeSimpson(x.slice(0, 6), y.slice(0, 6)).forEach((value, i) => {
      expect(value).toBeCloseTo(even[i], 14);
    });
    expect(simpson(x, y)).toBeCloseTo(2.6353762235150295, 14);
  });

  it('are exact for the curves they promise, at any spacing', () => {
    const steps = fc.array(fc.double({ min: 0.01, max: 2, noNaN: true }), { minLength: 2, maxLength: 20 });
    const c = fc.double({ min: -5, max: 5, noNaN: true });
    fc.assert(
      fc.property(steps, c, c, c, (widths, p, q, r) => {
        const t = [0];
        for (const width of widths) t.push((t.at(-1) as number) + width);
        const end = t.at(-1) as number;
        const scale = (Math.abs(p) + Math.abs(q) + Math.abs(r)) * (1 + end ** 3);
        const line = t.map((v) => p + q * v);
        const parabola = t.map((v) => p + q * v + r * v * v);
        expect(Math.abs(trapezoid(t, line) - (p * end + (q * end ** 2) / 2))).toBeLessThanOrEqual(
          1e-14 * scale + 1e-300,
        );
        const running = cumulativeSimpson(t, parabola);
        t.forEach((v, i) => {
          const exact = p * v + (q * v ** 2) / 2 + (r * v ** 3) / 3;
          expect(Math.abs(running[i] - exact)).toBeLessThanOrEqual(1e-12 * scale + 1e-300);
        });
      }),
    );
  });

  it('converge at their order', () => {
    const error = (rule: (x: number[], y: number[]) => number, count: number) => {
      const t = Array.from({ length: count + 1 }, (_, i) => (2 * i) / count);
      return Math.abs(rule(t, t.map(Math.exp)) - Math.expm1(2));
    };
    expect(Math.log2(error(trapezoid, 32) / error(trapezoid, 64))).toBeCloseTo(2, 1);
    expect(Math.log2(error(simpson, 32) / error(simpson, 64))).toBeCloseTo(4, 1);
  });

  it('give zero for one sample and agree with each other for two', () => {
    expect(Array.from(cumulativeTrapezoid([3], [7]))).toEqual([0]);
    expect(Array.from(cumulativeSimpson([0, 2], [1, 2]))).toEqual([0, 3]);
  });

  it('refuse misuse', () => {
    expect(codeOf(() => trapezoid([0, 1], [1]))).toBe('invalid-argument');
    expect(codeOf(() => trapezoid([0, 0], [1, 1]))).toBe('invalid-argument');
    expect(codeOf(() => simpson([0, 1, 2], [1, Number.NaN, 1]))).toBe('invalid-argument');
    expect(codeOf(() => trapezoid([], []))).toBe('invalid-argument');
  });
});
