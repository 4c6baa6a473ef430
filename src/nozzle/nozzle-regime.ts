import { fromSiValue, type NamedKind, type Quantity, type QuantityInput, readInput, unitOf } from '../units';
import { type FieldsOf, requireFields } from '../units/known-fields';
import { refusal } from '../units/refusal';
import { idealNozzle } from './ideal-nozzle';
import { type DivergentBehaviour, type NozzleRegime, nozzleFlowSi } from './nozzle-flow';
import { type SeparationCriterion, separationCriteria } from './separation';

const procedure = 'nozzleRegime';

/** Options of {@link nozzleRegime}. */
export interface NozzleRegimeOptions {
  readonly gamma: number;
  /** Exit/throat area ratio, at least 1. */
  readonly expansionRatio: number;
  /** Chamber stagnation pressure. */
  readonly chamberPressure: QuantityInput<'absolute pressure'>;
  readonly ambientPressure: QuantityInput<'absolute pressure'>;
  /**
   * Separation criterion; default `summerfield`. The criteria differ by 20 % and more: see {@link
   * separationPressure}.
   */
  readonly criterion?: SeparationCriterion;
  /** Behaviour of the divergent section behind a shock; default `recovers`, the textbook nozzle. */
  readonly divergent?: DivergentBehaviour;
}

/** Flow regime of a nozzle, and the chamber pressures at which it changes. */
export interface NozzleRegimeResult {
  readonly regime: NozzleRegime;
  readonly choked: boolean;
  /** Thrust coefficient without losses. */
  readonly thrustCoefficient: number;
  /** Ratio of mass flow to the choked mass flow at this chamber state. */
  readonly massFlowRatio: number;
  /** Mach number at the separation point or at the exit. */
  readonly exitMach: number;
  /** Pressure there. */
  readonly exitPressure: Quantity<'absolute pressure'>;
  /** Ratio of shock area to throat area, where a shock is inside. */
  readonly shockAreaRatio?: number;
  /** Ratio of separation area to throat area, where the flow separates. */
  readonly separationAreaRatio?: number;
  /** Chamber pressures that bound the inviscid regimes at this ambient pressure. */
  readonly minChokedPressure: Quantity<'absolute pressure'>;
  /** Minimum pressure without a normal shock inside. */
  readonly minShockFreePressure: Quantity<'absolute pressure'>;
  /** Pressure of ideal expansion: exit pressure equals ambient pressure. */
  readonly idealExpansionPressure: Quantity<'absolute pressure'>;
  readonly cautions: readonly string[];
}

const nozzleRegimeFields: FieldsOf<NozzleRegimeOptions> = {
  gamma: 'required',
  expansionRatio: 'required',
  chamberPressure: 'required',
  ambientPressure: 'required',
  criterion: 'optional',
  divergent: 'optional',
};

/**
 * Regime of a nozzle: unchoked, shock in the divergent section, separated, over-expanded, ideally expanded or
 * under-expanded, with thrust coefficient and mass flow in each, and the chamber pressures at which the inviscid
 * regimes change.
 *
 * Source: isentropic flow and normal shock (NACA Report 1135, 1953); separation by the given criterion.
 *
 * @throws MeopError `out-of-domain` for γ not above 1, an exit smaller than the throat, negative pressures, or an
 * unknown criterion
 * @example nozzleRegime({ gamma: 1.2, expansionRatio: 6, chamberPressure: '5 MPa', ambientPressure: '1 atm' }).regime // => 'under-expanded'
 */
export function nozzleRegime(options: NozzleRegimeOptions): NozzleRegimeResult {
  requireFields(procedure, options, nozzleRegimeFields);
  const { criterion = 'summerfield', divergent = 'recovers' } = options;
  const read = (
    kind: NamedKind,
    field: 'gamma' | 'expansionRatio' | 'chamberPressure' | 'ambientPressure',
  ): number => readInput(kind, field, options[field], procedure).si;
  const gamma = read('dimensionless', 'gamma');
  const expansionRatio = read('dimensionless', 'expansionRatio');
  const chamber = read('absolute pressure', 'chamberPressure');
  const ambient = read('absolute pressure', 'ambientPressure');
  if (!(gamma > 1)) throw refusal(procedure, 'gamma', options.gamma, 'above 1');
  if (!(expansionRatio >= 1))
    throw refusal(procedure, 'expansionRatio', options.expansionRatio, 'at least 1, exit over throat area,');
  if (!(chamber > 0)) throw refusal(procedure, 'chamberPressure', options.chamberPressure, 'above 0 MPa');
  if (!(ambient >= 0)) throw refusal(procedure, 'ambientPressure', options.ambientPressure, 'at least 0 MPa');

  if (!separationCriteria.includes(criterion))
    throw refusal(procedure, 'criterion', criterion, `one of ${separationCriteria.join(', ')}`);
  if (divergent !== 'recovers' && divergent !== 'stalled')
    throw refusal(procedure, 'divergent', divergent, "'recovers' or 'stalled'");

  const nozzle = idealNozzle(gamma, expansionRatio);
  const out = new Float64Array(5);
  const regime = nozzleFlowSi(nozzle, ambient / chamber, criterion, out, divergent);
  const pressure = (si: number): Quantity<'absolute pressure'> =>
    fromSiValue(si, 'absolute pressure', unitOf(si < 1e5 ? 'kPa' : 'MPa'));
  const chokedAt = divergent === 'stalled' ? nozzle.criticalPressureRatio : nozzle.maxChokedBackPressureRatio;
  return {
    regime,
    choked: regime !== 'unchoked' && regime !== 'no flow',
    thrustCoefficient: out[0],
    massFlowRatio: out[1],
    exitMach: out[2],
    exitPressure: pressure(out[3] * chamber),
    ...(regime === 'shock in the divergent section' && { shockAreaRatio: out[4] }),
    ...(regime === 'separated' && { separationAreaRatio: out[4] }),
    minChokedPressure: pressure(ambient / chokedAt),
    minShockFreePressure: pressure(ambient / nozzle.shockAtExit),
    idealExpansionPressure: pressure(ambient / nozzle.exitPressureRatio),
    cautions: cautionsFor(regime, divergent),
  };
}

function cautionsFor(regime: NozzleRegime, divergent: DivergentBehaviour): readonly string[] {
  if (regime === 'separated')
    return [
      'The separation pressure is known within 20 % at best. Throats below about 20 mm are outside the range of the tests.',
      'Separated flow is asymmetric and causes side loads.',
    ];
  const textbook = divergent === 'recovers';
  if (regime === 'shock in the divergent section')
    return [
      'A shock occurs inside only if the flow stays attached; in a cone above about 8° half angle it separates.',
    ];
  if (regime === 'unchoked' && textbook)
    return [
      "The divergent section is assumed to be a perfect diffuser. For a cone use divergent: 'stalled'.",
    ];
  return [];
}
