/**
 * Closures held by other means than bolts: retaining rings and their grooves. Imports units, margins and materials.
 *
 * @example ringShearStress({ load: '20 kN', boreDiameter: '60 mm', ringThickness: '2 mm' }).in('MPa') // => 53.05164770
 * @module
 */
export * from './retaining-ring';
export * from './review-retaining-ring';
