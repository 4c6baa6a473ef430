/**
 * O-rings: standard sizes, radial glands and face grooves over all tolerances, extrusion gaps under pressure, drilled holes they must pass.
 * Imports units and the material records.
 *
 * @example oRing('228').crossSection.in('in') // => 0.139
 * @module
 */
export * from './extrusion-gap';
export * from './face-seal';
export * from './gland-formulas';
export type { SealCheck } from './gland-limits';
export * from './o-ring';
export { type ORingGland, type ORingGlandInput, oRingGland } from './o-ring-gland';
export * from './seal-over-holes';
export * from './seal-pair';
export {
  type GroovePlace,
  type LengthRange,
  type StandardGroove,
  standardGroove,
} from './standard-groove';
export * from './stretch-thinning';
export type { Band, TolerancedLength } from './tolerance';
