/**
 * Burn law, grain regression, chamber pressure, simulation. Imports the lower layers only: firing, nozzle, thermo,
 * structures, units and numerics.
 *
 * @example burnRate({ referenceRate: '8 mm/s', referencePressure: '1 MPa', exponent: 0.3, pressure: '1 MPa' }).in('mm/s') // => 8
 * @module
 */
export * from './blowdown';
export { type BurnLaw, type ExtrapolationPolicy, saintRobert } from './burn-law';
export type { BurnLawBand } from './burn-law-band';
export type { SaintRobertInput } from './burn-law-inputs';
export { convertBurnRateCoefficient } from './burn-rate-coefficient';
export * from './closed-chamber';
export { compareFirings, type FiringComparison } from './compare-firings';
export { type CoolingBlowdown, coolingBlowdown } from './cooling-blowdown';
export * from './equilibrium';
export {
  type EquilibriumRoot,
  type EquilibriumRoots,
  equilibriumPressures,
} from './equilibrium-roots';
export * from './equilibrium-sensitivity';
export * from './erosive-burning';
export type { ErosiveBurningInput } from './erosive-inputs';
export * from './flaw-ignition';
export * from './grain';
export * from './heat-loss';
export * from './igniter-filling';
export { type IgnitionBand, type IgnitionOfSpread, ignitionBand } from './ignition-band';
export { type IgnitionTransient, ignitionTransient } from './ignition-transient';
export {
  chamberResidenceTime,
  characteristicLength,
  criticalCharacteristicLength,
  extinctionVentingRate,
  thermalWaveTime,
} from './low-pressure-limits';
export { type MotorHeatLoss, motorHeatLoss } from './motor-heat-loss';
export { type ChokedPort, chokedPort, chokedPortFlux } from './port/choked-port';
export { dynamicPressureDrop, type InjectedFlow, injectedFlow } from './port/injected-flow';
export { headPressureEstimate, type LumpedCriterion, lumpedCriterion } from './port/lumped-criterion';
export * from './port/mukunda-paul';
export { type PortPressure, type PortPressures, portPressure } from './port/port-pressure';
export { type SegmentGapFlow, segmentGapFlow } from './port/segment-gap-flow';
export { type UniformPort, uniformPort } from './port/uniform-port';
export type { PortFlow } from './port-diagnosis';
export * from './port-flow';
export { type Propellant, propellant } from './propellant';
export { publishedPropellant, publishedPropellants } from './propellant-data';
export type { PropellantInput } from './propellant-inputs';
export type { BurnConditions } from './rate-by-law';
export type { DifferenceCause } from './reduction/difference-causes';
export {
  type DifferenceExplanation,
  explainDifference,
  type PredictionDifference,
} from './reduction/explain-difference';
export {
  type BurnLawFit,
  fitBurnLaw,
} from './reduction/fit-burn-law';
export { type ErosiveBurningFit, fitErosiveBurning } from './reduction/fit-erosive-burning';
export {
  type EquivalentFlaw,
  type ImpliedArea,
  impliedBurningArea,
} from './reduction/implied-area';
export { type ImpliedThroat, impliedThroat } from './reduction/implied-throat';
export { type BurnRate, burnRate } from './saint-robert';
export { simulate } from './simulate';
export type { SimulateInput } from './simulate-inputs';
export { type Batch, type SimulateManyOptions, simulateMany } from './simulate-many';
export type { MassBalance, SimulatedFiring } from './simulated-firing';
export type { RunEnd } from './simulation/motor-model';
export { type SimulationPool, simulationPool } from './thread-pool';
export * from './throat-blockage';
export type { Scatter, Variation } from './variations';
