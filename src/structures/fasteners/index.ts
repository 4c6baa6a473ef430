/**
 * Strength classes of bolts and screws: ISO 898-1, ISO 3506-1, SAE J429, ASTM A574. Imports units, numerics and the material records.
 *
 * @example boltClass('8.8').proofStress?.value.in('MPa') // => 580
 * @module
 */
export * from './bolt-class';
export * from './bolt-heat';
export type { BoltClassName } from './bolt-table';
