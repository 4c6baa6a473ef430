import type { Quantity, Unit } from '../../units';
import type { Calculation } from './calculation';
import type { FailureModeId } from './mode-name';
import type { PartId } from './part-name';

/** What a mode reaches: permanent set, rupture, buckling, the limit that a maker rates, or parts that no longer meet. */
export type FailureLimit = 'yield' | 'ultimate' | 'buckling' | 'rated load' | 'disengagement';

/** One way in which a part can fail, as data: its margin, its working and its place in the order follow from it. */
export interface FailureMode {
  readonly id: FailureModeId;
  readonly part: PartId;
  readonly limit: FailureLimit;
  /** Ends in the applied stress, load or pressure. */
  readonly calculation: Calculation;
  /** Ends in what the part can carry, of the same kind. */
  readonly allowable: Calculation;
  /** The factor of safety required. */
  readonly factor: number;
  /** Gauge chamber pressure [Pa] that the calculation is for; undefined where no chamber pressure drives the mode. */
  readonly pressure?: number | undefined;
  /** Gauge chamber pressure [Pa] at which applied equals allowable; in proportion to `pressure` where left out. */
  readonly failurePressure?: number | undefined;
  readonly temperature?: Quantity<'temperature'> | undefined;
  /** In which applied and allowable are shown; its system is that of the working. */
  readonly unit: Unit;
  /** Where the strength, and what no formula names, is published. */
  readonly sources: readonly string[];
  readonly cautions: readonly string[];
}

/** A mode that chamber pressure drives. */
export interface PressureDrivenMode extends FailureMode {
  readonly pressure: number;
}

/** The gauge chamber pressure [Pa] at which a mode is reached, without factor. */
export const failurePressureOf = ({
  pressure,
  failurePressure,
  calculation,
  allowable,
}: FailureMode): number | undefined =>
  failurePressure ?? (pressure === undefined ? undefined : (pressure * allowable.value) / calculation.value);
