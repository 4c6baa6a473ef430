import type { JointReview, RetainingRingReview, ThreadedClosureReview } from '../../structures';
import { governing } from '../../structures';
import type { Quantity } from '../../units';
import { assumedDefaults, notEvaluated } from '../assumed-defaults';
import { type Motor, type MotorInput, motorOf } from '../document';
import { documentError } from '../document/problems';
import { meopOf } from '../meop/meop';
import type { Meop } from '../meop/meop-result';
import type { RegressionCache } from '../regression-cache';
import { type MotorSettings, settingsOf } from '../settings';
import { atWorstCaseTolerances, unusedTolerances } from '../worst-case-tolerances';
import { caseMargins } from './case-margins';
import { closureMargins } from './closure-margins';
import { flowChecks } from './flow-checks';
import { insertMargins } from './insert-margin';
import { instrumentReviews } from './instrument-review';
import { reviewProblems } from './review-problems';
import type { FailureSequenceEntry, Review, ReviewMargin } from './review-result';
import { reviewText } from './review-text';
import { allSeals, faceSealReviews, sealReviews } from './seal-review';
import { standMargins } from './stand-margins';

type End = 'head' | 'aft';

/**
 * Judges a motor at its MEOP: the margin of every mode with the least favourable sizes that the tolerances allow, sorted;
 * the order in which things give way; seals, port flow, instruments, stand and restraint. What the document leaves out is
 * said in `assumptions` and `cautions`. It is an analysis, never a permission.
 *
 * @throws MeopError `motor-document` for a document with problems, those of {@link reviewProblems} included
 * @example review(demoMotor()).passes // => true
 */
export function review(input: MotorInput): Review {
  return reviewOf(motorOf(input), new Map());
}

/** {@link review} with regressions shared. */
export function reviewOf(motor: Motor, cache: RegressionCache): Review {
  needSound(motor);
  const settings = settingsOf(motor);
  const meop = meopOf(motor, cache);
  const worst = atWorstCaseTolerances(motor);
  const structure = structureMargins(worst, meop.pressure, meop.thrust, settings);
  const margins = [...structure.margins].sort((a, b) => a.marginOfSafety - b.marginOfSafety);
  const seals = sealReviews(motor, worst, meop.pressure);
  const faceSeals = faceSealReviews(motor, worst, meop.pressure);
  const everyRing = allSeals({ seals, faceSeals });
  const instruments = instrumentReviews(worst, meop, settings);
  const found: Omit<Review, 'toString'> = {
    motor,
    meop,
    prediction: meop.nominal.firing,
    margins,
    governing: margins.length === 0 ? undefined : governing(margins),
    passes: margins.length > 0 && margins.every(({ marginOfSafety }) => marginOfSafety >= 0),
    failureOrder: failureOrder(margins, meop.pressure),
    joints: structure.joints,
    retainingRings: structure.retainingRings,
    threads: structure.threads,
    seals,
    faceSeals,
    sealsHold: everyRing.every(({ seal }) => seal.passes),
    flow: flowChecks(motor, meop.worstCase, settings, cache),
    instruments,
    restraint: structure.restraint,
    assumptions: [
      ...settings.assumptions,
      ...assumedDefaults(motor),
      ...unusedTolerances(motor, new Set(meop.sensitivity.map(({ input }) => input))),
    ],
    cautions: cautionsOf(motor, meop, structure.cautions, everyRing, instruments, margins),
  };
  return {
    ...found,
    toString: () => reviewText(found),
    ...{ [Symbol.for('nodejs.util.inspect.custom')]: () => reviewText(found) },
  };
}

/** Refuses a motor that cannot be judged, with the list of what stands in the way. */
function needSound(motor: Motor): void {
  const problems = reviewProblems(motor);
  if (problems.length > 0) throw documentError(problems, 'review');
}

/** Every margin of case, closures, insert, stand and restraint of a motor, as it is given, at a pressure above ambient and a thrust. */
export function structureMargins(
  motor: Motor,
  pressure: Quantity<'gauge pressure'>,
  thrust: Quantity<'force'>,
  settings: MotorSettings,
) {
  const tube = caseMargins(motor, pressure, settings);
  const joints: Partial<Record<End, JointReview>> = {};
  const retainingRings: Partial<Record<End, RetainingRingReview>> = {};
  const threads: Partial<Record<End, ThreadedClosureReview>> = {};
  const margins: ReviewMargin[] = [...tube.margins];
  const cautions: string[] = tube.shell.cautions.map((text) => `case: ${text}`);
  for (const end of ['head', 'aft'] as const) {
    const closure = motor.closures?.[end];
    if (closure === undefined) {
      cautions.push(`the document has no ${end} closure: its joint and seals are not judged`);
      continue;
    }
    const judged = closureMargins(motor, end, closure, pressure, settings);
    if (judged.joint !== undefined) joints[end] = judged.joint;
    if (judged.retainingRing !== undefined) retainingRings[end] = judged.retainingRing;
    if (judged.thread !== undefined) threads[end] = judged.thread;
    margins.push(...judged.margins);
    cautions.push(...judged.cautions);
  }
  const insert = insertMargins(motor, pressure, settings);
  const stand = standMargins(motor, thrust);
  return {
    margins: [...margins, ...insert.margins, ...stand.margins],
    joints,
    retainingRings,
    threads,
    restraint: stand.restraint,
    cautions: [...cautions, ...insert.cautions, ...stand.cautions],
  };
}

/** What gives way first as pressure rises: yielding stretches, the rest lets go. */
export function failureOrder(
  margins: readonly ReviewMargin[],
  meop: Quantity<'gauge pressure'>,
): readonly FailureSequenceEntry[] {
  return margins
    .flatMap(({ part, mode, failurePressure }) =>
      failurePressure === undefined
        ? []
        : [{ part, mode, failurePressure, meopRatio: failurePressure.si / meop.si }],
    )
    .sort((a, b) => a.failurePressure.si - b.failurePressure.si);
}

function cautionsOf(
  motor: Motor,
  meop: Meop,
  structure: readonly string[],
  seals: ReturnType<typeof allSeals>,
  instruments: Review['instruments'],
  margins: readonly ReviewMargin[],
): readonly string[] {
  const wall = motor.case.wallTemperature;
  return [
    ...new Set([
      ...meop.cautions,
      ...structure,
      ...margins.flatMap(({ cautions }) =>
        cautions.filter((text) => !structure.some((one) => one.endsWith(text))),
      ),
      ...seals.flatMap(({ closure, place, seal }) =>
        seal.cautions.map((text) => `${closure} seal ${place}: ${text}`),
      ),
      ...instruments.flatMap(({ cautions }) => cautions),
      ...(wall === undefined
        ? [
            'case.wallTemperature is not given: the case is judged at room temperature, which a firing exceeds',
          ]
        : []),
      ...notEvaluated(motor),
      ...((motor.instruments ?? []).length === 0
        ? ['the document has no instruments: whether a channel saturates is not judged']
        : []),
    ]),
  ];
}
