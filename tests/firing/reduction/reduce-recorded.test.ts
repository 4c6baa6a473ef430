import { describe, expect, test } from 'vitest';
import {
  calibrate,
  currentLoopCalibration,
  type LineCalibration,
  type Log,
  readLog,
  reduceFiring,
} from '../../../src/firing';
import { logsPresent, recordedLog } from '../recorded-logs';

// What the whole chain must make of real records. Figures: tests/cases/firing.json (computed with numpy 1.24.2 / scipy
// 1.10.1); the letters by NFPA 1125. The windows differ from the hand reduction's, hence the wider margins.
const transmitter = (resistance: number, zeroCurrent: number): LineCalibration =>
  currentLoopCalibration({
    span: { measures: 'gauge pressure', high: '100 bar' },
    resistance,
    zeroCurrent,
    converter: { bits: 10, fullScale: 5 },
  });
const cell: LineCalibration = {
  form: 'line',
  measures: 'force',
  readingUnit: 'counts',
  slope: (5000 / 1024 / 20) * 0.64566925 * 9.80665,
  intercept: (-338.343178 / 20) * 0.64566925 * 9.80665,
  basis: 'the owners',
  cautions: [],
};
const hanaro = (file: string, left: LineCalibration, right: LineCalibration): Log =>
  calibrate(readLog(recordedLog(file)), {
    pressure_left: left,
    pressure_right: right,
    thrust: cell,
  });

describe.skipIf(!logsPresent)('recorded firings through the whole chain', () => {
  test('the zero that moves, the edges, the thrust that starts late: told, and the impulse within its own interval', () => {
    const force = readLog(recordedLog('olemiss-2025-04-16-force.csv'), {
      time: { rate: '2000 Hz' },
      channels: { thrust: { column: 1, unit: 'lbf' } },
    });
    const pressure = readLog(recordedLog('olemiss-2025-04-16-pressure.csv'), {
      time: { rate: '2000 Hz' },
      channels: { pressure: { column: 1, unit: 'psig' } },
    });
    const reduced = reduceFiring(
      { ...force, channels: { ...force.channels, ...pressure.channels } },
      { ambientPressure: '101 kPa' },
    );
    expect(reduced.motorClass?.letter).toBe('L');
    // Line through both zeros: 4679 N·s in a window of 6 s; the maker says about 4603 (from memory).
    expect(reduced.totalImpulse?.low.si).toBeLessThan(4603);
    expect(reduced.totalImpulse?.high.si).toBeGreaterThan(4679);
    expect(reduced.burnTime?.in('s')).toBeCloseTo(3.4515, 1);
    expect(reduced.cautions.join('\n')).toMatch(/zero differs before and after/);
    expect(reduced.cautions.join('\n')).toMatch(/thrust: it starts 0\.29 s after pressure/);
    expect(reduced.clipping).toEqual({});
  });

  test('a sugar motor on twin transmitters: class H, 309 N·s, thrust coefficient near 1.45', () => {
    const log = hanaro(
      'hanaro-2018-07-24-knsb-7mm.csv',
      transmitter(219.9, 4.019049852),
      transmitter(220.7, 4.004481479),
    );
    const reduced = reduceFiring(log, { ambientPressure: '101325 Pa', throatDiameter: '7 mm' });
    expect(reduced.motorClass?.letter).toBe('H');
    expect(reduced.totalImpulse?.low.si).toBeLessThan(307.8);
    expect(reduced.totalImpulse?.high.si).toBeGreaterThan(307.8);
    // The case divides by gauge pressure; from vacuum it is some 5 % less.
    expect(reduced.thrustCoefficient).toBeGreaterThan(1.33);
    expect(reduced.thrustCoefficient).toBeLessThan(1.46);
    expect(reduced.record.history.join('\n')).toMatch(/mean of pressure_left and pressure_right/);
  });

  test('an over-pressure with the load cell broken gives no result, and says why', () => {
    const log = hanaro(
      'hanaro-2018-07-22-ancp-5mm-window.csv',
      transmitter(219.9, 4.150279602),
      transmitter(220.7, 4.066208017),
    );
    const reduced = reduceFiring(log, { ambientPressure: '101325 Pa', throatDiameter: '5 mm' });
    expect(reduced.status).toBe('no result');
    expect(reduced.totalImpulse).toBeUndefined();
    expect(reduced.peakPressure).toBeUndefined();
    expect(reduced.cautions.join('\n')).toMatch(/thrust: no result: .* no signal/);
    expect(reduced.cautions.join('\n')).toMatch(/beyond the limits/);
  });

  // Lower: the window or the 10 % points; upper: the 5 % points (2.2707, 127.6) or the tail that the owners count.
  test.each([
    ['rocketbuds-2021-03-27-161132.txt', 'B', 'C', 9.25, 9.91],
    ['rocketbuds-2021-03-27-160023.txt', 'A', 'A', 2.16, 2.28],
    ['rocketbuds-2024-04-07-fullfuelA100.txt', 'G', 'G', 118.6, 141.3],
  ])('grams on a scale: %s', (file, least, most, low, high) => {
    const log = readLog(recordedLog(file), {
      time: { column: 1, unit: 's' },
      channels: { thrust: { column: 2, unit: 'g' } },
    });
    const reduced = reduceFiring(log, { ambientPressure: '101 kPa', stand: 'nozzle up' });
    expect([least, most]).toContain(reduced.motorClass?.letter);
    expect(reduced.totalImpulse?.value.si).toBeGreaterThan(low);
    expect(reduced.totalImpulse?.value.si).toBeLessThan(high);
    expect(reduced.cautions.join('\n')).toMatch(/g is a unit of mass.* as weight in gf/);
    if (file.includes('161132'))
      expect(reduced.record.history.join('\n')).toMatch(/spikes: thrust 1 replaced \(5\.2\d+ s\)/);
  });
});
