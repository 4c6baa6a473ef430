/**
 * The layout of a motor along its axis: where each feature of case, closures, grain and nozzle is. Imports the document.
 *
 * @module
 */

export type { AxialBoltPlace } from './axial-bolt-place';
export type { EndLayout, GroovePlace, HoleRow, RingPlace, Span, ThreadPlace, Turned } from './end-layout';
export { type MotorLayout, motorLayout, type NozzlePlace } from './motor-layout';
export type { PocketPlace } from './pocket-place';
export type { SegmentPlace } from './segment-places';
