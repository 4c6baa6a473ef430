import type { FieldsOf } from '../../units/known-fields';
import type { JointOption, JointSearch } from './joint-search';
import type { JointParts, RadialBoltJoint } from './radial-bolt-joint';

const partFields: FieldsOf<JointParts> = {
  pressure: 'required',
  caseOutsideDiameter: 'required',
  caseWall: 'required',
  caseMaterial: 'required',
  closureMaterial: 'required',
  sealDiameter: 'optional',
  closureDiameter: 'optional',
  closureThickness: 'optional',
  closureEdgeDistance: 'optional',
  boltClass: 'required',
  shearPlane: 'optional',
  washer: 'optional',
  positionTolerance: 'optional',
  shareFactor: 'optional',
  preload: 'optional',
  sealToHoles: 'optional',
  caseTemperature: 'optional',
  closureTemperature: 'optional',
  exposure: 'optional',
  factors: 'optional',
};

/** The fields of a search. */
export const searchFields: FieldsOf<JointSearch> = {
  ...partFields,
  threads: 'optional',
  counts: 'optional',
  edgeRatios: 'optional',
  engagementRatio: 'optional',
  ligamentRatio: 'optional',
};

/** The fields of a joint, and those of an option that a search found: it may be passed on whole. */
export const jointFields: FieldsOf<RadialBoltJoint & Partial<Omit<JointOption, keyof RadialBoltJoint>>> = {
  ...partFields,
  thread: 'required',
  count: 'required',
  rows: 'optional',
  rowSpacing: 'optional',
  edgeDistance: 'required',
  holeDiameter: 'optional',
  engagement: 'optional',
  mass: 'optional',
  marginOfSafety: 'optional',
  governing: 'optional',
  bearingFirst: 'optional',
};
