import { fromSiValue, type NamedKind, type Quantity, type QuantityInput, unitOf } from '../units';
import { type FieldsOf, requireFields } from '../units/known-fields';
import { readNotNegative, readPositive, refusal } from '../units/refusal';
import {
  isentropicPressureRatioSi,
  isentropicTemperatureRatioSi,
  machFromPressureRatioSi,
  massFlowParameterSi,
} from './isentropic-kernels';

const procedure = 'orificeFlow';

/** Flow through an orifice or a convergent nozzle. */
export interface OrificeFlow {
  readonly choked: boolean;
  /** Mach number in the smallest section: 1 where it is choked. */
  readonly mach: number;
  readonly massFlow: Quantity<'mass flow'>;
  /** Static pressure and temperature in the smallest section. */
  readonly pressure: Quantity<'absolute pressure'>;
  readonly temperature: Quantity<'temperature'>;
  /** Back pressure at which it just chokes. */
  readonly maxChokedBackPressure: Quantity<'absolute pressure'>;
}

/** What {@link orificeFlow} needs. */
export interface OrificeFlowOptions {
  readonly stagnationPressure: QuantityInput<'absolute pressure'>;
  readonly stagnationTemperature: QuantityInput<'temperature'>;
  /** Pressure downstream, absolute, from 0 to the stagnation pressure. */
  readonly backPressure: QuantityInput<'absolute pressure'>;
  readonly area: QuantityInput<'area'>;
  readonly gamma: number;
  readonly gasConstant: QuantityInput<'specific gas constant'>;
  /** Actual over ideal mass flow; default 1. About 0.61 for a sharp-edged hole at low pressure ratio (common practice). */
  readonly dischargeCoefficient?: number;
}

const orificeFlowFields: FieldsOf<OrificeFlowOptions> = {
  stagnationPressure: 'required',
  stagnationTemperature: 'required',
  backPressure: 'required',
  area: 'required',
  gamma: 'required',
  gasConstant: 'required',
  dischargeCoefficient: 'optional',
};

/**
 * Mass flow through an orifice or convergent nozzle, with the check whether it is choked made first: just above the critical
 * pressure the choked formula is only a per cent wrong, so that leaving the check out does not show.
 *
 * Source: NACA Report 1135 (1953), isentropic flow.
 *
 * @throws MeopError `out-of-domain` for a back pressure above the stagnation pressure, or values without sense
 * @example orificeFlow({ stagnationPressure: '1 MPa', stagnationTemperature: '333 K', backPressure: '591 kPa', area: '10 cm^2', gamma: 1.4, gasConstant: '287 J/(kg*K)' }).choked // => false
 */
export function orificeFlow(options: OrificeFlowOptions): OrificeFlow {
  requireFields(procedure, options, orificeFlowFields);
  const read = (kind: NamedKind, field: keyof OrificeFlowOptions): number =>
    readPositive(kind, field, options[field], procedure).si;
  const stagnation = read('absolute pressure', 'stagnationPressure');
  const back = readNotNegative('absolute pressure', 'backPressure', options.backPressure, procedure).si;
  const hot = read('temperature', 'stagnationTemperature');
  const area = read('area', 'area');
  const gasConstant = read('specific gas constant', 'gasConstant');
  const gamma = read('dimensionless', 'gamma');
  const discharge =
    options.dischargeCoefficient === undefined ? 1 : read('dimensionless', 'dischargeCoefficient');
  if (!(gamma > 1)) throw refusal(procedure, 'gamma', options.gamma, 'above 1');
  if (back > stagnation)
    throw refusal(
      procedure,
      'backPressure',
      options.backPressure,
      'at most the stagnation pressure: else the flow runs backwards',
    );
  const critical = isentropicPressureRatioSi(1, gamma);
  const choked = back <= critical * stagnation;
  const mach = choked ? 1 : machFromPressureRatioSi(back / stagnation, gamma);
  const flow =
    (discharge * stagnation * area * massFlowParameterSi(mach, gamma)) / Math.sqrt(gasConstant * hot);
  return {
    choked,
    mach,
    massFlow: fromSiValue(flow, 'mass flow', unitOf('kg/s')),
    pressure: fromSiValue(choked ? critical * stagnation : back, 'absolute pressure', unitOf('kPa')),
    temperature: fromSiValue(hot * isentropicTemperatureRatioSi(mach, gamma), 'temperature', unitOf('K')),
    maxChokedBackPressure: fromSiValue(critical * stagnation, 'absolute pressure', unitOf('kPa')),
  };
}
