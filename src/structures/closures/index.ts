/**
 * Closures held by other means than radial bolts: retaining rings in their grooves, threads in the end of the case. Imports
 * units, margins, materials, shells and threads.
 *
 * @example ringShearStress({ load: '20 kN', boreDiameter: '60 mm', ringThickness: '2 mm' }).in('MPa') // => 53.05164770
 * @module
 */

export type {
  ClosureCheck,
  ClosureReview,
  RetainingRingReview,
  ThreadedClosureReview,
} from './closure-review';
export * from './cut-wall';
export * from './dished-head';
export * from './edge-margin';
export * from './flat-closure';
export * from './groove-engagement';
export * from './groove-section';
export * from './retaining-ring';
export * from './retaining-ring-size';
export { type RetainingRingJoint, reviewRetainingRing } from './review-retaining-ring';
export { reviewThreadedClosure } from './review-threaded-closure';
export * from './ring-capacity';
export * from './ring-dishing';
export * from './stepped-plate';
export * from './thread-opening';
export * from './thread-radial-pressure';
export type { ThreadedClosure } from './threaded-closure';
