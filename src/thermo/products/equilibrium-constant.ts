import {
  constants,
  fromSiValue,
  MeopError,
  type Place,
  procedure,
  type Quantity,
  ratio,
  temperature,
  unitOf,
} from '../../units';
import { amountsByName } from './amounts-by-name';
import { reducedProperties } from './species-polynomials';
import { temperatureConflict } from './species-properties';
import { speciesOf } from './species-table';

/** Equilibrium of a reaction at a temperature. */
export interface EquilibriumConstant {
  /** Natural logarithm of Kp, partial pressures in bar; pure solids and liquids count as 1. */
  readonly lnKp: number;
  readonly kp: number;
  /** Standard Gibbs energy of the reaction as written. */
  readonly gibbsEnergy: Quantity<'molar energy'>;
  /** Heat that the reaction absorbs as written; negative where it releases heat. */
  readonly enthalpy: Quantity<'molar energy'>;
  /** Moles of gas gained as written: Kp for another standard pressure is Kp·(1 bar/p)^this. */
  readonly gasMolesGained: number;
}

const moles = {
  what: 'moles by species',
  find: (name: string, at: Place) => speciesOf(name, 'nasa7', at),
  amount: /* @__PURE__ */ ratio('ν', 'moles', { above: 0 }),
};

/**
 * Equilibrium constant of a reaction at the standard pressure of 1 bar. Tables in atmospheres differ by 0.0132 in
 * ln Kp for each mole of gas gained.
 *
 * @example equilibriumConstant({ reactants: { CO2: 1 }, products: { CO: 1, O2: 0.5 }, temperature: '2500 K' }).lnKp // => -3.30054
 */
export const equilibriumConstant = /* @__PURE__ */ procedure({
  name: 'equilibriumConstant',
  title: 'Equilibrium constant of a reaction at 1 bar',
  source: 'ln Kp = −ΔG°/(R·T) with the polynomials of NASA TM-4513 (1993)',
  inputs: {
    reactants: amountsByName('moles of each species on the left side', { ...moles, example: { CO2: 1 } }),
    products: amountsByName('moles of each species on the right side', {
      ...moles,
      example: { CO: 1, O2: 0.5 },
    }),
    temperature: temperature('T', 'temperature'),
  },
  gives: 'ln Kp, Kp, and the Gibbs energy and enthalpy of the reaction',
  example: { reactants: { CO2: 1 }, products: { CO: 1, O2: 0.5 }, temperature: '2500 K' },
  run: ({ reactants, products, temperature }): EquilibriumConstant => {
    const t = temperature.si;
    const balance = new Map<string, number>();
    let gibbs = 0;
    let enthalpy = 0;
    let gained = 0;
    for (const [side, sign] of [
      [reactants, -1],
      [products, 1],
    ] as const)
      for (const [species, moles] of side) {
        const conflict = temperatureConflict(species, temperature, 'equilibriumConstant');
        if (conflict) throw conflict;
        const at = reducedProperties(species, t);
        gibbs += sign * moles * (at.enthalpy - at.entropy);
        enthalpy += sign * moles * at.enthalpy;
        if (species.phase === 'gas') gained += sign * moles;
        for (const [element, count] of Object.entries(species.elements))
          balance.set(element, (balance.get(element) ?? 0) + sign * moles * count);
      }
    for (const [element, excess] of balance)
      if (Math.abs(excess) > 1e-9)
        throw new MeopError({
          code: 'out-of-domain',
          procedure: 'equilibriumConstant',
          path: 'products',
          problem: `${Math.abs(excess)} mol of ${element} too ${excess > 0 ? 'much' : 'little'}`,
          expected: 'the elements of the reactants',
          remedy: 'Balance the reaction',
        });
    const scale = constants.molarGasConstant.value * t;
    return {
      lnKp: -gibbs,
      kp: Math.exp(-gibbs),
      gibbsEnergy: fromSiValue(gibbs * scale, 'molar energy', unitOf('kJ/mol')),
      enthalpy: fromSiValue(enthalpy * scale, 'molar energy', unitOf('kJ/mol')),
      gasMolesGained: gained,
    };
  },
});
