import { describe, expect, test } from 'vitest';
import { detectClipping, firing, recoverPressure } from '../../../src/firing';
import { adaptiveParabola } from '../../../src/firing/saturation/smooth';
import { randomStream } from '../../../src/numerics';
import { fromSiArray, q } from '../../../src/units';
import { codeOf } from '../../error-code';

// Analytic traces: every expected value follows from the formula of the trace itself.
const n = 2000;
const time = Float64Array.from({ length: n }, (_, i) => i / 500);
const pulse = (t: number): number => (t > 1 && t < 3 ? Math.sin((Math.PI * (t - 1)) / 2) : 0);
const ambient = 101_325;
const pressureOf = (limit: number): Float64Array =>
  time.map((t) => ambient + Math.min(limit, 5e6 * pulse(t)));
const area = 5e-5;
const thrustOf = (limit: number): Float64Array =>
  time.map((t) => {
    const p = 5e6 * pulse(t);
    return p > 0 ? Math.min(limit, area * (1.5 * (p + ambient) - 5 * ambient)) : 0;
  });
const record = (pressure: Float64Array | undefined, thrust: Float64Array | undefined) =>
  firing({
    origin: 'measured',
    time: fromSiArray('time', time, 's'),
    ...(pressure && { pressure: fromSiArray('absolute pressure', pressure, 'MPa') }),
    ...(thrust && { thrust: fromSiArray('force', thrust, 'N') }),
    ambientPressure: q('101325 Pa').as('absolute pressure'),
  });
const free = Number.POSITIVE_INFINITY;

describe('detection', () => {
  test('a flat top is told from when to when, an ordinary peak is left alone', () => {
    const found = detectClipping(record(pressureOf(4e6), thrustOf(free)));
    expect(found.thrust).toBeUndefined();
    expect(found.pressure?.evidence).toBe('flat top');
    // asin(0.8)·2/π after ignition, and as long before burnout.
    const half = (2 / Math.PI) * Math.asin(0.8);
    expect(found.pressure?.spans[0].from).toBeCloseTo(1 + half, 2);
    expect(found.pressure?.spans[0].to).toBeCloseTo(3 - half, 2);
    expect(found.pressure?.certain).toBe(true);
    expect(detectClipping(record(pressureOf(free), thrustOf(free))).pressure).toBeUndefined();
  });

  test('noise on an ordinary peak is no clipping, at any resolution', () => {
    for (let seed = 0; seed < 40; seed++) {
      const random = randomStream(seed);
      const steps = seed % 2 === 0 ? 1024 : 65_536;
      const noisy = pressureOf(free).map(
        (p) => Math.round(((p + 3e4 * random.normal()) / 7e6) * steps) * (7e6 / steps),
      );
      expect(detectClipping(record(noisy, undefined)).pressure).toBeUndefined();
    }
  });

  test('a known range is enough, even for one sample', () => {
    const found = detectClipping(record(undefined, thrustOf(free)), {
      ranges: { thrust: q(Math.max(...thrustOf(free)), 'N') },
    });
    expect(found.thrust?.evidence).toBe('range');
  });

  test('an amplifier that bends over before its rail', () => {
    // Above 60 % of the peak only a third of what is more comes through.
    const soft = pressureOf(free).map((p) => (p < 3e6 ? p : 3e6 + (p - 3e6) / 3));
    const found = detectClipping(record(soft, thrustOf(free)));
    expect(found.pressure?.evidence).toBe('soft limit');
    expect(found.thrust).toBeUndefined();
  });
});

describe('recovery', () => {
  test('without noise the line gives the peak back, and the record outside the clipped stretch is untouched', () => {
    const clipped = record(pressureOf(2.5e6), thrustOf(free));
    const recovery = recoverPressure(clipped, {
      throatDiameter: q(Math.sqrt((4 * area) / Math.PI), 'm'),
      expansionRatio: 5,
    });
    expect(recovery.peak.value.si / (5e6 + ambient)).toBeCloseTo(1, 3);
    expect(recovery.fit?.slope).toBeCloseTo(1.5 * area, 7);
    expect(recovery.fit?.extrapolation).toBeGreaterThan(1.8);
    expect(recovery.cautions.join()).toMatch(/extrapolated/);
    const before = clipped.pressure?.si ?? new Float64Array(0);
    const after = recovery.record.pressure?.si ?? new Float64Array(0);
    for (let i = 0; i < n; i++) if (before[i] < 2.4e6) expect(after[i]).toBe(before[i]);
    expect(recovery.record.history.at(-1)).toMatch(/reconstructed by thrust coefficient/);
  });

  test('throat growth is fitted where it is asked for', () => {
    const total = 4 / Math.PI;
    const grown = time.map((t) => {
      const p = 5e6 * pulse(t);
      const share =
        t <= 1 ? 0 : t >= 3 ? 1 : ((1 - Math.cos((Math.PI * (t - 1)) / 2)) * (2 / Math.PI)) / total;
      return p > 0 ? area * (1 + 0.15 * share) * 1.5 * (p + ambient) - 5 * area * ambient : 0;
    });
    const recovery = recoverPressure(record(pressureOf(3.5e6), grown), {
      throatGrowth: 'fit',
      expansionRatio: 5,
    });
    expect(recovery.fit?.throatGrowth).toBeGreaterThan(0.12);
    expect(recovery.fit?.throatGrowth).toBeLessThan(0.18);
    expect(recovery.peak.value.si / (5e6 + ambient)).toBeCloseTo(1, 2);
  });

  test('one channel: mass balance and shape bound the peak', () => {
    const throat = 8e-3;
    const velocity = 900;
    // The integral of the sine pulse is 5 MPa·4/π over 2 s, and ambient counts too.
    const integral = (5e6 * 4) / Math.PI + 2 * ambient;
    const mass = (integral * (Math.PI / 4) * throat ** 2) / velocity;
    const alone = record(pressureOf(3.5e6), undefined);
    const balance = recoverPressure(alone, {
      throatDiameter: q(throat, 'm'),
      propellantMass: q(mass, 'kg'),
      characteristicVelocity: q(velocity, 'm/s'),
      massBalanceUncertainty: 0.01,
      prediction: record(
        pressureOf(free).map((p) => ambient + 0.8 * (p - ambient)),
        undefined,
      ),
    });
    expect(balance.bounds.map(({ method }) => method)).toEqual([
      'mass balance',
      'shape of a prediction',
      'parabola through the shoulders',
    ]);
    const truth = 5e6 + ambient;
    for (const { peak } of balance.bounds) {
      expect(peak.low.si).toBeLessThanOrEqual(truth);
      expect(peak.high.si).toBeGreaterThanOrEqual(truth);
    }
    expect(balance.bounds[1].peak.value.si / truth).toBeCloseTo(1, 2);
  });

  test('refusals say what is missing', () => {
    expect(codeOf(() => recoverPressure(record(undefined, thrustOf(free))))).toBe('missing-field');
    expect(codeOf(() => recoverPressure(record(pressureOf(free), thrustOf(free))))).toBe('not-clipped');
  });
});

test('adaptive smoothing keeps a corner and takes the noise off a plateau', () => {
  const random = randomStream(3);
  const step = time.map((t) => (t < 2 ? 0 : 1) + 0.02 * random.normal());
  const { values } = adaptiveParabola(time, step, { narrowest: 0.01, widest: 0.4, noise: 0.02 });
  const quiet = values.subarray(1200, 1900).map((v) => (v - 1) ** 2);
  expect(Math.sqrt(quiet.reduce((a, b) => a + b, 0) / quiet.length)).toBeLessThan(0.01);
  // Five standard deviations of one sample: the corner itself adds nothing that stands out.
  expect(Math.max(...values)).toBeLessThan(1.1);
});
