import { formula, frequency, mass, stiffness } from '../../units';

/**
 * Natural frequency of a motor and its cradle on a load cell. Thrust features faster than about a third of it are the
 * stand's own ringing (common practice).
 *
 * @throws MeopError `out-of-domain` for a stiffness or mass not above 0
 * @example standNaturalFrequency({ stiffness: '10 kN/mm', mass: '10 kg' }).in('Hz').toFixed(2) // => '159.15'
 */
export const standNaturalFrequency = /* @__PURE__ */ formula({
  name: 'standNaturalFrequency',
  title: 'Natural frequency of a mass on a load cell',
  equation: 'f = √(k / m) / (2·π)',
  source: 'one mass on one spring, any text on vibration',
  inputs: {
    stiffness: stiffness('k', 'stiffness of the load cell: full load over its deflection there'),
    mass: mass('m', 'motor and everything that moves with it'),
  },
  output: frequency('f', 'natural frequency'),
  example: { stiffness: '10 kN/mm', mass: '10 kg' },
  si: ({ stiffness: k, mass: m }) => Math.sqrt(k / m) / (2 * Math.PI),
  solve: {
    stiffness: (f, { mass: m }) => (2 * Math.PI * f) ** 2 * m,
    mass: (f, { stiffness: k }) => k / (2 * Math.PI * f) ** 2,
  },
});
