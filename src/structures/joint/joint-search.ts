import { type Arguments, count, list, named, optional, type Quantity, ratio } from '../../units';
import type { FailureModeId } from '../failure-mode';
import { clearanceFit } from '../holes/clearance-hole';
import { threads } from '../threads/thread-table';
import { jointParts } from './joint-inputs';

/** Case and closure, and the bolts to evaluate. */
export const searchInputs = {
  ...jointParts.fields,
  threads: optional(
    list(
      'threads to evaluate; M3 to M10 coarse, or #8-32 to 3/8-16 for a case given in inches, where omitted',
      named('thread of the bolts', threads, { example: 'M5' }),
    ),
  ),
  counts: optional(
    list('minimum and maximum number of bolts', count('n', 'number of bolts', { min: 1, whole: true }), {
      min: 2,
      max: 2,
    }),
    [4, 24],
  ),
  edgeRatios: optional(
    list(
      'edge distances to evaluate, in diameters of the drilled holes',
      ratio('e/d_h', 'edge distance/hole diameter', { above: 0.5 }),
    ),
    [1.5, 2, 2.5],
  ),
  fit: optional(clearanceFit, 'medium'),
  leastMargin: optional(
    ratio('MS', 'minimum margin of safety of a pattern that is listed', { min: 0, example: 0.1 }),
    0,
  ),
  engagementRatio: optional(
    ratio('L_e/d', 'full thread engaged in the closure/bolt diameter, up to its thickness', { above: 0 }),
    1.5,
  ),
  ligamentRatio: optional(
    ratio('l/d', 'minimum ligament between holes in the bore/hole diameter (engineering practice)', {
      above: 0,
    }),
    1,
  ),
};

/** Case and closure, and the bolts to evaluate. */
export type JointSearch = Arguments<typeof searchInputs>;

/** One set of bolts. */
export interface JointOption {
  /** The bolts as `reviewJoint` takes them. */
  readonly bolts: {
    readonly thread: string;
    readonly count: number;
    readonly edgeDistance: Quantity<'length'>;
    /** Of the clearance holes in the case. */
    readonly holeDiameter: Quantity<'length'>;
    readonly engagement: Quantity<'length'>;
  };
  /** Mass of the bolts with their heads, and of the case from the holes to its end. */
  readonly mass: Quantity<'mass'>;
  readonly marginOfSafety: number;
  /** Why the count is easy to divide on the case; `undefined` where it is not. */
  readonly indexing: string | undefined;
  readonly governing: FailureModeId;
  /** Whether a measurable permanent set precedes separation by the required ratio. */
  readonly warns: boolean;
}
