/**
 * Grain shapes, flaws and their regression: burning area and volume against burned depth from exact distances.
 *
 * Imports units and numerics. The files without units in their names are the kernel, on plain SI numbers.
 *
 * @example regress(tubularSegment({ outerDiameter: '50 mm', boreDiameter: '16 mm', length: '85 mm' })).burningArea.at(0).in('mm^2') // => 7797.43297
 * @module
 */
export { chippedEdge } from './chipped-edge';
export { columnRegression } from './column-regression';
export type { ColumnSegment } from './column-stations';
export { composedGrain } from './composed-grain';
export { type Core, type CoreExtent, coneCore, cylinderCore, finCore, sphereCore } from './core';
export { crack, type FreeCrack, type RadialCrack, type TransverseCrack } from './crack';
export { debond } from './debond';
export { type DrawGrainOptions, drawGrain } from './draw-grain';
export { extrudedCore, type OutlinePoint } from './extruded-core';
export { finocyl, slottedTube } from './finned-shapes';
export type { Flaw } from './flaw';
export { type BurningEnds, type Grain, type OuterMeasures, withFlaws } from './grain';
export { type ColumnRegression, type GrainColumn, grainColumn, regressColumn } from './grain-column';
export { neutralStarAngle } from './neutral-star';
export { regress } from './regress';
export type {
  GrainMassProperties,
  PortAtStation,
  Regression,
  RegressionBreak,
  RegressionKernel,
  RegressOptions,
  WallExposureMap,
} from './regression';
export {
  endBurner,
  freeRod,
  internalTube,
  offsetBore,
  rodAndTube,
  sphericalGrain,
  type TubeMeasures,
  taperedCore,
  tubularSegment,
} from './round-shapes';
export { star } from './star';
export { voidBubble } from './void-bubble';
export { wagonWheel } from './wagon-wheel';
