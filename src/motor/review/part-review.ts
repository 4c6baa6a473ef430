import type { FailureMargin, PartId } from '../../structures';
import type { Quantity } from '../../units';
import type { Motor } from '../document';
import type { PartLine } from '../part-lines';
import type { MotorSettings } from '../settings';
import type { Attempt } from './refusals';
import type { ReviewCheck } from './review-check';

/** A check of a part without a margin of safety: a ligament, an overlap, a fit. */
export interface PartCheck extends ReviewCheck {
  readonly part: PartId;
}

/** A part that bears pressure, or an aspect of one, that could not be evaluated. */
export interface Unjudged {
  readonly part: PartId;
  /** What is not evaluated and why, as a sentence that names the field to specify. */
  readonly reason: string;
}

/** What the evaluation of a part finds. */
export interface PartReview {
  readonly margins: readonly FailureMargin[];
  readonly checks: readonly PartCheck[];
  readonly unjudged: readonly Unjudged[];
  readonly cautions: readonly PartLine[];
}

/** Conditions of an evaluation: the motor at its worst-case limits, the chamber pressure and the thrust. */
export interface PartConditions {
  readonly motor: Motor;
  readonly pressure: Quantity<'gauge pressure'>;
  readonly thrust: Quantity<'force'>;
  readonly settings: MotorSettings;
  /** Runs a calculation that may refuse its inputs, at the places of the document where they are. */
  readonly attempt: Attempt;
}

/** Evaluates one part, or one aspect of several. */
export type PartReviewer = (conditions: PartConditions) => PartReview;

/** A review of a part with what is given, and otherwise empty. */
export const partReview = (found: Partial<PartReview>): PartReview => ({
  margins: [],
  checks: [],
  unjudged: [],
  cautions: [],
  ...found,
});

/** The findings of several reviews as one, in their order. */
export const together = (reviews: readonly PartReview[]): PartReview => ({
  margins: reviews.flatMap(({ margins }) => margins),
  checks: reviews.flatMap(({ checks }) => checks),
  unjudged: reviews.flatMap(({ unjudged }) => unjudged),
  cautions: reviews.flatMap(({ cautions }) => cautions),
});
