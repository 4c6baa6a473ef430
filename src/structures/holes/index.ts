/**
 * Holes for radial bolts: pattern, full-size paper template, bore of a drill guide. Imports units and groups of inputs.
 *
 * @example holePattern({ outsideDiameter: '3 in', count: 8, holeDiameter: '1/4 in', edgeDistance: '0.5 in' }).holes.length // => 8
 * @module
 */
export * from './drill-guide';
export { type Hole, type HolePattern, type HolePatternInput, holePattern } from './hole-pattern';
export { type WrapTemplate, wrapTemplate } from './wrap-template';
