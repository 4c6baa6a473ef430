import { describe, expect, it } from 'vitest';
import { compareFirings, crack, internalTube, regress, simulate, withFlaws } from '../../src/ballistics';
import { firing } from '../../src/firing';
import { fromSiArray, series } from '../../src/units';
import { caseOf, si } from '../cases/read-case';
import { segmentMotor } from './reference-motors';

const tube = internalTube({ outerDiameter: '50 mm', boreDiameter: '16 mm', length: '100 mm' });
const motor = {
  ...segmentMotor(),
  chamber: { innerDiameter: '50 mm', length: '110 mm' },
  grain: tube,
} as const;

describe('comparison of firings', () => {
  it('a firing is like itself', () => {
    const record = simulate(motor);
    const same = compareFirings({ reference: record, other: record });
    expect(same.peakPressureRatio).toBe(1);
    expect(same.pressureDeviation).toBe(0);
    expect(same.addedArea?.area.si.every((value) => value === 0)).toBe(true);
  });

  it('ignition delay does not count', () => {
    const record = simulate(motor);
    const late = firing({
      origin: 'measured',
      time: fromSiArray(
        'time',
        record.time.si.map((t) => t + 3.7),
      ),
      pressure: record.pressure,
      thrust: record.thrust,
    });
    expect(compareFirings({ reference: record, other: late }).pressureDeviation).toBeLessThan(1e-9);
  });

  it('a crack adds the area of both its faces, and pressure by the amplified area ratio (crack-ignition-pressure)', () => {
    const { expected } = caseOf('ballistics', 'crack-ignition-pressure');
    const cracked = regress(
      withFlaws(tube, {
        flaws: [
          crack({
            plane: 'radial',
            angle: '0 deg',
            innerRadius: '7 mm',
            outerRadius: '18 mm',
            from: '40 mm',
            to: '60 mm',
          }),
        ],
      }),
      { accuracy: 2e-3 },
    );
    const sound = simulate(motor);
    const flawed = simulate({ ...motor, grain: cracked });
    const comparison = compareFirings({ reference: sound, other: flawed });
    const added = comparison.addedArea;
    expect(added).toBeDefined();
    // Both faces, 2 × 10 mm × 20 mm, at the start.
    expect((added?.area.si[2] ?? 0) / 4e-4).toBeCloseTo(1, 1);
    const early = (record: typeof sound): number =>
      record.pressure.si[record.web.si.findIndex((w) => w > 0.5e-3)];
    // Quasi-steady ratio; gas storage and the first half millimetre of burn move it a little.
    expect(Math.abs(early(flawed) / early(sound) / si(expected.pressureFactor) - 1)).toBeLessThan(0.01);
    // This tube peaks at its end, where the cracked one has less surface left: it peaks lower but earlier.
    expect(comparison.peakPressureRatio).toBeLessThan(1);
    expect(String(comparison)).toMatch(/peak pressure +−/);
  });

  it('a log of pressure alone is laid over a prediction by pressure', () => {
    // Thrust rises later than pressure: laid over each other by unlike traces, the same pressure would differ.
    const time = series([0, 1, 2, 3], 's');
    const pressure = series([0, 4, 4, 0], 'MPa');
    const both = firing({ origin: 'predicted', time, pressure, thrust: series([0, 0, 500, 0], 'N') });
    const alone = firing({ origin: 'measured', time, pressure });
    expect(compareFirings({ reference: both, other: alone }).pressureDeviation).toBeCloseTo(0, 12);
    expect(compareFirings({ reference: alone, other: both }).pressureDeviation).toBeCloseTo(0, 12);
  });

  it('refuses records that share nothing', () => {
    const time = series([0, 1, 2], 's');
    const thrust = firing({ origin: 'measured', time, thrust: series([0, 1, 0], 'N') });
    const pressure = firing({ origin: 'measured', time, pressure: series([0, 1, 0], 'MPa') });
    expect(() => compareFirings({ reference: thrust, other: pressure })).toThrow(
      expect.objectContaining({ code: 'nothing-to-compare' }),
    );
  });
});
