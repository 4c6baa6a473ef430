/**
 * Drawings of a grain as SVG: two sections with burn fronts, port, flaws and inhibited surfaces.
 *
 * Imports `surface`, `shapes` and `front`.
 *
 * @module
 */
export { type DrawGrainOptions, drawGrain } from './draw-grain';
