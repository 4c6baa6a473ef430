import { gamma, gasConstant } from '../thermo/gas-inputs';
import {
  isentropicDensityRatioSi,
  isentropicPressureRatioSi,
  isentropicTemperatureRatioSi,
} from '../thermo/isentropic-kernels';
import { machFromAreaRatioSi } from '../thermo/mach-from-area-ratio';
import {
  absolutePressure,
  formula,
  fromSiValue,
  procedure,
  type Quantity,
  ratio,
  speed,
  unitOf,
} from '../units';
import { chamberPressure, chamberTemperature, expansionRatio } from './nozzle-inputs';

/**
 * Exit/chamber pressure of a full-flowing nozzle. Solved for `expansionRatio` it gives the nozzle for a required exit pressure.
 *
 * @example exitPressureRatio({ gamma: 1.2, expansionRatio: 10 }) // => 0.0125373
 */
export const exitPressureRatio = /* @__PURE__ */ formula({
  name: 'exitPressureRatio',
  title: 'Exit/chamber pressure',
  equation: 'p_e/p_c = (1 + (γ − 1) / 2·M_e²)^(−γ / (γ − 1)), M_e from A/A* = ε, supersonic',
  source: 'NACA Report 1135 (1953), isentropic flow; area relation solved in a bracket',
  inputs: { gamma, expansionRatio },
  output: ratio('p_e/p_c', 'exit/chamber pressure'),
  example: { gamma: 1.2, expansionRatio: 10 },
  si: ({ gamma, expansionRatio }) =>
    isentropicPressureRatioSi(machFromAreaRatioSi(expansionRatio, gamma, true), gamma),
});

/**
 * Ideal exhaust velocity of gas expanded from the chamber to an exit pressure.
 *
 * @example exhaustVelocity({ gamma: 1.3, gasConstant: '345.7 J/(kg*K)', temperature: '2222 K', chamberPressure: '2.068 MPa', exitPressure: '0.1013 MPa' }).in('m/s') // => 1827.103
 */
export const exhaustVelocity = /* @__PURE__ */ formula({
  name: 'exhaustVelocity',
  title: 'Ideal exhaust velocity',
  equation: 'u_e = √(2·γ / (γ − 1)·R·T_0·(1 − (p_e / p_c)^((γ − 1) / γ)))',
  source:
    'Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001), ch. 3 (quoted from memory, not verified)',
  inputs: {
    gamma,
    gasConstant,
    temperature: chamberTemperature,
    chamberPressure,
    exitPressure: absolutePressure('p_e', 'exit pressure'),
  },
  output: speed('u_e', 'exhaust velocity'),
  example: {
    gamma: 1.3,
    gasConstant: '345.7 J/(kg*K)',
    temperature: '2222 K',
    chamberPressure: '2.068 MPa',
    exitPressure: '0.1013 MPa',
  },
  requires: [
    ({ chamberPressure, exitPressure }) =>
      exitPressure <= chamberPressure || 'the exit pressure must not be above the chamber pressure',
  ],
  si: ({ gamma, gasConstant, temperature, chamberPressure, exitPressure }) => {
    const kappa = (gamma - 1) / gamma;
    return Math.sqrt(
      ((-2 * gasConstant * temperature) / kappa) *
        Math.expm1(kappa * Math.log(exitPressure / chamberPressure)),
    );
  },
});

/**
 * Maximum exhaust velocity: all thermal energy converted to kinetic energy by expansion to a vacuum.
 *
 * @example maximumExhaustVelocity({ gamma: 1.3, gasConstant: '287 J/(kg*K)', temperature: '3500 K' }).in('m/s') // => 2950.5
 */
export const maximumExhaustVelocity = /* @__PURE__ */ formula({
  name: 'maximumExhaustVelocity',
  title: 'Maximum exhaust velocity',
  equation: 'u_max = √(2·γ / (γ − 1)·R·T_0)',
  source: 'Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001), section 3.3',
  inputs: { gamma, gasConstant, temperature: chamberTemperature },
  output: speed('u_max', 'maximum exhaust velocity'),
  si: ({ gamma, gasConstant, temperature }) =>
    Math.sqrt(((2 * gamma) / (gamma - 1)) * gasConstant * temperature),
});

/** State of the gas at the exit plane of a full-flowing nozzle. */
export interface ExitConditions {
  readonly mach: number;
  readonly pressure: Quantity<'absolute pressure'>;
  readonly temperature: Quantity<'temperature'>;
  readonly density: Quantity<'density'>;
  readonly velocity: Quantity<'speed'>;
}

/**
 * Mach number, pressure, temperature, density and velocity at the exit plane of a full-flowing nozzle.
 *
 * @example exitConditions({ gamma: 1.2, gasConstant: '350 J/(kg*K)', temperature: '3000 K', chamberPressure: '5 MPa', expansionRatio: 10 }).mach // => 3.278
 */
export const exitConditions = /* @__PURE__ */ procedure({
  name: 'exitConditions',
  title: 'State of the gas at the nozzle exit',
  source: 'NACA Report 1135 (1953), isentropic flow',
  inputs: { gamma, gasConstant, temperature: chamberTemperature, chamberPressure, expansionRatio },
  gives: 'Mach number, pressure, temperature, density and velocity at the exit plane',
  example: {
    gamma: 1.2,
    gasConstant: '350 J/(kg*K)',
    temperature: '3000 K',
    chamberPressure: '5 MPa',
    expansionRatio: 10,
  },
  run: ({
    gamma,
    gasConstant: { si: r },
    temperature: { si: hot },
    chamberPressure: { si: chamber },
    expansionRatio,
  }): ExitConditions => {
    const mach = machFromAreaRatioSi(expansionRatio, gamma, true);
    const temperature = hot * isentropicTemperatureRatioSi(mach, gamma);
    const pressure = chamber * isentropicPressureRatioSi(mach, gamma);
    const density = (chamber / (r * hot)) * isentropicDensityRatioSi(mach, gamma);
    return {
      mach,
      pressure: fromSiValue(pressure, 'absolute pressure', unitOf('kPa')),
      temperature: fromSiValue(temperature, 'temperature', unitOf('K')),
      density: fromSiValue(density, 'density', unitOf('kg/m^3')),
      velocity: fromSiValue(mach * Math.sqrt(gamma * r * temperature), 'speed', unitOf('m/s')),
    };
  },
});
