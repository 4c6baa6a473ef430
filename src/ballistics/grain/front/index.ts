/**
 * The burning front of one grain: the distance field of everything that burns, the depth at which each flaw ignites, and what
 * follows from them against the depth burned (burning area, volume, ports, wall exposure, mass properties).
 *
 * Imports `surface`, `flaws` and `shapes`.
 *
 * @module
 */
export { type DepthField, depthField } from './field';
export { once } from './once';
export { regress, regressGrain } from './regress';
export { regressInputs } from './regress-inputs';
export { litSources } from './regress-shape';
export {
  type GrainMassProperties,
  isRegression,
  type PortAtStation,
  type Regression,
  type RegressionBreak,
  type RegressionKernel,
  type WallExposureMap,
} from './regression';
export { regressionKernel } from './regression-kernel';
export { regressionText } from './regression-text';
export type { SegmentLayout } from './segment-layout';
