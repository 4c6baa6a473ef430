import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as ballistics from '../../src/ballistics';
import {
  adiabaticBlowdown,
  burningAreaRatioForPressure,
  chamberTimeConstant,
  equilibriumPressure,
  equilibriumPressureRatio,
  equilibriumPressures,
  isothermalBlowdown,
  pressureAtGrainTemperature,
  pressureTemperatureSensitivity,
  propellant,
  publishedPropellant,
  saintRobert,
  throatForPressure,
} from '../../src/ballistics';
import { constants, q } from '../../src/units';
import { checkValue } from '../cases/check-value';
import { caseOf, si, siList } from '../cases/read-case';

// Expected values are those of tests/cases/ballistics.json, each with its source and provenance there.

const close = (value: number, expected: number, relTol: number): void =>
  expect(Math.abs(value / expected - 1)).toBeLessThanOrEqual(relTol);
const law = (coefficient: number, exponent: number) => {
  const { bands } = saintRobert({ coefficient, exponent, rateUnit: 'mm/s', pressureUnit: 'MPa' });
  const { referenceRate, referencePressure } = bands[0];
  return { referenceRate, referencePressure, exponent };
};

describe('equilibrium of one power law', () => {
  it('equilibrium-from-k', () => {
    const one = caseOf('ballistics', 'equilibrium-from-k');
    const { inputs } = one;
    const p = equilibriumPressure.si({
      density: si(inputs.density),
      characteristicVelocity: si(inputs.characteristicVelocity),
      burningAreaRatio: si(inputs.areaRatioK),
      ...law(7, 0.32),
    });
    checkValue(one, 'pressure', p);
    checkValue(one, 'burnRate', ballistics.burnRate.si({ ...law(7, 0.32), pressure: p }));
  });

  it('k-from-pressure', () => {
    const one = caseOf('ballistics', 'k-from-pressure');
    const { inputs } = one;
    const K = burningAreaRatioForPressure.si({
      pressure: si(inputs.pressure),
      density: si(inputs.density),
      characteristicVelocity: si(inputs.characteristicVelocity),
      ...law(5.13, 0.222),
    });
    checkValue(one, 'areaRatioK', K);
  });

  it('equilibrium-throat-for-50bar', () => {
    const one = caseOf('ballistics', 'equilibrium-throat-for-50bar');
    const { inputs } = one;
    const own = saintRobert({ coefficient: 6.65e-3, rateUnit: 'mm/s', pressureUnit: 'Pa', exponent: 0.45 });
    const rate = ballistics.burnRate(own, { pressure: '50 bar' }).si;
    checkValue(one, 'burnRate', rate);
    const throat = throatForPressure.si({
      pressure: si(inputs.pressure),
      burningArea: si(inputs.burningArea),
      burnRate: rate,
      density: si(inputs.density),
      characteristicVelocity: si(inputs.characteristicVelocity),
    });
    checkValue(one, 'throatDiameter', throat);
  });

  it.each(['pressure-sensitivity-area', 'defect-pressure-ratio'])('%s', (id) => {
    const one = caseOf('ballistics', id);
    const { inputs } = one;
    const areas = Array.isArray(inputs.areaFactor) ? siList(inputs.areaFactor) : undefined;
    const exponents = Array.isArray(inputs.exponents) ? siList(inputs.exponents) : undefined;
    siList(one.expected.pressureFactor).forEach((_, i) => {
      const ratio = equilibriumPressureRatio({
        burningAreaFactor: areas?.[i] ?? si(inputs.areaFactor),
        exponent: exponents?.[i] ?? si(inputs.exponent),
      });
      checkValue(one, `pressureFactor[${i}]`, ratio);
    });
  });

  it('pressure-sensitivity-throat: diameter counts twice', () => {
    const one = caseOf('ballistics', 'pressure-sensitivity-throat');
    const { inputs } = one;
    const factor = si(inputs.throatDiameterFactor);
    const ratio = equilibriumPressureRatio({ throatDiameterFactor: factor, exponent: si(inputs.exponent) });
    checkValue(one, 'pressureFactor', ratio);
    checkValue(one, 'thrustFactor', ratio * factor ** 2);
  });

  it('crack-ignition-pressure', () => {
    const one = caseOf('ballistics', 'crack-ignition-pressure');
    const { inputs } = one;
    const factor = 1 + (2 * si(inputs.crackDepth) * si(inputs.crackAxialLength)) / si(inputs.soundArea);
    checkValue(one, 'areaFactor', factor);
    checkValue(
      one,
      'pressureFactor',
      equilibriumPressureRatio({ burningAreaFactor: factor, exponent: si(inputs.exponent) }),
    );
  });

  it('pik-from-sigmap and temperature-pressure-ratio', () => {
    const one = caseOf('ballistics', 'temperature-pressure-ratio');
    const { inputs } = one;
    const piK = pressureTemperatureSensitivity({ rateSensitivity: '0.0025 1/K', exponent: 0.35 });
    checkValue(caseOf('ballistics', 'pik-from-sigmap'), 'piK', piK.si, 1e-6);
    const p2 = pressureAtGrainTemperature.si({
      pressure: si(inputs.pressure),
      pressureSensitivity: piK.si,
      temperatureChange: 30,
    });
    checkValue(one, 'pressure', p2);
    checkValue(
      one,
      'rateRatioAtConstantPressure',
      ballistics.burnRateTemperatureFactor({
        rateSensitivity: '0.0025 1/K',
        temperatureChange: '30 delta_K',
      }),
    );
  });

  it('tail-off-laws', () => {
    const one = caseOf('ballistics', 'tail-off-laws');
    const { inputs } = one;
    const gasConstant = constants.molarGasConstant.value / si(inputs.molarMass);
    const made = propellant({
      density: '1800 kg/m^3',
      law: { referenceRate: '7 mm/s', referencePressure: '1 MPa', exponent: 0.3 },
      gamma: si(inputs.gamma),
      gasConstant: q(gasConstant, 'J/(kg*K)').as('specific gas constant'),
      flameTemperature: q(si(inputs.temperature), 'K'),
    });
    const timeConstant = chamberTimeConstant.si({
      freeVolume: si(inputs.freeVolume),
      characteristicVelocity: made.characteristicVelocity.si,
      gasConstant,
      temperature: si(inputs.temperature),
      throatArea: si(inputs.throatArea),
    });
    checkValue(one, 'timeConstant', timeConstant);
    siList(inputs.times).forEach((time, i) => {
      const values = { pressure: si(inputs.pressure), time, timeConstant };
      checkValue(one, `pressureIsothermal[${i}]`, isothermalBlowdown.si(values));
      checkValue(
        one,
        `pressureAdiabatic[${i}]`,
        adiabaticBlowdown.si({ ...values, gamma: si(inputs.gamma) }),
      );
    });
  });
});

describe('every equilibrium of a law of bands', () => {
  it('equilibrium-with-gas-storage', () => {
    const one = caseOf('ballistics', 'equilibrium-with-gas-storage');
    const { inputs } = one;
    const made = propellant({
      density: '1820 kg/m^3',
      law: { coefficient: 5.1, rateUnit: 'mm/s', pressureUnit: 'MPa', exponent: 0.22 },
      gamma: 1.135,
      molarMass: '39.9 g/mol',
      flameTemperature: '1600 K',
      characteristicVelocityEfficiency: 0.95,
    });
    const K = si(inputs.areaRatioK);
    const [stored] = equilibriumPressures({ propellant: made, burningAreaRatio: K });
    const [simple] = equilibriumPressures({ propellant: made, burningAreaRatio: K, gasStorage: false });
    checkValue(one, 'pressureWithStorage', stored.pressure.si);
    checkValue(one, 'pressureSimple', simple.pressure.si);
  });

  // Two bands of one exponent, the upper one twice as fast: by hand p = (ρ·a·c*·K)² for n = 0.5 in each.
  const twoBands = (below: number, above: number) =>
    propellant({
      density: '1800 kg/m^3',
      gamma: 1.15,
      molarMass: '40 g/mol',
      flameTemperature: '1600 K',
      law: {
        bands: [
          {
            from: '0.1 MPa',
            to: '4 MPa',
            referenceRate: q(below, 'mm/s'),
            referencePressure: '4 MPa',
            exponent: 0.5,
          },
          {
            from: '4 MPa',
            to: '20 MPa',
            referenceRate: q(above, 'mm/s'),
            referencePressure: '4 MPa',
            exponent: 0.5,
          },
        ],
      },
    });

  it('finds the unstable equilibrium at a jump up, between two stable ones', () => {
    const roots = equilibriumPressures({
      propellant: twoBands(5, 10),
      burningAreaRatio: 4e6 / (1800 * 905 * 0.007),
      gasStorage: false,
    });
    expect(roots.map(({ stable, place }) => [stable, place])).toEqual([
      [true, 'band'],
      [false, 'jump'],
      [true, 'band'],
    ]);
    expect(roots[1].pressure.in('MPa')).toBeCloseTo(4, 9);
    expect(String(roots)).toContain('unstable');
  });

  it('finds the pressure that a jump down holds', () => {
    const roots = equilibriumPressures({
      propellant: twoBands(10, 5),
      burningAreaRatio: 4e6 / (1800 * 905 * 0.007),
      gasStorage: false,
    });
    expect(roots.map(({ stable, place }) => [stable, place])).toEqual([[true, 'jump']]);
    expect(roots[0].pressure.in('MPa')).toBeCloseTo(4, 9);
  });

  it('agrees with the closed form for one band, for any law (no gas storage)', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 30, noNaN: true }),
        fc.double({ min: -0.5, max: 0.85, noNaN: true }),
        fc.double({ min: 20, max: 900, noNaN: true }),
        (coefficient, exponent, K) => {
          const made = propellant({
            density: '1800 kg/m^3',
            law: { coefficient, rateUnit: 'mm/s', pressureUnit: 'MPa', exponent },
            gamma: 1.15,
            molarMass: '40 g/mol',
            flameTemperature: '1600 K',
          });
          const closed = equilibriumPressure.si({
            density: 1800,
            characteristicVelocity: made.characteristicVelocity.si,
            burningAreaRatio: K,
            ...law(coefficient, exponent),
          });
          const roots = equilibriumPressures({ propellant: made, burningAreaRatio: K, gasStorage: false });
          expect(roots).toHaveLength(1);
          close(roots[0].pressure.si, closed, 1e-9);
        },
      ),
    );
  });

  it('roots alternate in stability, and the first and last are stable', () => {
    for (const name of ['potassium nitrate/sorbitol', 'potassium nitrate/dextrose']) {
      for (let K = 50; K < 900; K += 12.5) {
        const roots = equilibriumPressures({ propellant: publishedPropellant(name), burningAreaRatio: K });
        expect(roots.length % 2).toBe(1);
        roots.forEach((root, i) => {
          expect(root.stable).toBe(i % 2 === 0);
        });
      }
    }
  });

  // By hand: with the rate held at r, (ρ·r·c*·K) is the pressure itself.
  it('a law that clamps keeps the rate at the end of its range; one that refuses says so', () => {
    const made = (outside: 'clamp' | 'error' | 'extrapolate', to: '2 MPa' | '9 MPa' = '2 MPa') =>
      propellant({
        density: '1800 kg/m^3',
        law: {
          referenceRate: '8 mm/s',
          referencePressure: '2 MPa',
          exponent: 0.5,
          characterisedTo: to,
          outside,
        },
        gamma: 1.15,
        molarMass: '40 g/mol',
        flameTemperature: '1600 K',
      });
    const at = (outside: 'clamp' | 'error' | 'extrapolate', to?: '2 MPa' | '9 MPa') =>
      equilibriumPressures({ propellant: made(outside, to), burningAreaRatio: 300, gasStorage: false });
    const perRate = 1800 * made('clamp').characteristicVelocity.si * 300;
    close(at('clamp')[0].pressure.si, 0.008 * perRate, 1e-9);
    expect(at('clamp')[0].cautions.join()).toMatch(/the rate at that limit is used/);
    close(at('extrapolate')[0].pressure.si, (0.008 * perRate) ** 2 / 2e6, 1e-9);
    expect(() => at('error')).toThrow(expect.objectContaining({ code: 'out-of-range' }));
    close(at('error', '9 MPa')[0].pressure.si, (0.008 * perRate) ** 2 / 2e6, 1e-9);
  });

  it('a root on the boundary of two bands is not lost between them', () => {
    const made = twoBands(10, 5);
    // Just so that the lower band balances at its very end, to the last bit or next to it.
    const exact = 4e6 / (1800 * made.characteristicVelocity.si * 0.01);
    for (let step = -40; step <= 40; step++) {
      const K = exact * (1 + step * Number.EPSILON);
      const roots = equilibriumPressures({ propellant: made, burningAreaRatio: K, gasStorage: false });
      expect(roots).toHaveLength(1);
      close(roots[0].pressure.si, 4e6, 1e-12);
    }
  });

  it('refuses a misspelt option instead of leaving it out', () => {
    const misspelt: object = { grainTemp: '40 degC' };
    expect(() =>
      equilibriumPressures({ propellant: twoBands(10, 5), burningAreaRatio: 150, ...misspelt }),
    ).toThrow(expect.objectContaining({ code: 'unknown-field', path: 'grainTemp' }));
  });

  it('warns where the exponent comes close to 1', () => {
    const made = propellant({
      density: '1800 kg/m^3',
      law: { referenceRate: '8 mm/s', referencePressure: '2 MPa', exponent: 0.85 },
      gamma: 1.15,
      molarMass: '40 g/mol',
      flameTemperature: '1600 K',
    });
    const [root] = equilibriumPressures({ propellant: made, burningAreaRatio: 150 });
    expect(root.cautions.join()).toMatch(/marginally stable/);
  });

  // The slope of each root by central differences of K against the amplification it states.
  it('states the amplification that a change of area has', () => {
    for (const name of ['potassium nitrate/sorbitol', 'potassium nitrate/dextrose'] as const)
      for (const K of [140, 230, 310, 420]) {
        const at = (ratio: number) =>
          equilibriumPressures({ propellant: publishedPropellant(name), burningAreaRatio: ratio });
        const [low, mid, high] = [at(K * (1 - 1e-5)), at(K), at(K * (1 + 1e-5))];
        mid.forEach((root, i) => {
          const slope = Math.log(high[i].pressure.si / low[i].pressure.si) / 2e-5;
          expect(Math.abs(slope - root.amplification)).toBeLessThan(1e-4 * Math.max(1, root.amplification));
        });
      }
  });
});
