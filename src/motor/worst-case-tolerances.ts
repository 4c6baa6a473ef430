import type { Motor } from './document';
import { type PlacedValue, placedValues, type ValuePath, withValues } from './varied-motor';

/** The end of a tolerance: 1 the upper, −1 the lower. */
type End = 1 | -1;

/** At which end of its tolerance each value is judged: the one that leaves less. */
const judged: Readonly<Record<string, End>> = {
  'case.outsideDiameter': 1,
  'case.wall': -1,
  'case.wallTemperature': 1,
  'closures.thickness': -1,
  'closures.opening': 1,
  'closures.temperature': 1,
  'closures.joint.rowSpacing': -1,
  'closures.joint.holeDiameter': 1,
  'closures.joint.edgeDistance': -1,
  'closures.joint.engagement': -1,
  'closures.joint.sealToHoles': -1,
  'closures.joint.gap': 1,
  'closures.joint.positionTolerance': 1,
  'closures.retainingRing.edgeMargin': -1,
  'closures.retainingRing.thickness': -1,
  'closures.retainingRing.shearStrength': -1,
  'closures.thread.engagement': -1,
  'closures.thread.reliefDiameter': 1,
  'closures.seals.hardness': -1,
  'closures.seals.faceGap': 1,
  'closures.seals.backupThickness': 1,
  'nozzle.throatDiameter': 1, // of the insert: MEOP has its own
  'nozzle.insert.outsideDiameter': -1,
  'nozzle.insert.tensileStrength': -1,
  'temperatureRange.coldest': -1,
  'temperatureRange.hottest': 1,
  'stand.members.angle': 1,
  'stand.members.length': 1,
  'stand.members.elasticModulus': -1,
  'stand.members.secondMoment': -1,
  'stand.members.endFactor': 1,
  'stand.anchors.height': 1,
  'stand.anchors.anchorSpacing': -1,
  'stand.anchors.weight': -1,
  'stand.anchors.allowable': -1,
  'stand.restraint.ropeLength': -1, // a short rope is a stiff one
  'stand.restraint.slack': 1,
  'stand.restraint.legAngle': 1,
  'stand.restraint.designFactor': 1,
  'stand.restraint.shackle': -1,
  'stand.restraint.anchor.factor': 1,
  'instruments.range': -1,
  'instruments.proofPressure': -1,
  'instruments.safeOverload': -1,
  'instruments.sampleRate': -1,
  'instruments.riseTime': 1,
  'instruments.expected': 1,
};

/** The same for what only the full simulation knows of: the end with more pressure or thrust. */
const fired: Readonly<Record<string, End>> = {
  'nozzle.efficiency': 1,
  'nozzle.divergenceHalfAngle': -1,
  'nozzle.throatErosion': -1,
  'ignition.igniterMass': 1,
  'ignition.igniterDuration': -1,
  'ignition.initialPressure': 1,
  'ignition.flameSpreadTime': -1,
  'ignition.nozzleClosureBurstPressure': 1,
};

/** Judged over the whole of their tolerance. */
const banded = [
  'closures.retainingRing.grooveDepth', // deep leaves less wall, shallow bears less
  ...[
    'grooveDiameter',
    'grooveWidth',
    'closureDiameter',
    'grooveOutsideDiameter',
    'grooveInsideDiameter',
    'grooveDepth',
  ].map((field) => `closures.seals.${field}`),
];

const everyPart: readonly (keyof Motor)[] = [
  'case',
  'liner',
  'closures',
  'nozzle',
  'propellant',
  'grain',
  'ignition',
  'ambient',
  'temperatureRange',
  'stand',
  'instruments',
  'factors',
  'limits',
  'meop',
];

/** Where a value stands, whichever closure, seal or instrument it is of. */
const place = (path: ValuePath): string =>
  path.filter((key) => typeof key === 'string' && key !== 'head' && key !== 'aft').join('.');

const toleranced = (motor: Motor): readonly PlacedValue[] =>
  placedValues(motor, everyPart).filter(({ plusMinus }) => plusMinus > 0);

const changesBy = (motor: Motor, ends: Readonly<Record<string, End>>) =>
  toleranced(motor).flatMap((one) => {
    const end = ends[place(one.path)];
    return end === undefined ? [] : [{ ...one, si: one.value.si + end * one.plusMinus }];
  });

/** The motor with every size, strength and range that is judged at the end of its tolerance that leaves less. */
export const atWorstCaseTolerances = (motor: Motor): Motor => withValues(motor, changesBy(motor, judged));

/** Values that only the full simulation knows of, at the end of their tolerance with more pressure or thrust. */
export const worstCaseFiringValues = (motor: Motor) => changesBy(motor, fired);

/** Tolerances that nothing counts with, each said; `counted` are the names of those in the scatter of the pressure. */
export function unusedTolerances(motor: Motor, counted: ReadonlySet<string>): readonly string[] {
  return toleranced(motor).flatMap(({ path, name }) => {
    const at = place(path);
    const isKnown = counted.has(name) || at in judged || at in fired || banded.includes(at);
    return isKnown ? [] : [`the tolerance of ${name} is not counted: its middle is taken`];
  });
}
