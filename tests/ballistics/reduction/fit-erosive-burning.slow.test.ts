import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { fitErosiveBurning, propellant, tubularSegment } from '../../../src/ballistics';
import { firing } from '../../../src/firing';
import { randomStream } from '../../../src/numerics';
import { fromSiArray, MeopError, series } from '../../../src/units';

// Truths of an independent model, and exponents that the person knows with a standard error of 0.02: computed with SciPy 1.17.1
// by tests/reference/port/eroding_firing.py batch.
const {
  firings,
}: {
  readonly firings: readonly (Readonly<
    Record<'outer' | 'bore' | 'length' | 'throat' | 'factor' | 'knownExponent', number>
  > & { readonly time: readonly number[]; readonly head: readonly number[] })[];
} = JSON.parse(readFileSync('tests/reference/port/eroding-batch.json', 'utf8'));

it('an interval called 95 % covers the factor of 24 random motors', () => {
  const stream = randomStream(5);
  const scores: number[] = [];
  let refused = 0;
  for (const one of firings) {
    const record = firing({
      origin: 'measured',
      time: series([...one.time], 's'),
      // Gain of the transducer within 1 %, noise of 0.1 % of 10 MPa.
      pressure: fromSiArray(
        'absolute pressure',
        Float64Array.from(one.head, (p) => 101325 + (p - 101325) * 1.008 + 1e4 * stream.normal()),
      ),
      ambientPressure: '101325 Pa',
    });
    const mm = (si: number) => `${1000 * si} mm` as const;
    try {
      const found = fitErosiveBurning({
        record,
        motor: {
          propellant: propellant({
            density: '1780 kg/m^3',
            law: { coefficient: 7, rateUnit: 'mm/s', pressureUnit: 'MPa', exponent: one.knownExponent },
            gamma: 1.14,
            molarMass: '40 g/mol',
            flameTemperature: '1600 K',
          }),
          grain: tubularSegment({
            outerDiameter: mm(one.outer),
            boreDiameter: mm(one.bore),
            length: mm(one.length),
            burningEnds: 'none',
          }),
          nozzle: { throatDiameter: mm(one.throat), expansionRatio: 4 },
          chamber: { innerDiameter: mm(one.outer * 1.00002), length: mm(one.length * 1.0003) },
          ambient: '101325 Pa',
          ignition: { initialPressure: '1 MPa' },
          erosiveBurning: { law: 'mukunda-paul' },
          stations: 30,
        },
      });
      scores.push((found.augmentationFactor - one.factor) / found.standardError);
    } catch (error) {
      if (!(error instanceof MeopError) || error.code !== 'not-determined') throw error;
      refused++;
    }
  }
  process.stdout.write(`${scores.map((z) => z.toFixed(1)).join(' ')}; refused ${refused}\n`);
  expect(refused).toBeLessThanOrEqual(4);
  // With a chance of 95 %, 3 or more of 24 outside have one of 12 %, 5 or more of 1 %.
  expect(scores.filter((z) => Math.abs(z) > 1.96).length).toBeLessThanOrEqual(3);
  // Not too wide either: a normal score has a root mean square of 1.
  const rms = Math.sqrt(scores.reduce((sum, z) => sum + z * z, 0) / scores.length);
  expect(rms).toBeGreaterThan(0.4);
  expect(rms).toBeLessThan(1.4);
}, 300_000);
