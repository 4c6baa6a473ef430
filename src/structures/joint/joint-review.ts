import { type Quantity, table } from '../../units';
import type { PressureDrivenMargin } from '../failure-mode';
import { type FailureOrder, failureOrder, failureOrderText } from '../failure-mode/failure-order';
import type { HolePattern } from '../holes';
import { governing } from '../margin';
import type { JointCheck } from './fastener-checks';
import type { PeakStress } from './joint-peak';

/** A failure mode of the joint. */
export interface JointMode extends PressureDrivenMargin {
  /** Peak stress for fatigue, where the mode has a stress concentration. */
  readonly peak?: PeakStress | undefined;
}

/** Elastic tension with bending at the surface of the wall at the bolts, and its bounds. */
export interface OffsetBending {
  /** At the holes as they are. */
  readonly surface: Quantity<'stress'>;
  /** Without bending: the bolts, clamped in the closure, take the whole moment. */
  readonly none: Quantity<'stress'>;
  /** Holes far from the end of the case. */
  readonly farFromEnd: Quantity<'stress'>;
  /** Holes at the end of the case. */
  readonly freeEdge: Quantity<'stress'>;
  /** Length over which the bending decays. */
  readonly decayLength: Quantity<'length'>;
}

/** A radial-bolt joint and the margins of its failure modes. */
export interface JointReview {
  /** Axial force on the closure at the review pressure. */
  readonly endForce: Quantity<'force'>;
  /** Load of the worst bolt. */
  readonly boltLoad: Quantity<'force'>;
  /** Load of the worst bolt/equal share. */
  readonly shareFactor: number;
  readonly modes: readonly JointMode[];
  /** The mode of minimum margin. */
  readonly governing: JointMode;
  /** Checks of the heads of the fasteners in the wall. */
  readonly checks: readonly JointCheck[];
  /** Whether all margins are zero or greater and all checks are satisfied. */
  readonly passes: boolean;
  /** The mode of minimum failure pressure, without factors. */
  readonly firstToFail: JointMode;
  /** What separates first, what only stretches first, and whether the joint warns. */
  readonly failureOrder: FailureOrder;
  readonly pattern: HolePattern;
  /** Tension with bending of the wall by the offset of the bolts. */
  readonly offsetBending: OffsetBending;
  readonly cautions: readonly string[];
  toString(): string;
}

/** The values from which the rest of the review follows. */
export interface JointFacts
  extends Omit<JointReview, 'governing' | 'passes' | 'firstToFail' | 'failureOrder' | 'toString'> {
  readonly pressure: Quantity<'gauge pressure'>;
  /** The order of the worst variant; that of the modes where omitted. */
  readonly failureOrder?: FailureOrder;
}

/** The review of a joint from its modes. */
export function jointReview({ pressure, ...facts }: JointFacts): JointReview {
  const { modes, checks } = facts;
  const text = (): string => reviewText(review, pressure);
  const review = {
    ...facts,
    failureOrder: facts.failureOrder ?? failureOrder(modes),
    governing: governing(modes),
    passes: modes.every(({ marginOfSafety }) => marginOfSafety >= 0) && checks.every(({ passes }) => passes),
    firstToFail: modes.reduce((first, next) =>
      next.failurePressure.si < first.failurePressure.si ? next : first,
    ),
    toString: text,
    [Symbol.for('nodejs.util.inspect.custom')]: text,
  };
  return review;
}

const signed = (left: number): string => `${left < 0 ? '−' : '+'}${Math.abs(left).toFixed(2)}`;

const verdict = ({ passes, governing: least }: Pick<JointReview, 'passes' | 'governing'>): string =>
  passes
    ? 'All margins of safety are zero or greater'
    : least.marginOfSafety < 0
      ? 'Negative margins of safety'
      : 'All margins of safety are zero or greater, but a check is not satisfied,';

function reviewText(review: Omit<JointReview, 'toString'>, pressure: Quantity<'gauge pressure'>): string {
  const rows = [...review.modes]
    .sort((a, b) => a.marginOfSafety - b.marginOfSafety)
    .map(({ mode, applied, allowable, factor, marginOfSafety: left, failurePressure, temperature }) => ({
      mode,
      stress: applied,
      allowable,
      factor,
      margin: signed(left),
      'failure pressure': failurePressure,
      ...(temperature !== undefined && { temperature }),
    }));
  const peaks = review.modes.flatMap(({ mode, limit, peak }) =>
    peak === undefined || limit === 'yield'
      ? []
      : [`${mode}: peak ${peak.stress}, ${peak.concentration.toFixed(2)} times, ${peak.reason}`],
  );
  const { governing: least, offsetBending: bent } = review;
  return [
    `${verdict(review)} at ${pressure}; minimum ${signed(least.marginOfSafety)}, ${least.mode}`,
    `end force ${review.endForce}, worst bolt ${review.boltLoad}`,
    failureOrderText(review.failureOrder),
    'Margin: margin of safety including the factor; required ≥ 0. Failure pressure: stress equals allowable, no factor.',
    table(rows),
    ...review.checks.map(({ check, message }) => `${check}: ${message}`),
    `tension at the surface of the case by the offset of the bolts, elastic: ${bent.surface}; bounds ${bent.none} without bending, ${bent.farFromEnd} far from the end, ${bent.freeEdge} at the end; decay length ${bent.decayLength}`,
    ...peaks,
    ...review.cautions.map((caution) => `caution: ${caution}`),
  ].join('\n');
}
