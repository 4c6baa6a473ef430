import { absolutePressure, area, formula, massFlow, speed, time } from '../units';

const source =
  'mass balance of a chamber with a choked throat at constant temperature (derived); igniter design in NASA SP-8051 (quoted from memory, not verified)';

/**
 * Pressure at which the igniter alone holds a chamber with a choked throat. Igniters are designed for about a third of the
 * operating pressure (quoted from memory, not verified).
 *
 * @example igniterPlateauPressure({ igniterFlow: '30 g/s', characteristicVelocity: '905.88 m/s', throatArea: '56.745 mm^2' }).in('MPa') // => 0.4789214909
 */
export const igniterPlateauPressure = /* @__PURE__ */ formula({
  name: 'igniterPlateauPressure',
  title: 'Plateau pressure of the igniter',
  equation: 'p_∞ = ṁ_i·c* / A_t',
  source,
  inputs: {
    igniterFlow: massFlow('ṁ_i', 'mass flow of the igniter', { above: 0 }),
    characteristicVelocity: speed('c*', 'characteristic velocity of the igniter gas', { above: 0 }),
    throatArea: area('A_t', 'throat area'),
  },
  output: absolutePressure('p_∞', 'plateau pressure'),
  example: { igniterFlow: '30 g/s', characteristicVelocity: '906 m/s', throatArea: '57 mm^2' },
  si: (v) => (v.igniterFlow * v.characteristicVelocity) / v.throatArea,
});

/**
 * Chamber pressure while the igniter alone fills the chamber. `timeConstant` is that of `chamberTimeConstant` for the
 * igniter gas; the throat is choked throughout.
 *
 * @example igniterFillingPressure({ plateau: '0.478921352 MPa', startPressure: '101325 Pa', time: '5 ms', timeConstant: '3.84006659 ms' }).in('MPa') // => 0.3762261889
 */
export const igniterFillingPressure = /* @__PURE__ */ formula({
  name: 'igniterFillingPressure',
  title: 'Pressure while the igniter fills the chamber',
  equation: 'p = p_∞ + (p_i − p_∞)·exp(−t / τ)',
  source,
  inputs: {
    plateau: absolutePressure('p_∞', 'plateau pressure of the igniter'),
    startPressure: absolutePressure('p_i', 'pressure at the start'),
    time: time('t', 'time since the start of the igniter', { min: 0 }),
    timeConstant: time('τ', 'time constant of the chamber'),
  },
  output: absolutePressure('p', 'chamber pressure'),
  example: { plateau: '0.48 MPa', startPressure: '0.1 MPa', time: '5 ms', timeConstant: '4 ms' },
  si: ({ plateau, startPressure, time: t, timeConstant }) =>
    plateau + (startPressure - plateau) * Math.exp(-t / timeConstant),
});
