/**
 * Bolts in tension along the axis: stiffness, preload and its scatter, strength, separation and fatigue. Imports units, the
 * material records, fasteners and threads.
 *
 * @example jointConstant({ boltStiffness: '200 kN/mm', memberStiffness: '600 kN/mm' }) // => 0.25
 * @module
 */
export * from './bolt-axial-stiffness';
export { type BoltEnduranceName, boltEndurance } from './bolt-endurance';
export * from './bolt-fatigue';
export * from './combined-bolt-stress';
export * from './flange-ligaments';
export * from './flange-rolling';
export * from './grip';
export * from './head-bearing';
export * from './interaction';
export { clampForce, jointConstant, tensionBoltForce } from './joint-constant';
export * from './member-stiffness';
export * from './preload-range';
export { reviewTappedEnd, type TappedEnd, type TappedEndMargins } from './review-tapped-end';
export { reviewTensionBolts } from './review-tension-bolts';
export * from './separating-capacity';
export * from './tapped-end';
export type { TensionBoltJoint } from './tension-bolt-joint';
export type { TensionBoltFatigue, TensionBoltReview } from './tension-bolt-review';
export * from './tension-factors';
export * from './thermal-preload';
export { type TighteningMethod, type TighteningMethodName, tighteningMethod } from './tightening-method';
