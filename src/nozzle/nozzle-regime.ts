import { gamma } from '../thermo/gas-inputs';
import { fromSiValue, procedure, type Quantity, unitOf } from '../units';
import { idealNozzleSi } from './ideal-nozzle-kernels';
import { type DivergentBehaviour, type NozzleRegime, nozzleFlowSi } from './nozzle-flow';
import { ambientPressure, chamberPressure, criterion, divergent, expansionRatio } from './nozzle-inputs';

/** How a nozzle runs, and the chamber pressures at which the regime changes. */
export interface NozzleRegimeResult {
  readonly regime: NozzleRegime;
  readonly choked: boolean;
  /** Without losses. */
  readonly thrustCoefficient: number;
  /** Mass flow/choked mass flow at this chamber state. */
  readonly massFlowRatio: number;
  /** Mach number where the flow separates or, attached, at the exit. */
  readonly exitMach: number;
  /** Pressure at that place. */
  readonly exitPressure: Quantity<'absolute pressure'>;
  /** Area of the shock/throat area, where there is a shock inside. */
  readonly shockAreaRatio?: number;
  /** Area at separation/throat area, where the flow separates. */
  readonly separationAreaRatio?: number;
  /** Minimum chamber pressure at which the throat is choked, at this ambient pressure. */
  readonly minChokedPressure: Quantity<'absolute pressure'>;
  /** Minimum chamber pressure without a normal shock inside. */
  readonly minShockFreePressure: Quantity<'absolute pressure'>;
  /** Chamber pressure at which the exit pressure is the ambient pressure. */
  readonly idealExpansionPressure: Quantity<'absolute pressure'>;
  readonly cautions: readonly string[];
}

/**
 * Regime of a nozzle: unchoked, shock in the divergent section, separated, over-expanded, ideally expanded or under-expanded,
 * with thrust coefficient and mass flow in each, and the chamber pressures at which the inviscid regimes change. The
 * separation criteria differ by 20 % and more: see {@link separationPressure}.
 *
 * @example nozzleRegime({ gamma: 1.2, expansionRatio: 6, chamberPressure: '5 MPa', ambientPressure: '1 atm' }).regime // => 'under-expanded'
 */
export const nozzleRegime = /* @__PURE__ */ procedure({
  name: 'nozzleRegime',
  title: 'Flow regime of a nozzle',
  source: 'Isentropic flow and normal shock: NACA Report 1135 (1953); separation by the criterion named',
  inputs: { gamma, expansionRatio, chamberPressure, ambientPressure, criterion, divergent },
  gives: 'regime, thrust coefficient, mass flow, and the chamber pressures at which the regime changes',
  example: { gamma: 1.2, expansionRatio: 6, chamberPressure: '5 MPa', ambientPressure: '1 atm' },
  run: ({
    gamma,
    expansionRatio,
    chamberPressure: { si: chamber },
    ambientPressure: { si: ambient },
    criterion,
    divergent,
  }): NozzleRegimeResult => {
    const nozzle = idealNozzleSi(gamma, expansionRatio);
    const out = new Float64Array(5);
    const regime = nozzleFlowSi(nozzle, ambient / chamber, criterion, out, divergent);
    const pressure = (si: number): Quantity<'absolute pressure'> =>
      fromSiValue(si, 'absolute pressure', unitOf(si < 1e5 ? 'kPa' : 'MPa'));
    const chokedAt =
      divergent === 'stalled' ? nozzle.criticalPressureRatio : nozzle.maxChokedBackPressureRatio;
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
  },
});

function cautionsFor(regime: NozzleRegime, divergent: DivergentBehaviour): readonly string[] {
  if (regime === 'separated')
    return [
      'The separation point is known to 20 % at best, and throats under about 20 mm are outside the tests.',
      'Separated flow is asymmetric; expect side loads.',
    ];
  if (regime === 'shock in the divergent section')
    return [
      'A shock remains inside only if the flow stays attached to the wall; a cone of more than about 8° half angle will stall.',
    ];
  if (regime === 'unchoked' && divergent === 'recovers')
    return [
      "The divergent section is assumed to be a perfect diffuser. For a cone use divergent: 'stalled'.",
    ];
  return [];
}
