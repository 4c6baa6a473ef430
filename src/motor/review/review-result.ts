import type { IgnitionBand, MotorHeatLoss, SimulatedFiring } from '../../ballistics';
import type { NozzleBlowOut } from '../../nozzle';
import type {
  FaceSeal,
  FailureMargin,
  FailureOrder,
  FailureSequenceEntry,
  JointReview,
  ORingGland,
  RetainingRingReview,
  RopeRestraint,
  TensionBoltReview,
  ThreadedClosureReview,
} from '../../structures';
import type { Quantity } from '../../units';
import type { Motor } from '../document';
import type { Meop } from '../meop/meop-result';
import type { ReuseReview } from '../reuse/reuse-result';
import type { Finding } from './finding';
import type { PartCheck, Unjudged } from './part-review';
import type { ProofReview } from './proof-review';
import type { ReviewCheck } from './review-check';
import type { ReviewVerdict } from './verdict';

/** Evaluation of an instrument. */
export interface InstrumentReview {
  readonly name: string;
  readonly measures: 'pressure' | 'thrust' | 'temperature';
  readonly range: Quantity;
  /** Expected maximum in the worst case; undefined where the document does not specify it. */
  readonly expected: Quantity | undefined;
  /** Ratio of range to expected maximum. */
  readonly headroom: number | undefined;
  readonly passes: boolean;
  /** Rise time from 10 % to 90 % of the peak at ignition, and the number of samples in it. */
  readonly rise?: { readonly time: Quantity<'time'>; readonly samples: number };
  readonly checks: readonly ReviewCheck[];
  readonly cautions: readonly string[];
}

/** A face seal of a closure, evaluated at MEOP. */
export interface FaceSealReview {
  readonly closure: 'head' | 'aft';
  /** Position among all seals of the closure, counted from the gas side, from 1. */
  readonly place: number;
  readonly face: FaceSeal;
}

/** A radial seal of a closure, evaluated at MEOP. */
export interface SealReview {
  readonly closure: 'head' | 'aft';
  /** Position counted from the gas side, from 1. */
  readonly place: number;
  readonly gland: ORingGland;
}

/** The review of a motor. */
export interface Review {
  readonly motor: Motor;
  readonly meop: Meop;
  /** The firing at nominal values. */
  readonly prediction: SimulatedFiring;
  /** All failure modes, lowest margin first. */
  readonly margins: readonly FailureMargin[];
  /** The mode with the minimum margin; undefined where none could be evaluated. */
  readonly governing: FailureMargin | undefined;
  readonly verdict: ReviewVerdict;
  /** The verdict in one sentence that names the worst item with its figure. */
  readonly verdictSentence: string;
  /** Every margin, check and part that is not judged, the worst first: the verdict is the state of the first. */
  readonly findings: readonly Finding[];
  /** Parts that bear pressure, or aspects of them, that could not be evaluated, each with the reason. */
  readonly unjudged: readonly Unjudged[];
  /** Checks of parts without a margin of safety: layout, ligaments, fits. */
  readonly checks: readonly PartCheck[];
  /** Reuse of the hardware: cycles used, estimated life of each part, heat, and inspections with their limits. */
  readonly reuse: ReuseReview;
  /** Every part at proof pressure. */
  readonly proof: ProofReview;
  /** The failure sequence with increasing pressure, without factors. */
  readonly failureOrder: readonly FailureSequenceEntry[];
  /** For each closure: what separates first, what only stretches first, and whether the retention warns. */
  readonly failureOrders: Readonly<Partial<Record<'head' | 'aft', FailureOrder>>>;
  /** Closures retained by radial bolts. */
  readonly joints: Readonly<Partial<Record<'head' | 'aft', JointReview>>>;
  /** Closures retained by a retaining ring, each mode at its worst-case groove depth. */
  readonly retainingRings: Readonly<Partial<Record<'head' | 'aft', RetainingRingReview>>>;
  /**
   * Closures with a thread, each mode with the closure at elevated or at room temperature, whichever gives the
   * lower margin.
   */
  readonly threads: Readonly<Partial<Record<'head' | 'aft', ThreadedClosureReview>>>;
  /** Force on the seat of the throat insert at MEOP, with its bounds; undefined where the document describes no seat. */
  readonly retention: NozzleBlowOut | undefined;
  /** Closures retained by bolts along the axis. */
  readonly axialBolts: Readonly<Partial<Record<'head' | 'aft', TensionBoltReview>>>;
  /** Radial seals. */
  readonly seals: readonly SealReview[];
  /** Face seals. */
  readonly faceSeals: readonly FaceSealReview[];
  /** Checks of port-to-throat ratio, mass flux and head-end pressure. */
  readonly flow: readonly ReviewCheck[];
  /** Heat loss at nominal values; undefined where the document specifies none. */
  readonly heatLoss: MotorHeatLoss | undefined;
  /** Ignition at nominal values over a range of flame spread, which is rarely known. */
  readonly ignition: IgnitionBand;
  readonly instruments: readonly InstrumentReview[];
  readonly restraint: RopeRestraint | undefined;
  /** Values assumed where the document specifies none. */
  readonly assumptions: readonly string[];
  readonly cautions: readonly string[];
  toString(): string;
}
