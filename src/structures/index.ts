/**
 * Materials, shells, bolted joints, threads, closures, seals, restraints and margins. Imports units and numerics only.
 *
 * @example hoopStress({ pressure: '1000 psi', radius: '1.5 in', wall: '0.125 in' }).in('psi') // => 12000
 * @module
 */
export * from './closure-force';
export * from './closures';
export * from './concentration';
export * from './design-pressures';
export * from './factor-sets';
export {
  type DesignFactors,
  designFactors,
  type ReviewFactors,
} from './factors-of-safety';
export * from './failure-mode';
export * from './fasteners';
export * from './holes';
export * from './joint';
export * from './life';
export * from './margin';
export * from './materials';
export * from './plate';
export * from './plate-formulas';
export * from './plate-hole-formulas';
export * from './plate-large-deflection';
export * from './proof-at-temperature';
export * from './proof-factor';
export * from './restraint';
export * from './retention';
export * from './seals';
export * from './shell';
export * from './tension-bolts';
export * from './threads';
