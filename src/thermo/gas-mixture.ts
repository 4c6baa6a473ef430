import {
  constants,
  fromSiValue,
  MeopError,
  type Quantity,
  type QuantityInput,
  readInput,
  unitOf,
} from '../units';
import { type FieldsOf, requireFields } from '../units/known-fields';
import { readNotNegative, readPositive, refusal } from '../units/refusal';

const procedure = 'gasMixture';

/** One species of a gas mixture. */
export interface GasSpecies {
  readonly name?: string;
  readonly molarMass: QuantityInput<'molar mass'>;
  /** Specific heat at constant pressure, at the temperature of the mixture. */
  readonly specificHeat: QuantityInput<'specific heat'>;
  /** Parts by mole or by mass, in any scale: 2 and 1 are two thirds and one third. */
  readonly parts: number;
}

/** What {@link gasMixture} needs. */
export interface GasMixtureOptions {
  readonly species: readonly GasSpecies[];
  /** What the parts count: moles (the same as volumes) or masses. */
  readonly by: 'mole' | 'mass';
}

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

const gasSpeciesFields: FieldsOf<GasSpecies> = {
  name: 'optional',
  molarMass: 'required',
  specificHeat: 'required',
  parts: 'required',
};

const gasMixtureFields: FieldsOf<GasMixtureOptions> = { species: 'required', by: 'required' };

/**
 * Molar mass, gas constant, specific heat and γ of a mixture of gases of frozen composition.
 *
 * Source: ideal-gas mixture rules (Gibbs-Dalton), any thermodynamics text.
 *
 * @throws MeopError `missing-field` for no species, `out-of-domain` for parts or properties without sense
 * @example gasMixture({ by: 'mole', species: [{ molarMass: '28.014 g/mol', specificHeat: '1040 J/(kg*K)', parts: 0.79 }, { molarMass: '31.998 g/mol', specificHeat: '918 J/(kg*K)', parts: 0.21 }] }).molarMass.in('g/mol') // => 28.85064
 */
export function gasMixture(options: GasMixtureOptions): GasMixture {
  requireFields(procedure, options, gasMixtureFields);
  const { species, by } = options;
  if (by !== 'mole' && by !== 'mass') throw refusal(procedure, 'by', by, "'mole' or 'mass'");
  if (!Array.isArray(species) || species.length === 0)
    throw new MeopError(
      'missing-field',
      'gasMixture: species: none given; at least one is expected',
      'species',
    );
  const rows = species.map((one: GasSpecies, i) => {
    const path = `species[${i}]`;
    requireFields(`gasMixture: ${path}`, one, gasSpeciesFields);
    const { molarMass, specificHeat, parts } = one;
    const m = readPositive('molar mass', `${path}.molarMass`, molarMass, procedure).si;
    const cp = readInput('specific heat', `${path}.specificHeat`, specificHeat, procedure).si;
    const share = readNotNegative('dimensionless', `${path}.parts`, parts, procedure).si;
    if (!(cp > constants.molarGasConstant.value / m))
      throw refusal(procedure, `${path}.specificHeat`, specificHeat, 'above the gas constant of the species');
    return { m, cp, mole: by === 'mole' ? share : share / m };
  });
  const moles = rows.reduce((sum, { mole }) => sum + mole, 0);
  if (!(moles > 0)) throw refusal(procedure, 'species', 'parts that are all 0', 'at least one part above 0');
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
}
