import {
  constants,
  formula,
  fromSiValue,
  molarMass,
  optional,
  procedure,
  type Quantity,
  ratio,
  temperature,
  unitOf,
} from '../units';
import { droplets, gasAlone } from './gas-inputs';
import { vandenkerckhoveSi } from './isentropic-kernels';

const noLag =
  'Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001), section 3.5, two-phase flow: droplets at the velocity and temperature of the gas (quoted from memory, not verified)';
/**
 * γ of a gas that carries droplets at its own velocity and temperature.
 *
 * @example twoPhaseGamma({ condensedMassFraction: 0.43, gasSpecificHeat: '1960 J/(kg*K)', condensedSpecificHeat: '1550 J/(kg*K)', gasConstant: '230.957 J/(kg*K)' }) // => 1.079686
 */
export const twoPhaseGamma = /* @__PURE__ */ formula({
  name: 'twoPhaseGamma',
  title: 'Ratio of specific heats of gas with droplets',
  equation: 'γ = ((1 − X)·c_g + X·c_c) / ((1 − X)·c_g + X·c_c − (1 − X)·R_g)',
  source: noLag,
  inputs: {
    ...droplets,
    gasConstant: gasAlone,
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
  /** γ for c* and the thrust coefficient. */
  readonly gamma: number;
  /** γ of the gas alone: only for processes of the gas alone. */
  readonly gasGamma: number;
  /** Molar gas constant divided by the effective molar mass. */
  readonly gasConstant: Quantity<'specific gas constant'>;
  readonly specificHeat: Quantity<'specific heat'>;
  /** Mass of the whole exhaust for each mole of gas. */
  readonly effectiveMolarMass: Quantity<'molar mass'>;
  /** Ideal characteristic velocity, if a temperature is specified. */
  readonly characteristicVelocity?: Quantity<'speed'>;
  readonly cautions: readonly string[];
}

/**
 * Gas with droplets at its own velocity and temperature, as one perfect gas: the upper bound of the performance of
 * an exhaust with condensed products. With γ of the gas alone c* would be about 3 % low.
 *
 * @example twoPhaseMixture({ condensedMassFraction: 0.43, gasSpecificHeat: '1960 J/(kg*K)', condensedSpecificHeat: '1550 J/(kg*K)', gasMolarMass: '36 g/mol' }).gamma // => 1.079686
 */
export const twoPhaseMixture = /* @__PURE__ */ procedure({
  name: 'twoPhaseMixture',
  title: 'Gas with droplets as one perfect gas',
  source: noLag,
  inputs: {
    ...droplets,
    gasMolarMass: molarMass('M_g', 'molar mass of the gas alone'),
    temperature: optional(temperature('T', 'chamber temperature, for the characteristic velocity')),
  },
  gives: 'ratio of specific heats, gas constant, specific heat, effective molar mass and c* of the mixture',
  example: {
    condensedMassFraction: 0.43,
    gasSpecificHeat: '1960 J/(kg*K)',
    condensedSpecificHeat: '1550 J/(kg*K)',
    gasMolarMass: '36 g/mol',
  },
  checks: [
    ({ gasSpecificHeat, gasMolarMass }) => {
      const gasR = constants.molarGasConstant.value / gasMolarMass.si;
      if (gasSpecificHeat.si > gasR) return undefined;
      const expected = `above the gas constant, ${gasR.toPrecision(6)} J/(kg*K)`;
      return { path: 'gasSpecificHeat', given: gasSpecificHeat, expected };
    },
  ],
  run: ({
    condensedMassFraction: x,
    gasSpecificHeat: { si: gasCp },
    condensedSpecificHeat: { si: condensedCp },
    gasMolarMass: { si: molar },
    temperature,
  }): TwoPhaseMixture => {
    const gasR = constants.molarGasConstant.value / molar;
    const cp = (1 - x) * gasCp + x * condensedCp;
    const r = (1 - x) * gasR;
    const gamma = cp / (cp - r);
    const mixture = {
      gamma,
      gasGamma: gasCp / (gasCp - gasR),
      gasConstant: fromSiValue(r, 'specific gas constant', unitOf('J/(kg*K)')),
      specificHeat: fromSiValue(cp, 'specific heat', unitOf('J/(kg*K)')),
      effectiveMolarMass: fromSiValue(molar / (1 - x), 'molar mass', unitOf('g/mol')),
      cautions:
        x > 0
          ? [
              'assumed that droplets have the velocity and temperature of the gas: c* and thrust are upper bounds',
            ]
          : [],
    } satisfies TwoPhaseMixture;
    if (temperature === undefined) return mixture;
    const velocity = Math.sqrt(r * temperature.si) / vandenkerckhoveSi(gamma);
    return { ...mixture, characteristicVelocity: fromSiValue(velocity, 'speed', unitOf('m/s')) };
  },
});
