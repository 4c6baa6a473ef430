import {
  constants,
  formula,
  fromSiValue,
  type Quantity,
  type QuantityInput,
  ratio,
  readInput,
  specificGasConstant,
  specificHeat,
  unitOf,
} from '../units';
import { type FieldsOf, requireFields } from '../units/known-fields';
import { readPositive, refusal } from '../units/refusal';
import { vandenkerckhoveSi } from './isentropic-kernels';

const procedure = 'twoPhaseMixture';

const noLag =
  'Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001), section 3.5, two-phase flow: droplets at the velocity and temperature of the gas (from memory)';
const fraction = /* @__PURE__ */ ratio('X', 'condensed mass over all mass', { min: 0, below: 1 });

/**
 * γ of a gas that carries droplets at its own velocity and temperature.
 *
 * @throws MeopError `out-of-domain` for a condensed fraction not from 0 to below 1, or a gas specific heat not above its gas constant
 * @example twoPhaseGamma({ condensedMassFraction: 0.43, gasSpecificHeat: '1960 J/(kg*K)', condensedSpecificHeat: '1550 J/(kg*K)', gasConstant: '230.957 J/(kg*K)' }) // => 1.079686
 */
export const twoPhaseGamma = /* @__PURE__ */ formula({
  name: 'twoPhaseGamma',
  title: 'Ratio of specific heats of gas with droplets',
  equation: 'γ = ((1 − X)·c_g + X·c_c) / ((1 − X)·c_g + X·c_c − (1 − X)·R_g)',
  source: noLag,
  inputs: {
    condensedMassFraction: fraction,
    gasSpecificHeat: specificHeat('c_g', 'specific heat of the gas at constant pressure'),
    condensedSpecificHeat: specificHeat('c_c', 'specific heat of the condensed matter'),
    gasConstant: specificGasConstant('R_g', 'specific gas constant of the gas alone'),
  },
  output: ratio('γ', 'ratio of specific heats of the mixture'),
  example: {
    condensedMassFraction: 0.43,
    gasSpecificHeat: '1960 J/(kg*K)',
    condensedSpecificHeat: '1550 J/(kg*K)',
    gasConstant: '230.957 J/(kg*K)',
  },
  requires: [
    ({ gasSpecificHeat, gasConstant }) =>
      gasSpecificHeat > gasConstant || 'the specific heat of the gas must be above its gas constant',
  ],
  si: ({ condensedMassFraction: x, gasSpecificHeat, condensedSpecificHeat, gasConstant }) => {
    const cp = (1 - x) * gasSpecificHeat + x * condensedSpecificHeat;
    return cp / (cp - (1 - x) * gasConstant);
  },
});

/** Gas and droplets as one perfect gas, without lag in velocity or temperature. */
export interface TwoPhaseMixture {
  /** The γ that belongs in c* and the thrust coefficient. */
  readonly gamma: number;
  /** γ of the gas alone: only for the gas's own processes. */
  readonly gasGamma: number;
  /** Gas constant for each unit of mass of the whole exhaust: only the gas pushes. */
  readonly gasConstant: Quantity<'specific gas constant'>;
  readonly specificHeat: Quantity<'specific heat'>;
  /** Mass of the whole exhaust for each mole of gas. */
  readonly effectiveMolarMass: Quantity<'molar mass'>;
  /** Ideal characteristic velocity, where a temperature was given. */
  readonly characteristicVelocity?: Quantity<'speed'>;
  readonly cautions: readonly string[];
}

/** What {@link twoPhaseMixture} needs. */
export interface TwoPhaseMixtureOptions {
  /** Condensed mass over all mass, from 0 to below 1. */
  readonly condensedMassFraction: number;
  readonly gasSpecificHeat: QuantityInput<'specific heat'>;
  readonly condensedSpecificHeat: QuantityInput<'specific heat'>;
  /** Molar mass of the gas alone. */
  readonly gasMolarMass: QuantityInput<'molar mass'>;
  /** Chamber temperature; with it the mixture has a characteristic velocity. */
  readonly temperature?: QuantityInput<'temperature'>;
}

const twoPhaseMixtureFields: FieldsOf<TwoPhaseMixtureOptions> = {
  condensedMassFraction: 'required',
  gasSpecificHeat: 'required',
  condensedSpecificHeat: 'required',
  gasMolarMass: 'required',
  temperature: 'optional',
};

/**
 * Effective γ, gas constant, molar mass and c* of a gas that carries droplets at its own velocity and temperature: the upper
 * bound of what a smoky exhaust gives. The γ of the gas alone in the c* formula would be about 3 % low.
 *
 * @throws MeopError `out-of-domain` for a fraction not from 0 to below 1, or a gas specific heat not above its gas constant
 * @example twoPhaseMixture({ condensedMassFraction: 0.43, gasSpecificHeat: '1960 J/(kg*K)', condensedSpecificHeat: '1550 J/(kg*K)', gasMolarMass: '36 g/mol' }).gamma // => 1.079686
 */
export function twoPhaseMixture(options: TwoPhaseMixtureOptions): TwoPhaseMixture {
  requireFields(procedure, options, twoPhaseMixtureFields);
  const x = readInput('dimensionless', 'condensedMassFraction', options.condensedMassFraction, procedure).si;
  const gasCp = readInput('specific heat', 'gasSpecificHeat', options.gasSpecificHeat, procedure).si;
  const solid = readPositive(
    'specific heat',
    'condensedSpecificHeat',
    options.condensedSpecificHeat,
    procedure,
  ).si;
  const molar = readPositive('molar mass', 'gasMolarMass', options.gasMolarMass, procedure).si;
  if (!(x >= 0 && x < 1))
    throw refusal(procedure, 'condensedMassFraction', options.condensedMassFraction, 'from 0 to below 1');
  const gasR = constants.molarGasConstant.value / molar;
  if (!(gasCp > gasR))
    throw refusal(
      procedure,
      'gasSpecificHeat',
      options.gasSpecificHeat,
      `above the gas constant, ${gasR.toPrecision(6)} J/(kg*K)`,
    );
  const cp = (1 - x) * gasCp + x * solid;
  const r = (1 - x) * gasR;
  const gamma = cp / (cp - r);
  const cautions =
    x > 0
      ? ['droplets are taken to keep the velocity and temperature of the gas: c* and thrust are upper bounds']
      : [];
  const mixture = {
    gamma,
    gasGamma: gasCp / (gasCp - gasR),
    gasConstant: fromSiValue(r, 'specific gas constant', unitOf('J/(kg*K)')),
    specificHeat: fromSiValue(cp, 'specific heat', unitOf('J/(kg*K)')),
    effectiveMolarMass: fromSiValue(molar / (1 - x), 'molar mass', unitOf('g/mol')),
    cautions,
  } satisfies TwoPhaseMixture;
  if (options.temperature === undefined) return mixture;
  const t = readPositive('temperature', 'temperature', options.temperature, procedure).si;
  const velocity = Math.sqrt(r * t) / vandenkerckhoveSi(gamma);
  return { ...mixture, characteristicVelocity: fromSiValue(velocity, 'speed', unitOf('m/s')) };
}
