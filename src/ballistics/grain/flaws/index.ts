/**
 * Flaws of a cast grain: cracks, voids, debonds and chipped edges, with the cautions that each brings. A flaw is read with units
 * and placed as a surface in the outer form of a grain.
 *
 * Imports `surface`.
 *
 * @module
 */
export { chippedEdge } from './chipped-edge';
export { crack, crackPlanes } from './crack';
export { debond } from './debond';
export { type Flaw, isFlaw, type PlacedFlaw } from './flaw';
export { voidBubble } from './void-bubble';
