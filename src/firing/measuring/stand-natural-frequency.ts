import { formula, frequency, mass, stiffness } from '../../units';

/**
 * Natural frequency of a motor and its cradle on a load cell. Thrust features faster than about one third of it are
 * resonance of the stand (engineering practice, no published source).
 *
 * @example standNaturalFrequency({ stiffness: '10 kN/mm', mass: '10 kg' }).in('Hz').toFixed(2) // => '159.15'
 */
export const standNaturalFrequency = /* @__PURE__ */ formula({
  name: 'standNaturalFrequency',
  title: 'Natural frequency of a mass on a load cell',
  equation: 'f = √(k / m) / (2·π)',
  source: 'single-degree-of-freedom oscillator, textbooks on mechanical vibration',
  inputs: {
    stiffness: stiffness('k', 'stiffness of the load cell: full load/deflection at full load'),
    mass: mass('m', 'mass of the motor and all parts that move with it'),
  },
  output: frequency('f', 'natural frequency'),
  example: { stiffness: '10 kN/mm', mass: '10 kg' },
  si: ({ stiffness: k, mass: m }) => Math.sqrt(k / m) / (2 * Math.PI),
});
