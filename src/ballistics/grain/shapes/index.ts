/**
 * Grains: the named shapes, grains composed of cores or drawn as an outline, and the closed forms of their sections. A grain is
 * its outer form with the surfaces that burn, read with units and held in SI numbers.
 *
 * Imports `surface` and `flaws`.
 *
 * @module
 */
export { grainClosedForm } from './closed-form';
export { composedGrain } from './composed-grain';
export { coneCore } from './cone-core';
export type { Core } from './core';
export { cylinderCore } from './cylinder-core';
export { extrudedCore } from './extruded-core';
export { finCore } from './fin-core';
export { finocyl, slottedTube } from './finned-shapes';
export { type Grain, grainValue, withFlaws } from './grain';
export type { GrainShape } from './grain-shape';
export { neutralStarAngle } from './neutral-star';
export {
  endBurner,
  freeRod,
  internalTube,
  offsetBore,
  rodAndTube,
  sphericalGrain,
  taperedCore,
  tubularSegment,
} from './round-shapes';
export { sphereCore } from './sphere-core';
export { star } from './star';
export { wagonWheel } from './wagon-wheel';
