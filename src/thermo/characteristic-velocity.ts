import { area, formula, mass, pressureIntegral, ratio, speed, temperature } from '../units';
import { gamma, gasConstant } from './gas-inputs';
import { vandenkerckhoveSi } from './isentropic-kernels';

/**
 * Ideal characteristic velocity of a perfect gas at a choked throat. For an exhaust with droplets, γ and R are
 * those of the mixture ({@link twoPhaseMixture}): with the γ of the gas alone it is about 3 % low.
 *
 * @example idealCharacteristicVelocity({ gamma: 1.2, gasConstant: '350 J/(kg*K)', temperature: '3000 K' }).in('m/s') // => 1580.024404
 */
export const idealCharacteristicVelocity = /* @__PURE__ */ formula({
  name: 'idealCharacteristicVelocity',
  title: 'Ideal characteristic velocity',
  equation: 'c* = √(R·T / γ)·((γ + 1) / 2)^((γ + 1) / (2·(γ − 1)))',
  source:
    'Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001), ch. 3 (quoted from memory, not verified)',
  inputs: {
    gamma,
    gasConstant,
    temperature: temperature('T', 'stagnation temperature in the chamber'),
  },
  output: speed('c*', 'characteristic velocity'),
  example: { gamma: 1.2, gasConstant: '350 J/(kg*K)', temperature: '3000 K' },
  si: ({ gamma, gasConstant, temperature: stagnation }) =>
    Math.sqrt(gasConstant * stagnation) / vandenkerckhoveSi(gamma),
});

/**
 * Characteristic velocity delivered by a firing: throat area times the integral of pressure, divided by the mass
 * of propellant burned.
 *
 * @example deliveredCharacteristicVelocity({ throatArea: '113.097 mm^2', pressureIntegral: '9.6 MPa*s', propellantMass: '1.25 kg' }).in('m/s') // => 868.58496
 */
export const deliveredCharacteristicVelocity = /* @__PURE__ */ formula({
  name: 'deliveredCharacteristicVelocity',
  title: 'Delivered characteristic velocity',
  equation: 'c* = A_t·∫p / m_p',
  source: 'Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001), ch. 2, definition of c*',
  inputs: {
    throatArea: area('A_t', 'throat area (its average over the burn, where it changes)'),
    pressureIntegral: pressureIntegral('∫p', 'integral of absolute chamber pressure over time', { above: 0 }),
    propellantMass: mass('m_p', 'mass of propellant burned'),
  },
  output: speed('c*', 'characteristic velocity'),
  example: { throatArea: '113.097 mm^2', pressureIntegral: '9.6 MPa*s', propellantMass: '1.25 kg' },
  si: ({ throatArea, pressureIntegral, propellantMass }) => (throatArea * pressureIntegral) / propellantMass,
});

/**
 * c* efficiency: delivered/ideal characteristic velocity.
 *
 * @example characteristicVelocityEfficiency({ delivered: '868.585 m/s', ideal: '912 m/s' }) // => 0.952395833
 */
export const characteristicVelocityEfficiency = /* @__PURE__ */ formula({
  name: 'characteristicVelocityEfficiency',
  title: 'Characteristic-velocity efficiency',
  equation: 'η = c*_del / c*_id',
  source: 'Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001), section 3.5, c* efficiency',
  inputs: {
    delivered: speed('c*_del', 'delivered characteristic velocity', { above: 0 }),
    ideal: speed('c*_id', 'ideal characteristic velocity', { above: 0 }),
  },
  output: ratio('η', 'c* efficiency'),
  example: { delivered: '868.6 m/s', ideal: '912 m/s' },
  valid: [
    ({ delivered, ideal }) =>
      delivered <= ideal ||
      'the delivered value is above the ideal one: check throat area, mass burned and γ',
  ],
  si: ({ delivered, ideal }) => delivered / ideal,
});
