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
import { chokingMachSi } from './port/impulse-flow';
import { momentumFactor, portToThroat } from './port/port-inputs';
import { portEndMach, portMachAt } from './port-mach';

const source =
  'momentum balance of a constant-area port with gas entering at right angles, no friction; Shapiro (1953) ch. 8 and Price, J. Appl. Phys. (1955); quoted from memory, not verified';
const mach = ratio('M', 'Mach number at the aft end of the port', { min: 0, max: 1 });
const subsonic = ({
  mach: M,
  gamma: g,
  momentumFactor: b,
}: Record<'mach' | 'gamma' | 'momentumFactor', number>) =>
  M <= chokingMachSi(g, b) * (1 + 1e-12) ||
  `the port is choked at a Mach number of ${chokingMachSi(g, b).toPrecision(3)}`;

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
  equation: 'p_h/p_a = 1 + β·γ·M²',
  source,
  inputs: { mach, gamma, momentumFactor },
  output: ratio('p_h/p_a', 'static pressure at the head end/static pressure at the aft end'),
  example: { mach: 0.3, gamma: 1.2 },
  valid: [subsonic],
  si: ({ mach: M, gamma: g, momentumFactor: b = 1 }) => 1 + b * g * M * M,
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
  equation: 'p_0/p_h = (1 + (γ − 1)·M² / 2)^(γ / (γ − 1)) / (1 + β·γ·M²)',
  source,
  inputs: { mach, gamma, momentumFactor },
  output: ratio('p_0/p_h', 'stagnation pressure at the aft end/head-end pressure'),
  example: { mach: 0.3, gamma: 1.2 },
  valid: [subsonic],
  si: ({ mach: M, gamma: g, momentumFactor: b = 1 }) =>
    Math.exp((g / (g - 1)) * Math.log1p(((g - 1) / 2) * M * M)) / (1 + b * g * M * M),
});

/** @example portChokingMach({ gamma: 1.14, momentumFactor: 1.2337 }) // => 0.888610545 */
export const portChokingMach = /* @__PURE__ */ formula({
  name: 'portChokingMach',
  title: 'Mach number at which a port chokes',
  equation: 'M_c = 1 / √(1 + γ·(β − 1))',
  source: 'maximum of the mass flow of a port at one head pressure, derived from the momentum balance',
  inputs: { gamma, momentumFactor },
  output: ratio('M_c', 'Mach number at the aft end of the choked port, of the mean velocity'),
  example: { gamma: 1.2, momentumFactor: 1.2337 },
  si: ({ gamma: g, momentumFactor: b = 1 }) => chokingMachSi(g, b),
});

/** The flow at the aft end of a port and the pressure ratios along it. */
export interface PortEnd {
  /** Mach number at the aft end; that of the choked port where it chokes before the throat does. */
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
  inputs: { portToThroat, gamma, momentumFactor },
  gives: 'the Mach number at the aft end and the pressure ratios along the port',
  example: { portToThroat: 2, gamma: 1.2 },
  si: ({
    portToThroat: J,
    gamma: g,
    momentumFactor: b,
  }: {
    readonly portToThroat: number;
    readonly gamma: number;
    readonly momentumFactor?: number;
  }): number => portEndMach(J, g, b),
  run: ({ portToThroat: J, gamma: g, momentumFactor: b }): PortEnd => {
    const M = portEndMach(J, g, b);
    return {
      mach: M,
      choked: M >= chokingMachSi(g, b),
      headToAftStatic: portStaticPressureRatio.si({ mach: M, gamma: g, momentumFactor: b }),
      aftStagnationToHead: portStagnationPressureRatio.si({ mach: M, gamma: g, momentumFactor: b }),
    };
  },
});

/**
 * Mach number in a port from mass flux and head-end pressure: the subsonic root of
 * G·√(R·T)/p_h = √γ·M·√(1 + (γ−1)/2·M²) / (1 + β·γ·M²), that of the choked port where there is none.
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
    momentumFactor,
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
    v: Readonly<Record<'massFlux' | 'headPressure' | 'gasConstant' | 'gasTemperature' | 'gamma', number>> & {
      readonly momentumFactor?: number;
    },
  ): number =>
    portMachAt(v.massFlux, v.headPressure, v.gasConstant * v.gasTemperature, v.gamma, v.momentumFactor),
  run: ({ massFlux: flux, headPressure, gasConstant, gasTemperature, gamma: g, momentumFactor: b }): number =>
    portMachAt(flux.si, headPressure.si, gasConstant.si * gasTemperature.si, g, b),
});
