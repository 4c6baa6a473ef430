import { fromSiValue, MeopError, procedure, type Quantity, unitFor } from '../../units';
import { numberOf, step } from '../failure-mode/calculation';
import { failureMargin } from '../failure-mode/failure-margin';
import type { PartId } from '../failure-mode/part-name';
import { type HolePattern, holePattern } from '../holes';
import { fastenerChecks } from './fastener-checks';
import { jointCautions } from './joint-cautions';
import { type RadialBoltJoint, type RadialBoltJointValues, radialBoltJoint } from './joint-inputs';
import { jointMode, rulesFor } from './joint-modes';
import { peakOf } from './joint-peak';
import { type JointMode, type JointReview, jointReview } from './joint-review';
import { jointStresses, jointStressesSi } from './joint-stresses';
import { offsetWallStress } from './offset-bending';
import { type BoltsSi, boltsOf, jointSi, meetingDepth, partsOf, strengthsOf } from './read-joint';
import { tightenedCautions, tightenedJoint, tightenedMode } from './tightened-joint';

const name = 'reviewJoint';

/**
 * Failure modes of a closure retained by radial bolts, each with its margin of safety: shear and bending of the bolts,
 * bearing of case and closure, tear-out, net section, threads of the closure, hoop stress at the hole row (Lamé).
 *
 * @throws MeopError `out-of-domain` where parts do not fit, `no-allowable` where a material has no minimum strength
 * @example reviewJoint({ pressure: '1000 psi', tube: { outsideDiameter: '3.5 in', wall: '0.25 in', material: '6061-T6 drawn tube' }, closureMaterial: '6061-T6 bar', thread: '1/4-20', boltClass: 'grade 8', count: 12, edgeDistance: '0.5 in' }).endForce.in('lbf') // => 7068.583471
 */
export const reviewJoint = /* @__PURE__ */ procedure({
  name,
  title: 'Review of a joint of case and closure by radial bolts',
  source: 'the formula of each mode, with its source',
  inputs: radialBoltJoint.fields,
  checks: radialBoltJoint.checks,
  gives: 'the margin of safety of every failure mode of the joint',
  example: {
    pressure: '1000 psi',
    tube: { outsideDiameter: '3.5 in', wall: '0.25 in', material: '6061-T6 drawn tube' },
    closureMaterial: '6061-T6 bar',
    thread: '1/4-20',
    boltClass: 'grade 8',
    count: 12,
    edgeDistance: '0.5 in',
  },
  run: (joint): JointReview => reviewOf(joint, 'joint'),
  si: jointStressesSi,
});

/** {@link reviewJoint} under the name of a part of a motor. */
export const reviewJointAs = (joint: RadialBoltJoint, part: PartId): JointReview =>
  reviewOf(radialBoltJoint.read(joint, { procedure: name, path: '' }), part);

const refused = (path: string, given: unknown, expected: string, remedy: string): MeopError =>
  new MeopError({ code: 'out-of-domain', procedure: name, path, given, expected, remedy });

function reviewOf(joint: RadialBoltJointValues, part: PartId): JointReview {
  const parts = partsOf(joint);
  const bolts = boltsOf(joint, parts);
  const pattern = patternOf(joint, bolts);
  const length = (si: number): Quantity<'length'> => fromSiValue(si, 'length', parts.lengthUnit);
  const deepest = meetingDepth(parts, bolts.count, bolts.thread.majorDiameter.si);
  if (bolts.engagement > deepest)
    throw refused(
      'engagement',
      joint.engagement ?? length(bolts.engagement),
      `at most ${length(Math.max(0, deepest))}, the depth at which the tapped holes of ${bolts.count} bolts meet in the closure`,
      'Reduce the engagement, or use fewer or smaller bolts',
    );
  const strengths = strengthsOf(parts, bolts);
  const breaking = strengths.boltUltimate.si * bolts.thread.tensileStressArea.si;
  const tightened = tightenedJoint(joint, bolts.thread);
  if (tightened !== undefined && tightened.max.value >= breaking)
    throw refused(
      joint.torque === undefined ? 'preload' : 'torque',
      joint.torque ?? joint.preload,
      `such that the maximum preload is less than the breaking load of a bolt (${fromSiValue(breaking, 'force', unitFor('force', joint.preload?.unit ?? 'N'))})`,
      'Tighten less',
    );
  const inSi = jointSi(parts, bolts, strengths);
  const stresses = jointStresses(inSi, step);
  if (!Number.isFinite(numberOf(stresses.netSection)))
    throw refused(
      'rowSpacing',
      joint.rowSpacing,
      'large enough to leave a net section on the zigzag path between rows',
      'Increase the row spacing',
    );
  const { factors, pressureUnit } = parts;
  const pressure = joint.pressure.si;
  const unit = unitFor('stress', pressureUnit.us ? 'psi' : 'MPa');
  const temperature = {
    case: joint.tube.wallTemperature,
    closure: joint.closureTemperature,
    bolt: parts.boltTemperature,
  };
  const rules = rulesFor(stresses);
  const ofRules = rules.map(
    (rule): JointMode =>
      Object.assign(
        failureMargin(jointMode(rule, { part, pressure, factors, temperature, stresses, strengths, unit })),
        { peak: peakOf(rule, stresses, unit) },
      ),
  );
  const tightenedParts = tightened && {
    part,
    bolt: tightened,
    joint: inSi,
    thread: bolts.thread,
    strengths,
    load: stresses.boltLoad,
    factors,
    temperature: parts.boltTemperature,
    unit,
  };
  const modes = tightenedParts ? [...ofRules, failureMargin(tightenedMode(tightenedParts))] : ofRules;
  const atSurface = (momentShare: number): Quantity<'stress'> =>
    fromSiValue(
      offsetWallStress.si({
        tension: numberOf(stresses.netSection),
        offset: stresses.offset.value,
        wall: joint.tube.wall.si,
        momentShare,
      }),
      'stress',
      unit,
    );
  const force = (si: number): Quantity<'force'> =>
    fromSiValue(si, 'force', unitFor('force', pressureUnit.us ? 'lbf' : 'N'));
  return jointReview({
    pressure: joint.pressure,
    endForce: force(stresses.endForce.value),
    boltLoad: force(stresses.boltLoad.value),
    shareFactor: numberOf(stresses.shareFactor),
    modes,
    checks: fastenerChecks(parts, bolts, joint, length),
    pattern,
    offsetBending: {
      surface: fromSiValue(numberOf(stresses.offsetSurface), 'stress', unit),
      none: fromSiValue(numberOf(stresses.netSection), 'stress', unit),
      farFromEnd: atSurface(0.5),
      freeEdge: atSurface(1),
      decayLength: length(stresses.edgeZone.value),
    },
    cautions: [
      ...jointCautions({
        parts,
        bolts,
        strengths,
        shareFactor: numberOf(stresses.shareFactor),
        modes,
        type: joint.fastener,
        surfaceStress: numberOf(stresses.offsetSurface),
        pattern,
        length,
        tightened,
      }),
      ...(tightenedParts ? tightenedCautions(tightenedParts, joint) : []),
    ],
  });
}

/** The holes of a joint; an error where they do not fit. */
function patternOf(joint: RadialBoltJointValues, bolts: BoltsSi): HolePattern {
  const { tube, count, rows, rowSpacing, edgeDistance } = joint;
  try {
    return holePattern({
      outsideDiameter: tube.outsideDiameter,
      wall: tube.wall,
      count,
      rows,
      rowSpacing,
      holeDiameter: fromSiValue<'length'>(bolts.holeDiameter, 'length', unitFor('length', edgeDistance.unit)),
      edgeDistance,
    });
  } catch (error) {
    throw error instanceof MeopError ? error.within(name) : error;
  }
}
