import { type Step, step } from '../failure-mode/calculation';
import { shankArea } from '../joint/bolt-shear';
import { boltAxialStiffness } from './bolt-axial-stiffness';
import { tappedHoleGrip } from './grip';
import { jointConstant } from './joint-constant';
import { cylinderStiffness, frustumStiffness, springsInSeries } from './member-stiffness';
import { roomRound, type TensionBoltJointValues } from './tension-bolt-joint';

/** Stiffness of bolt and clamped parts. */
export interface JointStiffness {
  readonly grip: Step;
  readonly bolt: Step;
  /** Undefined where a material has no elastic modulus. */
  readonly members: Step | undefined;
  /** Undefined where the stiffness of the members is not known. */
  readonly constant: Step | undefined;
  /** Whether the cones of compression are wider than the tapped part. */
  readonly isNarrow: boolean;
  /** Limits of the joint constant. */
  readonly low: Step | number;
  readonly high: Step | number;
}

/** Limits of the joint constant of a narrow flange or tube end (engineering practice, no published source). */
const band = [0.1, 0.5] as const;
const spread = Math.tan(Math.PI / 6);

/** Stiffness of bolt and members, and the joint constant with its limits. */
export function jointStiffness(joint: TensionBoltJointValues): JointStiffness {
  const { bolts } = joint;
  const { thread, clampedThickness, engagement } = bolts;
  const diameter = thread.majorDiameter.si;
  const grip = step(tappedHoleGrip, {
    clampedThickness: clampedThickness.si,
    tappedThickness: engagement.si,
    diameter,
  });
  const shankLength = Math.min(bolts.shankLength.si, clampedThickness.si);
  const bolt = step(boltAxialStiffness, {
    shankArea: step(shankArea, { diameter }),
    threadArea: thread.tensileStressArea.si,
    shankLength,
    threadLength: grip.value - shankLength,
    elasticModulus: joint.boltModulus.si,
  });
  const face = faceOf(joint);
  const room = roomRound(joint);
  const isNarrow = face + grip.value * spread > room;
  const members = membersOf(joint, grip.value, face, isNarrow ? room : undefined);
  if (joint.jointConstant !== undefined)
    return {
      grip,
      bolt,
      members,
      constant: undefined,
      isNarrow: false,
      low: joint.jointConstant,
      high: joint.jointConstant,
    };
  const constant = members && step(jointConstant, { boltStiffness: bolt, memberStiffness: members });
  const isSure = constant !== undefined && !isNarrow;
  return {
    grip,
    bolt,
    members,
    constant,
    isNarrow,
    low: isSure || (constant && constant.value < band[0]) ? constant : band[0],
    high: isSure || (constant && constant.value > band[1]) ? constant : band[1],
  };
}

/** Diameter of the face under the heads [m]. */
export const faceOf = ({ bolts: { headDiameter, thread } }: TensionBoltJointValues): number =>
  headDiameter?.si ?? 1.5 * thread.majorDiameter.si;

/** A layer of one material within one of the two cones, from the smaller face on. */
interface Layer {
  readonly elasticModulus: number;
  readonly thickness: number;
  readonly faceDiameter: number;
}

/** Two cones, from the head and from the end of the grip in the tapped part, that meet in the middle. */
function membersOf(
  { bolts, clampedMaterial, tappedMaterial }: TensionBoltJointValues,
  grip: number,
  face: number,
  room: number | undefined,
): Step | undefined {
  const diameter = bolts.thread.majorDiameter.si;
  const clamped = clampedMaterial.elasticModulus?.value.si;
  const tapped = tappedMaterial.elasticModulus?.value.si;
  if (clamped === undefined || tapped === undefined) return undefined;
  const [half, h] = [grip / 2, bolts.clampedThickness.si];
  const wide = (depth: number): number => face + 2 * depth * spread;
  const layers: readonly Layer[] = [
    { elasticModulus: clamped, thickness: Math.min(h, half), faceDiameter: face },
    h > half
      ? { elasticModulus: clamped, thickness: h - half, faceDiameter: wide(grip - h) }
      : { elasticModulus: tapped, thickness: half - h, faceDiameter: wide(h) },
    { elasticModulus: tapped, thickness: Math.min(grip - h, half), faceDiameter: face },
  ].filter(({ thickness }) => thickness > 0);
  const cones = layers.map((layer) => step(frustumStiffness, { ...layer, diameter }));
  const inSeries = series(cones);
  if (room === undefined) return inSeries;
  const narrow = series(
    [
      [clamped, h],
      [tapped, grip - h],
    ].map(([elasticModulus, thickness]) =>
      step(cylinderStiffness, { elasticModulus, thickness, outsideDiameter: room, diameter }),
    ),
  );
  return narrow.value < inSeries.value ? narrow : inSeries;
}

const series = (springs: readonly Step[]): Step =>
  springs.reduce((first, second) => step(springsInSeries, { first, second }));
