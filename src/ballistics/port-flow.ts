import { gamma } from '../thermo/gas-inputs';
import {
  absolutePressure,
  formula,
  length,
  massFlow,
  massFlux,
  procedure,
  ratio,
  specificGasConstant,
  temperature,
} from '../units';
import { portEndMach, portMachAt } from './port-mach';

const source =
  'momentum balance of a constant-area port with gas entering at right angles, no friction; Shapiro (1953) ch. 8 and Price, J. Appl. Phys. (1955); quoted from memory, not verified';
const mach = ratio('M', 'Mach number at the aft end of the port', { min: 0, max: 1 });

/** @example portMassFlux({ massFlow: '0.169932044 kg/s', portDiameter: '16 mm' }).in('kg/(m^2*s)') // => 845.1726498 */
export const portMassFlux = /* @__PURE__ */ formula({
  name: 'portMassFlux',
  title: 'Mass flux through a round port',
  equation: 'G = 4·ṁ / (π·d²)',
  source: 'definition of mass flux',
  inputs: {
    massFlow: massFlow('ṁ', 'mass flow through the port', { min: 0 }),
    portDiameter: length('d', 'port diameter'),
  },
  output: massFlux('G', 'mass flux'),
  example: { massFlow: '0.17 kg/s', portDiameter: '16 mm' },
  si: ({ massFlow: flow, portDiameter }) => (4 * flow) / (Math.PI * portDiameter ** 2),
});

/** @example portStaticPressureRatio({ mach: 0.3, gamma: 1.2 }) // => 1.108 */
export const portStaticPressureRatio = /* @__PURE__ */ formula({
  name: 'portStaticPressureRatio',
  title: 'Static pressure ratio of a port, head end/aft end',
  equation: 'p_h/p_a = 1 + γ·M²',
  source,
  inputs: { mach, gamma },
  output: ratio('p_h/p_a', 'static pressure at the head end/static pressure at the aft end'),
  example: { mach: 0.3, gamma: 1.2 },
  si: ({ mach: M, gamma: g }) => 1 + g * M * M,
});

/**
 * Ratio of the stagnation pressure at the aft end of a port, which is the supply pressure of the nozzle, to the static
 * pressure at its head end, which is measured in the forward closure.
 *
 * @example portStagnationPressureRatio({ mach: 0.3, gamma: 1.2 }) // => 0.952373356
 */
export const portStagnationPressureRatio = /* @__PURE__ */ formula({
  name: 'portStagnationPressureRatio',
  title: 'Pressure ratio of a port, aft stagnation/head end',
  equation: 'p_0/p_h = (1 + (γ − 1)·M² / 2)^(γ / (γ − 1)) / (1 + γ·M²)',
  source,
  inputs: { mach, gamma },
  output: ratio('p_0/p_h', 'stagnation pressure at the aft end/head-end pressure'),
  example: { mach: 0.3, gamma: 1.2 },
  si: ({ mach: M, gamma: g }) =>
    Math.exp((g / (g - 1)) * Math.log1p(((g - 1) / 2) * M * M)) / (1 + g * M * M),
});

/** The flow at the aft end of a port and the pressure ratios along it. */
export interface PortEnd {
  /** Mach number at the aft end; 1 where the port chokes before the throat does. */
  readonly mach: number;
  readonly choked: boolean;
  /** Static pressure at the head end/static pressure at the aft end. */
  readonly headToAftStatic: number;
  /** Stagnation pressure at the aft end/head-end pressure. */
  readonly aftStagnationToHead: number;
}

/**
 * Flow at the aft end of a port from the port-to-throat area ratio, isentropic from there to the choked throat. `.si` gives the
 * Mach number.
 *
 * @example portEnd({ portToThroat: 2, gamma: 1.2 }).headToAftStatic // => 1.11699046
 */
export const portEnd = /* @__PURE__ */ procedure({
  name: 'portEnd',
  title: 'Flow at the aft end of a port',
  source: 'A/A* relation, NACA Report 1135; momentum balance as in portStaticPressureRatio',
  inputs: { portToThroat: ratio('J', 'port area/throat area', { above: 0, example: 2 }), gamma },
  gives: 'the Mach number at the aft end and the pressure ratios along the port',
  example: { portToThroat: 2, gamma: 1.2 },
  si: ({ portToThroat, gamma: g }: { readonly portToThroat: number; readonly gamma: number }): number =>
    portEndMach(portToThroat, g),
  run: ({ portToThroat, gamma: g }): PortEnd => {
    const M = portEndMach(portToThroat, g);
    return {
      mach: M,
      choked: portToThroat <= 1,
      headToAftStatic: portStaticPressureRatio.si({ mach: M, gamma: g }),
      aftStagnationToHead: portStagnationPressureRatio.si({ mach: M, gamma: g }),
    };
  },
});

/**
 * Mach number in a port from mass flux and head-end pressure: the subsonic root of
 * G·√(R·T)/p_h = √γ·M·√(1 + (γ−1)/2·M²) / (1 + γ·M²), 1 where there is none.
 *
 * @example portMach({ massFlux: '2175.790441 kg/(m^2*s)', headPressure: '4 MPa', gasConstant: '200 J/(kg*K)', gasTemperature: '1500 K', gamma: 1.2 }) // => 0.3
 */
export const portMach = /* @__PURE__ */ procedure({
  name: 'portMach',
  title: 'Mach number in a port',
  source,
  inputs: {
    massFlux: massFlux('G', 'mass flux in the port'),
    headPressure: absolutePressure('p_h', 'static pressure at the head end'),
    gasConstant: specificGasConstant('R', 'specific gas constant'),
    gasTemperature: temperature('T', 'gas temperature'),
    gamma,
  },
  gives: 'the Mach number, at most 1',
  example: {
    massFlux: '2000 kg/(m^2*s)',
    headPressure: '4 MPa',
    gasConstant: '200 J/(kg*K)',
    gasTemperature: '1500 K',
    gamma: 1.2,
  },
  si: (
    v: Readonly<Record<'massFlux' | 'headPressure' | 'gasConstant' | 'gasTemperature' | 'gamma', number>>,
  ): number => portMachAt(v.massFlux, v.headPressure, v.gasConstant * v.gasTemperature, v.gamma),
  run: ({ massFlux: flux, headPressure, gasConstant, gasTemperature, gamma: g }): number =>
    portMachAt(flux.si, headPressure.si, gasConstant.si * gasTemperature.si, g),
});
