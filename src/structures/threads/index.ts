/**
 * Standard threads, their stripping strength and preload, and ports for instruments. Imports units and the material records.
 *
 * @example threadGeometry('1/4-20').tensileStressArea.in('in^2') // => 0.03182091806
 * @module
 */

export * from './custom-thread';
export {
  type PipeSize,
  type PipeThread,
  type PortWallCheck,
  pipeThread,
  straightPort,
  taperPort,
} from './pipe-thread';
export {
  type BoltFinish,
  type NutFactor,
  nutFactor,
  type PreloadRange,
  preloadFromTorque,
  preloadRange,
} from './preload';
export * from './shear-area';
export * from './stress-area';
export {
  type ThreadGeometry,
  type ThreadLimits,
  threadGeometry,
  threadNames,
} from './thread-geometry';
export type { ThreadLimitsSi } from './thread-limits';
export * from './thread-shear';
export * from './thread-stripping';
