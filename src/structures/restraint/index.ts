/**
 * Restraint of the motor and the stand: wire rope and terminations, snatch load, shackles, anchors,
 * members of a thrust stand. Imports units, margins, threads and fasteners.
 *
 * @example snatchLoad({ load: '2 kN', stiffness: '1300 N/mm', slack: '0 mm' }).in('kN') // => 4
 * @module
 */
export type { AnchorBolts } from './anchor-bolts';
export * from './anchor-load';
export * from './rope-restraint';
export * from './rope-strength';
export * from './snatch-load';
export * from './stand-members';
export * from './termination';
export { type WireRope, wireRope } from './wire-rope';
