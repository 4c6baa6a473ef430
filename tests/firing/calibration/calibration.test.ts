import { describe, expect, test } from 'vitest';
import {
  bridgeCalibration,
  calibrate,
  currentLoopCalibration,
  fitCalibration,
  invertCalibration,
  ratiometricCalibration,
  readLog,
  tareCalibration,
  thermocoupleCalibration,
  thermocoupleTemperature,
  thermocoupleVoltage,
} from '../../../src/firing';
import { calibrationDeviation } from '../../../src/firing/calibration/calibration';
import { randomStream } from '../../../src/numerics';
import { q } from '../../../src/units';
import { codeOf } from '../../error-code';

describe('transducers', () => {
  // Expected: the definition of each signal, worked by hand in the comment.
  test('bridge: 3 mV/V at 5000 N, 10 V, gain 100 on a 12-bit 5 V converter', () => {
    const line = bridgeCalibration({
      span: { measures: 'force', high: '5000 N' },
      sensitivity: 3,
      excitation: 10,
      gain: 100,
      converter: { bits: 12, fullScale: 5 },
    });
    // 30 mV · 100 = 3 V at 5000 N; a step is 5/4096 V: 5000/3·5/4096 N.
    expect(line.slope).toBeCloseTo((5000 / 3) * (5 / 4096), 12);
    expect(line.readingUnit).toBe('counts');
    expect(line.range?.high).toBe(4095);
  });

  test('ratiometric: 0.5 V and 4.5 V are the ends, at a supply of 4.8 V in proportion', () => {
    const line = ratiometricCalibration({
      span: { measures: 'gauge pressure', high: '1000 psi' },
      supply: 4.8,
    });
    expect(line.slope * 0.48 + line.intercept).toBeCloseTo(0, 6);
    expect(line.slope * 4.32 + line.intercept).toBeCloseTo(1000 * 6894.757293168361, 3);
  });

  test('4 to 20 mA: the record of two transmitters on a 10-bit converter', () => {
    // The owner's formula: (mV/219.9 − 4.019049852) mA · 6.25e5 Pa/mA, mV = counts·5000/1024.
    const line = currentLoopCalibration({
      span: { measures: 'gauge pressure', high: '100 bar' },
      resistance: 219.9,
      zeroCurrent: 4.019049852,
      converter: { bits: 10, fullScale: 5 },
    });
    for (const counts of [181, 400, 900]) {
      const expected = ((counts * 5000) / 1024 / 219.9 - 4.019049852) * 6.25e5;
      expect(line.slope * counts + line.intercept).toBeCloseTo(expected, 4);
    }
    // 20 mA over 219.9 ohm is 4.398 V, reading 900.7: what is above is out of range.
    expect(line.range?.high).toBeCloseTo(900.7, 1);
  });

  test('an absolute transducer stays absolute, sign and tare as asked', () => {
    const line = ratiometricCalibration({ span: { measures: 'absolute pressure', high: '10 MPa' } });
    expect(line.measures).toBe('absolute pressure');
    const cell = bridgeCalibration({
      span: { measures: 'force', high: '100 N' },
      sensitivity: 2,
      excitation: 5,
    });
    expect(invertCalibration(cell).slope).toBe(-cell.slope);
    const tared = tareCalibration(cell, { unloadedReading: 0.0003 });
    expect(tared.slope * 0.0003 + tared.intercept).toBeCloseTo(0, 12);
  });
});

describe('lines through calibration points', () => {
  test('the stated deviation holds what repeated calibrations scatter', () => {
    const random = randomStream(5);
    const atThree: number[] = [];
    const stated: number[] = [];
    for (let k = 0; k < 400; k++) {
      const line = fitCalibration({
        measures: 'force',
        points: Array.from({ length: 9 }, (_, i) => ({
          reading: i / 4,
          load: q(100 * (i / 4) + 0.5 * random.normal(), 'N'),
        })),
      });
      atThree.push(line.slope * 3 + line.intercept - 300);
      stated.push(calibrationDeviation(line, 3));
    }
    const scatter = Math.sqrt(atThree.reduce((sum, v) => sum + v * v, 0) / 400);
    const mean = Math.sqrt(stated.reduce((sum, v) => sum + v * v, 0) / 400);
    // 400 trials tell a deviation to about 4 %; three of those.
    expect(Math.abs(mean / scatter - 1)).toBeLessThan(0.12);
  });

  test('refusals', () => {
    expect(codeOf(() => fitCalibration({ measures: 'force', points: [{ reading: 1, load: '1 N' }] }))).toBe(
      'too-few-points',
    );
    expect(
      codeOf(() =>
        fitCalibration({
          measures: 'force',
          points: [
            { reading: 1, load: '1 N' },
            { reading: 1, load: '2 N' },
          ],
        }),
      ),
    ).toBe('out-of-domain');
  });

  test('a log is calibrated once, in its own unit', () => {
    const log = readLog('ms,thrust (V)\n0,1\n1,2\n2,3\n');
    const line = fitCalibration({
      measures: 'force',
      points: [
        { reading: 0, load: '0 N' },
        { reading: 1, load: '50 N' },
      ],
    });
    const done = calibrate(log, { thrust: line });
    expect([...done.channels.thrust.values]).toEqual([50, 100, 150]);
    expect(log.channels.thrust.measures).toBeUndefined();
    expect(codeOf(() => calibrate(done, { thrust: line }))).toBe('already-calibrated');
    expect(codeOf(() => calibrate(log, { force: line }))).toBe('missing-field');
    expect(codeOf(() => calibrate(log, { thrust: { ...line, readingUnit: 'mV' } }))).toBe('wrong-unit');
  });
});

describe('thermocouples', () => {
  // NIST Standard Reference Database 60, ITS-90 tables (NIST Monograph 175, 1993), mV at whole degrees: published, seen.
  const table = {
    K: [
      [-200, -5.891],
      [-100, -3.554],
      [25, 1.0],
      [100, 4.096],
      [500, 20.644],
      [1000, 41.276],
    ],
    J: [
      [-200, -7.89],
      [-100, -4.633],
      [25, 1.277],
      [100, 5.269],
      [500, 27.393],
      [1000, 57.953],
    ],
    T: [
      [-200, -5.603],
      [-100, -3.379],
      [25, 0.992],
      [100, 4.279],
      [200, 9.288],
      [400, 20.872],
    ],
    N: [
      [-200, -3.99],
      [-100, -2.407],
      [25, 0.659],
      [100, 2.774],
      [500, 16.748],
      [1000, 36.256],
    ],
    E: [
      [-200, -8.825],
      [-100, -5.237],
      [25, 1.495],
      [100, 6.319],
      [500, 37.005],
      [1000, 76.373],
    ],
  } as const;
  const types = ['K', 'J', 'T', 'N', 'E'] as const;

  test.each(types)('type %s: the table to its last digit', (type) => {
    for (const [celsius, millivolts] of table[type]) {
      const volts = thermocoupleVoltage({ type, temperature: q(celsius, 'degC'), coldJunction: '0 degC' });
      expect(Math.abs(volts - millivolts)).toBeLessThanOrEqual(0.00051);
    }
  });

  test.each(types)(
    'type %s: temperature gives back what the voltage came from, with a warm cold junction',
    (type) => {
      const top = type === 'T' ? 395 : 990;
      for (let celsius = -195; celsius < top; celsius += 7.3) {
        const voltage = thermocoupleVoltage({
          type,
          temperature: q(celsius, 'degC'),
          coldJunction: '23.4 degC',
        });
        const back = thermocoupleTemperature({ type, voltage, coldJunction: '23.4 degC' }).in('degC');
        expect(Math.abs(back - celsius)).toBeLessThan(0.01);
      }
    },
  );

  test('the cold junction is compensated in voltage: adding temperatures would be 0.7 degrees off here', () => {
    const voltage = thermocoupleVoltage({ type: 'K', temperature: '800 degC', coldJunction: '30 degC' });
    const naive = thermocoupleTemperature({ type: 'K', voltage, coldJunction: '0 degC' }).in('degC') + 30;
    expect(thermocoupleTemperature({ type: 'K', voltage, coldJunction: '30 degC' }).in('degC')).toBeCloseTo(
      800,
      2,
    );
    expect(Math.abs(naive - 800)).toBeGreaterThan(0.3);
  });

  test('an open junction is left out and said', () => {
    const log = calibrate(readLog('ms,temperature (mV)\n0,1\n1,2\n2,99\n3,3\n'), {
      temperature: thermocoupleCalibration({ type: 'K', coldJunction: '20 degC' }),
    });
    expect(log.channels.temperature.values.length).toBe(3);
    expect(log.cautions.join()).toMatch(/open junction/);
    expect(codeOf(() => thermocoupleTemperature({ type: 'K', voltage: 99, coldJunction: '20 degC' }))).toBe(
      'out-of-domain',
    );
  });
});
