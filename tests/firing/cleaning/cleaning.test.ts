import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  align,
  correctStandWeight,
  correctThrustAxis,
  detectBurn,
  type Firing,
  findResonance,
  firing,
  lowPass,
  removeBaseline,
  removeSpikes,
  resample,
} from '../../../src/firing';
import { integralBetween } from '../../../src/firing/analysis/trace-values';
import { randomStream } from '../../../src/numerics';
import { fromSiArray, q } from '../../../src/units';
import { checkValue } from '../../cases/check-value';
import { caseById } from '../../cases/every-case';

// Analytic traces: each expected value follows from the formula of the trace.
const rate = 500;
const time = Float64Array.from({ length: 8 * rate }, (_, i) => i / rate);
const pulse = (t: number): number => (t > 3 && t < 5 ? 1000 * Math.sin((Math.PI * (t - 3)) / 2) : 0);
const record = (thrust: (t: number, i: number) => number, pressure?: (t: number) => number): Firing =>
  firing({
    origin: 'measured',
    time: fromSiArray('time', time, 's'),
    thrust: fromSiArray('force', time.map(thrust), 'N'),
    ...(pressure && { pressure: fromSiArray('absolute pressure', time.map(pressure), 'MPa') }),
    ambientPressure: q('100 kPa').as('absolute pressure'),
  });
const thrustOf = (made: Firing): Float64Array => made.thrust?.si ?? new Float64Array(0);
const impulse = (made: Firing): number => integralBetween(made.time.si, thrustOf(made), 3, 5);
// Integral of the half sine; trapezoids at 500 Hz fall short of it by h²/12 times the change of slope, 0.001 N·s.
const whole = (1000 * 2 * 2) / Math.PI;

describe('each step is a new record with one line more in its history', () => {
  const start = record((t) => pulse(t));
  test.each([
    ['removeBaseline', (r: Firing) => removeBaseline(r)],
    ['removeSpikes', (r: Firing) => removeSpikes(r)],
    ['resample', (r: Firing) => resample(r, { rate: '100 Hz' })],
    ['lowPass', (r: Firing) => lowPass(r, { cutoff: '30 Hz' })],
    ['detectBurn', (r: Firing) => detectBurn(r)],
    ['correctThrustAxis', (r: Firing) => correctThrustAxis(r, { angle: '2 deg' })],
    [
      'correctStandWeight',
      (r: Firing) => correctStandWeight(r, { stand: 'nozzle up', propellantMass: '1 kg' }),
    ],
  ])('%s', (_, call) => {
    const before = Float64Array.from(thrustOf(start));
    const after = call(start);
    expect(after.history.length).toBe(1);
    expect(thrustOf(start)).toEqual(before);
    expect(start.history.length).toBe(0);
  });
});

test('a constant zero and a drifting one come off; the spread of the impulse is told', () => {
  const drifting = record((t) => pulse(t) + 20 + 10 * t);
  expect(impulse(removeBaseline(drifting, { mode: 'line' }))).toBeCloseTo(whole, 1);
  const constant = removeBaseline(drifting);
  expect(impulse(constant)).toBeGreaterThan(1.02 * whole);
  expect(constant.cautions.join()).toMatch(/zero differs before and after/);
  expect(impulse(removeBaseline(record((t) => pulse(t) - 95)))).toBeCloseTo(whole, 1);
});

test('zero drift of the case file: 16 N over 3.5 s', () => {
  // tests/cases/firing.json, zero-drift-impulse-error: the integral of the drift.
  const drift = integralBetween(Float64Array.of(0, 3.5), Float64Array.of(0, 16), 0, 3.5);
  checkValue(caseById('zero-drift-impulse-error'), 'errorNs', drift);
});

describe('spikes', () => {
  test('single false samples go, wherever they are; the burn stays as it was', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 10, max: time.length - 10 }),
        fc.double({ min: 300, max: 5000, noNaN: true }),
        (at, height) => {
          const cleaned = removeSpikes(record((t, i) => pulse(t) + (i === at ? height : 0)));
          // What takes its place is a neighbour: within a few samples' slope of the truth.
          const worst = Math.max(...thrustOf(cleaned).map((f, i) => Math.abs(f - pulse(time[i]))));
          expect(worst).toBeLessThan(((1000 * Math.PI) / 2 / rate) * 4);
        },
      ),
      { numRuns: 50 },
    );
  });

  test('a true peak one sample wide is kept, with a caution', () => {
    const thin = Float64Array.of(0, 0, 0, 0, 0, 0, 2, 5, 9, 12, 17, 60, 17, 1, 0, 0, 0, 0, 0, 0, 0, 0);
    const made = removeSpikes(
      firing({
        origin: 'measured',
        time: fromSiArray(
          'time',
          thin.map((_, i) => i / 10),
          's',
        ),
        thrust: fromSiArray('force', thin, 'N'),
      }),
    );
    expect(made.thrust?.max().in('N')).toBe(60);
    expect(made.cautions.join()).toMatch(/spikes or true peaks/);
  });
});

test('thinning by means keeps the impulse, drawing lines keeps the samples', () => {
  const start = record((t) => pulse(t));
  const thinned = resample(start, { rate: '20 Hz' });
  expect(integralBetween(thinned.time.si, thrustOf(thinned), 2, 6)).toBeCloseTo(whole, 0);
  const finer = resample(start, { rate: '1000 Hz' });
  expect(thrustOf(finer)[2 * 2000]).toBeCloseTo(pulse(4), 9);
});

test('a zero-phase low-pass does not move the pulse and says what it does to peak and rise', () => {
  const made = lowPass(
    record((t) => pulse(t)),
    { cutoff: '10 Hz' },
  );
  const values = thrustOf(made);
  const at = values.indexOf(Math.max(...values));
  expect(time[at]).toBeCloseTo(4, 2);
  expect(made.history[0]).toMatch(/low-pass 10 Hz .* peak [+−]0\.\d+ %, rise/);
});

test('a stand that rings is found, a quiet one is not', () => {
  const random = randomStream(8);
  const ringing = record(
    (t) => pulse(t) + (pulse(t) > 0 ? 30 * Math.sin(2 * Math.PI * 87 * t) : 0) + 2 * random.normal(),
  );
  const found = findResonance(ringing);
  expect(found?.frequency.in('Hz')).toBeCloseTo(87, 0);
  expect(found?.cutoff.in('Hz')).toBeCloseTo(29, 0);
  expect(findResonance(record((t) => pulse(t) + 2 * random.normal()))).toBeUndefined();
});

describe('alignment', () => {
  const pressure = (t: number): number => 1e5 + 4e3 * pulse(t);
  test('a clock offset is taken out', () => {
    const made = align(record((t) => pulse(t - 0.137), pressure));
    const moved = thrustOf(made);
    const worst = Math.max(...moved.map((f, i) => Math.abs(f - pulse(time[i]))));
    expect(worst).toBeLessThan(5);
  });

  test('a start that lags while the end does not is no clock offset', () => {
    const made = align(record((t) => (t < 3.35 ? 0 : pulse(t)), pressure));
    expect(made.cautions.join()).toMatch(/slack or friction/);
    expect(thrustOf(made)[1700]).toBe(pulse(time[1700]));
  });
});

test('weight of the propellant gone: nozzle up the zero falls by it, and the impulse lacked half of weight times burn', () => {
  const weight = 0.8 * 9.80665;
  const total = (t: number): number => (t < 3 ? 0 : t > 5 ? 1 : (1 - Math.cos((Math.PI * (t - 3)) / 2)) / 2);
  const shown = record(
    (t) => pulse(t) - weight * total(t),
    (t) => 1e5 + 4e3 * pulse(t),
  );
  const made = correctStandWeight(shown, { stand: 'nozzle up', propellantMass: '0.8 kg' });
  expect(impulse(made)).toBeCloseTo(whole, 1);
  expect(thrustOf(made).at(-1)).toBeCloseTo(0, 9);
});

test('ignition and burnout are walked outward from the peak, past spikes in the quiet parts', () => {
  const made = detectBurn(record((t, i) => pulse(t) + (i === 200 ? 400 : 0) + (i === 3900 ? 300 : 0)));
  const [ignition, rising, falling] = made.events.map(({ time: at }) => at.in('s'));
  // asin(0.1)·2/π = 0.06377 s after 3 s, and as long before 5 s.
  expect(rising).toBeCloseTo(3.06377, 3);
  expect(falling).toBeCloseTo(4.93623, 3);
  expect(ignition).toBeGreaterThan(2.99);
  expect(ignition).toBeLessThan(rising);
});
