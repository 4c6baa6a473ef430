import type { JointOption, JointSearch } from './design-joint';
import type { JointParts, RadialBoltJoint } from './radial-bolt-joint';

type Fields<T> = Readonly<Record<keyof T, true>>;

const partFields: Fields<JointParts> = {
  pressure: true,
  caseOutsideDiameter: true,
  caseWall: true,
  caseMaterial: true,
  closureMaterial: true,
  sealDiameter: true,
  closureDiameter: true,
  closureThickness: true,
  closureEdgeDistance: true,
  boltClass: true,
  shearPlane: true,
  washer: true,
  positionTolerance: true,
  shareFactor: true,
  preload: true,
  sealToHoles: true,
  caseTemperature: true,
  closureTemperature: true,
  exposure: true,
  factors: true,
};

/** The fields of a search. */
export const searchFields: Fields<JointSearch> = {
  ...partFields,
  threads: true,
  counts: true,
  edgeRatios: true,
  engagementRatio: true,
  ligamentRatio: true,
};

/** The fields of a joint, and those of an option that a search found: it may be passed on whole. */
export const jointFields: Fields<RadialBoltJoint & JointOption> = {
  ...partFields,
  thread: true,
  count: true,
  rows: true,
  rowSpacing: true,
  edgeDistance: true,
  holeDiameter: true,
  engagement: true,
  mass: true,
  marginOfSafety: true,
  governing: true,
  bearingFirst: true,
};
