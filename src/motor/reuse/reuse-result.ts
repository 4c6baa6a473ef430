import type { FailureModeId, LifeVerdict, PartId } from '../../structures';
import type { Quantity } from '../../units';
import type { PartCheck } from '../review/part-review';

/** The life at the local stress of one feature of a part: a hole, a groove, a thread, or the plain metal. */
export interface FeatureLife {
  readonly part: PartId;
  /** Such as `bolt holes in tension`. */
  readonly feature: string;
  /** The failure mode whose stress is the nominal stress. */
  readonly mode: FailureModeId;
  /** Nominal stress at MEOP. */
  readonly nominal: Quantity<'stress'>;
  /** Fatigue notch factor on the nominal stress. */
  readonly notchFactor: number;
  /** Where the factor comes from. */
  readonly basis: string;
  /** True where the factor is an upper bound of the local stress: the life is a lower bound and does not govern. */
  readonly isBound: boolean;
  /** Maximum stress at the root of the notch at MEOP. */
  readonly localStress: Quantity<'stress'>;
  readonly verdict: LifeVerdict;
  /** Estimated firings at MEOP until a crack, new; a million means that many or more. */
  readonly cyclesToFailure: number;
  /** Planned firings at MEOP, new: with the factors of scatter; whole. */
  readonly plannedFirings: number;
  /** Fraction of the planned life used by the ledger; above 1 where it is exceeded. */
  readonly used: number;
  /** Planned firings at MEOP that remain; whole. */
  readonly remainingFirings: number;
}

/** The reuse of one part. */
export interface PartReuse {
  readonly part: PartId;
  /** Pressurisations of the ledger that loaded this part. */
  readonly firings: number;
  readonly proofs: number;
  /** Its features, the one with the fewest remaining firings first. */
  readonly features: readonly FeatureLife[];
  /** The mode that yields first with increasing pressure, and its pressure. */
  readonly firstYield:
    | { readonly mode: FailureModeId; readonly pressure: Quantity<'gauge pressure'> }
    | undefined;
  /** Fraction of the planned life used; undefined where no life is estimated, infinite where the part has yielded. */
  readonly used: number | undefined;
  /** Planned firings at MEOP that remain, a first-order estimate; undefined where no life is estimated. */
  readonly remainingFirings: number | undefined;
  /** The same by the upper bound of the local stress, where there is one. */
  readonly remainingAtBound: number | undefined;
  /** What is known of the life of the part, no wider than its evidence. */
  readonly statement: string;
}

/** The temperature history of the case against the temper of its metal. */
export interface HeatHistory {
  readonly hottest: Quantity<'temperature'>;
  /** Sum of the times of all pressurisations, all taken at the maximum temperature. */
  readonly time: Quantity<'time'>;
  /** Yield strength after it at room temperature, of the typical metal; undefined where no data exist. */
  readonly yieldAfter: Quantity<'stress'> | undefined;
  /** The minimum yield strength that the review uses. */
  readonly minimumYield: Quantity<'stress'> | undefined;
  readonly statement: string;
  readonly source: string;
}

/** One inspection between firings, with its limit in the sizes of this motor. */
export interface Inspection {
  readonly part: PartId;
  readonly inspection: string;
  /** The limit as a value, where it is one. */
  readonly limit: Quantity | number | undefined;
  /** What to do with which limit, in words. */
  readonly instruction: string;
  readonly source: string;
}

/** The reuse of the hardware: cycles used, estimated life, heat and inspections. */
export interface ReuseReview {
  /** Constant label: the estimate is not a fatigue analysis. */
  readonly label: 'first-order estimate';
  readonly parts: readonly PartReuse[];
  readonly heat: HeatHistory | undefined;
  readonly inspections: readonly Inspection[];
  /** Checks of the ledger: pressure, cycles, temper and measurements against their limits. */
  readonly checks: readonly PartCheck[];
  readonly cautions: readonly string[];
}
