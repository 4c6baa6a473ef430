/**
 * Life of a part that is loaded once per firing: the net section first, then stress and strain at the notch, then cycles.
 * Limits of inspection between firings. Imports units, numerics and materials.
 *
 * @example fatigueNotchFactor({ concentration: 3, notchSensitivity: 0.8 }) // => 2.6
 * @module
 */
export * from './fatigue-notch';
export * from './inspection-limits';
export type { LifeVerdict } from './local-life';
export { type LowCycleLife, lowCycleLife } from './low-cycle-life';
export * from './net-strip';
export { neuberNominalStress, rambergOsgoodStrain } from './neuber';
export { smithWatsonTopper, strainLifeAmplitude } from './strain-life';
export * from './universal-slopes';
