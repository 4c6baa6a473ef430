import { type FailureMargin, governing } from '../../structures';
import { failureOrder } from '../../structures/failure-mode/failure-order';
import { failureSequence } from '../../structures/failure-mode/failure-sequence';
import { printable, procedure } from '../../units';
import { assumedDefaults, notEvaluated } from '../assumed-defaults';
import { type DocumentProblem, type Motor, strengthProblems } from '../document';
import { motorSubject } from '../document/motor-subject';
import { documentError } from '../document/problems';
import { heatLossOf } from '../heat-loss-of';
import { meopOf } from '../meop/meop';
import type { Meop } from '../meop/meop-result';
import { type PartLine, written } from '../part-lines';
import type { RegressionCache } from '../regression-cache';
import { reuseReview } from '../reuse/reuse-review';
import { settingsOf } from '../settings';
import { unusedTolerances } from '../worst-case-tolerances';
import { findingsOf } from './finding';
import { flowChecks } from './flow-checks';
import { hardwareReview } from './hardware-review';
import { ignitionCautions, ignitionReview } from './ignition-review';
import { instrumentReviews } from './instrument-review';
import { proofReview } from './proof-review';
import { refusals } from './refusals';
import type { Review } from './review-result';
import { reviewText } from './review-text';
import { allSeals } from './seal-review';
import { verdictFrom, verdictSentence, withSilentParts } from './verdict';

/**
 * Values that the document does not specify are reported in `assumptions` and `cautions`. The result is an analysis, not
 * an approval to fire. A document that cannot be reviewed is refused with the list of {@link reviewProblems}.
 *
 * @example review(demoMotor()).verdict // => 'holds'
 */
export const review = /* @__PURE__ */ procedure({
  name: 'review',
  title: 'Review of a motor at its MEOP',
  source: 'The calculations of structures, nozzle and ballistics, each with its own source',
  subject: motorSubject,
  inputs: {},
  gives:
    'the margin of safety of every failure mode with worst-case dimensions, sorted; checks of the parts, seals, port flow, instruments, stand and restraint; the proof test; the failure sequence; and one verdict over all of these',
  example: 'review(demoMotor())',
  run: (motor) => reviewOf(motor, new Map()),
});

/** {@link review} with a shared cache of regressions. */
export function reviewOf(motor: Motor, cache: RegressionCache): Review {
  needSound(strengthProblems(motor));
  const settings = settingsOf(motor);
  const meop = meopOf(motor, cache);
  const hardware = hardwareReview(motor, meop.pressure, meop.thrust, settings);
  needSound(hardware.problems);
  const { worst, structure, seals, faceSeals } = hardware;
  const margins = [...structure.margins].sort((a, b) => a.marginOfSafety - b.marginOfSafety);
  const refused = refusals(motor.document);
  const proof = proofReview({
    motor: worst,
    meop: meop.pressure,
    settings,
    margins,
    attempt: refused.attempt,
  });
  needSound(refused.problems);
  const everyRing = allSeals({ seals, faceSeals });
  const instruments = instrumentReviews(worst, meop, settings);
  const flow = flowChecks(motor, meop.worstCase, settings, cache);
  const ignition = ignitionReview(motor, cache);
  const reuse = reuseReview({ motor, worst, meop: meop.pressure, margins, joints: structure.joints, seals });
  const checks = [...structure.checks, ...reuse.checks];
  const unjudged = withSilentParts(margins, structure.unjudged);
  const findings = findingsOf({
    margins,
    proofMargins: proof.margins,
    checks: [...checks, ...proof.checks],
    seals,
    faceSeals,
    flow,
    instruments,
    unjudged,
  });
  const found: Omit<Review, 'toString'> = {
    motor,
    meop,
    prediction: meop.nominal.firing,
    margins,
    governing: margins.length === 0 ? undefined : governing(margins),
    verdict: verdictFrom(findings),
    verdictSentence: verdictSentence(findings, motor),
    findings,
    unjudged,
    checks,
    reuse,
    proof,
    failureOrder: failureSequence(margins, meop.pressure),
    failureOrders: failureOrders(margins, structure.joints),
    joints: structure.joints,
    retainingRings: structure.retainingRings,
    threads: structure.threads,
    retention: structure.retention,
    axialBolts: structure.axialBolts,
    seals,
    faceSeals,
    flow,
    ignition,
    heatLoss: heatLossOf(motor, cache),
    instruments,
    restraint: structure.restraint,
    assumptions: [
      ...settings.assumptions,
      ...assumedDefaults(motor),
      ...unusedTolerances(motor, new Set(meop.sensitivity.map(({ input }) => input))),
    ],
    cautions: cautionsOf(
      motor,
      meop,
      [
        ...ignitionCautions(ignition, meop.nominal.peakPressure.si).map((text) => ({ text })),
        ...structure.cautions,
        ...proof.cautions.map((text) => ({ text })),
      ],
      everyRing,
      instruments,
      margins,
    ),
  };
  return printable(found, () => reviewText(found));
}

/** The failure order of the retention at each end; a joint of radial bolts has that of its worst variant. */
function failureOrders(margins: readonly FailureMargin[], joints: Review['joints']): Review['failureOrders'] {
  return Object.fromEntries(
    (['head', 'aft'] as const).flatMap((end) => {
      const own = margins.filter(({ part }) => part === `${end}-joint`);
      return own.length === 0 ? [] : [[end, joints[end]?.failureOrder ?? failureOrder(own)]];
    }),
  );
}

/** Throws for a motor that cannot be reviewed, with the list of what prevents it. */
function needSound(problems: readonly DocumentProblem[]): void {
  if (problems.length > 0) throw documentError(problems, 'review');
}

function cautionsOf(
  motor: Motor,
  meop: Meop,
  structure: readonly PartLine[],
  seals: ReturnType<typeof allSeals>,
  instruments: Review['instruments'],
  margins: readonly FailureMargin[],
): readonly string[] {
  const known = new Set(structure.map(({ text }) => text));
  const line = (text: string): PartLine => ({ text });
  return written([
    ...meop.cautions.map(line),
    ...structure,
    ...margins.flatMap(({ cautions }) => cautions.filter((text) => !known.has(text)).map(line)),
    ...seals.flatMap(({ closure, place, seal }) =>
      seal.cautions.map((text) => ({ end: closure, about: `seal ${place}`, text })),
    ),
    ...instruments.flatMap(({ cautions }) => cautions.map(line)),
    ...notEvaluated(motor).map(line),
    ...((motor.instruments ?? []).length === 0
      ? [line('Instruments not specified; saturation of the channels is not evaluated.')]
      : []),
  ]);
}
