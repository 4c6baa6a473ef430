/**
 * Stress, growth, yield and burst of a cylindrical case. Imports units, numerics and the material records. Buckling is
 * excluded: a motor case is pressurised from inside, and nothing here covers compression or external pressure.
 *
 * @example thickWallStress({ pressure: '1000 psi', insideRadius: '1.5 in', outsideRadius: '1.75 in' }).hoop.in('psi').toFixed(1) // => '6538.5'
 * @module
 */
export * from './beyond-seal';
export * from './burst-formulas';
export * from './burst-pressure';
export type { CylinderEnds } from './cylinder';
export * from './edge-zone';
export * from './growth';
export * from './lame';
export * from './longitudinal-strain';
export * from './out-of-round';
export * from './review-shell';
export * from './thermal-growth';
export { type ThickWallStress, type ThickWallStressSi, thickWallStress } from './thick-wall';
export * from './thin-shell';
export * from './wall-for-pressure';
export * from './yield-pressure';
