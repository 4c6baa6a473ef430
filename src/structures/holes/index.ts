/**
 * Holes for radial bolts: clearance and tap drills, pattern, full-size paper template, bore of a drill guide. Imports units, threads
 * and groups of inputs.
 *
 * @example holePattern({ outsideDiameter: '3 in', count: 8, holeDiameter: '1/4 in', edgeDistance: '0.5 in' }).holes.length // => 8
 * @module
 */
export { type ClearanceHole, clearanceHole } from './clearance-hole';
export type { ClearanceFit, ClearanceStandard } from './clearance-table';
export * from './drill-guide';
export { drillSize } from './drill-sizes';
export { type Hole, type HolePattern, type HolePatternInput, holePattern } from './hole-pattern';
export * from './tap-drill';
export * from './thread-percentage';
export { type WrapTemplate, wrapTemplate } from './wrap-template';
