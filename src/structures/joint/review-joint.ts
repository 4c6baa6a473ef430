import { fromSiValue, MeopError, type Quantity, readInput, unitFor } from '../../units';
import { requireFields } from '../../units/known-fields';
import { refusal } from '../../units/refusal';
import { numberOf, step } from '../failure-mode/calculation';
import { failureMargin } from '../failure-mode/failure-margin';
import type { PartId } from '../failure-mode/part-name';
import { type HolePattern, holePattern } from '../holes';
import { jointCautions } from './joint-cautions';
import { jointFields } from './joint-fields';
import { jointMode, type ModeRule, rulesFor } from './joint-modes';
import { peakOf } from './joint-peak';
import { type JointMode, type JointReview, jointReview } from './joint-review';
import { jointStresses } from './joint-stresses';
import type { RadialBoltJoint } from './radial-bolt-joint';
import { type BoltsSi, jointSi, meetingDepth, readBolts, readParts, strengthsOf } from './read-joint';

const name = 'reviewJoint';

/**
 * Every way in which a closure held by radial bolts can fail, each with its margin: shear and bending of the bolts,
 * bearing of case and closure, tear-out, net section, threads of the closure, hoop at the holes (Lamé). The pressure
 * acts on the seal; the joint is as good as its least margin.
 *
 * @throws MeopError `unknown-field` for a name that is not a field, `out-of-domain` where parts do not go together, `unknown-name` for a thread, class or material,
 * `no-allowable` where a material has no minimum strength, `missing-field`
 * @example reviewJoint({ pressure: '1000 psi', caseOutsideDiameter: '3.5 in', caseWall: '0.25 in', caseMaterial: '6061-T6 drawn tube', closureMaterial: '6061-T6 bar', thread: '1/4-20', boltClass: 'grade 8', count: 12, edgeDistance: '0.5 in' }).endForce.in('lbf') // => 7068.583471
 */
export function reviewJoint(joint: RadialBoltJoint): JointReview {
  return reviewJointAs(joint, 'joint');
}

/** {@link reviewJoint} under the name of a part of a motor. */
export function reviewJointAs(joint: RadialBoltJoint, part: PartId): JointReview {
  requireFields(name, joint, jointFields);
  const parts = readParts(joint);
  const bolts = readBolts(joint, parts);
  const pattern = patternOf(joint, bolts);
  const length = (si: number): Quantity<'length'> => fromSiValue(si, 'length', parts.lengthUnit);
  const deepest = meetingDepth(parts, bolts.count, bolts.thread.majorDiameter.si);
  if (bolts.engagement > deepest)
    throw refusal(
      name,
      'engagement',
      joint.engagement ?? length(bolts.engagement),
      'less engagement, or fewer or smaller bolts,',
      `the tapped holes of ${bolts.count} bolts meet ${length(Math.max(0, deepest))} deep in the closure`,
    );
  const strengths = strengthsOf(parts, bolts);
  if (parts.preload >= strengths.boltUltimate.si * bolts.thread.tensileStressArea.si)
    throw refusal(name, 'preload', joint.preload, 'less than what breaks the bolt');
  const stresses = jointStresses(jointSi(parts, bolts, strengths), step);
  if (!Number.isFinite(numberOf(stresses.netSection)))
    throw refusal(
      name,
      'rowSpacing',
      joint.rowSpacing,
      'a greater distance of the rows',
      'along the zigzag from row to row nothing is left of the wall',
    );
  const { factors, pressure, pressureUnit } = parts;
  const unit = unitFor('stress', pressureUnit.us ? 'psi' : 'MPa');
  const temperature = {
    case: temperatureOf(joint.caseTemperature),
    closure: temperatureOf(joint.closureTemperature),
    bolt: temperatureOf(parts.boltTemperature),
  };
  const rules = rulesFor(stresses);
  const modes = rules.map(
    (rule): JointMode =>
      Object.assign(
        failureMargin(jointMode(rule, { part, pressure, factors, temperature, stresses, strengths, unit })),
        { peak: peakOf(rule, stresses, unit) },
      ),
  );
  const soonest = (how: ModeRule['fails']): number =>
    Math.min(
      ...modes.map(({ failurePressure }, i) => (rules[i].fails === how ? failurePressure.si : Infinity)),
    );
  const force = (si: number): Quantity<'force'> =>
    fromSiValue(si, 'force', unitFor('force', pressureUnit.us ? 'lbf' : 'N'));
  return jointReview({
    pressure: fromSiValue<'gauge pressure'>(pressure, 'gauge pressure', pressureUnit),
    endForce: force(stresses.endForce.value),
    boltLoad: force(stresses.boltLoad.value),
    shareFactor: numberOf(stresses.shareFactor),
    modes,
    bearingFirst: soonest('gradually') < soonest('suddenly'),
    pattern,
    cautions: jointCautions({
      parts,
      bolts,
      strengths,
      shareFactor: numberOf(stresses.shareFactor),
      modes,
      pattern,
      length,
    }),
  });
}

/** The holes of a joint; refuses more than fit. */
function patternOf(joint: RadialBoltJoint, { holeDiameter, count, rows }: BoltsSi): HolePattern {
  const unit = readInput('length', 'edgeDistance', joint.edgeDistance, name).unit;
  try {
    return holePattern({
      outsideDiameter: joint.caseOutsideDiameter,
      wall: joint.caseWall,
      count,
      rows,
      holeDiameter: fromSiValue<'length'>(holeDiameter, 'length', unit),
      edgeDistance: joint.edgeDistance,
      ...(joint.rowSpacing !== undefined && { rowSpacing: joint.rowSpacing }),
    });
  } catch (error) {
    throw error instanceof MeopError ? error.within(name) : error;
  }
}

function temperatureOf(given: unknown): Quantity<'temperature'> | undefined {
  if (given === undefined) return undefined;
  const { si, unit } = readInput('temperature', 'temperature', given, name);
  return fromSiValue(si, 'temperature', unit);
}
