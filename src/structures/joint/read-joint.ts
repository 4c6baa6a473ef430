import { MeopError, type Quantity, type Unit, unitFor } from '../../units';
import { yieldAndUltimate } from '../factors-of-safety';
import type { Material } from '../materials';
import type { ThreadGeometry } from '../threads';
import { shankArea } from './bolt-shear';
import { edgeDistanceRatio, worstEdgeDistance } from './edge-distance';
import { type HeadSi, headOf } from './fastener-type';
import { boreOf, type JointParts, type RadialBoltJointValues, thicknessOf } from './joint-inputs';
import type { JointSi } from './joint-si';
import { boltStrengths, caseBearingStrengths, type JointStrengths, partStrengths } from './joint-strengths';
import { tightenedJoint } from './tightened-joint';

/** Case and closure with what follows from them, before any bolts; lengths in SI. */
export interface PartsSi {
  readonly given: JointParts;
  readonly pressureUnit: Unit;
  readonly lengthUnit: Unit;
  readonly bore: number;
  readonly sealDiameter: number;
  readonly closureThickness: number;
  readonly factors: { readonly yield: number; readonly ultimate: number };
  /** The hotter of case and closure; `undefined` where neither is given. */
  readonly boltTemperature: Quantity<'temperature'> | undefined;
}

/** The bolts of a joint in SI. */
export interface BoltsSi {
  readonly thread: ThreadGeometry;
  readonly count: number;
  readonly rows: number;
  /** 0 for one row. */
  readonly rowSpacing: number;
  readonly edgeDistance: number;
  readonly holeDiameter: number;
  readonly engagement: number;
  /** What the heads take from the wall. */
  readonly head?: HeadSi | undefined;
  readonly arePins?: boolean;
}

/** What is independent of the bolts. */
export function partsOf(given: JointParts): PartsSi {
  const bore = boreOf(given);
  return {
    given,
    pressureUnit: unitFor('gauge pressure', given.pressure.unit),
    lengthUnit: unitFor('length', given.tube.outsideDiameter.unit),
    bore,
    sealDiameter: given.sealDiameter?.si ?? bore,
    closureThickness: thicknessOf(given),
    factors: yieldAndUltimate(given.factors),
    boltTemperature: hotter(given.tube.wallTemperature, given.closureTemperature),
  };
}

const hotter = (
  a: Quantity<'temperature'> | undefined,
  b: Quantity<'temperature'> | undefined,
): Quantity<'temperature'> | undefined =>
  a === undefined || b === undefined ? (a ?? b) : a.si >= b.si ? a : b;

/** The bolts with what is assumed where it is omitted. */
export function boltsOf(joint: RadialBoltJointValues, { closureThickness }: PartsSi): BoltsSi {
  const { thread, count, rows, rowSpacing, edgeDistance } = joint;
  const major = thread.majorDiameter.si;
  return {
    thread,
    count,
    rows,
    rowSpacing: (rows > 1 ? rowSpacing?.si : undefined) ?? 0,
    edgeDistance: edgeDistance.si,
    holeDiameter: joint.holeDiameter?.si ?? major,
    head: headOf(joint),
    arePins: joint.fastener === 'pin',
    engagement: joint.engagement?.si ?? Math.min(1.5 * major, closureThickness),
  };
}

/** The depth in the closure at which its tapped holes, which converge towards the axis, meet. */
export function meetingDepth({ bore, given }: PartsSi, count: number, diameter: number): number {
  const radius = bore / 2 - given.gap.si;
  return count === 1 ? radius : radius - diameter / (2 * Math.sin(Math.PI / count));
}

/** The edge ratios for the bearing strengths, in bolt diameters: case, closure. */
export function edgeRatios({ given }: PartsSi, bolts: BoltsSi): readonly [number, number] {
  const diameter = bolts.thread.majorDiameter.si;
  const ratio = (edgeDistance: number): number => rounded(edgeDistanceRatio.si({ edgeDistance, diameter }));
  const { edgeDistance } = bolts;
  const positionTolerance = given.positionTolerance?.si ?? 0;
  return [
    ratio(worstEdgeDistance.si({ edgeDistance, positionTolerance })),
    given.closureEdgeDistance === undefined ? 2 : ratio(given.closureEdgeDistance.si),
  ];
}

// 1.5 diameters must not come out as 1.4999…, where handbooks state no strength.
const rounded = (ratio: number): number => Math.round(ratio * 1e9) / 1e9;

/** The strengths of the bolts of a thread. */
export const boltStrengthsOf = (
  { given, boltTemperature }: PartsSi,
  thread: ThreadGeometry,
): ReturnType<typeof boltStrengths> =>
  boltStrengths(given.boltClass, thread.majorDiameter, given.shearPlane, boltTemperature);

/** The strengths of case and closure at these edge ratios. */
export function partStrengthsOf(
  parts: PartsSi,
  [edgeRatio, closureRatio]: readonly [number, number],
): ReturnType<typeof partStrengths> {
  const { tube, closureMaterial, closureTemperature, exposure } = parts.given;
  return partStrengths(
    { material: tube.material, temperature: tube.wallTemperature, exposure, edgeRatio },
    { material: closureMaterial, temperature: closureTemperature, exposure, edgeRatio: closureRatio },
  );
}

/** The strengths of the case in bearing at an edge ratio. */
export function caseBearingOf(
  { given }: PartsSi,
  edgeRatio: number,
): ReturnType<typeof caseBearingStrengths> {
  const { material, wallTemperature: temperature } = given.tube;
  return caseBearingStrengths({ material, temperature, exposure: given.exposure, edgeRatio });
}

/** Every strength of a joint. */
export function strengthsOf(parts: PartsSi, bolts: BoltsSi): JointStrengths {
  const { boltShear, boltShearYield, boltUltimate, boltYield } = boltStrengthsOf(parts, bolts.thread);
  const ofParts = partStrengthsOf(parts, edgeRatios(parts, bolts));
  return { ...ofParts, boltShear, boltShearYield, boltUltimate, boltYield };
}

const steelModulus = 200e9; // of bolts, of any class

/** The joint in SI. */
export function jointSi(parts: PartsSi, bolts: BoltsSi, strengths: JointStrengths): JointSi {
  const { thread } = bolts;
  const { tube, shearPlane, washer, shareFactor, closureMaterial, ...given } = parts.given;
  const [gap, wall] = [given.gap.si, tube.wall.si];
  const positionTolerance = given.positionTolerance?.si ?? 0;
  const shank = (): number => shankArea.si({ diameter: thread.majorDiameter.si });
  return {
    pressure: given.pressure.si,
    sealDiameter: parts.sealDiameter,
    outsideDiameter: tube.outsideDiameter.si,
    wall,
    count: bolts.count,
    rows: bolts.rows,
    rowSpacing: bolts.rowSpacing,
    edgeDistance: bolts.edgeDistance,
    holeDiameter: bolts.holeDiameter,
    head: bolts.head,
    arePins: bolts.arePins ?? false,
    boltDiameter: thread.majorDiameter.si,
    shearArea:
      shearPlane === 'shank'
        ? shank()
        : shearPlane === 'root'
          ? thread.rootArea.si
          : thread.tensileStressArea.si,
    rootDiameter: thread.rootDiameter.si,
    pitch: thread.pitch.si,
    externalMajorMin: thread.limits.externalMajorMin.si,
    internalPitchMax: thread.limits.internalPitchMax.si,
    engagement: bolts.engagement,
    closureEdgeDistance: given.closureEdgeDistance?.si,
    gap,
    // A clamped head keeps the bolt upright at both ends of the gap; under a soft washer it is a cantilever that the
    // wall loads at its middle. Statics (engineering practice, no published source).
    bendingArm: washer === 'soft' ? gap + wall / 2 : gap / 2,
    preload: tightenedJoint(parts.given, thread)?.max.value ?? 0,
    shareFactor,
    positionTolerance,
    moduli:
      positionTolerance === 0
        ? [steelModulus, steelModulus, steelModulus]
        : [
            steelModulus,
            modulusOf(tube.material, 'tube.material'),
            modulusOf(closureMaterial, 'closureMaterial'),
          ],
    bearingYieldStress: strengths.caseBearingYield.si,
    sealToHoles: given.sealToHoles?.si,
    poissonRatio: tube.material.poissonRatio?.value ?? 0.33,
  };
}

function modulusOf(material: Material, field: string): number {
  if (material.elasticModulus !== undefined) return material.elasticModulus.value.si;
  throw new MeopError({
    code: 'missing-field',
    procedure: 'reviewJoint',
    path: field,
    given: material.name,
    problem: `${material.name} has no elasticModulus, which load sharing requires`,
    remedy: 'Add it to the material',
  });
}
