import {
  fromSiValue,
  type MeopError,
  type NamedKind,
  type QuantityInput,
  readInput,
  unitFor,
} from '../../units';
import { requireFields } from '../../units/known-fields';
import { readPositive, refusal } from '../../units/refusal';
import { failureMargin } from '../failure-mode/failure-margin';
import type { PartId } from '../failure-mode/part-name';
import { readFactors } from '../joint/joint-factors';
import { materialOf } from '../materials/library';
import { threadGeometry } from '../threads';
import { type ThreadedClosureReview, threadedClosureReview } from './closure-review';
import { type ThreadedClosureSi, threadAt } from './thread-at';
import { type ThreadedClosure, threadedClosureFields } from './threaded-closure';
import { noThread, threadedClosureModes } from './threaded-closure-modes';

const name = 'reviewThreadedClosure';
const room = 293.15;

/**
 * Whether the threads of a closure that screws into the case hold, and the wall that they leave: shear of both threads at
 * the worst limits and with the case opened by pressure, flanks and heat; tension, folding and hoop of the wall.
 *
 * @throws MeopError `out-of-domain`, `unknown-name`, `no-allowable`
 * @example reviewThreadedClosure({ pressure: '5 MPa', thread: customThread({ majorDiameter: '70 mm', pitch: '2 mm' }), engagement: '12 mm', caseOutsideDiameter: '76 mm', caseMaterial: '6061-T6 drawn tube', closureMaterial: '6061-T6 bar' }).endForce.in('kN') // => 19.24225501
 */
export function reviewThreadedClosure(joint: ThreadedClosure): ThreadedClosureReview {
  const { coldClosure, disengaged, ...found } = analyseThreadedClosure(joint, 'joint');
  if (disengaged !== undefined) throw disengaged;
  return threadedClosureReview({ ...found, cautions: [...coldClosure, ...found.cautions] });
}

/** What the analysis of a threaded closure finds. */
export interface ThreadedClosureFacts
  extends Pick<ThreadedClosureReview, 'endForce' | 'growth' | 'margins' | 'cautions'> {
  /** That the closure is assumed cold in a hot case; empty where it is not. */
  readonly coldClosure: readonly string[];
  /** Why the closure is no closure at this pressure, where its threads disengage below it. */
  readonly disengaged: MeopError | undefined;
}

/** The margins of a threaded closure, beyond the disengagement of its threads as well. */
export function analyseThreadedClosure(joint: ThreadedClosure, part: PartId): ThreadedClosureFacts {
  requireFields(name, joint, threadedClosureFields);
  const read = (kind: NamedKind, field: keyof ThreadedClosure): number =>
    readPositive(kind, field, joint[field], name).si;
  const pressure = read('gauge pressure', 'pressure');
  const closure = readClosure(joint, read);
  const factors = readFactors(name, joint.factors);
  const { us } = readInput('gauge pressure', 'pressure', joint.pressure, name).unit;
  const { exposure } = joint;
  const all = { part, exposure, factors, pressure, unit: unitFor('stress', us ? 'psi' : 'MPa') };
  const found = threadedClosureModes(
    closure,
    { ...all, material: closure.tube, temperature: joint.caseTemperature },
    { ...all, material: closure.closure, temperature: joint.closureTemperature },
  );
  const lengthUnit = readInput('length', 'caseOutsideDiameter', joint.caseOutsideDiameter, name).unit;
  return {
    endForce: fromSiValue<'force'>(found.load.value, 'force', unitFor('force', us ? 'lbf' : 'N')),
    growth: fromSiValue<'length'>(found.opening.value, 'length', lengthUnit),
    margins: found.modes.map((mode) => failureMargin(mode)),
    cautions: [...(joint.factors?.cautions ?? []), ...cautionsOf(closure)],
    coldClosure:
      joint.caseTemperature !== undefined && joint.closureTemperature === undefined && closure.caseRise > 20
        ? [
            'the closure is taken at room temperature beside a hot case: give closureTemperature where it is hot',
          ]
        : [],
    disengaged:
      found.disengagement === undefined ? undefined : noThread(closure, threadAt(closure, pressure).opening),
  };
}

function readClosure(
  joint: ThreadedClosure,
  read: (kind: NamedKind, field: keyof ThreadedClosure) => number,
): ThreadedClosureSi {
  const thread = typeof joint.thread === 'string' ? threadGeometry(joint.thread) : joint.thread;
  const engagement = read('length', 'engagement');
  const outside = read('length', 'caseOutsideDiameter');
  const major = thread.majorDiameter.si;
  // The roots of an internal thread may be as deep as a sharp V: an eighth of the triangle's height H beyond the profile.
  const roots = major + (thread.pitch.si * Math.sqrt(3)) / 8;
  const relief =
    joint.reliefDiameter === undefined ? roots : Math.max(roots, read('length', 'reliefDiameter'));
  if (outside <= relief)
    throw refusal(
      name,
      'caseOutsideDiameter',
      joint.caseOutsideDiameter,
      `more than the roots of the thread (${Number((relief * 1000).toPrecision(4))} mm)`,
    );
  const rise = (field: 'caseTemperature' | 'closureTemperature'): number => {
    const given: QuantityInput<'temperature'> | undefined = joint[field];
    return given === undefined ? 0 : readInput('temperature', field, given, name).si - room;
  };
  return {
    thread,
    engagement,
    sealDiameter: joint.sealDiameter === undefined ? major : read('length', 'sealDiameter'),
    insideRadius: relief / 2,
    outsideRadius: outside / 2,
    tube: materialOf(joint.caseMaterial),
    closure: materialOf(joint.closureMaterial),
    caseRise: rise('caseTemperature'),
    closureRise: rise('closureTemperature'),
  };
}

function cautionsOf({ tube, closure, thread, ...sizes }: ThreadedClosureSi): readonly string[] {
  const isHeated = sizes.caseRise !== 0 || sizes.closureRise !== 0;
  const isUnknown = tube.thermalExpansion === undefined || closure.thermalExpansion === undefined;
  return [
    ...(tube.elasticModulus === undefined || tube.poissonRatio === undefined
      ? [
          `${tube.name} has no elasticModulus and poissonRatio: the growth of the case under pressure is left out`,
        ]
      : []),
    ...(isHeated && isUnknown
      ? ['the thermalExpansion of case or closure is not known: growth by heat is left out']
      : []),
    ...(thread.provenance === 'from memory' ? ['thread limits by tolerance formulas from memory'] : []),
    ...(sizes.sealDiameter < thread.minorDiameter.si
      ? [
          'the pressure is taken to act on less than the bore of the thread: a leak past the seal pushes on all of it',
        ]
      : []),
    ...(sizes.engagement > 10 * thread.pitch.si
      ? [
          'turns are taken to share alike: beyond about ten, further turns carry little (engineering practice, no published source)',
        ]
      : []),
    'full pressure and the push of the flanks are taken inside the thread: true beside the seal, cautious further away',
    'threads of one soft metal on another gall: lubricate them, and lock the closure against turning',
  ];
}
