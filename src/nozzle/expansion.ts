import { trapezoid } from '../numerics';
import { altitude } from '../thermo/altitude';
import { gamma } from '../thermo/gas-inputs';
import {
  areaRatioSi,
  isentropicPressureRatioSi,
  machFromPressureRatioSi,
} from '../thermo/isentropic-kernels';
import { standardAtmosphere } from '../thermo/standard-atmosphere';
import { absolutePressure, formula, fromSiValue, procedure, type Quantity, unitOf } from '../units';
import {
  ambientAboveZero,
  chamberPressure,
  expansionRatio,
  pressureTrace,
  sameLength,
} from './nozzle-inputs';

/**
 * Expansion ratio at which the exit pressure is the ambient pressure: there the thrust coefficient has its maximum.
 * Also the expansion ratio for any required exit pressure.
 *
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
    gamma,
    chamberPressure,
    ambientPressure: absolutePressure('p_a', 'ambient pressure, or the exit pressure required'),
  },
  output: expansionRatio,
  example: { gamma: 1.2, chamberPressure: '300 psi', ambientPressure: '14.7 psi' },
  requires: [
    ({ gamma, chamberPressure, ambientPressure }) =>
      ambientPressure / chamberPressure <= isentropicPressureRatioSi(1, gamma) * (1 + 1e-15) ||
      `the pressure must be at most the critical pressure, ${(isentropicPressureRatioSi(1, gamma) * chamberPressure).toPrecision(6)} Pa; above it the flow does not reach Mach 1`,
  ],
  si: ({ gamma, chamberPressure, ambientPressure }) =>
    Math.max(1, areaRatioSi(machFromPressureRatioSi(ambientPressure / chamberPressure, gamma), gamma)),
});

/**
 * Optimum expansion ratio at an altitude of the standard atmosphere.
 *
 * @example optimumExpansionAtAltitude({ gamma: 1.2, chamberPressure: '5 MPa', altitude: '1000 m' }) // => 7.629308
 */
export const optimumExpansionAtAltitude = /* @__PURE__ */ procedure({
  name: 'optimumExpansionAtAltitude',
  title: 'Optimum expansion ratio at an altitude',
  source: 'As optimumExpansionRatio, in the U.S. Standard Atmosphere 1976',
  inputs: { gamma, chamberPressure, altitude },
  gives: 'expansion ratio at which the exit pressure is the ambient pressure',
  example: { gamma: 1.2, chamberPressure: '5 MPa', altitude: '1000 m' },
  run: ({ gamma, chamberPressure, altitude }): number =>
    optimumExpansionRatio({
      gamma,
      chamberPressure,
      ambientPressure: standardAtmosphere({ altitude }).pressure,
    }),
});

/** The expansion ratio of maximum impulse. */
export interface OptimumExpansionOverTrace {
  readonly expansionRatio: number;
  /** Time average of the chamber pressure, to which the expansion ratio belongs. */
  readonly meanPressure: Quantity<'absolute pressure'>;
  readonly cautions: readonly string[];
}

/**
 * Expansion ratio of maximum impulse over a pressure trace, full flowing at all times. With ∂C_F,vac/∂ε = p_e/p_c the impulse
 * A_t·(C_F,vac·∫p dt − ε·p_a·t) has its maximum where p_e/p_c = p_a·t/∫p dt: the optimum for the time average of the pressure.
 *
 * @example optimumExpansionOverTrace({ gamma: 1.2, time: series([0, 1], 's'), chamberPressure: seriesOf('absolute pressure', [4, 6], 'MPa'), ambientPressure: '101325 Pa' }).meanPressure.in('MPa') // => 5
 */
export const optimumExpansionOverTrace = /* @__PURE__ */ procedure({
  name: 'optimumExpansionOverTrace',
  title: 'Expansion ratio of maximum impulse over a pressure trace',
  source: 'Derived from the thrust-coefficient equation, full flowing at all times',
  inputs: { gamma, ...pressureTrace, ambientPressure: ambientAboveZero },
  gives: 'expansion ratio, and the mean pressure to which it belongs',
  example:
    "optimumExpansionOverTrace({ gamma: 1.2, time: series([0, 1], 's'), chamberPressure: seriesOf('absolute pressure', [4, 6], 'MPa'), ambientPressure: '101325 Pa' })",
  checks: [sameLength],
  run: ({ gamma, time, chamberPressure, ambientPressure }): OptimumExpansionOverTrace => {
    const span = time.si[time.length - 1] - time.si[0];
    const mean = trapezoid(time.si, chamberPressure.si) / span;
    const meanPressure = fromSiValue<'absolute pressure'>(mean, 'absolute pressure', unitOf('MPa'));
    const expansionRatio = optimumExpansionRatio({
      gamma,
      chamberPressure: meanPressure,
      ambientPressure,
    });
    const exit = ambientPressure.si / mean; // exit/chamber pressure of the nozzle found
    const separated = chamberPressure.si.filter((p) => exit * p < 0.4 * ambientPressure.si).length;
    const cautions =
      separated > 0
        ? [
            `The flow would separate at ${separated} of ${time.length} points, which the optimum neglects. Omit the start and tail-off from the trace.`,
          ]
        : [];
    return { expansionRatio, meanPressure, cautions };
  },
});
