import {
  constants,
  fromSiValue,
  inputs,
  list,
  procedure,
  type Quantity,
  specificHeat,
  unitOf,
} from '../units';
import { molarMassOfGas, partName, parts, partsBy, someParts } from './gas-inputs';

/** A mixture of gases that do not react. */
export interface GasMixture {
  readonly molarMass: Quantity<'molar mass'>;
  readonly gasConstant: Quantity<'specific gas constant'>;
  readonly specificHeat: Quantity<'specific heat'>;
  readonly gamma: number;
  /** In the order of the species. */
  readonly moleFractions: readonly number[];
  readonly massFractions: readonly number[];
}

const species = /* @__PURE__ */ inputs(
  {
    name: partName,
    molarMass: molarMassOfGas,
    specificHeat: specificHeat(
      'c_p',
      'specific heat at constant pressure, at the temperature of the mixture',
      {
        example: '1040 J/(kg*K)',
      },
    ),
    parts,
  },
  {
    meaning: 'species of a gas mixture',
    checks: [
      ({ molarMass, specificHeat }) =>
        specificHeat.si > constants.molarGasConstant.value / molarMass.si
          ? undefined
          : { path: 'specificHeat', given: specificHeat, expected: 'above the gas constant of the species' },
    ],
  },
);

/**
 * Molar mass, gas constant, specific heat and γ of a mixture of gases of frozen composition.
 *
 * @example gasMixture({ by: 'mole', species: [{ molarMass: '28.014 g/mol', specificHeat: '1040 J/(kg*K)', parts: 0.79 }, { molarMass: '31.998 g/mol', specificHeat: '918 J/(kg*K)', parts: 0.21 }] }).molarMass.in('g/mol') // => 28.85064
 */
export const gasMixture = /* @__PURE__ */ procedure({
  name: 'gasMixture',
  title: 'Mixture of gases that do not react',
  source: 'Ideal-gas mixture rules (Gibbs-Dalton), any thermodynamics textbook',
  inputs: { species: list('species of the mixture', species), by: partsBy },
  gives: 'molar mass, gas constant, specific heat, ratio of specific heats and fractions',
  example: {
    by: 'mole',
    species: [
      { molarMass: '28.014 g/mol', specificHeat: '1040 J/(kg*K)', parts: 0.79 },
      { molarMass: '31.998 g/mol', specificHeat: '918 J/(kg*K)', parts: 0.21 },
    ],
  },
  checks: [({ species }) => someParts('species', species)],
  run: ({ species, by }): GasMixture => {
    const rows = species.map(({ molarMass: { si: m }, specificHeat: { si: cp }, parts }) => ({
      m,
      cp,
      mole: by === 'mole' ? parts : parts / m,
    }));
    const moles = rows.reduce((sum, { mole }) => sum + mole, 0);
    const mass = rows.reduce((sum, { mole, m }) => sum + mole * m, 0);
    const cp = rows.reduce((sum, row) => sum + row.mole * row.m * row.cp, 0) / mass;
    const r = (constants.molarGasConstant.value * moles) / mass;
    return {
      molarMass: fromSiValue(mass / moles, 'molar mass', unitOf('g/mol')),
      gasConstant: fromSiValue(r, 'specific gas constant', unitOf('J/(kg*K)')),
      specificHeat: fromSiValue(cp, 'specific heat', unitOf('J/(kg*K)')),
      gamma: cp / (cp - r),
      moleFractions: rows.map(({ mole }) => mole / moles),
      massFractions: rows.map(({ mole, m }) => (mole * m) / mass),
    };
  },
});
