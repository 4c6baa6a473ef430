import type { SeparationCriterion } from '../../nozzle';
import type { SpreadKernel } from '../transient/ignited-fraction';
import type { IgniterKernel } from '../transient/igniter-flow';
import type { TailOffKernel } from '../transient/tail-off-slopes';
import type { BlockageKernel } from '../transient/throat-opening';
import type { BurnTable } from './burn-table';

/** A burn law for the kernel: ln r = lnCoefficient + exponent·ln p in each band, p in Pa, r in m/s. */
export interface LawKernel {
  /** ln of the pressures where bands meet, ascending. */
  readonly lnBoundaries: Float64Array;
  /** One more than boundaries. */
  readonly lnCoefficients: Float64Array;
  readonly exponents: Float64Array;
}

/** Everything a chamber needs to run, in plain SI numbers, checked before. */
export interface MotorModel extends IgniterKernel, SpreadKernel, BlockageKernel {
  readonly table: BurnTable;
  readonly law: LawKernel;
  /** Propellant density as cast [kg/m³]. */
  readonly density: number;
  /** Gas constant times gas temperature, losses carried in [J/kg]. */
  readonly gasEnergy: number;
  /** Characteristic velocity delivered [m/s]: fixed by gasEnergy and gamma. */
  readonly characteristicVelocity: number;
  readonly gamma: number;
  /** Volume of the empty chamber [m³]. */
  readonly chamberVolume: number;
  /** [m] */
  readonly throatRadius: number;
  /** [m²] */
  readonly exitArea: number;
  /** Flow through the real throat over that of the ideal one. */
  readonly dischargeCoefficient: number;
  /** Delivered over ideal thrust. */
  readonly thrustEfficiency: number;
  readonly separation: SeparationCriterion | 'none';
  /** Change of the throat radius [m/s] at the reference pressure [Pa], with its exponent; negative where slag builds up. */
  readonly erosionRate: number;
  readonly erosionPressure: number;
  readonly erosionExponent: number;
  /** Time before the throat starts to change [s]. */
  readonly erosionDelay: number;
  /** [Pa] */
  readonly ambientPressure: number;
  readonly initialPressure: number;
  /** Pressure above ambient that opens the nozzle closure [Pa]; 0 where there is none. */
  readonly nozzleClosureBurstPressure: number;
  readonly tailOff: TailOffKernel;
  /** After burnout the run ends when the pressure has fallen to this [Pa]. */
  readonly stopPressure: number;
  /** It also ends there when propellant is left. */
  readonly stopsBurning: boolean;
  /** Above this the run ends as a burst or runaway [Pa]. */
  readonly pressureLimit: number;
  /** The run ends here whatever happens [s]. */
  readonly timeLimit: number;
  /** Relative error allowed at each step. */
  readonly tolerance: number;
}

/** How a run ended. */
export type RunEnd =
  | 'burned out'
  | 'stop pressure'
  | 'pressure limit'
  | 'closure held'
  | 'time limit'
  | 'throat closed'
  | 'not converged';
