import type { Firing, ReducedFiring } from '../../firing';
import { isFiring } from '../../firing/firing';
import { type Arguments, instance, optional } from '../../units';
import type { MotorComparison } from '../compare/comparison';
import type { FlawEnvelope } from '../envelope/flaw-envelope';
import { isReducedFiring } from '../given-firing';
import type { Meop } from '../meop/meop-result';
import type { Review } from '../review/review-result';

/** Subjects of a report. */
export type Reportable = Review | Meop | MotorComparison | FlawEnvelope | ReducedFiring | Firing;

/** A test for a result of the library: by what it contains, so that a copy is one too. */
const withFields =
  <R>(...fields: readonly (keyof R & string)[]) =>
  (value: unknown): value is R =>
    typeof value === 'object' && value !== null && fields.every((field) => field in value);

/** True for a review. */
export const isReview = /* @__PURE__ */ withFields<Review>('margins', 'meop', 'prediction', 'failureOrder');
/** True for a MEOP. */
export const isMeop = /* @__PURE__ */ withFields<Meop>('worstCase', 'percentile', 'sensitivity');
/** True for a comparison. */
export const isComparison = /* @__PURE__ */ withFields<MotorComparison>('reuse', 'utilisations', 'measured');
/** True for a flaw envelope. */
export const isFlawEnvelope = /* @__PURE__ */ withFields<FlawEnvelope>(
  'flawFreePeakPressure',
  'curves',
  'rows',
);

/** True for a subject of a report. */
export const isReportable = (value: unknown): value is Reportable =>
  [isReview, isMeop, isComparison, isFlawEnvelope, isReducedFiring, isFiring].some((is) => is(value));

/** The subject of a report. */
export const reportable = /* @__PURE__ */ instance(
  'the result to report',
  'a review, a MEOP, a comparison, a flaw envelope, a reduced firing or a firing',
  isReportable,
);

/** Additional content of the report on a review. */
export const reportContent = {
  firing: optional(
    instance(
      'recorded firing of the motor, compared with the prediction of the review',
      'a ReducedFiring',
      isReducedFiring,
      { remedy: 'Make one with reduceFiring' },
    ),
  ),
  comparison: optional(
    instance(
      'comparison of a recorded firing with the model, and its effect on the hardware; includes the firing',
      'a MotorComparison',
      isComparison,
      { remedy: 'Make one with compare' },
    ),
  ),
  flaws: optional(
    instance('critical flaw sizes of the motor', 'a FlawEnvelope', isFlawEnvelope, {
      remedy: 'Make one with flawEnvelope',
    }),
  ),
};

/** Additional content of the report on a review. */
export type ReportInput = Arguments<typeof reportContent>;
