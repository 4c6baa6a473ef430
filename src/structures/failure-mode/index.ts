/**
 * Failure modes as values: what is applied and what is allowed, each as a chain of formulas, and what follows from
 * them: margin, working, failure pressure and failure sequence. Names for people are rendered last, from identifiers.
 * Imports units and margins only.
 *
 * @example modeName('case-bearing') // => 'bearing, case wall'
 * @module
 */
export type { Consequence } from './consequence';
export type { MarginExplanation } from './explain-margin';
export type { FailureMargin, PressureDrivenMargin } from './failure-margin';
export type { FailureLimit } from './failure-mode';
export type { FailureOrder, OrderOf } from './failure-order';
export type { FailureSequenceEntry } from './failure-sequence';
export { type FailureModeId, modeName } from './mode-name';
export { type PartId, partName } from './part-name';
