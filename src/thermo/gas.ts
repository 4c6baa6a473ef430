import {
  constants,
  formula,
  fromSiValue,
  molarHeatCapacity,
  molarMass,
  optional,
  type Quantity,
  type QuantityInput,
  ratio,
  readInput,
  specificGasConstant,
  specificHeat,
  table,
  unitOf,
} from '../units';
import { type FieldsOf, requireFields } from '../units/known-fields';
import { readPositive, refusal } from '../units/refusal';
import { vandenkerckhoveSi } from './isentropic-kernels';

const procedure = 'gas';

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
    molarMass: molarMass('M', 'molar mass'),
    molarGasConstant: optional(
      molarHeatCapacity('R', 'molar gas constant'),
      constants.molarGasConstant.value,
    ),
  },
  output: specificGasConstant('R_s', 'specific gas constant'),
  example: { molarMass: '40 g/mol' },
  si: ({ molarMass, molarGasConstant = constants.molarGasConstant.value }) => molarGasConstant / molarMass,
  solve: { molarMass: (value, { molarGasConstant }) => molarGasConstant / value },
});

/**
 * Ratio of specific heats from the specific heat at constant pressure.
 *
 * @throws MeopError `out-of-domain` for a specific heat that is not above the gas constant
 * @example gammaFromSpecificHeat({ specificHeat: '1005 J/(kg*K)', gasConstant: '287 J/(kg*K)' }) // => 1.399721448
 */
export const gammaFromSpecificHeat = /* @__PURE__ */ formula({
  name: 'gammaFromSpecificHeat',
  title: 'Ratio of specific heats from the specific heat',
  equation: 'γ = c_p / (c_p − R)',
  source: 'Definition for a perfect gas, c_p − c_v = R',
  inputs: {
    specificHeat: specificHeat('c_p', 'specific heat at constant pressure'),
    gasConstant: specificGasConstant('R', 'specific gas constant'),
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

/** What {@link gas} needs. */
export interface GasOptions {
  /** Ratio of specific heats, above 1. */
  readonly gamma: number;
  readonly molarMass: QuantityInput<'molar mass'>;
  readonly temperature: QuantityInput<'temperature'>;
}

const gasFields: FieldsOf<GasOptions> = { gamma: 'required', molarMass: 'required', temperature: 'required' };

/**
 * A perfect gas: what follows from γ, molar mass and temperature. Temperature is that of the chamber, at rest.
 *
 * @throws MeopError `out-of-domain` for γ not above 1, or a molar mass or temperature not above 0
 * @example gas({ gamma: 1.13, molarMass: '42.4 g/mol', temperature: '1700 K' }).characteristicVelocity.in('m/s') // => 909.8631
 */
export function gas(options: GasOptions): Gas {
  requireFields(procedure, options, gasFields);
  const { gamma, molarMass, temperature } = options;
  const g = readInput('dimensionless', 'gamma', gamma, procedure).si;
  const m = readPositive('molar mass', 'molarMass', molarMass, procedure).si;
  const t = readPositive('temperature', 'temperature', temperature, procedure).si;
  if (!(g > 1)) throw refusal(procedure, 'gamma', gamma, 'above 1');
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
  const text = (): string =>
    table(Object.entries(facts).map(([property, value]) => ({ property, value: String(value) })));
  return { ...facts, toString: text, ...{ [Symbol.for('nodejs.util.inspect.custom')]: text } };
}
