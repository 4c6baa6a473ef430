import {
  absolutePressure,
  area,
  fromSiValue,
  optional,
  procedure,
  type Quantity,
  ratio,
  unitOf,
} from '../units';
import { stagnation } from './gas-inputs';
import {
  isentropicPressureRatioSi,
  isentropicTemperatureRatioSi,
  machFromPressureRatioSi,
  massFlowParameterSi,
} from './isentropic-kernels';

/** Flow through an orifice or a convergent nozzle. */
export interface OrificeFlow {
  readonly choked: boolean;
  /** Mach number in the minimum section: 1 where the flow is choked. */
  readonly mach: number;
  readonly massFlow: Quantity<'mass flow'>;
  /** Static pressure and temperature in the minimum section. */
  readonly pressure: Quantity<'absolute pressure'>;
  readonly temperature: Quantity<'temperature'>;
  /** Maximum back pressure of choked flow. */
  readonly maxChokedBackPressure: Quantity<'absolute pressure'>;
}

/**
 * Mass flow through an orifice or convergent nozzle. It checks first whether the flow is choked: just above the
 * critical pressure the formula of choked flow errs by only one per cent, which goes unnoticed.
 *
 * @example orificeFlow({ stagnationPressure: '1 MPa', stagnationTemperature: '333 K', backPressure: '591 kPa', area: '10 cm^2', gamma: 1.4, gasConstant: '287 J/(kg*K)' }).choked // => false
 */
export const orificeFlow = /* @__PURE__ */ procedure({
  name: 'orificeFlow',
  title: 'Flow through an orifice or convergent nozzle',
  source: 'NACA Report 1135 (1953), isentropic flow',
  inputs: {
    ...stagnation,
    backPressure: absolutePressure('p_b', 'pressure downstream', { min: 0 }),
    area: area('A', 'minimum area'),
    dischargeCoefficient: optional(
      ratio(
        'C_d',
        'actual/ideal mass flow; about 0.61 for a sharp-edged hole at low pressure ratio (engineering practice, no published source)',
        { above: 0 },
      ),
      1,
    ),
  },
  gives: 'mass flow and the state in the minimum section',
  example: {
    stagnationPressure: '1 MPa',
    stagnationTemperature: '333 K',
    backPressure: '591 kPa',
    area: '10 cm^2',
    gamma: 1.4,
    gasConstant: '287 J/(kg*K)',
  },
  checks: [
    ({ stagnationPressure, backPressure }) =>
      backPressure.si <= stagnationPressure.si
        ? undefined
        : {
            path: 'backPressure',
            given: backPressure,
            expected: `at most the stagnation pressure (${stagnationPressure})`,
            remedy: 'Otherwise the flow runs backwards: exchange the two pressures',
          },
  ],
  run: ({
    stagnationPressure,
    stagnationTemperature,
    backPressure,
    area,
    gamma,
    gasConstant,
    dischargeCoefficient,
  }): OrificeFlow => {
    const stagnation = stagnationPressure.si;
    const critical = isentropicPressureRatioSi(1, gamma);
    const choked = backPressure.si <= critical * stagnation;
    const mach = choked ? 1 : machFromPressureRatioSi(backPressure.si / stagnation, gamma);
    const flow =
      (dischargeCoefficient * stagnation * area.si * massFlowParameterSi(mach, gamma)) /
      Math.sqrt(gasConstant.si * stagnationTemperature.si);
    return {
      choked,
      mach,
      massFlow: fromSiValue(flow, 'mass flow', unitOf('kg/s')),
      pressure: fromSiValue(
        choked ? critical * stagnation : backPressure.si,
        'absolute pressure',
        unitOf('kPa'),
      ),
      temperature: fromSiValue(
        stagnationTemperature.si * isentropicTemperatureRatioSi(mach, gamma),
        'temperature',
        unitOf('K'),
      ),
      maxChokedBackPressure: fromSiValue(critical * stagnation, 'absolute pressure', unitOf('kPa')),
    };
  },
});
