/**
 * Where the holes for radial bolts go: pattern, paper template at full size, drill-guide bore. Imports units only.
 *
 * @example holePattern({ outsideDiameter: '3 in', count: 8, holeDiameter: '1/4 in', edgeDistance: '0.5 in' }).holes.length // => 8
 * @module
 */
export * from './drill-guide';
export { type Hole, type HolePattern, type HolePatternInput, holePattern } from './hole-pattern';
export { type WrapTemplate, type WrapTemplateInput, wrapTemplate } from './wrap-template';
