import { absolutePressure, angle, formula, ratio, speed, temperature } from '../units';
import { gamma, gasConstant, mach, machFromOne } from './gas-inputs';
import { massFlowParameterSi } from './isentropic-kernels';

const report1135 = 'NACA Report 1135 (1953), equations for a perfect gas';

/** @example soundSpeed({ gamma: 1.4, gasConstant: '287.05 J/(kg*K)', temperature: '288.15 K' }).in('m/s') // => 340.292 */
export const soundSpeed = /* @__PURE__ */ formula({
  name: 'soundSpeed',
  title: 'Speed of sound of a perfect gas',
  equation: 'a = √(γ·R·T)',
  source: report1135,
  inputs: {
    gamma,
    gasConstant,
    temperature: temperature('T', 'static temperature'),
  },
  output: speed('a', 'speed of sound'),
  example: { gamma: 1.4, gasConstant: '287 J/(kg*K)', temperature: '300 K' },
  si: ({ gamma, gasConstant, temperature }) => Math.sqrt(gamma * gasConstant * temperature),
});

/**
 * Dynamic pressure of a flow, from static pressure and Mach number.
 *
 * @example dynamicPressure({ pressure: '1 bara', mach: 2, gamma: 1.4 }).in('bar') // => 2.8
 */
export const dynamicPressure = /* @__PURE__ */ formula({
  name: 'dynamicPressure',
  title: 'Dynamic pressure',
  equation: 'q = γ / 2·p·M²',
  source: report1135,
  inputs: { pressure: absolutePressure('p', 'static pressure'), mach, gamma },
  output: absolutePressure('q', 'dynamic pressure ρ·u²/2', { min: 0 }),
  example: { pressure: '1 bar', mach: 2, gamma: 1.4 },
  si: ({ pressure, mach, gamma }) => (gamma / 2) * pressure * mach * mach,
});

/**
 * Mach angle: the half angle of the cone that a point disturbance reaches.
 *
 * @example machAngle({ mach: 2 }).in('deg') // => 30
 */
export const machAngle = /* @__PURE__ */ formula({
  name: 'machAngle',
  title: 'Mach angle',
  equation: 'μ = arcsin(1 / M)',
  source: report1135,
  inputs: { mach: machFromOne },
  output: angle('μ', 'Mach angle'),
  example: { mach: 2 },
  // arcsin(1/M) loses half the digits near Mach 1; the tangent does not.
  si: ({ mach }) => Math.atan2(1, Math.sqrt((mach - 1) * (mach + 1))),
});

/**
 * Characteristic Mach number: the ratio of flow speed to the speed of sound at Mach 1. It stays finite at infinite
 * Mach.
 *
 * @example characteristicMach({ mach: 3.5, gamma: 1.4 }) // => 2.064187
 */
export const characteristicMach = /* @__PURE__ */ formula({
  name: 'characteristicMach',
  title: 'Characteristic Mach number',
  equation: 'M* = M·√((γ + 1) / (2 + (γ − 1)·M²))',
  source: report1135,
  inputs: { mach, gamma },
  output: ratio('M*', 'speed/sonic speed', { min: 0 }),
  example: { mach: 3.5, gamma: 1.4 },
  si: ({ mach, gamma }) => {
    const t = (gamma - 1) / 2;
    return mach * Math.sqrt((1 + t) / (1 + t * mach * mach));
  },
});

/**
 * Mass-flow parameter ṁ·√(R·T0)/(p0·A): the dimensionless mass flow, with its maximum at Mach 1.
 *
 * @example massFlowParameter({ mach: 1, gamma: 1.4 }) // => 0.684731
 */
export const massFlowParameter = /* @__PURE__ */ formula({
  name: 'massFlowParameter',
  title: 'Mass-flow parameter',
  equation: 'ṁ·√(R·T0)/(p0·A) = √γ·M·(1 + (γ − 1)·M² / 2)^(−(γ + 1) / (2·(γ − 1)))',
  source: report1135,
  inputs: { mach, gamma },
  output: ratio('ṁ·√(R·T0)/(p0·A)', 'mass-flow parameter', { min: 0 }),
  example: { mach: 0.5, gamma: 1.4 },
  si: ({ mach, gamma }) => massFlowParameterSi(mach, gamma),
});
