/**
 * Grain shapes, flaws and their regression: burning area and volume against depth burned, from exact distances.
 *
 * Folders, from the lowest: `surface`, `flaws`, `shapes`, `front`, `column`, `draw`. A folder imports only from the indexes of
 * folders below it; each may import the inputs that recur and `misfit`, the errors for dimensions that do not fit. Of other modules, only units and numerics are imported.
 *
 * @example regress(tubularSegment({ outerDiameter: '50 mm', boreDiameter: '16 mm', length: '85 mm' })).burningArea.at(0).in('mm^2') // => 7797.43297
 * @module
 */
export {
  type ColumnRegression,
  columnRegression,
  type GrainColumn,
  grainColumn,
  regressColumn,
} from './column';
export { drawGrain } from './draw';
export {
  chippedEdge,
  crack,
  debond,
  type Flaw,
  voidBubble,
} from './flaws';
export {
  type GrainMassProperties,
  type PortAtStation,
  type Regression,
  type RegressionBreak,
  type RegressionKernel,
  regress,
  type WallExposureMap,
} from './front';
export type { BurningEnds } from './grain-inputs';
export {
  type Core,
  composedGrain,
  coneCore,
  cylinderCore,
  endBurner,
  extrudedCore,
  finCore,
  finocyl,
  freeRod,
  type Grain,
  internalTube,
  neutralStarAngle,
  offsetBore,
  rodAndTube,
  slottedTube,
  sphereCore,
  sphericalGrain,
  star,
  taperedCore,
  tubularSegment,
  wagonWheel,
  withFlaws,
} from './shapes';
