import { fromSiValue, MeopError, type Quantity, readInput, table, type Unit, unitFor } from '../../units';
import { requireFields } from '../../units/known-fields';
import { refusal } from '../../units/refusal';
import { type HolePattern, holePattern } from '../holes';
import { governing, type Margin, margin } from '../margin';
import { holePeakStress } from './hole-concentration';
import { jointCautions } from './joint-cautions';
import { explainMode, type JointExplanation } from './joint-explanation';
import { jointFields } from './joint-fields';
import { type JointModeName, type ModeRule, rulesFor } from './joint-modes';
import type { JointStrengths } from './joint-strengths';
import { type JointSi, type JointStressesSi, jointStressesSi } from './joint-stresses';
import type { RadialBoltJoint } from './radial-bolt-joint';
import {
  type BoltsSi,
  jointSi,
  meetingDepth,
  type PartsSi,
  readBolts,
  readParts,
  strengthsOf,
} from './read-joint';

const name = 'reviewJoint';

/** A local peak that the mode's stress leaves out, and why. */
export interface PeakStress {
  readonly concentration: number;
  readonly stress: Quantity<'stress'>;
  readonly reason: string;
}

/** One way the joint can fail. */
export interface JointMode extends Margin {
  readonly mode: JointModeName;
  readonly limit: 'yield' | 'ultimate';
  /** The pressure at which the stress reaches the allowable, without any factor. */
  readonly failurePressure: Quantity<'gauge pressure'>;
  /** For fatigue, where the mode has a stress concentration. */
  readonly peak?: PeakStress;
  /** The hand calculation, from pressure to margin. */
  explain(): JointExplanation;
}

/** A radial-bolt joint, judged. */
export interface JointReview {
  /** On the closure. */
  readonly endForce: Quantity<'force'>;
  /** Of the worst bolt. */
  readonly boltLoad: Quantity<'force'>;
  /** The worst bolt's load over the equal share. */
  readonly shareFactor: number;
  readonly modes: readonly JointMode[];
  /** The mode of least margin. */
  readonly governing: JointMode;
  /** Whether every margin is zero or more. */
  readonly passes: boolean;
  /** The mode that comes first as pressure rises, without factors. */
  readonly firstToFail: JointMode;
  /** Whether a bearing mode comes before bolts, threads, tear-out and net section: it stretches holes before anything lets go. */
  readonly bearingFirst: boolean;
  readonly pattern: HolePattern;
  readonly cautions: readonly string[];
  toString(): string;
}

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
  const numbers = jointSi(parts, bolts, strengths);
  const stresses = jointStressesSi(numbers);
  if (!Number.isFinite(stresses.netSection))
    throw refusal(
      name,
      'rowSpacing',
      joint.rowSpacing,
      'a greater distance of the rows',
      'along the zigzag from row to row nothing is left of the wall',
    );
  const rules = rulesFor(stresses);
  const modes = rules.map((rule) => modeOf({ rule, parts, numbers, stresses, strengths }));
  const displayUnit = parts.pressureUnit;
  const force = (si: number): Quantity<'force'> =>
    fromSiValue(si, 'force', unitFor('force', displayUnit.us ? 'lbf' : 'N'));
  const first = modes.reduce((least, next) =>
    next.failurePressure.si < least.failurePressure.si ? next : least,
  );
  const suddenModes = rules.flatMap(({ failsGradually: gentle, stress }, i) =>
    gentle || stress === 'hoop' ? [] : [modes[i]],
  );
  const gradualModes = rules.flatMap((rule, i) => (rule.failsGradually ? [modes[i]] : []));
  const least = (among: readonly JointMode[]): number =>
    Math.min(...among.map(({ failurePressure }) => failurePressure.si));
  const pressure = fromSiValue<'gauge pressure'>(parts.pressure, 'gauge pressure', displayUnit);
  const text = (): string => reviewText(review, pressure);
  const review = {
    endForce: force(stresses.endForce),
    boltLoad: force(stresses.boltLoad),
    shareFactor: stresses.shareFactor,
    modes,
    governing: governing(modes),
    passes: modes.every(({ marginOfSafety }) => marginOfSafety >= 0),
    firstToFail: first,
    bearingFirst: least(gradualModes) < least(suddenModes),
    pattern,
    cautions: jointCautions({ parts, bolts, strengths, stresses, modes, pattern, length }),
    toString: text,
    [Symbol.for('nodejs.util.inspect.custom')]: text,
  };
  return review;
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
    if (!(error instanceof MeopError)) throw error;
    const message = error.message.replace(/^holePattern/, name);
    throw new MeopError(error.code, message, error.path, {
      value: error.given,
      ...(error.expected !== undefined && { expected: error.expected }),
    });
  }
}

interface ModeParts {
  readonly rule: ModeRule;
  readonly parts: PartsSi;
  readonly numbers: JointSi;
  readonly stresses: JointStressesSi;
  readonly strengths: JointStrengths;
}

function modeOf({ rule, parts, numbers, stresses, strengths }: ModeParts): JointMode {
  const { factors, given, pressureUnit: displayUnit } = parts;
  const unit = unitFor('stress', displayUnit.us ? 'psi' : 'MPa');
  const applied = stresses[rule.stress];
  const strength = strengths[rule.strength];
  const factor = factors[rule.limit];
  const degrees = rule.strength.startsWith('closure')
    ? given.closureTemperature
    : rule.strength.startsWith('bolt')
      ? parts.boltTemperature
      : given.caseTemperature;
  const peak = peakOf(rule, stresses, unit);
  const judged = margin({
    mode: rule.mode,
    applied: fromSiValue(applied, 'stress', unit),
    allowable: fromSiValue(strength.si, 'stress', unit),
    factor,
    ...(degrees !== undefined && { temperature: temperatureOf(degrees) }),
    source: `${rule.source}; strength: ${strength.source}`,
    cautions: strength.cautions,
  });
  // Written out, and added to only where there is something: a spread costs more than all the rest.
  const mode: { -readonly [F in keyof JointMode]: JointMode[F] } = {
    mode: rule.mode,
    limit: rule.limit,
    applied: judged.applied,
    allowable: judged.allowable,
    factor,
    marginOfSafety: judged.marginOfSafety,
    source: judged.source,
    cautions: judged.cautions,
    failurePressure: fromSiValue((parts.pressure * strength.si) / applied, 'gauge pressure', displayUnit),
    explain: () =>
      explainMode({ rule, joint: numbers, stresses, allowable: strength.si, factor, displayUnit }),
  };
  if (judged.temperature !== undefined) mode.temperature = judged.temperature;
  if (peak !== undefined) mode.peak = peak;
  return mode;
}

function temperatureOf(given: unknown): Quantity<'temperature'> {
  const { si, unit } = readInput('temperature', 'temperature', given, name);
  return fromSiValue(si, 'temperature', unit);
}

// Peak principal stress over F/(d·t), CalculiX 2.20, elastic; the record is in tests/fea.
const loadedHolePeak = 5.4;

function peakOf({ stress }: ModeRule, stresses: JointStressesSi, unit: Unit): PeakStress | undefined {
  const show = (si: number): Quantity<'stress'> => fromSiValue(si, 'stress', unit);
  if (stress === 'netSection')
    return {
      concentration: stresses.netSectionConcentration,
      stress: show(stresses.netSection * stresses.netSectionConcentration),
      reason:
        'for fatigue only: a ductile wall yields at the hole edge and the section levels out before it parts; a hole loaded by its bolt concentrates more than this open one',
    };
  if (stress === 'caseBearing')
    return {
      concentration: loadedHolePeak,
      stress: show(stresses.caseBearing * loadedHolePeak),
      reason:
        'for fatigue only: the greatest tension at the side of a hole that its bolt loads, from a finite-element model of one tube end (30° sector, edge distance of two diameters)',
    };
  if (stress !== 'hoop' || stresses.hoop <= 0) return undefined;
  // Beyond the seal the hoop stress falls below the longitudinal one, which belongs to the net section: then it counts alone.
  const { hoop, longitudinal } = stresses;
  const peak = holePeakStress.si({ greater: hoop, lesser: hoop >= longitudinal ? longitudinal : 0 });
  return {
    concentration: peak / stresses.hoop,
    stress: show(peak),
    reason: 'for fatigue only: a ductile wall yields at the hole edge without bursting',
  };
}

const signed = (left: number): string => `${left < 0 ? '−' : '+'}${Math.abs(left).toFixed(2)}`;

function reviewText(review: Omit<JointReview, 'toString'>, pressure: Quantity<'gauge pressure'>): string {
  const rows = [...review.modes]
    .sort((a, b) => a.marginOfSafety - b.marginOfSafety)
    .map(({ mode, applied, allowable, factor, marginOfSafety: left, failurePressure, temperature }) => ({
      mode,
      stress: applied,
      allowable,
      factor,
      margin: signed(left),
      'reached at': failurePressure,
      ...(temperature !== undefined && { temperature }),
    }));
  const peaks = review.modes.flatMap(({ mode, limit, peak }) =>
    peak === undefined || limit === 'yield'
      ? []
      : [`${mode}: peak ${peak.stress}, ${peak.concentration.toFixed(2)} times, ${peak.reason}`],
  );
  const { governing: least, firstToFail: first } = review;
  return [
    `${review.passes ? 'HOLDS' : 'DOES NOT HOLD'} at ${pressure}: least margin ${signed(least.marginOfSafety)}, ${least.mode}`,
    `end force ${review.endForce}, worst bolt ${review.boltLoad}`,
    `first as pressure rises: ${first.mode} at ${first.failurePressure}; ${review.bearingFirst ? 'bearing comes before anything lets go, as it should' : 'something lets go before bearing shows: not the preferred order'}`,
    'margin: 0 is exactly enough, with the factor; reached at: the pressure that brings the stress to the allowable, without factor',
    table(rows),
    ...peaks,
    ...review.cautions.map((caution) => `caution: ${caution}`),
  ].join('\n');
}
