import { constants, fromSiValue, type Quantity, type QuantityInput, readInput, unitOf } from '../../units';
import { type FieldsOf, requireFields } from '../../units/known-fields';
import { readPositive, refusal } from '../../units/refusal';
import { reducedProperties } from './species-polynomials';
import { knownSpecies } from './species-properties';
import { fitRange } from './species-table';

/** What {@link equilibriumConstant} needs. */
export interface EquilibriumConstantOptions {
  /** Moles on the left side by species: `{ CO2: 1 }`. */
  readonly reactants: Readonly<Record<string, number>>;
  /** Moles on the right side by species: `{ CO: 1, O2: 0.5 }`. */
  readonly products: Readonly<Record<string, number>>;
  readonly temperature: QuantityInput<'temperature'>;
}

/** How far a reaction goes at a temperature. */
export interface EquilibriumConstant {
  /** Natural logarithm of Kp, partial pressures counted in bar; pure solids and liquids count as 1. */
  readonly lnKp: number;
  readonly kp: number;
  /** Standard Gibbs energy of the reaction as written. */
  readonly gibbsEnergy: Quantity<'molar energy'>;
  /** Heat that the reaction takes up as written; negative where it gives heat. */
  readonly enthalpy: Quantity<'molar energy'>;
  /** Moles of gas gained as written: Kp for another standard pressure is Kp·(1 bar/p)^this. */
  readonly gasMolesGained: number;
}

const equilibriumConstantFields: FieldsOf<EquilibriumConstantOptions> = {
  reactants: 'required',
  products: 'required',
  temperature: 'required',
};

/**
 * Equilibrium constant of a reaction at the standard pressure of 1 bar. Tables that count in atmospheres differ by 0.0132 in
 * ln Kp for each mole of gas gained.
 *
 * Source: ln Kp = −ΔG°/(R·T) with the polynomials of NASA TM-4513 (1993).
 *
 * @throws MeopError `out-of-domain` for a species that is not known, a reaction that does not balance, or a temperature outside a fit
 * @example equilibriumConstant({ reactants: { CO2: 1 }, products: { CO: 1, O2: 0.5 }, temperature: '2500 K' }).lnKp // => -3.30054
 */
export function equilibriumConstant(options: EquilibriumConstantOptions): EquilibriumConstant {
  requireFields('equilibriumConstant', options, equilibriumConstantFields);
  const t = readInput('temperature', 'temperature', options.temperature, 'equilibriumConstant').si;
  const balance = new Map<string, number>();
  let gibbs = 0;
  let enthalpy = 0;
  let gained = 0;
  for (const [side, sign] of [
    ['reactants', -1],
    ['products', 1],
  ] as const)
    for (const [name, given] of Object.entries(options[side])) {
      const path = `${side}.${name}`;
      const species = knownSpecies('equilibriumConstant', path, name, 'nasa7');
      const moles = readPositive('dimensionless', path, given, 'equilibriumConstant').si;
      const { from, to } = fitRange(species);
      if (!(t >= from && t <= to))
        throw refusal(
          'equilibriumConstant',
          'temperature',
          options.temperature,
          `from ${from} K to ${to} K, the fit of ${name},`,
        );
      const at = reducedProperties(species, t);
      gibbs += sign * moles * (at.enthalpy - at.entropy);
      enthalpy += sign * moles * at.enthalpy;
      if (species.phase === 'gas') gained += sign * moles;
      for (const [element, count] of Object.entries(species.elements))
        balance.set(element, (balance.get(element) ?? 0) + sign * moles * count);
    }
  for (const [element, excess] of balance)
    if (Math.abs(excess) > 1e-9)
      throw refusal(
        'equilibriumConstant',
        'products',
        `${excess > 0 ? excess : -excess} mol of ${element} too ${excess > 0 ? 'much' : 'little'}`,
        'as much of each element as in the reactants',
      );
  const scale = constants.molarGasConstant.value * t;
  return {
    lnKp: -gibbs,
    kp: Math.exp(-gibbs),
    gibbsEnergy: fromSiValue(gibbs * scale, 'molar energy', unitOf('kJ/mol')),
    enthalpy: fromSiValue(enthalpy * scale, 'molar energy', unitOf('kJ/mol')),
    gasMolesGained: gained,
  };
}
