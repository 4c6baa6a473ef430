import {
  areaRatioSi,
  isentropicPressureRatioSi,
  machFromPressureRatioSi,
  massFlowParameterSi,
} from '../thermo/isentropic-kernels';
import { machFromShockStagnationPressureRatioSi } from '../thermo/normal-shock-kernels';
import { type IdealNozzle, vacuumThrustCoefficientAtSi } from './ideal-nozzle-kernels';
import type { SeparationCriterion } from './separation';
import { separationMachSi } from './separation-mach';

/** How a nozzle runs at a back pressure. */
export type NozzleRegime =
  | 'no flow'
  | 'unchoked'
  | 'shock in the divergent section'
  | 'separated'
  | 'over-expanded'
  | 'ideally expanded'
  | 'under-expanded';

/** How the divergent section may behave where it does not flow full. */
export const divergentBehaviours = ['recovers', 'stalled'] as const;

/**
 * Behaviour of the divergent section where it does not flow full. `recovers` is the inviscid textbook nozzle: a shock and a
 * subsonic diffuser. With `stalled` the flow is a jet from the throat or from the point of separation, as in a cone of more than
 * about 8° half angle (quoted from memory, not verified).
 */
export type DivergentBehaviour = (typeof divergentBehaviours)[number];

/** Exit and ambient pressure count as equal within this share. */
const idealWithin = 1e-3;

/** A turbulent boundary layer withstands a normal shock up to about this Mach number (quoted from memory, not verified). */
const shockStaysAttached = 1.3;

/**
 * Regime, thrust and mass flow of an ideal nozzle at any ratio of ambient to chamber pressure from 0 up; plain numbers,
 * unchecked. Writes five numbers into `out`: thrust coefficient without losses; mass flow/choked mass flow at the same chamber
 * state; Mach number and pressure/chamber pressure where the flow separates or at the exit; and area/throat area at the shock or
 * the separation, the expansion ratio where there is neither.
 *
 * From the vacuum up to no flow at all: full flowing; separated where the criterion puts the separation inside the nozzle; a
 * normal shock in the divergent section where it is too weak to separate the flow (Mach 1.3) or lies upstream of the separation;
 * unchoked. Downstream of the separation the wall is assumed to be at ambient pressure. Thrust is continuous from full flowing to
 * separated and from shock to unchoked. It steps between separated and shock, where no simple theory is valid: the last separated
 * flow gives a thrust coefficient of 0.2 to 0.45, the diffuser behind the first shock 0.04 to 0.25 (chamber pressures below 1.25
 * times ambient).
 * With a `stalled` divergent section the throat unchokes at the critical pressure ratio and thrust falls to nothing without the
 * diffuser's dip, which suits the start and tail-off of a conical nozzle better. There the coefficient rises at the critical ratio:
 * by 0.1 with Summerfield's rule, which keeps the flow attached to Mach 1.6 and more, by less than 0.001 with Schmucker's and Stark's.
 */
export function nozzleFlowSi(
  nozzle: IdealNozzle,
  ambientOverChamber: number,
  criterion: SeparationCriterion,
  out: Float64Array,
  divergent: DivergentBehaviour = 'recovers',
): NozzleRegime {
  const { gamma, expansionRatio, exitMach, exitPressureRatio } = nozzle;
  if (ambientOverChamber >= 1) return filled(out, 'no flow', 0, 0, 0, ambientOverChamber, expansionRatio);
  const stalled = divergent === 'stalled';
  if (ambientOverChamber >= (stalled ? nozzle.criticalPressureRatio : nozzle.maxChokedBackPressureRatio)) {
    const area = stalled ? 1 : expansionRatio; // the section whose pressure is ambient
    const mach = machFromPressureRatioSi(ambientOverChamber, gamma);
    const share = (massFlowParameterSi(mach, gamma) * area) / nozzle.vandenkerckhove;
    const thrust = gamma * ambientOverChamber * mach * mach * area;
    return filled(out, 'unchoked', thrust, Math.min(1, share), mach, ambientOverChamber, area);
  }
  const fullFlowing = nozzle.vacuumThrustCoefficient - expansionRatio * ambientOverChamber;
  if (exitPressureRatio >= ambientOverChamber * (1 - idealWithin)) {
    const regime =
      exitPressureRatio > ambientOverChamber * (1 + idealWithin) ? 'under-expanded' : 'ideally expanded';
    return filled(out, regime, fullFlowing, 1, exitMach, exitPressureRatio, expansionRatio);
  }
  const inside = !stalled && ambientOverChamber > nozzle.shockAtExit;
  const shock = inside ? shockMach(nozzle, ambientOverChamber) : exitMach;
  const separation = separationMachSi(gamma, ambientOverChamber, criterion);
  // The flow separates where the criterion puts it, unless the exit or a weak shock is upstream of that.
  if (separation > 1 && separation < shock && !(inside && shock <= shockStaysAttached)) {
    const area = areaRatioSi(separation, gamma);
    const thrust =
      vacuumThrustCoefficientAtSi(separation, gamma, nozzle.vandenkerckhove) - area * ambientOverChamber;
    return filled(
      out,
      'separated',
      thrust,
      1,
      separation,
      isentropicPressureRatioSi(separation, gamma),
      area,
    );
  }
  if (inside) return shocked(nozzle, ambientOverChamber, shock, out);
  return filled(out, 'over-expanded', fullFlowing, 1, exitMach, exitPressureRatio, expansionRatio);
}

/** Subsonic exit Mach number behind a shock: p_e·A_e is known and p·A·M·√(1 + t·M²) is the same at throat and exit. */
function machAtExitBehindShock(
  { gamma, vandenkerckhove, expansionRatio }: IdealNozzle,
  ratio: number,
): number {
  const t = (gamma - 1) / 2;
  const c = vandenkerckhove / (expansionRatio * ratio);
  return Math.sqrt((2 * c * c) / (gamma * (1 + Math.sqrt(1 + (4 * t * c * c) / gamma))));
}

/** Mach number ahead of the normal shock that brings the flow to ambient pressure at the exit. */
function shockMach(nozzle: IdealNozzle, ambientOverChamber: number): number {
  const mach = machAtExitBehindShock(nozzle, ambientOverChamber);
  const stagnation = ambientOverChamber / isentropicPressureRatioSi(mach, nozzle.gamma);
  return machFromShockStagnationPressureRatioSi(stagnation, nozzle.gamma);
}

function shocked(nozzle: IdealNozzle, ambient: number, shock: number, out: Float64Array): NozzleRegime {
  const { gamma, expansionRatio } = nozzle;
  const mach = machAtExitBehindShock(nozzle, ambient);
  const thrust = gamma * ambient * mach * mach * expansionRatio;
  return filled(out, 'shock in the divergent section', thrust, 1, mach, ambient, areaRatioSi(shock, gamma));
}

function filled(
  out: Float64Array,
  regime: NozzleRegime,
  thrustCoefficient: number,
  massFlowRatio: number,
  exitMach: number,
  exitPressureRatio: number,
  eventAreaRatio: number,
): NozzleRegime {
  out[0] = thrustCoefficient;
  out[1] = massFlowRatio;
  out[2] = exitMach;
  out[3] = exitPressureRatio;
  out[4] = eventAreaRatio;
  return regime;
}
