import { gamma } from '../thermo/gas-inputs';
import {
  absolutePressure,
  area,
  formula,
  specificGasConstant,
  speed,
  temperature,
  time,
  volume,
} from '../units';

/**
 * Time in which a choked throat empties a chamber to 1/e of its pressure at constant temperature. A disturbance of
 * the burning motor dies away in this time over (1 − n).
 *
 * @example chamberTimeConstant({ freeVolume: '200 cm^3', characteristicVelocity: '905.88 m/s', gasConstant: '207.86 J/(kg*K)', temperature: '1600 K', throatArea: '50 mm^2' }).in('ms') // => 10.89531415
 */
export const chamberTimeConstant = /* @__PURE__ */ formula({
  name: 'chamberTimeConstant',
  title: 'Time constant of the chamber',
  equation: 'τ = V·c* / (R·T·A_t)',
  source: 'mass balance of a chamber with a choked throat at constant temperature (derived)',
  inputs: {
    freeVolume: volume('V', 'free volume of the chamber'),
    characteristicVelocity: speed('c*', 'characteristic velocity', { above: 0 }),
    gasConstant: specificGasConstant('R', 'specific gas constant'),
    temperature: temperature('T', 'gas temperature'),
    throatArea: area('A_t', 'throat area'),
  },
  output: time('τ', 'time constant'),
  example: {
    freeVolume: '200 cm^3',
    characteristicVelocity: '906 m/s',
    gasConstant: '207.9 J/(kg*K)',
    temperature: '1600 K',
    throatArea: '50 mm^2',
  },
  si: (v) => (v.freeVolume * v.characteristicVelocity) / (v.gasConstant * v.temperature * v.throatArea),
});

const blowdown = {
  pressure: absolutePressure('p_0', 'pressure at burnout'),
  time: time('t', 'time since burnout', { min: 0 }),
  timeConstant: time('τ', 'time constant of the chamber'),
};

/**
 * Pressure of a chamber emptying through a choked throat at constant temperature: tail-off with hot walls.
 *
 * @example isothermalBlowdown({ pressure: '4 MPa', time: '10 ms', timeConstant: '10 ms' }).in('MPa') // => 1.471517765
 */
export const isothermalBlowdown = /* @__PURE__ */ formula({
  name: 'isothermalBlowdown',
  title: 'Tail-off pressure at constant temperature',
  equation: 'p = p_0·exp(−t / τ)',
  source: 'mass balance of a chamber with a choked throat at constant temperature (derived)',
  inputs: blowdown,
  output: absolutePressure('p', 'chamber pressure'),
  example: { pressure: '4 MPa', time: '10 ms', timeConstant: '11 ms' },
  si: ({ pressure, time: t, timeConstant }) => pressure * Math.exp(-t / timeConstant),
});

/**
 * Pressure of a chamber emptying through a choked throat without heat from the walls; it falls γ times as fast at
 * first. `timeConstant` is that at burnout temperature.
 *
 * @example adiabaticBlowdown({ pressure: '4 MPa', time: '10 ms', timeConstant: '10.8952323 ms', gamma: 1.14 }).in('MPa') // => 1.45092873
 */
export const adiabaticBlowdown = /* @__PURE__ */ formula({
  name: 'adiabaticBlowdown',
  title: 'Tail-off pressure without heat exchange',
  equation: 'p = p_0·(1 + (γ − 1)·t / (2·τ))^(−2·γ / (γ − 1))',
  source: 'mass balance with m ~ p^(1/γ) (derived); as in textbooks on gas dynamics, discharge of a vessel',
  inputs: { ...blowdown, gamma },
  output: absolutePressure('p', 'chamber pressure'),
  example: { pressure: '4 MPa', time: '10 ms', timeConstant: '11 ms', gamma: 1.14 },
  si: ({ pressure, time: t, timeConstant, gamma }) =>
    pressure * Math.exp(((-2 * gamma) / (gamma - 1)) * Math.log1p(((gamma - 1) * t) / (2 * timeConstant))),
});
