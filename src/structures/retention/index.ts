/**
 * Retention of a throat insert: its seat, the lip or the plate that carries it, and the screws of the plate. Imports units, the
 * material records, joints and threads.
 *
 * @example lipShearStress({ load: '4 kN', insertDiameter: '30 mm', lipThickness: '6 mm' }).in('MPa').toFixed(4) // => '7.0736'
 * @module
 */
export * from './flange-formulas';
export * from './seat-formulas';
