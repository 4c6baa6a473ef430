import {
  areaRatioSi,
  isentropicDensityRatioSi,
  isentropicPressureRatioSi,
  isentropicTemperatureRatioSi,
  machFromPressureRatioSi,
} from '../thermo/isentropic-kernels';
import { machFromAreaRatioSi } from '../thermo/mach-from-area-ratio';
import {
  absolutePressure,
  formula,
  fromSiValue,
  type NamedKind,
  type Quantity,
  type QuantityInput,
  ratio,
  readInput,
  specificGasConstant,
  speed,
  temperature,
  unitOf,
} from '../units';
import { type FieldsOf, requireFields } from '../units/known-fields';
import { refusal } from '../units/refusal';

const procedure = 'exitConditions';

const gamma = /* @__PURE__ */ ratio('γ', 'ratio of specific heats', { above: 1 });

/**
 * Exit/chamber pressure ratio of a full-flowing nozzle. Solved for `expansionRatio` it gives the nozzle for a
 * required exit pressure.
 *
 * @throws MeopError `out-of-domain` for γ not above 1 or an expansion ratio below 1
 * @example exitPressureRatio({ gamma: 1.2, expansionRatio: 10 }) // => 0.0125373
 */
export const exitPressureRatio = /* @__PURE__ */ formula({
  name: 'exitPressureRatio',
  title: 'Exit/chamber pressure ratio',
  equation: 'p_e/p_c = (1 + (γ − 1) / 2·M_e²)^(−γ / (γ − 1)), M_e from A/A* = ε, supersonic',
  source: 'NACA Report 1135 (1953), isentropic flow; area relation solved in a bracket',
  inputs: { gamma, expansionRatio: ratio('ε', 'exit/throat area ratio', { min: 1 }) },
  output: ratio('p_e/p_c', 'exit/chamber pressure ratio'),
  example: { gamma: 1.2, expansionRatio: 10 },
  si: ({ gamma, expansionRatio }) =>
    isentropicPressureRatioSi(machFromAreaRatioSi(expansionRatio, gamma, true), gamma),
  solve: {
    expansionRatio: (value, { gamma }) => {
      const mach = machFromPressureRatioSi(value, gamma);
      return mach >= 1 ? areaRatioSi(mach, gamma) : Number.NaN;
    },
  },
});

/**
 * Ideal exhaust velocity of gas expanded from the chamber to an exit pressure.
 *
 * @throws MeopError `out-of-domain` for an exit pressure above the chamber pressure
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
    gasConstant: specificGasConstant('R', 'specific gas constant'),
    temperature: temperature('T_0', 'chamber stagnation temperature'),
    chamberPressure: absolutePressure('p_c', 'chamber stagnation pressure'),
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
  si: ({ gamma, gasConstant, temperature: hot, chamberPressure, exitPressure }) => {
    const kappa = (gamma - 1) / gamma;
    return Math.sqrt(
      ((-2 * gasConstant * hot) / kappa) * Math.expm1(kappa * Math.log(exitPressure / chamberPressure)),
    );
  },
  solve: {
    temperature: (velocity, { gamma, gasConstant, chamberPressure, exitPressure }) => {
      const kappa = (gamma - 1) / gamma;
      const drop = -Math.expm1(kappa * Math.log(exitPressure / chamberPressure));
      return (velocity * velocity * kappa) / (2 * gasConstant * drop);
    },
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
  inputs: {
    gamma,
    gasConstant: specificGasConstant('R', 'specific gas constant'),
    temperature: temperature('T_0', 'chamber stagnation temperature'),
  },
  output: speed('u_max', 'maximum exhaust velocity'),
  example: { gamma: 1.3, gasConstant: '287 J/(kg*K)', temperature: '3500 K' },
  si: ({ gamma, gasConstant, temperature: hot }) =>
    Math.sqrt(((2 * gamma) / (gamma - 1)) * gasConstant * hot),
});

/** Options of {@link exitConditions}. */
export interface ExitConditionsOptions {
  readonly gamma: number;
  readonly gasConstant: QuantityInput<'specific gas constant'>;
  /** Chamber stagnation temperature. */
  readonly temperature: QuantityInput<'temperature'>;
  /** Chamber stagnation pressure. */
  readonly chamberPressure: QuantityInput<'absolute pressure'>;
  /** Exit/throat area ratio, at least 1. */
  readonly expansionRatio: number;
}

/** State of the flow at the exit of a full-flowing nozzle. */
export interface ExitConditions {
  readonly mach: number;
  readonly pressure: Quantity<'absolute pressure'>;
  readonly temperature: Quantity<'temperature'>;
  readonly density: Quantity<'density'>;
  readonly velocity: Quantity<'speed'>;
}

const exitConditionsFields: FieldsOf<ExitConditionsOptions> = {
  gamma: 'required',
  gasConstant: 'required',
  temperature: 'required',
  chamberPressure: 'required',
  expansionRatio: 'required',
};

/**
 * Mach number, pressure, temperature, density and velocity at the exit of a full-flowing nozzle.
 *
 * Source: NACA Report 1135 (1953), isentropic flow.
 *
 * @throws MeopError `out-of-domain` for γ not above 1, an exit smaller than the throat, or a state not above 0
 * @example exitConditions({ gamma: 1.2, gasConstant: '350 J/(kg*K)', temperature: '3000 K', chamberPressure: '5 MPa', expansionRatio: 10 }).mach // => 3.278
 */
export function exitConditions(options: ExitConditionsOptions): ExitConditions {
  requireFields(procedure, options, exitConditionsFields);
  const read = (
    kind: NamedKind,
    field: keyof ExitConditionsOptions,
    least: number,
    strict: boolean,
  ): number => {
    const { si } = readInput(kind, field, options[field], procedure);
    if (strict ? si > least : si >= least) return si;
    if (field === 'expansionRatio')
      throw refusal(procedure, field, options[field], 'at least 1', 'an exit is no smaller than the throat');
    throw refusal(procedure, field, options[field], `above ${least}`);
  };
  const g = read('dimensionless', 'gamma', 1, true);
  const r = read('specific gas constant', 'gasConstant', 0, true);
  const hot = read('temperature', 'temperature', 0, true);
  const chamber = read('absolute pressure', 'chamberPressure', 0, true);
  const mach = machFromAreaRatioSi(read('dimensionless', 'expansionRatio', 1, false), g, true);
  const cold = hot * isentropicTemperatureRatioSi(mach, g);
  return {
    mach,
    pressure: fromSiValue(chamber * isentropicPressureRatioSi(mach, g), 'absolute pressure', unitOf('kPa')),
    temperature: fromSiValue(cold, 'temperature', unitOf('K')),
    density: fromSiValue(
      (chamber / (r * hot)) * isentropicDensityRatioSi(mach, g),
      'density',
      unitOf('kg/m^3'),
    ),
    velocity: fromSiValue(mach * Math.sqrt(g * r * cold), 'speed', unitOf('m/s')),
  };
}
