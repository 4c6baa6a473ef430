/**
 * The joint of case and closure by radial bolts: single formulas, the review of a joint, and the search for one.
 *
 * @example bearingStress({ load: '2500 lbf', diameter: '1/4 in', thickness: '0.1 in' }).in('ksi') // => 100
 * @module
 */
export * from './bearing';
export * from './bolt-bending';
export * from './bolt-shear';
export * from './countersink';
export * from './design-joint';
export * from './edge-distance';
export type { JointCheck } from './fastener-checks';
export * from './hole-concentration';
export type { RadialBoltJoint } from './joint-inputs';
export type { PeakStress } from './joint-peak';
export type { JointMode, JointReview } from './joint-review';
export type { JointOption, JointSearch } from './joint-search';
export type { JointSi } from './joint-si';
export type { JointStresses, JointStressesSi } from './joint-stresses';
export * from './load-sharing';
export * from './net-section';
export * from './offset-bending';
export * from './pin-hole-concentration';
export { reviewJoint } from './review-joint';
export * from './staggered-net-section';
export * from './tear-out';
export * from './worst-bolt';
