/**
 * The motor document, prediction, MEOP, review, flaw envelope, comparison with a firing, report and plot
 * specifications. Imports all lower layers.
 *
 * @example parseMotor(demoMotor()).name // => 'Tern-54'
 * @module
 */

export type { AssumedBlockage } from './assumed-blockage';
export { compare } from './compare/compare';
export type {
  ComparedFigure,
  LedgerEntry,
  MotorComparison,
  MotorPatch,
  ReuseFinding,
  StrengthUtilisation,
} from './compare/comparison';
export { patchMotor } from './compare/patch-motor';
export { reductionInputs } from './compare/reduction-inputs';
export { demoMotor } from './demo-motor';
export * from './document';
export { drawMotor } from './drawing';
export {
  type FlawEnvelope,
  type FlawEnvelopeRow,
  type FlawLimit,
  flawEnvelope,
} from './envelope/flaw-envelope';
export type { FlawKind } from './envelope/flaw-family';
export { meop } from './meop/meop';
export type { Meop, MeopCase, MeopScatter } from './meop/meop-result';
export type { PeakSensitivity } from './meop/sensitivity';
export type { FlawSet } from './motor-grain';
export * from './output';
export { predict } from './predict';
export type {
  FeatureLife,
  HeatHistory,
  Inspection,
  PartReuse,
  ReuseReview,
} from './reuse/reuse-result';
export type { Finding } from './review/finding';
export type { PartCheck, Unjudged } from './review/part-review';
export type { ProofAtTemperature, ProofReview } from './review/proof-review';
export { review } from './review/review';
export type { ReviewCheck } from './review/review-check';
export { reviewProblems } from './review/review-problems';
export type {
  FaceSealReview,
  InstrumentReview,
  Review,
  SealReview,
} from './review/review-result';
export type { ReviewVerdict } from './review/verdict';
export type { MotorSettings } from './settings';
