import { describe, expect, test } from 'vitest';
import { firing, firingFromLog, readLog, reduceFiring, temperatureTrace } from '../../../src/firing';
import { fromSiArray, q, series } from '../../../src/units';
import { codeOf } from '../../error-code';

const lines = (rows: number, of: (t: number) => readonly (number | string)[]): string =>
  Array.from({ length: rows }, (_, i) => [5 * i, ...of(i / 200)].join(',')).join('\n');
const pulse = (t: number): number => (t > 2 && t < 4 ? Math.sin((Math.PI * (t - 2)) / 2) : 0);

test('channels at different rates come onto the fastest; gauge becomes absolute', () => {
  const log = readLog(
    `t (ms),pressure (barg),thrust (N)\n${lines(1400, (t) => [40 * pulse(t), Math.round(200 * t) % 4 === 0 ? 500 * pulse(t) : ''])}`,
  );
  const record = firingFromLog(log, { ambientPressure: '1 bar' });
  expect(record.pressure?.max().in('bar')).toBeCloseTo(41, 2);
  expect(record.thrust?.max().in('N')).toBeCloseTo(500, 0);
  expect(record.history.join('\n')).toMatch(/thrust interpolated linearly to the times of pressure/);
});

test('the definitions: impulse, Isp, c*, C_F and the split of the efficiency', () => {
  const area = (Math.PI / 4) * 0.01 ** 2;
  const time = Float64Array.from({ length: 4000 }, (_, i) => i / 500);
  const record = firing({
    origin: 'measured',
    time: fromSiArray('time', time, 's'),
    pressure: fromSiArray(
      'absolute pressure',
      time.map((t) => 1e5 + 4e6 * pulse(t)),
      'MPa',
    ),
    thrust: fromSiArray(
      'force',
      time.map((t) => 450 * pulse(t)),
      'N',
    ),
  });
  const reduced = reduceFiring(record, {
    ambientPressure: '100 kPa',
    throatDiameter: '10 mm',
    propellantMass: '0.4 kg',
    idealCharacteristicVelocity: '1100 m/s',
    idealThrustCoefficient: 1.55,
  });
  // Integrals of the half sine of 2 s, 4/π each; between the 2 % points a share of 2e-4 is missing.
  const impulse = (450 * 4) / Math.PI;
  const integral = (4e6 * 4) / Math.PI + 2 * 1e5;
  expect((reduced.totalImpulse?.value.si ?? 0) / impulse).toBeCloseTo(1, 3);
  expect(reduced.specificImpulse?.in('s')).toBeCloseTo(impulse / 0.4 / 9.80665, 1);
  expect((reduced.characteristicVelocity?.si ?? 0) / ((integral * area) / 0.4)).toBeCloseTo(1, 2);
  expect(reduced.thrustCoefficient).toBeCloseTo(impulse / (integral * area), 2);
  const { combustionEfficiency, nozzleEfficiency, specificImpulse } = reduced;
  // Isp = c*·C_F / g0: the two efficiencies multiply to that of the whole.
  expect((combustionEfficiency ?? 0) * (nozzleEfficiency ?? 0)).toBeCloseTo(
    (specificImpulse?.si ?? 0) / (1100 * 1.55),
    9,
  );
  expect(reduced.peakPressureUpperBound?.in('MPa')).toBeGreaterThan(4);
});

test('a thrust coefficient out of this world is warned of', () => {
  const time = Float64Array.from({ length: 4000 }, (_, i) => i / 500);
  const record = firing({
    origin: 'measured',
    time: fromSiArray('time', time, 's'),
    pressure: fromSiArray(
      'absolute pressure',
      time.map((t) => 1e5 + 4e6 * pulse(t)),
      'MPa',
    ),
    thrust: fromSiArray(
      'force',
      time.map((t) => 45_000 * pulse(t)),
      'N',
    ),
  });
  const reduced = reduceFiring(record, { ambientPressure: '100 kPa', throatDiameter: '10 mm' });
  expect(reduced.cautions.join('\n')).toMatch(/Check calibration, units and throat/);
});

describe('temperatures', () => {
  test('peak, its time, rate and time above a threshold', () => {
    const trace = temperatureTrace({
      time: series([0, 10, 20, 30, 40], 's'),
      temperature: series([20, 20, 120, 70, 20], 'degC'),
      threshold: '70 degC',
    });
    expect(trace.peak.in('degC')).toBe(120);
    expect(trace.timeOfPeak.in('s')).toBe(20);
    // From 15 s (half way up) to 30 s.
    expect(trace.timeAbove?.in('s')).toBeCloseTo(15, 9);
    expect(trace.fastestRise.in('K/s')).toBeCloseTo(10, 9);
    expect(trace.stillRising).toBe(false);
  });

  test('a record that ends while it still warms up says so', () => {
    const trace = temperatureTrace({ time: series([0, 1], 's'), temperature: series([20, 30], 'degC') });
    expect(trace.stillRising).toBe(true);
  });
});

test('readings that were not calibrated, and facts that cannot be, are refused', () => {
  const log = readLog('t (ms),thrust (counts)\n0,1\n1,2\n2,3\n');
  expect(codeOf(() => firingFromLog(log, { ambientPressure: '1 bar' }))).toBe('not-calibrated');
  expect(codeOf(() => reduceFiring(log, { ambientPressure: '1 bar', throatDiameter: q(0, 'mm') }))).toBe(
    'out-of-domain',
  );
});
