/**
 * The layout of a motor along its axis: where each feature of case, closures, grain and nozzle is. Imports the document.
 *
 * @module
 */

export type { EndLayout, Span } from './end-layout';
export { type MotorLayout, motorLayout } from './motor-layout';
export type { SegmentPlace } from './segment-places';
