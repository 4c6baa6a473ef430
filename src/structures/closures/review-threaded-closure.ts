import { fromSiValue, MeopError, procedure, unitFor } from '../../units';
import { yieldAndUltimate } from '../factors-of-safety';
import { failureMargin } from '../failure-mode/failure-margin';
import type { PartId } from '../failure-mode/part-name';
import { type ThreadedClosureReview, threadedClosureReview } from './closure-review';
import { type ThreadedClosureSi, threadAt } from './thread-at';
import { type ThreadedClosure, type ThreadedClosureValues, threadedClosure } from './threaded-closure';
import { noThread, threadedClosureModes } from './threaded-closure-modes';

const name = 'reviewThreadedClosure';
const room = 293.15;

/**
 * Failure modes of the threads of a closure that screws into the case, and of the wall under them: shear of both threads at
 * the worst-case limits, with the case expanded by pressure, flanks and heat; tension, plastic collapse and hoop stress of the
 * wall.
 *
 * @throws MeopError `out-of-domain` where the parts do not fit, `no-allowable` where a material has no minimum strength
 * @example reviewThreadedClosure({ pressure: '5 MPa', thread: customThread({ majorDiameter: '70 mm', pitch: '2 mm' }), engagement: '12 mm', tube: { outsideDiameter: '76 mm', material: '6061-T6 drawn tube' }, closureMaterial: '6061-T6 bar' }).endForce.in('kN') // => 19.24225501
 */
export const reviewThreadedClosure = /* @__PURE__ */ procedure({
  name,
  title: 'Review of a closure that screws into the case',
  source: 'the formula of each mode, with its source',
  inputs: threadedClosure.fields,
  gives: 'the margin of safety of every failure mode of the threads and the wall',
  example: {
    pressure: '5 MPa',
    thread: 'M36',
    engagement: '12 mm',
    tube: { outsideDiameter: '42 mm', material: '6061-T6 drawn tube' },
    closureMaterial: '6061-T6 bar',
  },
  run: (joint): ThreadedClosureReview => {
    const { coldClosure, disengaged, ...found } = analysed(joint, 'joint');
    if (disengaged !== undefined) throw disengaged;
    return threadedClosureReview({ ...found, cautions: [...coldClosure, ...found.cautions] });
  },
});

/** The findings of the analysis of a threaded closure. */
export interface ThreadedClosureFacts
  extends Pick<ThreadedClosureReview, 'endForce' | 'growth' | 'margins' | 'cautions'> {
  /** The caution that the closure is assumed cold in a hot case; empty where it is not. */
  readonly coldClosure: readonly string[];
  /** The error for threads that disengage below this pressure. */
  readonly disengaged: MeopError | undefined;
}

/** The margins of a threaded closure, including pressures beyond the disengagement of its threads. */
export const analyseThreadedClosure = (joint: ThreadedClosure, part: PartId): ThreadedClosureFacts =>
  analysed(threadedClosure.read(joint, { procedure: name, path: '' }), part);

function analysed(joint: ThreadedClosureValues, part: PartId): ThreadedClosureFacts {
  const { tube, closureMaterial, closureTemperature, exposure, pressure } = joint;
  const closure = closureSi(joint);
  const { us } = unitFor('gauge pressure', pressure.unit);
  const factors = yieldAndUltimate(joint.factors);
  const all = { part, exposure, factors, pressure: pressure.si, unit: unitFor('stress', us ? 'psi' : 'MPa') };
  const found = threadedClosureModes(
    closure,
    { ...all, material: tube.material, temperature: tube.wallTemperature },
    { ...all, material: closureMaterial, temperature: closureTemperature },
  );
  const isAssumedCold = tube.wallTemperature && closureTemperature === undefined && closure.caseRise > 20;
  return {
    endForce: fromSiValue<'force'>(found.load.value, 'force', unitFor('force', us ? 'lbf' : 'N')),
    growth: fromSiValue<'length'>(
      found.opening.value,
      'length',
      unitFor('length', tube.outsideDiameter.unit),
    ),
    margins: found.modes.map((mode) => failureMargin(mode)),
    cautions: [...(joint.factors?.cautions ?? []), ...cautionsOf(closure)],
    coldClosure: isAssumedCold
      ? ['closureTemperature not specified; assumed the closure at room temperature in a hot case.']
      : [],
    disengaged:
      found.disengagement === undefined
        ? undefined
        : noThread(closure, threadAt(closure, pressure.si).opening),
  };
}

function closureSi({ thread, tube, ...joint }: ThreadedClosureValues): ThreadedClosureSi {
  const major = thread.majorDiameter.si;
  // The roots of an internal thread may be as deep as a sharp V: an eighth of the triangle's height H beyond the profile.
  const roots = major + (thread.pitch.si * Math.sqrt(3)) / 8;
  const relief = Math.max(roots, joint.reliefDiameter?.si ?? 0);
  if (tube.outsideDiameter.si <= relief)
    throw new MeopError({
      code: 'out-of-domain',
      procedure: name,
      path: 'tube.outsideDiameter',
      given: tube.outsideDiameter,
      expected: `more than the root diameter of the thread (${Number((relief * 1000).toPrecision(4))} mm)`,
    });
  return {
    thread,
    engagement: joint.engagement.si,
    sealDiameter: joint.sealDiameter?.si ?? major,
    insideRadius: relief / 2,
    outsideRadius: tube.outsideDiameter.si / 2,
    tube: tube.material,
    closure: joint.closureMaterial,
    caseRise: (tube.wallTemperature?.si ?? room) - room,
    closureRise: (joint.closureTemperature?.si ?? room) - room,
  };
}

function cautionsOf({ tube, closure, thread, ...sizes }: ThreadedClosureSi): readonly string[] {
  const isHeated = sizes.caseRise !== 0 || sizes.closureRise !== 0;
  const isUnknown = tube.thermalExpansion === undefined || closure.thermalExpansion === undefined;
  return [
    ...(tube.elasticModulus === undefined || tube.poissonRatio === undefined
      ? [
          `${tube.name} has no elasticModulus and poissonRatio: the growth of the case under pressure is neglected.`,
        ]
      : []),
    ...(isHeated && isUnknown
      ? ['The thermalExpansion of case or closure is not known: thermal growth is neglected.']
      : []),
    ...(thread.provenance === 'from memory'
      ? ['The thread limits are computed by tolerance formulas quoted from memory, not verified.']
      : []),
    ...(sizes.sealDiameter < thread.minorDiameter.si
      ? [
          'The pressure is assumed to act on less than the bore of the thread. After a leak past the seal it acts on the whole bore.',
        ]
      : []),
    ...(sizes.engagement > 10 * thread.pitch.si
      ? [
          'The turns are assumed to share the load equally. Beyond about ten, further turns carry little (engineering practice, no published source).',
        ]
      : []),
    'Full pressure and the radial force of the flanks are assumed inside the thread, which is conservative away from the seal.',
    'Threads of soft metals gall on each other. Lubricate them, and lock the closure against turning.',
  ];
}
