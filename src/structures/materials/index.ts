/**
 * Materials with the source and basis of every value, strength against temperature, and allowables. Imports units and numerics.
 *
 * @example allowable({ material: '6061-T6 drawn tube', property: 'yield' }).value.in('ksi') // => 35
 * @module
 */
export { type Allowable, allowable, type StrengthProperty } from './allowable';
export {
  type Basis,
  type Datum,
  datum,
  type Origin,
  type Provenance,
  type StressDatum,
} from './datum';
export { withEstimatedStrengths } from './estimated-strengths';
export { type GraphiteRanges, graphiteRanges } from './graphite';
export { type MaterialName, material, materialNames } from './library';
export type * from './material';
export { type StrengthRetention, strengthRetention } from './retention';
