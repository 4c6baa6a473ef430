import { MeopError, type NamedKind, type QuantityInput, readInput, type Unit } from '../../units';
import { readNotNegative, readPositive, refusal } from '../../units/refusal';
import type { Material } from '../materials';
import { materialOf } from '../materials/library';
import { type ThreadGeometry, threadGeometry } from '../threads';
import { shankArea } from './bolt-shear';
import { readFactors } from './joint-factors';
import type { JointSi } from './joint-si';
import { boltStrengths, type JointStrengths, partStrengths } from './joint-strengths';
import type { JointParts, RadialBoltJoint } from './radial-bolt-joint';

/** Case and closure read, checked and in SI, before any bolts. */
export interface PartsSi {
  readonly given: JointParts;
  readonly pressure: number;
  readonly pressureUnit: Unit;
  readonly lengthUnit: Unit;
  readonly outsideDiameter: number;
  readonly wall: number;
  readonly bore: number;
  readonly sealDiameter: number;
  readonly closureThickness: number;
  /** Radial. */
  readonly gap: number;
  readonly closureEdgeDistance: number | undefined;
  readonly positionTolerance: number;
  readonly preload: number;
  readonly sealToHoles: number | undefined;
  readonly factors: ReturnType<typeof readFactors>;
  /** The hotter of case and closure; undefined where neither is given. */
  readonly boltTemperature: QuantityInput<'temperature'> | undefined;
  readonly tube: Material;
  readonly closure: Material;
}

/** The bolts of a joint. */
export interface BoltsSi {
  readonly thread: ThreadGeometry;
  readonly count: number;
  readonly rows: number;
  /** 0 for one row. */
  readonly rowSpacing: number;
  readonly edgeDistance: number;
  readonly holeDiameter: number;
  readonly engagement: number;
}

const name = 'reviewJoint';

const si = (kind: NamedKind, field: string, value: unknown): number => readInput(kind, field, value, name).si;

const above = (kind: NamedKind, field: string, value: unknown): number =>
  readPositive(kind, field, value, name).si;

const fromZero = (kind: NamedKind, field: string, value: unknown): number =>
  readNotNegative(kind, field, value, name).si;

const optional = (kind: NamedKind, field: string, value: unknown): number | undefined =>
  value === undefined ? undefined : above(kind, field, value);

const oneOf = (field: 'washer' | 'shearPlane', value: string | undefined, known: readonly string[]): void => {
  if (value === undefined || known.includes(value)) return;
  throw refusal(name, field, `'${value}'`, `${known.map((word) => `'${word}'`).join(' or ')}`);
};

/** Reads what is independent of the bolts. */
export function readParts(given: JointParts): PartsSi {
  oneOf('washer', given.washer, ['hard', 'soft']);
  oneOf('shearPlane', given.shearPlane, ['thread', 'root', 'shank']);
  const pressure = above('gauge pressure', 'pressure', given.pressure);
  const outsideDiameter = above('length', 'caseOutsideDiameter', given.caseOutsideDiameter);
  const wall = above('length', 'caseWall', given.caseWall);
  const bore = outsideDiameter - 2 * wall;
  if (!(bore > 0)) throw refusal(name, 'caseWall', given.caseWall, 'less than half of the outside diameter');
  const sealDiameter = optional('length', 'sealDiameter', given.sealDiameter) ?? bore;
  if (sealDiameter > outsideDiameter)
    throw refusal(name, 'sealDiameter', given.sealDiameter, 'no more than the outside diameter of the case');
  const closureDiameter = optional('length', 'closureDiameter', given.closureDiameter) ?? bore;
  if (closureDiameter > bore)
    throw refusal(
      name,
      'closureDiameter',
      given.closureDiameter,
      `no more than the bore of the case (${mm(bore)})`,
    );
  const closureThickness =
    optional('length', 'closureThickness', given.closureThickness) ?? closureDiameter / 2;
  if (closureThickness > closureDiameter / 2)
    throw refusal(name, 'closureThickness', given.closureThickness, 'no more than the radius of the closure');
  const positionTolerance =
    given.positionTolerance === undefined
      ? 0
      : fromZero('length', 'positionTolerance', given.positionTolerance);
  const { shareFactor } = given;
  if (shareFactor !== undefined && !(shareFactor >= 1 && Number.isFinite(shareFactor)))
    throw refusal(name, 'shareFactor', shareFactor, 'a number from 1');
  const preload = given.preload === undefined ? 0 : fromZero('force', 'preload', given.preload);
  const sealToHoles =
    given.sealToHoles === undefined ? undefined : fromZero('length', 'sealToHoles', given.sealToHoles);
  return {
    given,
    pressure,
    pressureUnit: readInput('gauge pressure', 'pressure', given.pressure, name).unit,
    lengthUnit: readInput('length', 'caseOutsideDiameter', given.caseOutsideDiameter, name).unit,
    outsideDiameter,
    wall,
    bore,
    sealDiameter,
    closureThickness,
    gap: (bore - closureDiameter) / 2,
    closureEdgeDistance: optional('length', 'closureEdgeDistance', given.closureEdgeDistance),
    positionTolerance,
    preload,
    sealToHoles,
    factors: readFactors(name, given.factors),
    boltTemperature: hotter(given),
    tube: materialOf(given.caseMaterial),
    closure: materialOf(given.closureMaterial),
  };
}

function hotter({
  caseTemperature,
  closureTemperature,
}: JointParts): QuantityInput<'temperature'> | undefined {
  // Read here in any case, so that an error has the name of the field.
  if (caseTemperature !== undefined) si('temperature', 'caseTemperature', caseTemperature);
  if (closureTemperature !== undefined) si('temperature', 'closureTemperature', closureTemperature);
  if (caseTemperature === undefined || closureTemperature === undefined)
    return caseTemperature ?? closureTemperature;
  const [tube, closure] = [
    si('temperature', 'caseTemperature', caseTemperature),
    si('temperature', 'closureTemperature', closureTemperature),
  ];
  return tube >= closure ? caseTemperature : closureTemperature;
}

/** Reads the bolts; that they fit on the circle is for the hole pattern to say. */
export function readBolts(joint: RadialBoltJoint, parts: PartsSi): BoltsSi {
  const thread = threadGeometry(joint.thread);
  const major = thread.majorDiameter.si;
  const holeDiameter = optional('length', 'holeDiameter', joint.holeDiameter) ?? major;
  if (holeDiameter < major)
    throw refusal(
      name,
      'holeDiameter',
      joint.holeDiameter,
      `at least the diameter of ${thread.name} (${mm(major)})`,
    );
  const edgeDistance = above('length', 'edgeDistance', joint.edgeDistance);
  const engagement =
    optional('length', 'engagement', joint.engagement) ?? Math.min(1.5 * major, parts.closureThickness);
  if (engagement > parts.closureThickness)
    throw refusal(
      name,
      'engagement',
      joint.engagement,
      `no more than the metal of the closure (${mm(parts.closureThickness)})`,
    );
  const rows = joint.rows ?? 1;
  if (parts.closureEdgeDistance !== undefined && parts.closureEdgeDistance <= major / 2)
    throw refusal(
      name,
      'closureEdgeDistance',
      joint.closureEdgeDistance,
      `more than the radius of ${thread.name} (${mm(major / 2)})`,
    );
  return {
    thread,
    count: joint.count,
    rows,
    rowSpacing: (rows > 1 ? optional('length', 'rowSpacing', joint.rowSpacing) : undefined) ?? 0,
    edgeDistance,
    holeDiameter,
    engagement,
  };
}

/** The tapped holes of a closure come together towards its axis: the depth at which they meet. */
export function meetingDepth({ bore, gap }: PartsSi, count: number, diameter: number): number {
  const radius = bore / 2 - gap;
  return count === 1 ? radius : radius - diameter / (2 * Math.sin(Math.PI / count));
}

/** The edge ratios that the bearing strengths depend on: case, closure. */
export const edgeRatios = (parts: PartsSi, bolts: BoltsSi): readonly [number, number] => [
  rounded(bolts.edgeDistance / bolts.holeDiameter),
  parts.closureEdgeDistance === undefined
    ? 2
    : rounded(parts.closureEdgeDistance / bolts.thread.majorDiameter.si),
];

// 1.5 diameters must not come out as 1.4999…, where handbooks give no strength at all.
const rounded = (ratio: number): number => Math.round(ratio * 1e9) / 1e9;

/** The strengths of the bolts of a thread. */
export const boltStrengthsOf = (
  { given, boltTemperature }: PartsSi,
  thread: ThreadGeometry,
): ReturnType<typeof boltStrengths> =>
  boltStrengths(given.boltClass, thread.majorDiameter, given.shearPlane ?? 'thread', boltTemperature);

/** The strengths of case and closure at these edge ratios. */
export function partStrengthsOf(
  parts: PartsSi,
  [edgeRatio, closureRatio]: readonly [number, number],
): ReturnType<typeof partStrengths> {
  const { caseTemperature, closureTemperature, exposure } = parts.given;
  return partStrengths(
    { material: parts.tube, temperature: caseTemperature, exposure, edgeRatio },
    { material: parts.closure, temperature: closureTemperature, exposure, edgeRatio: closureRatio },
  );
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
  const { shearPlane = 'thread', washer = 'hard', shareFactor } = parts.given;
  const shank = (): number => shankArea.si({ diameter: thread.majorDiameter.si });
  return {
    pressure: parts.pressure,
    sealDiameter: parts.sealDiameter,
    outsideDiameter: parts.outsideDiameter,
    wall: parts.wall,
    count: bolts.count,
    rows: bolts.rows,
    rowSpacing: bolts.rowSpacing,
    edgeDistance: bolts.edgeDistance,
    holeDiameter: bolts.holeDiameter,
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
    closureEdgeDistance: parts.closureEdgeDistance,
    // A clamped head holds the bolt upright at both ends of the gap; under a soft washer it is a cantilever that the
    // wall loads at its middle. Statics (engineering practice, no published source).
    bendingArm: washer === 'soft' ? parts.gap + parts.wall / 2 : parts.gap / 2,
    preload: parts.preload,
    shareFactor,
    positionTolerance: parts.positionTolerance,
    moduli:
      parts.positionTolerance === 0
        ? [steelModulus, steelModulus, steelModulus]
        : [steelModulus, modulusOf(parts.tube, 'caseMaterial'), modulusOf(parts.closure, 'closureMaterial')],
    bearingYieldStress: strengths.caseBearingYield.si,
    sealToHoles: parts.sealToHoles,
    poissonRatio: parts.tube.poissonRatio?.value ?? 0.33,
  };
}

function modulusOf(material: Material, field: string): number {
  if (material.elasticModulus !== undefined) return material.elasticModulus.value.si;
  throw new MeopError(
    'missing-field',
    `${name}: ${field}: ${material.name} has no elasticModulus, which load sharing needs; add it to the material`,
    field,
    { value: material.name },
  );
}

const mm = (value: number): string => `${Number((value * 1000).toPrecision(5))} mm`;
