import { describe, expect, it } from 'vitest';
import { propellant, publishedPropellant, publishedPropellants } from '../../src/ballistics';
import { checkValue } from '../cases/check-value';
import { caseOf } from '../cases/read-case';

const base = {
  density: '1820 kg/m^3',
  law: { coefficient: 5.1, rateUnit: 'mm/s', pressureUnit: 'MPa', exponent: 0.22 },
  gamma: 1.135,
  molarMass: '39.9 g/mol',
  flameTemperature: '1600 K',
} as const;

describe('a propellant', () => {
  it('derives c* and carries its efficiency into the temperature (case equilibrium-with-gas-storage)', () => {
    const one = caseOf('ballistics', 'equilibrium-with-gas-storage');
    const made = propellant({ ...base, characteristicVelocityEfficiency: 0.95 });
    checkValue(one, 'characteristicVelocity', made.characteristicVelocity.si, one.relTol / 2);
    expect(made.effectiveTemperature.si).toBeCloseTo(1600 * 0.95 ** 2, 9);
  });

  it('cstar-kn-sorbitol: the perfect-gas c* is that of the published value', () => {
    const one = caseOf('ballistics', 'cstar-kn-sorbitol');
    const made = publishedPropellant('potassium nitrate/sorbitol');
    checkValue(one, 'characteristicVelocity', made.idealCharacteristicVelocity.si);
  });

  it('derives whichever of gas constant, temperature and c* is left out', () => {
    const made = propellant(base);
    const { molarMass: _m, ...noMass } = base;
    const fromVelocity = propellant({
      ...noMass,
      idealCharacteristicVelocity: made.idealCharacteristicVelocity,
    });
    expect(fromVelocity.gasConstant.si).toBeCloseTo(made.gasConstant.si, 9);
    const { flameTemperature: _t, ...noTemperature } = base;
    const cold = propellant({
      ...noTemperature,
      idealCharacteristicVelocity: made.idealCharacteristicVelocity,
    });
    expect(cold.flameTemperature.si).toBeCloseTo(1600, 9);
  });

  it('refuses facts that contradict each other', () => {
    expect(() => propellant({ ...base, idealCharacteristicVelocity: '1000 m/s' })).toThrow(/not independent/);
    expect(() => propellant({ ...base, gasConstant: '200 J/(kg*K)' })).toThrow(
      expect.objectContaining({ code: 'inconsistent' }),
    );
    expect(() => propellant({ ...base, density: '0 kg/m^3' })).toThrow(
      expect.objectContaining({ code: 'out-of-domain' }),
    );
    const { molarMass: _m, ...missing } = base;
    expect(() => propellant(missing)).toThrow(expect.objectContaining({ code: 'missing-field' }));
  });

  it('cautions when delivered values are above the ideal ones', () => {
    expect(propellant({ ...base, idealDensity: '1800 kg/m^3' }).cautions[0]).toMatch(
      /above the ideal density/,
    );
    expect(propellant({ ...base, characteristicVelocityEfficiency: 1.02 }).cautions[0]).toMatch(
      /above the ideal/,
    );
  });

  it('every published characterisation makes a propellant and says where each value comes from', () => {
    for (const name of publishedPropellants()) {
      const made = publishedPropellant(name);
      expect(Object.keys(made.sources)).toEqual(
        expect.arrayContaining(['flameTemperature', 'molarMass', 'gamma', 'law', 'idealDensity']),
      );
      expect(String(made)).toContain('source of law');
    }
    expect(() => publishedPropellant('nothing')).toThrow(expect.objectContaining({ code: 'unknown-name' }));
  });
});
