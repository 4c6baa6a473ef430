/**
 * Thrust coefficient, expansion, regimes and separation, losses, throat erosion, sizing and the contour.
 * Imports units, numerics, thermo and structures only.
 *
 * @example thrustCoefficient({ gamma: 1.13, expansionRatio: 7, chamberPressure: '5 MPa', ambientPressure: '1 atm' }) // => 1.58897
 * @module
 */

export * from './blow-out';
export * from './cone-geometry';
export type { ContourPiece, ContourPoint } from './contour-path';
export * from './exit-conditions';
export * from './expansion';
export * from './friction-loss';
export * from './ideal-nozzle';
export type { IdealNozzle, ThrustCoefficientParts } from './ideal-nozzle-kernels';
export * from './insert-fit';
export * from './insert-solid';
export * from './losses';
export { type ContourStation, type NozzleContour, nozzleContour } from './nozzle-contour';
export * from './nozzle-efficiency';
export type { DivergentBehaviour, NozzleRegime } from './nozzle-flow';
export * from './nozzle-regime';
export {
  kaltBadalSeparationRatio,
  type SeparationCriterion,
  schillingSeparationRatio,
  schmuckerSeparationRatio,
  starkSeparationRatio,
  summerfieldSeparationRatio,
} from './separation';
export * from './separation-band';
export * from './size-nozzle';
export * from './throat-growth';
export * from './throat-law';
export * from './thrust';
export * from './thrust-coefficient';
export * from './two-phase-loss';
export * from './wall-heating-time';
