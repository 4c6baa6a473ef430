import { fromSiValue, type NamedKind, type Quantity, type QuantityInput, readInput, unitOf } from '../units';
import { type FieldsOf, requireFields } from '../units/known-fields';
import { refusal } from '../units/refusal';
import { idealNozzle } from './ideal-nozzle';
import { type DivergentBehaviour, type NozzleRegime, nozzleFlowSi } from './nozzle-flow';
import { type SeparationCriterion, separationCriteria } from './separation';

const procedure = 'nozzleRegime';

/** What {@link nozzleRegime} needs. */
export interface NozzleRegimeOptions {
  readonly gamma: number;
  /** Exit over throat area, at least 1. */
  readonly expansionRatio: number;
  /** Chamber stagnation pressure. */
  readonly chamberPressure: QuantityInput<'absolute pressure'>;
  readonly ambientPressure: QuantityInput<'absolute pressure'>;
  /** Rule for where the stream leaves the wall; default `summerfield`. The rules differ by a fifth and more: see {@link separationPressure}. */
  readonly criterion?: SeparationCriterion;
  /** Whether the divergent part recovers pressure behind a shock; default `recovers`, the textbook nozzle. */
  readonly divergent?: DivergentBehaviour;
}

/** How a nozzle runs, and between which chamber pressures it runs otherwise. */
export interface NozzleRegimeResult {
  readonly regime: NozzleRegime;
  readonly choked: boolean;
  /** Without losses. */
  readonly thrustCoefficient: number;
  /** Mass flow over the choked mass flow at this chamber state. */
  readonly massFlowRatio: number;
  /** Mach number where the stream leaves the wall or the nozzle. */
  readonly exitMach: number;
  /** Pressure there. */
  readonly exitPressure: Quantity<'absolute pressure'>;
  /** Area of the shock over throat area, where a shock stands inside. */
  readonly shockAreaRatio?: number;
  /** Area at separation over throat area, where the stream separates. */
  readonly separationAreaRatio?: number;
  /** Chamber pressures that bound the inviscid regimes at this ambient pressure. */
  readonly minChokedPressure: Quantity<'absolute pressure'>;
  /** Above it no normal shock stands inside. */
  readonly minShockFreePressure: Quantity<'absolute pressure'>;
  /** The exit pressure is the ambient pressure. */
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
 * Regime of a nozzle: unchoked, shock in the divergent part, separated, over-expanded, adapted or under-expanded, with thrust
 * coefficient and mass flow in each, and the chamber pressures at which the inviscid regimes change.
 *
 * Source: isentropic flow and normal shock (NACA Report 1135, 1953); separation by the criterion named.
 *
 * @throws MeopError `out-of-domain` for γ not above 1, an exit smaller than the throat, negative pressures, a rule that does not exist
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
    ...(regime === 'shock in the divergent part' && { shockAreaRatio: out[4] }),
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
      'where a stream separates is known to a fifth at best, and throats under about 20 mm lie outside the tests',
      'separated flow pulls to one side: expect side loads',
    ];
  const textbook = divergent === 'recovers';
  if (regime === 'shock in the divergent part')
    return [
      'a shock stands inside only if the wall holds the stream: a cone above about 8° half angle will stall',
    ];
  if (regime === 'unchoked' && textbook)
    return ["the divergent part is taken as a perfect diffuser; for a cone use divergent: 'stalled'"];
  return [];
}
