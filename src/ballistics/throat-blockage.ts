import {
  absolutePressure,
  area,
  formula,
  fromSiValue,
  length,
  MeopError,
  procedure,
  type Quantity,
  type QuantityInput,
  readInput,
  time,
  unitOf,
  volume,
} from '../units';
import { chamberTimeConstant } from './blowdown';
import { temperatureFactorSi } from './burn-law';
import { powerLaw } from './burn-law-inputs';
import { nearOne } from './equilibrium-inputs';
import { equilibriumPressures } from './equilibrium-roots';
import { quietChamber, runFrozenChamber } from './frozen-chamber';
import { propellantValue } from './propellant';
import { lawKernel } from './read-motor';
import { throatBlockage } from './transient-inputs';

/**
 * Pressure that a lasting blockage of the throat leads to, by one power law and without gas storage.
 *
 * @example blockedThroatPressure({ pressure: '4 MPa', fraction: 0.3, exponent: 0.32 }).in('MPa') // => 6.758603849
 */
export const blockedThroatPressure = /* @__PURE__ */ formula({
  name: 'blockedThroatPressure',
  title: 'Equilibrium pressure with a partly blocked throat',
  equation: 'p_b = p·(1 − φ)^(−1 / (1 − n))',
  source: 'ratio of two equilibrium pressures p ~ A_t^(−1/(1−n)), Sutton & Biblarz 7th ed., ch. 11',
  inputs: {
    pressure: absolutePressure('p', 'pressure with the free throat', { example: '4 MPaa' }),
    fraction: throatBlockage.fields.fraction,
    exponent: powerLaw.exponent,
  },
  output: absolutePressure('p_b', 'pressure that a lasting blockage leads to'),
  valid: [nearOne],
  si: ({ pressure, fraction, exponent }) => pressure * Math.exp(-Math.log1p(-fraction) / (1 - exponent)),
});

/**
 * Time in which a small disturbance of a burning motor falls to 1/e. A blockage reaches its lasting level within two to three
 * of these times.
 *
 * @example disturbanceTime({ timeConstant: '4 ms', exponent: 0.32 }).in('ms') // => 5.882352941
 */
export const disturbanceTime = /* @__PURE__ */ formula({
  name: 'disturbanceTime',
  title: 'Decay time of a pressure disturbance',
  equation: 't_d = τ / (1 − n)',
  source: 'mass balance of the chamber about its equilibrium, linear (derived)',
  inputs: {
    timeConstant: time('τ', 'time constant of the chamber', { example: '4 ms' }),
    exponent: powerLaw.exponent,
  },
  output: time('t_d', 'decay time'),
  valid: [nearOne],
  si: ({ timeConstant, exponent }) => timeConstant / (1 - exponent),
});

/** The pressure pulse of a fragment in the throat. */
export interface BlockagePulse {
  /** Steady pressure before the blockage. */
  readonly before: Quantity<'absolute pressure'>;
  /** Pressure at its end, the maximum of the pulse. */
  readonly peak: Quantity<'absolute pressure'>;
  /** Steady pressure if the blockage lasted; `undefined` where there is none. */
  readonly lasting: Quantity<'absolute pressure'> | undefined;
  /** Time constant of the chamber with the free throat. */
  readonly timeConstant: Quantity<'time'>;
  /** Pressure at a time after the fragment has left. */
  after(time: QuantityInput<'time'>): Quantity<'absolute pressure'>;
}

const context = 'throatBlockagePulse';

/**
 * Pressure pulse of a fragment that blocks part of the throat and then leaves it, at constant burning area and free volume.
 *
 * @throws MeopError `no-solution` where the motor has no equilibrium pressure before the blockage
 * @example throatBlockagePulse({ propellant: publishedPropellant('potassium nitrate/sucrose'), burningArea: '165 cm^2', freeVolume: '80 cm^3', throatDiameter: '8.5 mm', fraction: 0, duration: '10 ms' }).timeConstant.in('ms') > 1 // => true
 */
export const throatBlockagePulse = /* @__PURE__ */ procedure({
  name: context,
  title: 'Pressure pulse of a blocked throat',
  source: 'mass balance of the chamber with a reduced throat area (derived)',
  inputs: {
    propellant: propellantValue,
    burningArea: area('A_b', 'burning area', { example: '165 cm^2' }),
    freeVolume: volume('V', 'free volume of the chamber', { example: '80 cm^3' }),
    throatDiameter: length('d_t', 'throat diameter', { example: '8.5 mm' }),
    fraction: throatBlockage.fields.fraction,
    duration: throatBlockage.fields.duration,
  },
  gives: 'the pressures before, at the end of and after the blockage, and that of a lasting one',
  example:
    "throatBlockagePulse({ propellant: publishedPropellant('potassium nitrate/sucrose'), burningArea: '165 cm^2', freeVolume: '80 cm^3', throatDiameter: '8.5 mm', fraction: 0.3, duration: '10 ms' })",
  run: (given): BlockagePulse => {
    const { propellant, burningArea, freeVolume, throatDiameter, fraction, duration } = given;
    const throatArea = (Math.PI / 4) * throatDiameter.si ** 2;
    const { law } = propellant;
    const stable = (free: number) =>
      equilibriumPressures({ propellant, burningAreaRatio: burningArea.si / (free * throatArea) }).filter(
        (root) => root.stable,
      );
    const before = stable(1)[0]?.pressure;
    if (before === undefined)
      throw new MeopError({
        code: 'no-solution',
        procedure: context,
        path: 'burningArea',
        given: burningArea,
        problem: 'no pressure balances the gas of this burning area',
        remedy: 'Give a smaller burning area or a larger throat',
      });
    const chamber = {
      ...quietChamber,
      law: lawKernel(law, temperatureFactorSi(law, law.referenceTemperature.si)),
      density: propellant.density.si,
      gasEnergy: propellant.gasConstant.si * propellant.effectiveTemperature.si,
      characteristicVelocity: propellant.characteristicVelocity.si,
      burningArea: burningArea.si,
      freeVolume: freeVolume.si,
      throatArea,
    };
    const blocked = { ...chamber, throatArea: (1 - fraction) * throatArea };
    const peak =
      duration.si > 0 ? runFrozenChamber(blocked, before.si, duration.si).at(duration.si)[0] : before.si;
    const pascals = (si: number): Quantity<'absolute pressure'> =>
      fromSiValue(si, 'absolute pressure', unitOf('MPa'));
    return {
      before,
      peak: pascals(peak),
      lasting: stable(1 - fraction).find(({ pressure }) => pressure.si >= before.si)?.pressure,
      timeConstant: fromSiValue(
        chamberTimeConstant.si({
          freeVolume: freeVolume.si,
          characteristicVelocity: propellant.characteristicVelocity.si,
          gasConstant: propellant.gasConstant.si,
          temperature: propellant.effectiveTemperature.si,
          throatArea,
        }),
        'time',
        unitOf('ms'),
      ),
      after: (given) => {
        const t = readInput('time', 'time', given, context).si;
        return pascals(t > 0 ? runFrozenChamber(chamber, peak, t).at(t)[0] : peak);
      },
    };
  },
});
