import {
  constants,
  formula,
  fromSiValue,
  molarHeatCapacity,
  optional,
  printable,
  procedure,
  type Quantity,
  ratio,
  specificGasConstant,
  specificHeat,
  table,
  temperature,
  unitOf,
} from '../units';
import { gamma, gasConstant, molarMassOfGas } from './gas-inputs';
import { vandenkerckhoveSi } from './isentropic-kernels';

/**
 * Specific gas constant from the molar mass.
 *
 * @example gasConstantOf({ molarMass: '40 g/mol' }).in('J/(kg*K)') // => 207.861565
 */
export const gasConstantOf = /* @__PURE__ */ formula({
  name: 'gasConstantOf',
  title: 'Specific gas constant',
  equation: 'R_s = R / M',
  source: 'Definition; molar gas constant of the SI Brochure, 9th ed. (2019)',
  inputs: {
    molarMass: molarMassOfGas,
    molarGasConstant: optional(
      molarHeatCapacity('R', 'molar gas constant'),
      constants.molarGasConstant.value,
    ),
  },
  output: specificGasConstant('R_s', 'specific gas constant'),
  example: { molarMass: '40 g/mol' },
  si: ({ molarMass, molarGasConstant = constants.molarGasConstant.value }) => molarGasConstant / molarMass,
});

/**
 * Ratio of specific heats from the specific heat at constant pressure.
 *
 * @example gammaFromSpecificHeat({ specificHeat: '1005 J/(kg*K)', gasConstant: '287 J/(kg*K)' }) // => 1.399721448
 */
export const gammaFromSpecificHeat = /* @__PURE__ */ formula({
  name: 'gammaFromSpecificHeat',
  title: 'Ratio of specific heats from the specific heat',
  equation: 'γ = c_p / (c_p − R)',
  source: 'Definition for a perfect gas, c_p − c_v = R',
  inputs: {
    specificHeat: specificHeat('c_p', 'specific heat at constant pressure'),
    gasConstant,
  },
  output: ratio('γ', 'ratio of specific heats'),
  example: { specificHeat: '1005 J/(kg*K)', gasConstant: '287 J/(kg*K)' },
  requires: [
    ({ specificHeat, gasConstant }) =>
      specificHeat > gasConstant || 'the specific heat must be above the gas constant: c_p − R is c_v',
  ],
  si: ({ specificHeat, gasConstant }) => specificHeat / (specificHeat - gasConstant),
  solve: {
    specificHeat: (gamma, { gasConstant }) => (gamma * gasConstant) / (gamma - 1),
    gasConstant: (gamma, { specificHeat }) => (specificHeat * (gamma - 1)) / gamma,
  },
});

/** A perfect gas at its stagnation temperature. */
export interface Gas {
  readonly gamma: number;
  readonly molarMass: Quantity<'molar mass'>;
  readonly temperature: Quantity<'temperature'>;
  readonly gasConstant: Quantity<'specific gas constant'>;
  readonly specificHeat: Quantity<'specific heat'>;
  readonly soundSpeed: Quantity<'speed'>;
  /** Ideal characteristic velocity with this temperature as the stagnation temperature. */
  readonly characteristicVelocity: Quantity<'speed'>;
  toString(): string;
}

/**
 * Properties of a perfect gas at rest in the chamber.
 *
 * @example gas({ gamma: 1.13, molarMass: '42.4 g/mol', temperature: '1700 K' }).characteristicVelocity.in('m/s') // => 909.8631
 */
export const gas = /* @__PURE__ */ procedure({
  name: 'gas',
  title: 'Properties of a perfect gas',
  source: 'Definitions for a perfect gas; characteristic velocity as idealCharacteristicVelocity',
  inputs: {
    gamma,
    molarMass: molarMassOfGas,
    temperature: temperature('T', 'stagnation temperature in the chamber'),
  },
  gives: 'gas constant, specific heat, speed of sound and ideal characteristic velocity',
  example: { gamma: 1.13, molarMass: '42.4 g/mol', temperature: '1700 K' },
  run: ({ gamma: g, molarMass: { si: m }, temperature: { si: t } }): Gas => {
    const r = constants.molarGasConstant.value / m;
    const facts = {
      gamma: g,
      molarMass: fromSiValue(m, 'molar mass', unitOf('g/mol')),
      temperature: fromSiValue(t, 'temperature', unitOf('K')),
      gasConstant: fromSiValue(r, 'specific gas constant', unitOf('J/(kg*K)')),
      specificHeat: fromSiValue((g * r) / (g - 1), 'specific heat', unitOf('J/(kg*K)')),
      soundSpeed: fromSiValue(Math.sqrt(g * r * t), 'speed', unitOf('m/s')),
      characteristicVelocity: fromSiValue(Math.sqrt(r * t) / vandenkerckhoveSi(g), 'speed', unitOf('m/s')),
    } satisfies Omit<Gas, 'toString'>;
    return printable(facts, () =>
      table(Object.entries(facts).map(([property, value]) => ({ property, value: String(value) }))),
    );
  },
});
