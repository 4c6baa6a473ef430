/**
 * Closures held by other means than radial bolts: retaining rings in their grooves, threads in the end of the case. Imports
 * units, margins, materials, shells and threads.
 *
 * @example ringShearStress({ load: '20 kN', boreDiameter: '60 mm', ringThickness: '2 mm' }).in('MPa') // => 53.05164770
 * @module
 */

export { closurePlate } from './closure-plate';
export type { ClosureReview, RetainingRingReview, ThreadedClosureReview } from './closure-review';
export { closureThread } from './closure-thread';
export * from './cut-wall';
export * from './retaining-ring';
export { retainingRing } from './retaining-ring-groove';
export { type RetainingRingJoint, reviewRetainingRing } from './review-retaining-ring';
export { reviewThreadedClosure } from './review-threaded-closure';
export * from './thread-opening';
export * from './thread-radial-pressure';
export { type ThreadedClosure, threadedClosure } from './threaded-closure';
