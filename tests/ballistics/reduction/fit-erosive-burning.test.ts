import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { fitErosiveBurning, propellant, tubularSegment } from '../../../src/ballistics';
import { firing } from '../../../src/firing';
import { randomStream } from '../../../src/numerics';
import { fromSiArray, series } from '../../../src/units';

// Firings of an independent model: Runge-Kutta along the port, in Python with SciPy 1.17.1, tests/reference/port/eroding_firing.py.
const truths: {
  readonly firings: readonly {
    readonly name: string;
    readonly factor: number;
    readonly scale: number;
    readonly time: readonly number[];
    readonly head: readonly number[];
    readonly nozzle: readonly number[];
  }[];
} = JSON.parse(readFileSync('tests/reference/port/eroding-firings.json', 'utf8'));

const truthOf = (name: string) => {
  const found = truths.firings.find((one) => one.name === name);
  if (found === undefined) throw new Error(`no firing ${name}`);
  return found;
};

const known = propellant({
  density: '1780 kg/m^3',
  law: { coefficient: 7, rateUnit: 'mm/s', pressureUnit: 'MPa', exponent: 0.32 },
  gamma: 1.14,
  molarMass: '40 g/mol',
  flameTemperature: '1600 K',
});

const tight = {
  propellant: known,
  grain: tubularSegment({
    outerDiameter: '50 mm',
    boreDiameter: '20 mm',
    length: '400 mm',
    burningEnds: 'none',
  }),
  nozzle: { throatDiameter: '14.5 mm', expansionRatio: 4 },
  chamber: { innerDiameter: '50.001 mm', length: '400.1 mm' },
  ambient: '101325 Pa',
  ignition: { initialPressure: '1 MPa' },
  erosiveBurning: { law: 'mukunda-paul' },
  stations: 24,
} as const;

/** The record, with noise of a 12 bit converter on 14 MPa and some more. */
const recordOf = (name: string, channel: 'head' | 'nozzle' = 'head', noise = 8e3) => {
  const { time, ...pressures } = truthOf(name);
  const stream = randomStream(11);
  return firing({
    origin: 'measured',
    time: series([...time], 's'),
    pressure: fromSiArray(
      'absolute pressure',
      Float64Array.from(pressures[channel], (p) => p + noise * stream.normal()),
    ),
    ambientPressure: '101325 Pa',
  });
};

describe('fitErosiveBurning', () => {
  it.each(['tight', 'mild', 'none'])('finds the factor of the firing %s within its interval', (name) => {
    const truth = truthOf(name);
    const found = fitErosiveBurning({ record: recordOf(name), motor: tight });
    expect(found.interval[0]).toBeLessThanOrEqual(truth.factor);
    expect(found.interval[1]).toBeGreaterThanOrEqual(truth.factor);
  });

  it('says what the start shows, and the level of the firing apart from it', () => {
    const truth = truthOf('tight');
    const found = fitErosiveBurning({ record: recordOf('tight'), motor: tight });
    // d ln p/d ln r = 1/(1 − n).
    expect(found.levelRatio / truth.scale ** (1 / 0.68)).toBeCloseTo(1, 1);
    expect(found.startRatio).toBeGreaterThan(1.06);
    expect(found.residual).toBeLessThan(0.004);
    expect(found.standardError).toBeLessThan(0.15);
    expect(found.erosiveBurning).toMatchObject({
      law: 'mukunda-paul',
      augmentationFactor: found.augmentationFactor,
    });
    expect(found.cautions.join()).toMatch(/count it twice/);
    expect(String(found)).toMatch(/augmentation factor 1\.4/);
  });

  it('says where no erosion shows', () => {
    const found = fitErosiveBurning({ record: recordOf('none'), motor: tight });
    expect(found.interval[0]).toBe(0);
    expect(found.cautions.join()).toMatch(/does not show erosive burning/);
  });

  it('covers the truth with a wrong exponent too, since a wrong exponent looks like erosion', () => {
    const motor = {
      ...tight,
      propellant: propellant({
        density: '1780 kg/m^3',
        law: { coefficient: 7, rateUnit: 'mm/s', pressureUnit: 'MPa', exponent: 0.335 },
        gamma: 1.14,
        molarMass: '40 g/mol',
        flameTemperature: '1600 K',
      }),
    };
    const found = fitErosiveBurning({ record: recordOf('tight'), motor });
    expect(found.exponentChange).toBeLessThan(0);
    expect(Math.abs(found.augmentationFactor - 1.4)).toBeLessThan(1.96 * found.standardError);
    // The level is that in the middle of the pressures, some 4.7 MPa, where rate and exponent are independent.
    expect(found.levelRatio / (1.03 * 4.7 ** (0.32 - 0.335)) ** (1 / 0.68)).toBeCloseTo(1, 2);
    // Without that freedom it fits worse.
    const sure = fitErosiveBurning({ record: recordOf('tight'), motor, exponentError: 0 });
    expect(sure.exponentChange).toBe(0);
    expect(sure.residual).toBeGreaterThan(1.5 * found.residual);
  });

  it('takes either transducer, and is misled by the wrong one', () => {
    const nozzle = recordOf('tight', 'nozzle');
    const found = fitErosiveBurning({ record: nozzle, motor: tight, measuredAt: 'nozzle' });
    expect(Math.abs(found.augmentationFactor - 1.4)).toBeLessThan(1.96 * found.standardError);
    // The head end is 5 % above the nozzle at the start.
    const wrong = fitErosiveBurning({ record: nozzle, motor: tight });
    expect(wrong.augmentationFactor).toBeLessThan(found.augmentationFactor - 0.2);
  });

  it('refuses a firing that cannot tell, and a motor without a law', () => {
    const wide = {
      ...tight,
      grain: tubularSegment({
        outerDiameter: '50 mm',
        boreDiameter: '30 mm',
        length: '120 mm',
        burningEnds: 'none',
      }),
      nozzle: { throatDiameter: '8 mm', expansionRatio: 4 },
      chamber: { innerDiameter: '50.001 mm', length: '120.1 mm' },
    } as const;
    expect(() => fitErosiveBurning({ record: recordOf('wide'), motor: wide })).toThrow(
      /fitErosiveBurning: motor\.erosiveBurning: .*the port is too wide/s,
    );
    const { erosiveBurning: _, ...without } = tight;
    expect(() => fitErosiveBurning({ record: recordOf('tight'), motor: without })).toThrow(
      /the law to be fitted/,
    );
    expect(() =>
      fitErosiveBurning({ record: recordOf('tight'), motor: { ...tight, erosiveBurning: { law: 'none' } } }),
    ).toThrow(/the law to be fitted/);
  });
});
