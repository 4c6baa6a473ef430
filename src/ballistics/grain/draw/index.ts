/**
 * Drawings of a grain as SVG: two sections with burn fronts, port, flaws and inhibited surfaces.
 *
 * Imports `surface`, `shapes` and `front`.
 *
 * @module
 */
export { drawGrain } from './draw-grain';
export { flawDirection, longitudinalSection } from './longitudinal-section';
