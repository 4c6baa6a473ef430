import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { integrateOde } from '../../src/numerics/ode';
import type { OdeDerivative } from '../../src/numerics/ode-step';

const methods = ['rosenbrock', 'dormand-prince'] as const;
const clock: OdeDerivative = (_t, _y, out) => {
  out[0] = 1;
};
const fall: OdeDerivative = (_t, y, out) => {
  out[0] = y[1];
  out[1] = -9.80665;
};
const spring: OdeDerivative = (_t, y, out) => {
  out[0] = y[1];
  out[1] = -y[0];
};

describe('events', () => {
  it('stop a falling body at the ground to rounding', () => {
    // Exact: t = sqrt(2 h / g), v = -sqrt(2 g h).
    for (const method of methods) {
      const result = integrateOde({
        derivative: fall,
        start: 0,
        end: 100,
        initial: [10, 0],
        events: [{ name: 'ground', value: (_t, y) => y[0], direction: 'falling' }],
        method,
      });
      expect(result.status).toBe('event');
      expect(result.message).toContain('ground');
      const [hit] = result.events;
      expect(hit.t).toBeCloseTo(Math.sqrt(20 / 9.80665), 13);
      expect(hit.y[1]).toBeCloseTo(-Math.sqrt(2 * 9.80665 * 10), 12);
      expect(Math.abs(hit.y[0])).toBeLessThan(1e-13);
      expect(result.t[result.t.length - 1]).toBe(hit.t);
      expect(result.y[0][result.y[0].length - 1]).toBe(hit.y[0]);
      expect(result.at(hit.t)[0]).toBeCloseTo(0, 13);
    }
  });

  it('are found on the dense output to the last place, past the crossing', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 9.99, noNaN: true }), (level) => {
        const value = (_t: number, y: Float64Array) => y[0] - level;
        const result = integrateOde({
          derivative: clock,
          start: 0,
          end: 10,
          initial: [0],
          events: [{ value }],
        });
        // The state itself carries rounding some tens of units in the last place (coefficients of size 165).
        expect(Math.abs(result.events[0].t - level)).toBeLessThanOrEqual(1e-13 * (1 + level));
        // A restart must not meet the same event again.
        expect(value(0, result.events[0].y)).toBeGreaterThanOrEqual(0);
        const on = integrateOde({
          derivative: clock,
          start: result.events[0].t,
          end: 11,
          initial: result.events[0].y,
          events: [{ value }],
        });
        expect(on.events).toHaveLength(0);
      }),
    );
  });

  it('record every crossing in order when they do not stop', () => {
    for (const method of methods) {
      const result = integrateOde({
        derivative: spring,
        start: 0,
        end: 20,
        initial: [0, 1],
        relativeTolerance: 1e-9,
        absoluteTolerance: 1e-9,
        events: [
          { name: 'peak', value: (_t, y) => y[1], direction: 'falling', terminal: false },
          { name: 'zero', value: (_t, y) => y[0], terminal: false },
        ],
        method,
      });
      // Exact: peaks of the sine at pi/2 + 2 pi k, zeros at k pi; the one at the start is no event.
      const peaks = result.events.filter(({ name }) => name === 'peak').map(({ t }) => t);
      const zeros = result.events.filter(({ name }) => name === 'zero').map(({ t }) => t);
      expect(peaks).toHaveLength(3);
      peaks.forEach((t, k) => {
        expect(Math.abs(t - Math.PI * (0.5 + 2 * k))).toBeLessThan(1e-7);
      });
      expect(zeros).toHaveLength(6);
      zeros.forEach((t, k) => {
        expect(Math.abs(t - Math.PI * (k + 1))).toBeLessThan(1e-7);
      });
      result.events.forEach((event, i) => {
        if (i > 0) expect(event.t).toBeGreaterThanOrEqual(result.events[i - 1].t);
      });
      expect(result.status).toBe('finished');
    }
  });

  it('on the end of a step are found once, by whichever side they are seen', () => {
    for (const method of methods) {
      for (const direction of ['rising', 'either'] as const) {
        const result = integrateOde({
          derivative: clock,
          start: 0,
          end: 2,
          initial: [0],
          breakpoints: [1],
          // Zero exactly where a step must end.
          events: [{ value: (t) => t - 1, direction, terminal: false }],
          method,
        });
        expect(result.events.map(({ t }) => t)).toEqual([1]);
        expect(result.status).toBe('finished');
      }
    }
  });

  it('at the very end, and at the very start', () => {
    const atEnd = integrateOde({
      derivative: clock,
      start: 0,
      end: 1,
      initial: [0],
      events: [{ value: (t) => t - 1 }],
    });
    expect(atEnd.status).toBe('event');
    expect(atEnd.events[0].t).toBe(1);
    const atStart = integrateOde({
      derivative: clock,
      start: 0,
      end: 1,
      initial: [0],
      events: [{ value: (t) => t }],
    });
    expect(atStart.status).toBe('finished');
    expect(atStart.events).toHaveLength(0);
  });

  it('that start at zero are seen when they come back', () => {
    const result = integrateOde({
      derivative: spring,
      start: 0,
      end: 5,
      initial: [0, 1],
      events: [{ value: (_t, y) => y[0] }],
    });
    expect(result.events[0].t).toBeCloseTo(Math.PI, 5);
  });

  it('of the wrong direction are passed over', () => {
    const result = integrateOde({
      derivative: clock,
      start: 0,
      end: 2,
      initial: [0],
      events: [{ value: (t) => t - 1, direction: 'falling' }],
    });
    expect(result.status).toBe('finished');
    expect(result.events).toHaveLength(0);
  });

  it('in one step: those before the one that stops are kept, those after are not', () => {
    const result = integrateOde({
      derivative: clock,
      start: 0,
      end: 100,
      initial: [0],
      firstStep: 100,
      events: [
        { name: 'late', value: (t) => t - 80, terminal: false },
        { name: 'stop', value: (t) => t - 60 },
        { name: 'early', value: (t) => t - 52, terminal: false },
        { name: 'same time', value: (t) => t - 52, terminal: false },
      ],
      eventChecks: 1,
    });
    expect(result.counts.steps).toBe(1);
    expect(result.events.map(({ name }) => name)).toEqual(['early', 'same time', 'stop']);
    expect(result.t[1]).toBeCloseTo(60, 12);
  });

  it('inside one step are missed when the checks are too few, as documented', () => {
    // A dip below zero between t = 0.40 and 0.45, looked at only at the end of one step of size 1, then in 16 parts.
    const dip = (t: number) => (t - 0.4) * (t - 0.45);
    const run = (eventChecks: number) =>
      integrateOde({
        derivative: clock,
        start: 0,
        end: 1,
        initial: [0],
        firstStep: 1,
        eventChecks,
        events: [{ value: dip }],
      });
    expect(run(1).events).toHaveLength(0);
    expect(run(16).events[0].t).toBeCloseTo(0.4, 12);
  });

  it('let a phase change be split exactly: a bouncing ball', () => {
    // Exact: bounces at t0 (1 + 2 e + 2 e^2 + ...) with t0 = sqrt(2 h / g), e the ratio of speeds.
    const restitution = 0.5;
    let t = 0;
    let state: ArrayLike<number> = [1, 0];
    const bounces: number[] = [];
    for (let k = 0; k < 6; k++) {
      const flight = integrateOde({
        derivative: fall,
        start: t,
        end: 10,
        initial: state,
        events: [{ value: (_t, y) => y[0], direction: 'falling' }],
      });
      t = flight.events[0].t;
      bounces.push(t);
      state = [0, -restitution * flight.events[0].y[1]];
    }
    const first = Math.sqrt(2 / 9.80665);
    let exact = first;
    bounces.forEach((bounce, k) => {
      expect(bounce).toBeCloseTo(exact, 11);
      exact += 2 * first * restitution ** (k + 1);
    });
  });
});
