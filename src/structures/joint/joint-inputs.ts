import {
  type Arguments,
  type Conflict,
  choice,
  inputs,
  length,
  optional,
  type Quantity,
  ratio,
  type Values,
} from '../../units';
import { closurePlate } from '../closures/closure-plate';
import { reviewFactors } from '../factors-of-safety';
import type { Material } from '../materials';
import { exposure } from '../materials/part-temperature';
import { meop } from '../operating-pressure';
import { tube } from '../shell/tube';
import { countersinkDepth } from './countersink';
import { fastenerConflicts, headOf } from './fastener-type';
import { radialBolts } from './radial-bolts';

const { thread, count, rows, rowSpacing, edgeDistance, holeDiameter, engagement, ...others } =
  radialBolts.fields;
// A search compares screws whose heads lie on the wall.
const { fastener, headDiameter, headAngle, countersinkAngle, counterboreDepth, ...ofAnyBolt } = others;

const partFields = {
  pressure: meop,
  tube,
  closureMaterial: closurePlate.fields.material,
  closureTemperature: closurePlate.fields.temperature,
  ...ofAnyBolt,
  shearPlane: optional(ofAnyBolt.shearPlane, 'thread'),
  sealDiameter: optional(
    length('D_s', 'diameter of the seal, on which the pressure acts; the bore of the case where omitted', {
      example: '70 mm',
    }),
  ),
  closureThickness: optional(
    length('h', 'radial thickness of the closure at the bolts; solid to the axis where omitted', {
      example: '20 mm',
    }),
  ),
  closureEdgeDistance: optional(
    length(
      'e_c',
      'distance from the holes in the closure to its inner face, towards which the bolts push; at least two diameters where omitted',
      { example: '12 mm' },
    ),
  ),
  washer: optional(
    choice('washer under the bolt heads; a soft or missing washer lets the head turn and bends the bolt', [
      'hard',
      'soft',
    ]),
    'hard',
  ),
  shareFactor: optional(
    ratio(
      'κ',
      'load of the most heavily loaded bolt/equal share, instead of a position tolerance; 2 assumes half of the bolts idle',
      { min: 1, example: 1.2 },
    ),
  ),
  exposure,
  factors: reviewFactors,
};

/** Case and closure of a joint, whichever bolts it has. */
export type JointParts = Values<typeof partFields>;

const conflict = (
  fits: boolean,
  path: keyof typeof jointFields | 'tube.material',
  given: unknown,
  expected: string,
): Conflict | undefined => (fits ? undefined : { path, given, expected });

/** The bore of the tube [m]. */
export const boreOf = ({ tube }: JointParts): number => tube.outsideDiameter.si - 2 * tube.wall.si;
const closureRadius = (parts: JointParts): number => boreOf(parts) / 2 - parts.gap.si;

/** The radial thickness of the closure [m]. */
export const thicknessOf = (parts: JointParts): number => parts.closureThickness?.si ?? closureRadius(parts);

const ductile = (material: Material, path: 'tube.material' | 'closureMaterial'): Conflict | undefined =>
  material.class === 'metal'
    ? undefined
    : {
        path,
        given: material.name,
        expected: "a material of class 'metal'",
        remedy:
          'Plastic, laminate and graphite crack at the holes without warning, and no mode here covers them',
      };

const partChecks = [
  ({ preload, torque }: JointParts): Conflict | undefined =>
    preload !== undefined && torque !== undefined
      ? {
          code: 'contradiction',
          path: 'torque',
          given: torque,
          expected: 'either preload or torque of the bolts',
        }
      : undefined,
  ({ sealDiameter, tube: { outsideDiameter } }: JointParts) =>
    conflict(
      sealDiameter === undefined || sealDiameter.si <= outsideDiameter.si,
      'sealDiameter',
      sealDiameter,
      `at most the outside diameter of the case (${outsideDiameter})`,
    ),
  (parts: JointParts) =>
    conflict(
      closureRadius(parts) > 0,
      'gap',
      parts.gap,
      `less than the radius of the bore (${mm(boreOf(parts) / 2)})`,
    ),
  (parts: JointParts) =>
    conflict(
      thicknessOf(parts) <= closureRadius(parts),
      'closureThickness',
      parts.closureThickness,
      `at most the radius of the closure (${mm(closureRadius(parts))})`,
    ),
  ({ tube: { material } }: JointParts) => ductile(material, 'tube.material'),
  ({ closureMaterial }: JointParts) => ductile(closureMaterial, 'closureMaterial'),
];

/** The inputs of a search for bolts. */
export const jointParts = inputs<typeof partFields>(partFields, {
  meaning: 'case and closure of a joint',
  checks: partChecks,
});

const jointFields = {
  ...partFields,
  thread,
  fastener,
  headDiameter,
  headAngle,
  countersinkAngle,
  counterboreDepth,
  count,
  rows,
  rowSpacing,
  edgeDistance,
  holeDiameter: optional({
    ...holeDiameter,
    meaning: `${holeDiameter.meaning}; the diameter of the bolts where omitted`,
  }),
  engagement: optional({ ...engagement, meaning: `${engagement.meaning}; 1.5 diameters where omitted` }),
};

type Joint = Values<typeof jointFields>;
const majorOf = ({ thread: { majorDiameter } }: Joint): Quantity<'length'> => majorDiameter;

/** A pin has no thread in the shear plane and cannot be tightened. */
const pinConflict = ({ fastener: type, shearPlane, preload, torque }: Joint): Conflict | undefined =>
  type !== 'pin'
    ? undefined
    : (conflict(shearPlane === 'shank', 'shearPlane', shearPlane, "'shank' for pins") ??
      conflict((preload?.si ?? 0) === 0, 'preload', preload, 'omitted for pins') ??
      conflict(torque === undefined, 'torque', torque, 'omitted for pins'));

/** The heads do not overlap and do not pierce the wall. */
function headConflict(joint: Joint): Conflict | undefined {
  const head = headOf(joint);
  if (head === undefined) return undefined;
  const { outsideDiameter, wall } = joint.tube;
  const hole = (joint.holeDiameter ?? majorOf(joint)).si;
  const depth =
    head.kind === 'counterbore'
      ? head.depth
      : countersinkDepth.si({ headDiameter: head.diameter, holeDiameter: hole, headAngle: head.angle });
  const round = Math.PI * outsideDiameter.si;
  return (
    conflict(head.diameter > hole, 'headDiameter', joint.headDiameter, `more than the hole (${mm(hole)})`) ??
    conflict(
      joint.count * head.diameter < round,
      'headDiameter',
      joint.headDiameter,
      `less than ${mm(round / joint.count)}, so that the heads do not overlap`,
    ) ??
    conflict(
      depth < wall.si,
      head.kind === 'counterbore' ? 'counterboreDepth' : 'headDiameter',
      head.kind === 'counterbore' ? joint.counterboreDepth : joint.headDiameter,
      `such that the depth in the case (${mm(depth)}) is less than its wall (${wall})`,
    )
  );
}

/** A closure retained in a case by radial bolts. */
export const radialBoltJoint = inputs<typeof jointFields>(jointFields, {
  meaning: 'a closure retained in a case by radial bolts',
  checks: [
    ...partChecks,
    ...fastenerConflicts,
    pinConflict,
    headConflict,
    (joint) =>
      conflict(
        joint.holeDiameter === undefined || joint.holeDiameter.si >= majorOf(joint).si,
        'holeDiameter',
        joint.holeDiameter,
        `at least the diameter of ${joint.thread.name} (${majorOf(joint)})`,
      ),
    (joint) =>
      conflict(
        joint.edgeDistance.si - (joint.positionTolerance?.si ?? 0) / 2 >
          (joint.holeDiameter ?? majorOf(joint)).si / 2,
        joint.positionTolerance === undefined ? 'edgeDistance' : 'positionTolerance',
        joint.positionTolerance ?? joint.edgeDistance,
        'such that the holes do not reach the end of the case',
      ),
    (joint) =>
      conflict(
        (joint.engagement?.si ?? 0) <= thicknessOf(joint),
        'engagement',
        joint.engagement,
        `at most the thickness of the closure (${mm(thicknessOf(joint))})`,
      ),
    (joint) =>
      conflict(
        joint.closureEdgeDistance === undefined || joint.closureEdgeDistance.si > majorOf(joint).si / 2,
        'closureEdgeDistance',
        joint.closureEdgeDistance,
        `more than the radius of ${joint.thread.name} (${majorOf(joint).times(0.5)})`,
      ),
  ],
});

/** A closure retained in a case by radial bolts, as a review takes it. */
export type RadialBoltJoint = Arguments<typeof jointFields>;

/** The same, read. */
export type RadialBoltJointValues = Joint;

const mm = (value: number): string => `${Number((value * 1000).toPrecision(5))} mm`;
