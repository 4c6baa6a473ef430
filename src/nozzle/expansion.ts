import { trapezoid } from '../numerics';
import { standardAtmosphere } from '../thermo';
import {
  areaRatioSi,
  isentropicPressureRatioSi,
  machFromPressureRatioSi,
} from '../thermo/isentropic-kernels';
import {
  absolutePressure,
  formula,
  fromSiValue,
  MeopError,
  type Quantity,
  type QuantityInput,
  ratio,
  readInput,
  type Series,
  unitOf,
} from '../units';
import { type FieldsOf, requireFields } from '../units/known-fields';

function expansionSi(gamma: number, pressureRatio: number): number {
  return areaRatioSi(machFromPressureRatioSi(pressureRatio, gamma), gamma);
}

/**
 * Expansion ratio at which the exit pressure equals the ambient pressure, where the thrust coefficient has its
 * maximum. Also the expansion ratio for any required exit pressure.
 *
 * @throws MeopError `out-of-domain` for an ambient pressure above the critical pressure
 * @example optimumExpansionRatio({ gamma: 1.2, chamberPressure: '300 psi', ambientPressure: '14.7 psi' }) // => 3.677073
 */
export const optimumExpansionRatio = /* @__PURE__ */ formula({
  name: 'optimumExpansionRatio',
  title: 'Optimum expansion ratio',
  equation:
    'ε = ((2 / (γ + 1))^(1 / (γ − 1))·(p_c / p_a)^(1 / γ)) / √((γ + 1) / (γ − 1)·(1 − (p_a / p_c)^((γ − 1) / γ)))',
  source:
    'Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001), ch. 3 (quoted from memory, not verified), exit pressure equal to ambient',
  inputs: {
    gamma: ratio('γ', 'ratio of specific heats', { above: 1 }),
    chamberPressure: absolutePressure('p_c', 'chamber stagnation pressure'),
    ambientPressure: absolutePressure('p_a', 'ambient or required exit pressure'),
  },
  output: ratio('ε', 'exit/throat area ratio', { min: 1 }),
  example: { gamma: 1.2, chamberPressure: '300 psi', ambientPressure: '14.7 psi' },
  requires: [
    ({ gamma, chamberPressure, ambientPressure }) =>
      ambientPressure / chamberPressure <= isentropicPressureRatioSi(1, gamma) * (1 + 1e-15) ||
      `the pressure must be at most the critical pressure, ${(isentropicPressureRatioSi(1, gamma) * chamberPressure).toPrecision(6)} Pa; above it the flow does not reach Mach 1`,
  ],
  si: ({ gamma, chamberPressure, ambientPressure }) =>
    Math.max(1, expansionSi(gamma, ambientPressure / chamberPressure)),
});

/** Options of {@link optimumExpansionAtAltitude}. */
export interface OptimumExpansionAtAltitudeOptions {
  readonly gamma: number;
  readonly chamberPressure: QuantityInput<'absolute pressure'>;
  /** Geometric altitude above mean sea level. */
  readonly altitude: QuantityInput<'length'>;
}

const optimumExpansionAtAltitudeFields: FieldsOf<OptimumExpansionAtAltitudeOptions> = {
  gamma: 'required',
  chamberPressure: 'required',
  altitude: 'required',
};

/**
 * Optimum expansion ratio in the standard atmosphere at an altitude.
 *
 * @throws MeopError `out-of-domain` outside −5 km to 86 km, and as {@link optimumExpansionRatio}
 * @example optimumExpansionAtAltitude({ gamma: 1.2, chamberPressure: '5 MPa', altitude: '1000 m' }) // => 7.629308
 */
export function optimumExpansionAtAltitude(options: OptimumExpansionAtAltitudeOptions): number {
  requireFields('optimumExpansionAtAltitude', options, optimumExpansionAtAltitudeFields);
  return optimumExpansionRatio({
    gamma: options.gamma,
    chamberPressure: options.chamberPressure,
    ambientPressure: standardAtmosphere({ altitude: options.altitude }).pressure,
  });
}

/** Options of {@link optimumExpansionOverTrace}. */
export interface OptimumExpansionOverTraceOptions {
  readonly gamma: number;
  readonly time: Series<'time'>;
  /** Absolute chamber pressure at those times. */
  readonly chamberPressure: Series<'absolute pressure'>;
  readonly ambientPressure: QuantityInput<'absolute pressure'>;
}

/** The expansion ratio of maximum impulse. */
export interface OptimumExpansionOverTrace {
  readonly expansionRatio: number;
  /** Time average of the chamber pressure, to which the expansion ratio corresponds. */
  readonly meanPressure: Quantity<'absolute pressure'>;
  readonly cautions: readonly string[];
}

const optimumExpansionOverTraceFields: FieldsOf<OptimumExpansionOverTraceOptions> = {
  gamma: 'required',
  time: 'required',
  chamberPressure: 'required',
  ambientPressure: 'required',
};

/**
 * Expansion ratio of maximum impulse over a pressure trace. With ∂C_F,vac/∂ε = p_e/p_c the impulse A_t·(C_F,vac·∫p
 * dt − ε·p_a·t) has its maximum where p_e/p_c = p_a·t/∫p dt: the optimum for the time average of the pressure.
 *
 * Source: derived from the thrust-coefficient equation, full-flowing at all times.
 *
 * @throws MeopError `out-of-domain` for series of different length, fewer than two points, or a mean pressure that
 * does not choke
 * @example optimumExpansionOverTrace({ gamma: 1.2, time: series([0, 1], 's'), chamberPressure: seriesOf('absolute pressure', [4, 6], 'MPa'), ambientPressure: '101325 Pa' }).meanPressure.in('MPa') // => 5
 */
export function optimumExpansionOverTrace(
  options: OptimumExpansionOverTraceOptions,
): OptimumExpansionOverTrace {
  requireFields('optimumExpansionOverTrace', options, optimumExpansionOverTraceFields);
  const { time, chamberPressure } = options;
  if (time.length !== chamberPressure.length || time.length < 2)
    throw new MeopError(
      'out-of-domain',
      `optimumExpansionOverTrace: time and chamberPressure must have the same length of at least 2, got ${time.length} and ${chamberPressure.length}`,
      'chamberPressure',
    );
  const ambient = readInput(
    'absolute pressure',
    'ambientPressure',
    options.ambientPressure,
    'optimumExpansionOverTrace',
  ).si;
  const span = time.si[time.length - 1] - time.si[0];
  const mean = trapezoid(time.si, chamberPressure.si) / span;
  const meanPressure = fromSiValue<'absolute pressure'>(mean, 'absolute pressure', unitOf('MPa'));
  const expansionRatio = optimumExpansionRatio({
    gamma: options.gamma,
    chamberPressure: meanPressure,
    ambientPressure: options.ambientPressure,
  });
  const exit = ambient / mean; // exit/chamber pressure ratio of the resulting nozzle
  let separated = 0;
  for (const p of chamberPressure.si) if (exit * p < 0.4 * ambient) separated++;
  const cautions =
    separated > 0
      ? [
          `The flow would separate at ${separated} of ${time.length} points, which the optimum neglects. Exclude start and tail-off from the trace.`,
        ]
      : [];
  return { expansionRatio, meanPressure, cautions };
}
