/**
 * The firing record: one type for predicted and measured firings, and its summary. Imports nozzle, thermo, structures,
 * units and numerics.
 *
 * @example motorClass('371 N*s').letter // => 'I'
 * @module
 */

export { ambientOf } from './ambient';
export { type BurnEdges, burnEdges } from './analysis/burn-edges';
export { calibrate } from './calibration/calibrate';
export {
  type Calibration,
  invertCalibration,
  type LineCalibration,
  type MeasuredKind,
  type ReadingRange,
  type ThermocoupleCalibration,
  tareCalibration,
} from './calibration/calibration';
export { fitCalibration } from './calibration/fit-calibration';
export { thermocoupleCalibration } from './calibration/thermocouple-calibration';
export {
  bridgeCalibration,
  currentLoopCalibration,
  ratiometricCalibration,
} from './calibration/transducers';
export { align } from './cleaning/align';
export { detectBurn } from './cleaning/detect-burn';
export { lowPass } from './cleaning/low-pass';
export { movingAverage } from './cleaning/moving-average';
export { removeBaseline } from './cleaning/remove-baseline';
export { resample } from './cleaning/resample';
export { findResonance, type Resonance } from './cleaning/resonance';
export { removeSpikes } from './cleaning/spikes';
export { correctStandWeight, correctThrustAxis } from './cleaning/stand-weight';
export { type TraceLag, traceLag } from './cleaning/trace-lag';
export {
  type Firing,
  type FiringChannels,
  type FiringEvent,
  type FiringInput,
  type FiringMetadata,
  type FiringOrigin,
  firing,
  type TypedFiring,
} from './firing';
export type { LogSource } from './log/chunks';
export type { LogColumn, LogColumns, LogTime } from './log/columns';
export type { ImportReport, LogFinding, LogFindingRun } from './log/import-report';
export type { Log, LogChannel } from './log/log';
export { readLog } from './log/read-log';
export { combinedUncertainty } from './measuring/combined-uncertainty';
export { type LaunchDistance, launchDistance } from './measuring/launch-distance';
export {
  bandwidthFromRiseTime,
  converterStep,
  type FirstOrderPeakResponse,
  firstOrderPeakResponse,
} from './measuring/sensor-response';
export { standNaturalFrequency } from './measuring/stand-natural-frequency';
export { isModelRocketMotor, type MotorClass, motorClass } from './motor-class';
export { firingFromLog } from './reduction/firing-from-log';
export type { MotorNumbers } from './reduction/motor-numbers';
export { reduceFiring } from './reduction/reduce-firing';
export type { ReducedFiring } from './reduction/reduced-firing';
export type { ReductionInputs } from './reduction/reduction-inputs';
export { type TemperatureTrace, temperatureTrace } from './reduction/temperature-trace';
export type { ClippedSpan, Clipping, ClippingEvidence } from './saturation/clipping';
export {
  type ClippingReport,
  detectClipping,
} from './saturation/detect-clipping';
export { type RecoverOptions, recoverPressure, recoverThrust } from './saturation/recover';
export type { Estimate, PeakBound, Recovery, RecoveryFit } from './saturation/recovery';
export { type FiringSummary, summarize } from './summary';
export type { BurnInterval } from './summary-intervals';
export {
  type ThermocoupleType,
  thermocoupleTemperature,
  thermocoupleVoltage,
} from './thermocouples/thermocouple';
