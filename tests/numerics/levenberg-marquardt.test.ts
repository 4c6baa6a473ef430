import { describe, expect, it } from 'vitest';
import { linearFit } from '../../src/numerics/least-squares';
import { fitNonlinear } from '../../src/numerics/levenberg-marquardt';
import { codeOf } from '../error-code';

const x = [0.2, 0.5, 1, 1.7, 2.4, 3.3, 4.1, 5.0];
const y = [1.1, 1.9, 2.7, 4.4, 5.2, 7.6, 8.8, 11.3];
const parabola = [x.map(() => 1), x, x.map((v) => v * v)];

const expectAll = (values: ArrayLike<number>, expected: number[], relative: number) => {
  expect(values.length).toBe(expected.length);
  expected.forEach((value, i) => {
    expect(Math.abs(values[i] - value), `[${i}] ${values[i]} against ${value}`).toBeLessThanOrEqual(
      relative * Math.abs(value),
    );
  });
};

describe('fitNonlinear', () => {
  it('agrees with SciPy on an exponential decay', () => {
    const t = [0.5, 1, 1.5, 2, 3, 4, 6, 8];
    const z = [4.2, 3.6, 3.05, 2.7, 1.98, 1.52, 0.92, 0.6];
    const fit = fitNonlinear({
      residuals: (p, out) => {
        t.forEach((v, i) => {
          out[i] = p[0] * Math.exp(-p[1] * v) + p[2] - z[i];
        });
      },
      count: 8,
      initial: [5, 0.3, 0],
    });
    // Computed with SciPy 1.17.1, optimize.curve_fit with ftol = xtol = gtol = 1e-15.
    expect(fit.status).toBe('converged');
    expectAll(fit.parameters, [4.617596741370337, 0.32966512990893515, 0.2758750503172346], 1e-7);
    expectAll(
      fit.covariance,
      [
        0.001386264174328271, -9.218250714065483e-5, -0.0009695146407731585, -9.218250714065483e-5,
        8.140722768637971e-5, 0.00035474759446310015, -0.0009695146407731585, 0.00035474759446310015,
        0.0018839708794098947,
      ],
      1e-5,
    );
    expect(fit.evaluations).toBeLessThan(100);
  });

  it('reproduces the Misra1a reference problem from both starts', () => {
    // NIST Statistical Reference Datasets, Misra1a: data and certified values (from memory).
    const z = [
      10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.4, 75.47, 81.78,
    ];
    const t = [77.6, 114.9, 141.1, 190.8, 239.9, 289, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760];
    for (const initial of [
      [500, 1e-4],
      [250, 5e-4],
    ]) {
      const fit = fitNonlinear({
        residuals: (p, out) => {
          t.forEach((v, i) => {
            out[i] = p[0] * (1 - Math.exp(-p[1] * v)) - z[i];
          });
        },
        count: 14,
        initial,
        typical: [100, 1e-4],
      });
      expect(fit.status).toBe('converged');
      expectAll(fit.parameters, [238.94212918, 5.5015643181e-4], 1e-8);
      expectAll(fit.standardErrors, [2.7070075241, 7.2668688436e-6], 1e-6);
      expect(fit.sumOfSquares).toBeCloseTo(0.12455138894, 10);
    }
  });

  it('solves the standard hard valleys', () => {
    // More, Garbow and Hillstrom, ACM TOMS 7 (1981), 17-41: Rosenbrock, Powell singular and Box; exact minima.
    const valley = fitNonlinear({
      residuals: (p, out) => {
        out[0] = 10 * (p[1] - p[0] * p[0]);
        out[1] = 1 - p[0];
      },
      count: 2,
      initial: [-1.2, 1],
    });
    expectAll(valley.parameters, [1, 1], 1e-9);
    expect(valley.iterations).toBeLessThan(60);
    const box = fitNonlinear({
      residuals: (p, out) => {
        for (let i = 0; i < 10; i++) {
          const t = 0.1 * (i + 1);
          out[i] = Math.exp(-p[0] * t) - Math.exp(-p[1] * t) - p[2] * (Math.exp(-t) - Math.exp(-10 * t));
        }
      },
      count: 10,
      initial: [0, 10, 20],
    });
    expectAll(box.parameters, [1, 10, 1], 1e-6);
  });

  it('matches the linear fit on a linear model, in one or two steps', () => {
    const linear = linearFit({ columns: parabola, observations: y });
    const fit = fitNonlinear({
      residuals: (p, out) => {
        x.forEach((v, i) => {
          out[i] = p[0] + v * (p[1] + v * p[2]) - y[i];
        });
      },
      count: 8,
      initial: [0, 0, 0],
    });
    expectAll(fit.parameters, Array.from(linear.coefficients), 1e-7);
    expectAll(fit.covariance, Array.from(linear.covariance), 1e-6);
    expect(fit.iterations).toBeLessThan(12);
  });

  it('returns its failures and throws misuse', () => {
    const slow = fitNonlinear({
      residuals: (p, out) => {
        out[0] = 10 * (p[1] - p[0] * p[0]);
        out[1] = 1 - p[0];
      },
      count: 2,
      initial: [-1.2, 1],
      maxIterations: 3,
    });
    expect(slow.status).toBe('iteration-limit');
    expect(slow.message).toContain('maxIterations');
    const flat = { residuals: (_p: Float64Array, out: Float64Array) => out.fill(1), count: 3, initial: [1] };
    expect(codeOf(() => fitNonlinear(flat))).toBe('singular-matrix');
    expect(codeOf(() => fitNonlinear({ ...flat, residuals: (_p, out) => out.fill(Number.NaN) }))).toBe(
      'not-finite',
    );
    expect(codeOf(() => fitNonlinear({ ...flat, count: 0 }))).toBe('invalid-argument');
    expect(codeOf(() => fitNonlinear({ ...flat, initial: [] }))).toBe('invalid-argument');
    expect(codeOf(() => fitNonlinear({ ...flat, typical: [0] }))).toBe('invalid-argument');
    expect(codeOf(() => fitNonlinear({ ...flat, tolerance: 0 }))).toBe('invalid-argument');
  });
});
