import { describe, expect, it } from 'vitest';
import { firing } from '../../src/firing';
import { q, series, seriesOf } from '../../src/units';

const time = series([0, 1, 2], 's');

describe('a firing record', () => {
  it('keeps the channels it was given and nothing else', () => {
    const record = firing({ origin: 'measured', time, thrust: series([0, 10, 0], 'N') });
    expect(record.thrust.max().in('N')).toBe(10);
    expect(record.pressure).toBeUndefined();
    expect(record.temperatures).toEqual({});
  });

  it('takes a pressure whose reference is not said as absolute, and prints it so', () => {
    const record = firing({ origin: 'predicted', time, pressure: series([1, 2, 3], 'bar') });
    expect(record.pressure.kind).toBe('absolute pressure');
    expect(record.pressure.max().in('MPa')).toBe(0.3);
  });

  it('refuses gauge pressure with the way out', () => {
    const gauge = seriesOf('gauge pressure', [0, 1, 2], 'bar');
    // @ts-expect-error a gauge reading is no absolute pressure
    expect(() => firing({ origin: 'measured', time, pressure: gauge })).toThrow(/Add the ambient pressure/);
  });

  it('takes what is known of the whole as text, and refuses what it is not', () => {
    const facts = { origin: 'measured', time, thrust: series([0, 10, 0], 'N') } as const;
    expect(firing({ ...facts, ambientPressure: '1 atm' }).ambientPressure?.in('Pa')).toBe(101325);
    expect(firing({ ...facts, loadedMass: '500 g' }).loadedMass?.si).toBe(0.5);
    expect(String(firing({ ...facts, initialThroatDiameter: '1/2 in' }).initialThroatDiameter)).toBe(
      '0.5 in',
    );
    // @ts-expect-error a gauge reading is no ambient pressure
    expect(() => firing({ ...facts, ambientPressure: '0 barg' })).toThrow(
      /ambientPressure.*absolute pressure/,
    );
    // @ts-expect-error a length is no mass
    expect(() => firing({ ...facts, loadedMass: '5 mm' })).toThrow(/loadedMass must be a mass/);
  });

  it.each([
    ['length-mismatch', () => firing({ origin: 'measured', time, thrust: series([1, 2], 'N') })],
    ['time-order', () => firing({ origin: 'measured', time: series([0, 1, 1], 's') })],
    ['too-short', () => firing({ origin: 'measured', time: series([0], 's') })],
  ])('refuses %s', (code, make) => {
    expect(make).toThrow(expect.objectContaining({ code }));
  });

  it('prints what it holds', () => {
    const record = firing({
      origin: 'measured',
      time,
      thrust: series([0, 10, 0], 'N'),
      temperatures: { 'case, aft': series([290, 300, 310], 'K') },
      events: [{ name: 'burnout', time: q('1.5 s') }],
      cautions: ['clipped'],
    });
    expect(String(record)).toMatch(
      /3 samples over 2 s[\s\S]*thrust: 0 N to 10 N[\s\S]*case, aft[\s\S]*burnout at 1.5 s[\s\S]*caution: clipped/,
    );
  });
});
