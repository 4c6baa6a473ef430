import type { Quantity } from '../../units';
import type { FailureModeId } from '../failure-mode';
import type { JointParts } from './radial-bolt-joint';

/** Case and closure, and the bolts to try on them. */
export interface JointSearch extends JointParts {
  /** M3 to M10 coarse, or #8-32 to 3/8-16 for a case given in inches, where left out. */
  readonly threads?: readonly string[];
  /** Least and greatest count in the row; 4 to 24 where left out. */
  readonly counts?: readonly [least: number, greatest: number];
  /** Edge distances in hole diameters; 1.5, 2 and 2.5 where left out. */
  readonly edgeRatios?: readonly number[];
  /** Full threads in the closure, in bolt diameters, as far as its metal goes; 1.5 where left out. */
  readonly engagementRatio?: number;
  /** Least metal between holes in the bore, in hole diameters; 1 where left out (engineering practice, no published source). */
  readonly ligamentRatio?: number;
}

/** One choice of bolts. */
export interface JointOption {
  readonly thread: string;
  readonly count: number;
  readonly edgeDistance: Quantity<'length'>;
  readonly engagement: Quantity<'length'>;
  /** Of the bolts with their heads, and of the case from the holes to its end. */
  readonly mass: Quantity<'mass'>;
  readonly marginOfSafety: number;
  readonly governing: FailureModeId;
  /** Whether holes stretch before anything lets go: the preferred order of failure. */
  readonly bearingFirst: boolean;
}
