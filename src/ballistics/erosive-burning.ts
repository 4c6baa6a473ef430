import {
  type Arguments,
  density,
  dynamicViscosity,
  formula,
  fromSiValue,
  type Quantity,
  type QuantityInput,
  ratio,
  specificHeat,
  speed,
  temperature,
  unitOf,
} from '../units';
import { type FieldsOf, requireFields } from '../units/known-fields';
import { readPositive, refusal } from '../units/refusal';
import { lenoirRobillardSi } from './simulation/chamber-rate';

/** Erosive burning as an option of a simulation. */
export type ErosiveInput =
  | {
      readonly law: 'lenoir-robillard';
      /** α of the law in SI, m^2.8·kg^−0.8·s^−0.2: see {@link erosiveCoefficient}. */
      readonly coefficient: number;
      /** β of the law. Default 53 (from memory: fits many propellants). */
      readonly decay?: number;
      /** L of the law: distance from the head end, or hydraulic diameter in later use. */
      readonly length: QuantityInput<'length'>;
      readonly flux?: ErosiveFlux;
    }
  | {
      readonly law: 'threshold-velocity';
      /** Gas velocity below which nothing is added. */
      readonly threshold: QuantityInput<'speed'>;
      /** Augmentation less one at twice the threshold. */
      readonly gain: number;
      readonly flux?: ErosiveFlux;
    };

/** Which flux acts on the whole surface: the mean over the port (half that at its aft end), or that of the aft end. */
export type ErosiveFlux = 'mean' | 'aft';

const coefficientInputs = {
  gasHeatCapacity: specificHeat('c_p', 'specific heat of the gas at constant pressure'),
  viscosity: dynamicViscosity('μ', 'viscosity of the gas'),
  prandtl: ratio('Pr', 'Prandtl number of the gas', { above: 0 }),
  density: density('ρ', 'propellant density'),
  solidHeatCapacity: specificHeat('c_s', 'specific heat of the propellant'),
  gasTemperature: temperature('T_1', 'gas temperature'),
  surfaceTemperature: temperature('T_s', 'surface temperature of the burning propellant'),
  grainTemperature: temperature('T_p', 'initial grain temperature'),
};

const coefficientFields: FieldsOf<Arguments<typeof coefficientInputs>> = {
  gasHeatCapacity: 'required',
  viscosity: 'required',
  prandtl: 'required',
  density: 'required',
  solidHeatCapacity: 'required',
  gasTemperature: 'required',
  surfaceTemperature: 'required',
  grainTemperature: 'required',
};

/**
 * Coefficient α of the Lenoir-Robillard law from properties of gas and propellant, as a number in SI
 * (m^2.8·kg^−0.8·s^−0.2): α = 0.0288·c_p·μ^0.2·Pr^(−2/3) / (ρ·c_s)·(T_1 − T_s) / (T_s − T_p).
 *
 * Source: Lenoir & Robillard, 6th Symposium (International) on Combustion (1957); the list of variables as in Sutton &
 * Biblarz 7th ed., ch. 11; constant and exponents from memory.
 *
 * @throws MeopError `out-of-domain` where the surface is not between grain and gas temperature
 * @example erosiveCoefficient({ gasHeatCapacity: '1900 J/(kg*K)', viscosity: '5e-5 Pa*s', prandtl: 0.5, density: '1750 kg/m^3', solidHeatCapacity: '1250 J/(kg*K)', gasTemperature: '2800 K', surfaceTemperature: '900 K', grainTemperature: '293 K' }) // => 0.0000171491896
 */
export function erosiveCoefficient(values: Arguments<typeof coefficientInputs>): number {
  requireFields('erosiveCoefficient', values, coefficientFields);
  const v = Object.fromEntries(
    Object.entries(coefficientInputs).map(([field, given]) => {
      const value: unknown = Object.entries(values).find(([name]) => name === field)?.[1];
      return [field, readPositive(given.kind, field, value, 'erosiveCoefficient').si];
    }),
  );
  if (!(v.gasTemperature > v.surfaceTemperature && v.surfaceTemperature > v.grainTemperature))
    throw refusal(
      'erosiveCoefficient',
      'surfaceTemperature',
      values.surfaceTemperature,
      'a temperature between grain and gas temperature',
    );
  return (
    ((0.0288 * v.gasHeatCapacity * v.viscosity ** 0.2 * v.prandtl ** (-2 / 3)) /
      (v.density * v.solidHeatCapacity)) *
    ((v.gasTemperature - v.surfaceTemperature) / (v.surfaceTemperature - v.grainTemperature))
  );
}

const rateFields: FieldsOf<Parameters<typeof lenoirRobillardRate>[0]> = {
  baseRate: 'required',
  coefficient: 'required',
  decay: 'optional',
  massFlux: 'required',
  length: 'required',
  density: 'required',
};

/**
 * Burning rate with erosive burning by the Lenoir-Robillard law, r = r_0 + α·G^0.8 / L^0.2·exp(−β·r·ρ / G): the rate on
 * the right is the total one, so it is solved for. `coefficient` is α in SI (m^2.8·kg^−0.8·s^−0.2).
 *
 * Source: Lenoir & Robillard, 6th Symposium (International) on Combustion (1957); β = 53 from memory.
 *
 * @throws MeopError `out-of-domain`
 * @example lenoirRobillardRate({ baseRate: '8 mm/s', coefficient: 1.71491896e-5, massFlux: '1000 kg/(m^2*s)', length: '0.3 m', density: '1750 kg/m^3' }).in('mm/s') // => 10.1398279
 */
export function lenoirRobillardRate(options: {
  readonly baseRate: QuantityInput<'speed'>;
  readonly coefficient: number;
  readonly decay?: number;
  readonly massFlux: QuantityInput<'mass flux'>;
  readonly length: QuantityInput<'length'>;
  readonly density: QuantityInput<'density'>;
}): Quantity<'speed'> {
  const context = 'lenoirRobillardRate';
  requireFields(context, options, rateFields);
  const { baseRate, coefficient, decay = 53, massFlux: flux, length: along, density: solid } = options;
  const base = readPositive('speed', 'baseRate', baseRate, context).si;
  const alpha = readPositive('dimensionless', 'coefficient', coefficient, context).si;
  const beta = readPositive('dimensionless', 'decay', decay, context).si;
  const g = readPositive('mass flux', 'massFlux', flux, context).si;
  const l = readPositive('length', 'length', along, context).si;
  const rho = readPositive('density', 'density', solid, context).si;
  const rate = lenoirRobillardSi(base, alpha * g ** 0.8 * l ** -0.2, (beta * rho) / g);
  const cautions =
    rate > 3 * base
      ? ['an augmentation above 3 is beyond what is reported: the law is used outside its experience']
      : [];
  return fromSiValue<'speed'>(rate, 'speed', unitOf('mm/s'), cautions);
}

/**
 * Erosive augmentation by a threshold law: nothing below the threshold velocity, then linear.
 *
 * @example thresholdVelocityFactor({ gasVelocity: '300 m/s', threshold: '200 m/s', gain: 0.2 }) // => 1.1
 */
export const thresholdVelocityFactor = /* @__PURE__ */ formula({
  name: 'thresholdVelocityFactor',
  title: 'Erosive augmentation above a threshold velocity',
  equation: 'f = 1 + k·(u / u_th − 1)',
  source:
    'linear threshold law of erosive burning (engineering practice, no published source); 1 below the threshold',
  inputs: {
    gasVelocity: speed('u', 'gas velocity along the surface', { min: 0 }),
    threshold: speed('u_th', 'velocity at which augmentation begins', { above: 0 }),
    gain: ratio('k', 'augmentation at twice the threshold less one', { min: 0 }),
  },
  output: ratio('f', 'burning rate over that without cross-flow'),
  example: { gasVelocity: '300 m/s', threshold: '200 m/s', gain: 0.2 },
  si: ({ gasVelocity, threshold, gain }) => 1 + gain * Math.max(0, gasVelocity / threshold - 1),
});
