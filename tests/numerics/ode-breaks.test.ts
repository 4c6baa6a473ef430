import { describe, expect, it } from 'vitest';
import { integrateOde } from '../../src/numerics/ode';
import type { OdeDerivative } from '../../src/numerics/ode-step';

const methods = ['rosenbrock', 'dormand-prince'] as const;
const spring: OdeDerivative = (_t, y, out) => {
  out[0] = y[1];
  out[1] = -y[0];
};
const last = (series: Float64Array): number => series[series.length - 1];

describe('at breakpoints', () => {
  const jump: OdeDerivative = (t, _y, out) => {
    out[0] = t < 0.3 ? 1 : -5;
  };
  it('takes a jump without straddling it', () => {
    for (const method of methods) {
      const result = integrateOde({
        derivative: jump,
        start: 0,
        end: 1,
        initial: [0],
        breakpoints: [7, 0.3, 0.3],
        method,
      });
      expect(last(result.y[0])).toBeCloseTo(0.3 - 5 * 0.7, 13);
      expect(result.counts.rejected).toBe(0);
      expect(Array.from(result.t)).toContain(0.3);
      // Coefficients of size 165 magnify rounding some tens of times.
      expect(result.at(0.3)[0]).toBeCloseTo(0.3, 13);
    }
  });
  it('needs far more steps when not told', () => {
    const blind = integrateOde({ derivative: jump, start: 0, end: 1, initial: [0] });
    const told = integrateOde({ derivative: jump, start: 0, end: 1, initial: [0], breakpoints: [0.3] });
    expect(blind.counts.rejected).toBeGreaterThan(3);
    expect(blind.counts.evaluations).toBeGreaterThan(2 * told.counts.evaluations);
  });
  it('evaluates the derivative at a breakpoint only for the piece that starts there', () => {
    for (const method of methods) {
      const seen: number[] = [];
      integrateOde({
        derivative: (t, y, out) => {
          seen.push(t);
          out[0] = -y[0] + t;
        },
        start: 0,
        end: 1,
        initial: [1],
        breakpoints: [0.5],
        method,
      });
      const firstLate = seen.findIndex((t) => t >= 0.5);
      expect(seen[firstLate]).toBe(0.5);
      expect(Math.min(...seen.slice(firstLate))).toBe(0.5);
      expect(Math.max(...seen)).toBeLessThan(1);
    }
  });
});

describe('failure', () => {
  it('is returned with what was reached', () => {
    const blowUp = integrateOde({
      derivative: (_t, y, out) => {
        out[0] = y[0] * y[0];
      },
      start: 0,
      end: 2,
      initial: [1],
    });
    // Exact solution 1 / (1 - t): infinite at t = 1.
    expect(['step-too-small', 'not-finite']).toContain(blowUp.status);
    expect(last(blowUp.t)).toBeCloseTo(1, 4);
    expect(blowUp.message).toContain('Stopped at t = ');
    const limited = integrateOde({ derivative: spring, start: 0, end: 1e3, initial: [1, 0], maxSteps: 20 });
    expect(limited.status).toBe('step-limit');
    expect(limited.counts.steps + limited.counts.rejected).toBe(20);
    expect(limited.message).toContain('maxSteps');
    const wall = integrateOde({
      derivative: (t, _y, out) => {
        out[0] = Math.sqrt(0.5 - t);
      },
      start: 0,
      end: 1,
      initial: [0],
    });
    expect(wall.status).toBe('not-finite');
    expect(last(wall.t)).toBeLessThanOrEqual(0.5);
    expect(last(wall.t)).toBeGreaterThan(0.4);
    const dead = integrateOde({
      derivative: (_t, _y, out) => out.fill(Number.NaN),
      start: 0,
      end: 1,
      initial: [4],
    });
    expect(dead).toMatchObject({ status: 'not-finite', t: new Float64Array([0]) });
    expect(dead.at(0)[0]).toBe(4);
  });

  it('never returns a state that is not finite', () => {
    const result = integrateOde({
      derivative: (_t, y, out) => {
        out[0] = Math.exp(y[0]);
      },
      start: 0,
      end: 5,
      initial: [0],
    });
    expect(result.status).not.toBe('finished');
    for (const value of result.y[0]) expect(Number.isFinite(value)).toBe(true);
  });
});
