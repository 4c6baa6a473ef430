import {
  dynamicViscosity,
  formula,
  fromSiValue,
  massFlux,
  procedure,
  type Quantity,
  ratio,
  specificHeat,
  speed,
  temperature,
  unitOf,
} from '../units';
import { augmentationFactor, lenoirRobillardInputs, thresholdInputs } from './erosive-inputs';
import { grainTemperature } from './motor-inputs';
import { lenoirRobillardCoefficientSi } from './port/assumed-coefficient';
import { lenoirRobillardSi } from './port/erosion-law';
import { castDensity } from './propellant-inputs';

/**
 * Coefficient α of the Lenoir-Robillard law from properties of gas and propellant, as a number in SI
 * (m^2.8·kg^−0.8·s^−0.2): α = 0.0288·c_p·μ^0.2·Pr^(−2/3) / (ρ·c_s)·(T_1 − T_s) / (T_s − T_p).
 *
 * @example erosiveCoefficient({ gasHeatCapacity: '1900 J/(kg*K)', viscosity: '5e-5 Pa*s', prandtl: 0.5, density: '1750 kg/m^3', solidHeatCapacity: '1250 J/(kg*K)', gasTemperature: '2800 K', surfaceTemperature: '900 K', grainTemperature: '293 K' }) // => 0.0000171491896
 */
export const erosiveCoefficient = /* @__PURE__ */ procedure({
  name: 'erosiveCoefficient',
  title: 'Coefficient of the Lenoir-Robillard law',
  source:
    'Lenoir & Robillard, 6th Symposium (International) on Combustion (1957); variables as in Sutton & Biblarz 7th ed., ch. 11; constant and exponents quoted from memory, not verified',
  inputs: {
    gasHeatCapacity: specificHeat('c_p', 'specific heat of the gas at constant pressure'),
    viscosity: dynamicViscosity('μ', 'viscosity of the gas'),
    prandtl: ratio('Pr', 'Prandtl number of the gas', { above: 0 }),
    density: castDensity,
    solidHeatCapacity: specificHeat('c_s', 'specific heat of the propellant'),
    gasTemperature: temperature('T_1', 'gas temperature'),
    surfaceTemperature: temperature('T_s', 'surface temperature of the burning propellant'),
    grainTemperature,
  },
  checks: [
    ({ gasTemperature, surfaceTemperature, grainTemperature: grain }) =>
      gasTemperature.si > surfaceTemperature.si && surfaceTemperature.si > grain.si
        ? undefined
        : {
            path: 'surfaceTemperature',
            given: surfaceTemperature,
            expected: `between the grain temperature, ${grain}, and the gas temperature, ${gasTemperature}`,
          },
  ],
  gives: 'the coefficient α in SI, m^2.8·kg^−0.8·s^−0.2',
  example: {
    gasHeatCapacity: '1900 J/(kg*K)',
    viscosity: '5e-5 Pa*s',
    prandtl: 0.5,
    density: '1750 kg/m^3',
    solidHeatCapacity: '1250 J/(kg*K)',
    gasTemperature: '2800 K',
    surfaceTemperature: '900 K',
    grainTemperature: '293 K',
  },
  run: (v): number =>
    lenoirRobillardCoefficientSi({
      gasHeatCapacity: v.gasHeatCapacity.si,
      viscosity: v.viscosity.si,
      prandtl: v.prandtl,
      density: v.density.si,
      solidHeatCapacity: v.solidHeatCapacity.si,
      gasTemperature: v.gasTemperature.si,
      surfaceTemperature: v.surfaceTemperature.si,
      grainTemperature: v.grainTemperature.si,
    }),
});

/**
 * Burning rate with erosive burning by the Lenoir-Robillard law, r = r_0 + α·G^0.8 / L^0.2·exp(−β·r·ρ / G). The rate on
 * the right is the total one, so the equation is solved by iteration.
 *
 * @example lenoirRobillardRate({ baseRate: '8 mm/s', coefficient: 1.71491896e-5, massFlux: '1000 kg/(m^2*s)', length: '0.3 m', density: '1750 kg/m^3' }).in('mm/s') // => 10.1398279
 */
export const lenoirRobillardRate = /* @__PURE__ */ procedure({
  name: 'lenoirRobillardRate',
  title: 'Burning rate with erosive burning, Lenoir-Robillard',
  source:
    'Lenoir & Robillard, 6th Symposium (International) on Combustion (1957); β = 53 quoted from memory, not verified',
  inputs: {
    baseRate: speed('r_0', 'burning rate without cross-flow', { above: 0 }),
    ...lenoirRobillardInputs,
    massFlux: massFlux('G', 'mass flux in the port'),
    density: castDensity,
    augmentationFactor,
  },
  gives: 'the total burning rate',
  example: {
    baseRate: '8 mm/s',
    coefficient: 1.71491896e-5,
    massFlux: '1000 kg/(m^2*s)',
    length: '0.3 m',
    density: '1750 kg/m^3',
  },
  run: ({
    baseRate,
    coefficient,
    decay,
    massFlux: flux,
    length,
    density,
    augmentationFactor: factor,
  }): Quantity<'speed'> => {
    const base = baseRate.si;
    const g = flux.si;
    const full = lenoirRobillardSi(
      base,
      coefficient * g ** 0.8 * length.si ** -0.2,
      (decay * density.si) / g,
    );
    const rate = base + factor * (full - base);
    const cautions =
      rate > 3 * base
        ? ['the augmentation is above 3, which is beyond published experience with this law']
        : [];
    return fromSiValue<'speed'>(rate, 'speed', unitOf('mm/s'), cautions);
  },
});

/**
 * Erosive augmentation by a threshold law: 1 below the threshold velocity, linear above it.
 *
 * @example thresholdVelocityFactor({ gasVelocity: '300 m/s', threshold: '200 m/s', gain: 0.2 }) // => 1.1
 */
export const thresholdVelocityFactor = /* @__PURE__ */ formula({
  name: 'thresholdVelocityFactor',
  title: 'Erosive augmentation above a threshold velocity',
  equation: 'f = 1 + f_e·k·(u / u_th − 1)',
  source:
    'linear threshold law of erosive burning (engineering practice, no published source); 1 below the threshold',
  inputs: {
    gasVelocity: speed('u', 'gas velocity along the surface', { min: 0 }),
    ...thresholdInputs,
    augmentationFactor,
  },
  output: ratio('f', 'burning rate/burning rate without cross-flow'),
  example: { gasVelocity: '300 m/s', threshold: '200 m/s', gain: 0.2 },
  si: ({ gasVelocity, threshold, gain, augmentationFactor: factor = 1 }) =>
    1 + factor * gain * Math.max(0, gasVelocity / threshold - 1),
});
