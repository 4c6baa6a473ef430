import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { integrateOde } from '../../src/numerics/ode';
import type { OdeDerivative } from '../../src/numerics/ode-step';
import { codeOf } from '../error-code';

const methods = ['rosenbrock', 'dormand-prince'] as const;
const decay: OdeDerivative = (_t, y, out) => {
  out[0] = -y[0];
};
const spring: OdeDerivative = (_t, y, out) => {
  out[0] = y[1];
  out[1] = -y[0];
};
/** y' = y cos t, so y = exp(sin t): smooth, depends on time, never small. */
const swing: OdeDerivative = (t, y, out) => {
  out[0] = y[0] * Math.cos(t);
};
/** Chemical kinetics of Robertson, a standard stiff test (Hairer and Wanner, volume II, IV.1). */
const robertson: OdeDerivative = (_t, y, out) => {
  const fast = 3e7 * y[1] * y[1];
  const mixed = 1e4 * y[1] * y[2];
  out[0] = -0.04 * y[0] + mixed;
  out[1] = 0.04 * y[0] - mixed - fast;
  out[2] = fast;
};

const last = (series: Float64Array): number => series[series.length - 1];

// Caps on evaluations are what the methods need now with a tenth to spare: they catch a controller gone wrong.
describe('integrateOde', () => {
  it('follows exact solutions with both methods, within a cap on evaluations', () => {
    for (const method of methods) {
      const a = integrateOde({
        derivative: decay,
        start: 0,
        end: 3,
        initial: [2],
        relativeTolerance: 1e-8,
        absoluteTolerance: 1e-12,
        method,
      });
      expect(a.status).toBe('finished');
      expect(Math.abs(last(a.y[0]) / (2 * Math.exp(-3)) - 1)).toBeLessThan(3e-8);
      expect(a.counts.evaluations).toBeLessThan(300);
      const b = integrateOde({
        derivative: spring,
        start: 0,
        end: 10,
        initial: [1, 0],
        relativeTolerance: 1e-8,
        absoluteTolerance: 1e-8,
        method,
      });
      expect(Math.abs(last(b.y[0]) - Math.cos(10))).toBeLessThan(1e-6);
      expect(Math.abs(last(b.y[1]) + Math.sin(10))).toBeLessThan(1e-6);
      expect(b.counts.evaluations).toBeLessThan(1100);
      const c = integrateOde({
        derivative: swing,
        start: -1,
        end: 5,
        initial: [Math.exp(Math.sin(-1))],
        relativeTolerance: 1e-9,
        method,
      });
      expect(Math.abs(last(c.y[0]) / Math.exp(Math.sin(5)) - 1)).toBeLessThan(1e-7);
      expect(c.counts.evaluations).toBeLessThan(1400);
    }
  });

  it('solves stiff standard problems', () => {
    // Computed with SciPy 1.17.1, solve_ivp(method='Radau', rtol=1e-12, atol=1e-16).
    const reference: [number, number[]][] = [
      [0.4, [0.9851721138609896, 3.3863953789749055e-5, 0.014794022185220385]],
      [40, [0.7158270687194137, 9.185534764558203e-6, 0.2841637457458199]],
      [1e5, [0.0178659211423224, 7.27475146852873e-8, 0.9821340061101622]],
    ];
    for (const [end, expected] of reference) {
      const result = integrateOde({
        derivative: robertson,
        start: 0,
        end,
        initial: [1, 0, 0],
        relativeTolerance: 1e-8,
        absoluteTolerance: [1e-10, 1e-14, 1e-10],
        autonomous: true,
      });
      expect(result.status).toBe('finished');
      expected.forEach((value, i) => {
        expect(Math.abs(last(result.y[i]) / value - 1), `y${i} at ${end}`).toBeLessThan(2e-6);
      });
      expect(result.counts.evaluations).toBeLessThan(4200);
    }
    // Computed with SciPy 1.17.1, solve_ivp(method='Radau', rtol=1e-12, atol=1e-13): van der Pol, mu = 1000.
    const vanDerPol = integrateOde({
      derivative: (_t, y, out) => {
        out[0] = y[1];
        out[1] = 1000 * (1 - y[0] * y[0]) * y[1] - y[0];
      },
      start: 0,
      end: 1500,
      initial: [2, 0],
      relativeTolerance: 1e-8,
      absoluteTolerance: 1e-10,
      autonomous: true,
    });
    expect(Math.abs(last(vanDerPol.y[0]) / -1.3547459194874911 - 1)).toBeLessThan(1e-5);
    expect(vanDerPol.counts.evaluations).toBeLessThan(10800);
  });

  it('is not held back by stiffness once the transient is over', () => {
    // Prothero and Robinson: y' = -k (y - sin t) + cos t has the exact solution sin t for any k.
    for (const k of [1, 1e3, 1e6, 1e9]) {
      const result = integrateOde({
        derivative: (t, y, out) => {
          out[0] = -k * (y[0] - Math.sin(t)) + Math.cos(t);
        },
        start: 0,
        end: 10,
        initial: [0],
        relativeTolerance: 1e-6,
        absoluteTolerance: 1e-6,
      });
      expect(result.status).toBe('finished');
      expect(Math.abs(last(result.y[0]) - Math.sin(10)), `k = ${k}`).toBeLessThan(2e-5);
      expect(result.counts.steps + result.counts.rejected, `k = ${k}`).toBeLessThan(120);
    }
  });

  it('shows order 5 when fixed steps are halved, and order 4 between steps', () => {
    for (const method of methods) {
      const run = (steps: number) =>
        integrateOde({
          derivative: (t, y, out) => {
            out[0] = y[0] * Math.cos(t) + 0.1 * (y[1] - Math.cos(t));
            out[1] = -Math.sin(t) + (y[0] - Math.exp(Math.sin(t))) * y[1];
          },
          start: 0,
          end: 2,
          initial: [1, 1],
          relativeTolerance: 1e6,
          maxStep: 2 / steps,
          firstStep: 2 / steps,
          method,
        });
      const endError = (steps: number) => Math.abs(last(run(steps).y[0]) - Math.exp(Math.sin(2)));
      const insideError = (steps: number) => {
        const { at } = run(steps);
        let worst = 0;
        for (let i = 0; i <= 500; i++)
          worst = Math.max(worst, Math.abs(at(i / 250)[0] - Math.exp(Math.sin(i / 250))));
        return worst;
      };
      expect(run(16).counts.steps).toBe(16);
      expect(Math.log2(endError(16) / endError(32)), method).toBeGreaterThan(4.7);
      expect(Math.log2(endError(16) / endError(32)), method).toBeLessThan(5.9);
      // Order 4 over a step of interpolation means an error of the fifth power inside it; never less than four.
      expect(Math.log2(insideError(16) / insideError(32)), method).toBeGreaterThan(3.8);
    }
  });

  it('gains accuracy in step with the tolerance', () => {
    const error = (relativeTolerance: number) => {
      const result = integrateOde({
        derivative: swing,
        start: 0,
        end: 6,
        initial: [1],
        relativeTolerance,
        absoluteTolerance: relativeTolerance * 1e-3,
      });
      return Math.abs(last(result.y[0]) - Math.exp(Math.sin(6)));
    };
    expect(error(1e-4)).toBeLessThan(1e-3);
    expect(error(1e-7)).toBeLessThan(1e-6);
    expect(error(1e-10)).toBeLessThan(1e-9);
  });

  it('uses an exact Jacobian, saving the evaluations, with the same answer', () => {
    const options = { derivative: swing, start: 0, end: 5, initial: [1], relativeTolerance: 1e-8 };
    const numerical = integrateOde(options);
    const exact = integrateOde({
      ...options,
      jacobian: (t, y, jacobian, dfdt) => {
        jacobian[0] = Math.cos(t);
        dfdt[0] = -y[0] * Math.sin(t);
      },
    });
    expect(last(exact.y[0])).toBeCloseTo(last(numerical.y[0]), 7);
    expect(exact.counts.evaluations).toBeLessThan(0.85 * numerical.counts.evaluations);
    expect(exact.counts.jacobians).toBe(exact.counts.steps);
  });

  it('gives the same bits for the same inputs, and does not touch the initial state', () => {
    const initial = [1, 0, 0];
    const run = () => integrateOde({ derivative: robertson, start: 0, end: 40, initial });
    const [a, b] = [run(), run()];
    expect(a.t).toEqual(b.t);
    expect(a.y).toEqual(b.y);
    expect(initial).toEqual([1, 0, 0]);
  });

  it('conserves what the equations conserve: the sum of the species', () => {
    const result = integrateOde({ derivative: robertson, start: 0, end: 1e3, initial: [1, 0, 0] });
    result.t.forEach((_, i) => {
      expect(Math.abs(result.y[0][i] + result.y[1][i] + result.y[2][i] - 1)).toBeLessThan(1e-12);
    });
  });

  it('is linear in the state of a linear system', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 10, noNaN: true }), (scale) => {
        const one = integrateOde({
          derivative: spring,
          start: 0,
          end: 4,
          initial: [1, 0.5],
          absoluteTolerance: 1e-9,
        });
        const many = integrateOde({
          derivative: spring,
          start: 0,
          end: 4,
          initial: [scale, 0.5 * scale],
          absoluteTolerance: 1e-9 * scale,
        });
        expect(Math.abs(last(many.y[0]) / scale - last(one.y[0]))).toBeLessThan(1e-6);
      }),
      { numRuns: 20 },
    );
  });

  it('keeps only the ends when asked', () => {
    const all = integrateOde({ derivative: decay, start: 0, end: 1, initial: [1] });
    const ends = integrateOde({ derivative: decay, start: 0, end: 1, initial: [1], keep: 'end' });
    expect(Array.from(ends.t)).toEqual([0, 1]);
    expect(Array.from(ends.y[0])).toEqual([1, last(all.y[0])]);
    expect(codeOf(() => ends.at(0.5))).toBe('out-of-range');
    expect(codeOf(() => all.at(1.01))).toBe('out-of-range');
    expect(all.at(0)[0]).toBe(1);
    expect(all.at(1)[0]).toBe(last(all.y[0]));
  });

  it('keeps many steps', () => {
    const result = integrateOde({ derivative: spring, start: 0, end: 100, initial: [0, 1], maxStep: 0.25 });
    expect(result.counts.steps).toBeGreaterThanOrEqual(400);
    expect(result.at(77.7)[0]).toBeCloseTo(Math.sin(77.7), 5);
  });

  it('handles a solution that does not move, and very short and very long spans', () => {
    for (const method of methods) {
      const still = integrateOde({
        derivative: (_t, _y, out) => out.fill(0),
        start: 0,
        end: 5,
        initial: [0, 3],
        method,
      });
      expect(still.status).toBe('finished');
      expect([last(still.y[0]), last(still.y[1])]).toEqual([0, 3]);
      expect(still.counts.evaluations).toBeLessThan(120);
      const short = integrateOde({ derivative: decay, start: 1e3, end: 1e3 + 1e-9, initial: [1], method });
      expect(last(short.y[0])).toBeCloseTo(1 - (last(short.t) - 1e3), 15);
    }
    const long = integrateOde({ derivative: decay, start: 0, end: 1e6, initial: [1] });
    expect(Math.abs(last(long.y[0]))).toBeLessThan(1e-8);
  });

  it('refuses misuse', () => {
    const good = { derivative: decay, start: 0, end: 1, initial: [1] };
    for (const bad of [
      { end: 0 },
      { end: Number.NaN },
      { initial: [] },
      { initial: [Infinity] },
      { relativeTolerance: 0 },
      { relativeTolerance: 1e-15 },
      { absoluteTolerance: 0 },
      { absoluteTolerance: [] },
      { absoluteTolerance: [-1] },
      { maxSteps: 0 },
      { maxStep: 0 },
      { firstStep: -1 },
      { breakpoints: [Number.NaN] },
      { eventChecks: 0 },
    ]) {
      expect(
        codeOf(() => integrateOde({ ...good, ...bad })),
        JSON.stringify(bad),
      ).toBe('invalid-argument');
    }
    expect(codeOf(() => integrateOde({ ...good, events: [{ value: () => Number.NaN }] }))).toBe('not-finite');
  });
});
