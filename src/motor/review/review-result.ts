import type { SimulatedFiring } from '../../ballistics';
import type {
  FaceSeal,
  FailureMargin,
  FailureSequenceEntry,
  JointReview,
  ORingGland,
  RetainingRingReview,
  RopeRestraint,
  ThreadedClosureReview,
} from '../../structures';
import type { Quantity } from '../../units';
import type { Motor } from '../document';
import type { Meop } from '../meop/meop-result';

/** One thing that was looked at beside the margins, and whether it holds. */
export interface ReviewCheck {
  readonly check: string;
  readonly passes: boolean;
  readonly value: Quantity | number;
  readonly limit: Quantity | number;
  /** The numbers, in words. */
  readonly message: string;
  readonly source: string;
}

/** A sensor against what it will see. */
export interface InstrumentReview {
  readonly name: string;
  readonly measures: 'pressure' | 'thrust' | 'temperature';
  readonly range: Quantity;
  /** At the worst case; undefined where the document does not say what to expect. */
  readonly expected: Quantity | undefined;
  /** Range over expected. */
  readonly headroom: number | undefined;
  readonly passes: boolean;
  /** Time from 10 % to 90 % of the peak at ignition, and the samples in it. */
  readonly rise?: { readonly time: Quantity<'time'>; readonly samples: number };
  readonly checks: readonly ReviewCheck[];
  readonly cautions: readonly string[];
}

/** An O-ring of a closure in a face, judged at MEOP. */
export interface FaceSealReview {
  readonly closure: 'head' | 'aft';
  /** Among all seals of the closure, counted from the gas, from 1. */
  readonly place: number;
  readonly face: FaceSeal;
}

/** An O-ring of a closure against the bore, judged at MEOP. */
export interface SealReview {
  readonly closure: 'head' | 'aft';
  /** Counted from the gas, from 1. */
  readonly place: number;
  readonly gland: ORingGland;
}

/** A motor, judged. */
export interface Review {
  readonly motor: Motor;
  readonly meop: Meop;
  /** The firing at nominal values. */
  readonly prediction: SimulatedFiring;
  /** Every mode, the least margin first. */
  readonly margins: readonly FailureMargin[];
  /** The mode of least margin; undefined where nothing could be judged. */
  readonly governing: FailureMargin | undefined;
  /** Whether every margin is zero or more. */
  readonly passes: boolean;
  /** What gives way first as pressure rises, without factors. */
  readonly failureOrder: readonly FailureSequenceEntry[];
  /** Closures held by radial bolts. */
  readonly joints: Readonly<Partial<Record<'head' | 'aft', JointReview>>>;
  /** Closures held by a retaining ring, each mode at the depth of the groove that leaves it less. */
  readonly retainingRings: Readonly<Partial<Record<'head' | 'aft', RetainingRingReview>>>;
  /** Closures that screw into the case, each mode with the closure hot or cold, whichever leaves it less. */
  readonly threads: Readonly<Partial<Record<'head' | 'aft', ThreadedClosureReview>>>;
  /** Seals against the bore. */
  readonly seals: readonly SealReview[];
  /** Seals in a face. */
  readonly faceSeals: readonly FaceSealReview[];
  /** Whether every check of every seal holds. */
  readonly sealsHold: boolean;
  /** Port-to-throat ratio, mass flux and what else the flow asks for. */
  readonly flow: readonly ReviewCheck[];
  readonly instruments: readonly InstrumentReview[];
  readonly restraint: RopeRestraint | undefined;
  /** What was taken where the document does not say. */
  readonly assumptions: readonly string[];
  readonly cautions: readonly string[];
  toString(): string;
}
