import type { Motor } from './document';
import { type PlacedValue, placedValues, type ValuePath, withValues } from './varied-motor';

/** Limit of a tolerance: 1 upper, −1 lower. */
type End = 1 | -1;

/** Worst-case limit of the tolerance of each value: the one that gives the lower margin. */
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
  'nozzle.throatDiameter': 1, // of the insert; MEOP handles the throat itself
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
  'stand.restraint.ropeLength': -1, // a short rope is stiffer
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

/** Worst-case limits of values that affect only the full simulation: those with higher pressure or thrust. */
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

/** Values evaluated over the full tolerance range. */
const banded = [
  'closures.retainingRing.grooveDepth', // a deep groove leaves less wall, a shallow one has less bearing area
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

/** Path of a value, independent of closure, seal or instrument. */
const place = (path: ValuePath): string =>
  path.filter((key) => typeof key === 'string' && key !== 'head' && key !== 'aft').join('.');

const toleranced = (motor: Motor): readonly PlacedValue[] =>
  placedValues(motor, everyPart).filter(({ plusMinus }) => plusMinus > 0);

const changesBy = (motor: Motor, ends: Readonly<Record<string, End>>) =>
  toleranced(motor).flatMap((one) => {
    const end = ends[place(one.path)];
    return end === undefined ? [] : [{ ...one, si: one.value.si + end * one.plusMinus }];
  });

/** The motor with every dimension, strength and range at its worst-case limit. */
export const atWorstCaseTolerances = (motor: Motor): Motor => withValues(motor, changesBy(motor, judged));

/** The motor with values that affect only the full simulation at their worst-case limits. */
export const worstCaseFiringValues = (motor: Motor) => changesBy(motor, fired);

/** Tolerances that no analysis uses, one line each; `counted` contains the names of those in the Monte Carlo. */
export function unusedTolerances(motor: Motor, counted: ReadonlySet<string>): readonly string[] {
  return toleranced(motor).flatMap(({ path, name }) => {
    const at = place(path);
    const isKnown = counted.has(name) || at in judged || at in fired || banded.includes(at);
    return isKnown ? [] : [`The tolerance of ${name} is neglected; the nominal value is used.`];
  });
}
