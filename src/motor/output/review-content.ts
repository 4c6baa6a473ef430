import { partName } from '../../structures';
import type { MotorComparison } from '../compare/comparison';
import type { Review } from '../review/review-result';
import type { ReviewVerdict } from '../review/verdict';
import { checkSection, unjudgedSection } from './check-section';
import { comparisonVerdict } from './comparison-section';
import {
  type ReportContent,
  type ReportSection,
  shown,
  signed,
  textCell,
  type Verdict,
  verdictOf,
} from './content';
import { firingSection, simulatedSummary } from './firing-section';
import { glanceSection, recordedLine } from './glance-section';
import { grainSection } from './grain-section';
import { instrumentSection, sealSection, standSection } from './hardware-sections';
import { failureSection, marginSection, sourceSection } from './margin-section';
import { pressureSection } from './pressure-section';

/** Content of the report on a review. */
export function reviewContent(
  review: Review,
  more: readonly ReportSection[] = [],
  comparison?: MotorComparison,
): ReportContent {
  const { motor, meop, governing, prediction } = review;
  const recorded = comparison && recordedLine(review, comparison);
  const summary = simulatedSummary(prediction);
  return {
    title: motor.name,
    kind: 'review of a static firing',
    headline: [
      { message: headline(review), verdict: headlineVerdict(review) },
      ...(recorded === undefined
        ? []
        : [{ message: recorded.message, verdict: recorded.speaksAgainst ? 'fail' : 'pass' } as const]),
    ],
    verdict: reportVerdict(review, comparison),
    keyFigures: [
      ['MEOP', shown(meop.pressure)],
      ...(governing === undefined
        ? []
        : [
            [
              'minimum margin of safety',
              signed(governing.marginOfSafety, verdictOf(governing.marginOfSafety)),
            ] as const,
          ]),
      ['peak pressure, absolute', shown(prediction.peakPressure)],
      ...(summary.peakThrust === undefined ? [] : [['peak thrust', shown(summary.peakThrust)] as const]),
      ['total impulse', shown(prediction.totalImpulse)],
      ...(summary.designation === undefined ? [] : [['class', textCell(summary.designation)] as const]),
      ...(comparison === undefined ? [] : firedFigures(review, comparison)),
    ],
    sections: [
      ...glanceSection(review, comparison),
      ...pressureSection(review),
      ...marginSection(review),
      ...failureSection(review),
      ...checkSection(review),
      ...unjudgedSection(review),
      ...firingSection(review, summary),
      ...grainSection(review),
      ...sealSection(review),
      ...instrumentSection(review),
      ...standSection(review),
      ...more,
      ...assumptionSection(review),
      ...sourceSection(review),
    ],
  };
}

/** Key results of a recorded firing. */
function firedFigures(
  { meop }: Review,
  { peakPressureUpperBound, measured, reuse }: MotorComparison,
): ReportContent['keyFigures'] {
  const against = reuse.findings.filter(({ effect }) => effect === 'adverse').length;
  const over = peakPressureUpperBound !== undefined && peakPressureUpperBound.si > meop.pressure.si;
  return [
    ...(peakPressureUpperBound === undefined
      ? []
      : [['peak pressure when fired', shown(peakPressureUpperBound, over ? 'fail' : 'pass')] as const]),
    ...(measured.totalImpulse === undefined
      ? []
      : [['total impulse when fired', shown(measured.totalImpulse.value)] as const]),
    [
      'findings against reuse',
      { text: String(against), value: against, verdict: against > 0 ? 'fail' : 'pass' },
    ],
  ];
}

function headline(review: Review): string {
  const { governing, failureOrder, meop } = review;
  if (governing === undefined)
    return 'Review: not fully evaluated. No failure mode could be evaluated: the document does not describe the hardware.';
  const { id, part, mode, marginOfSafety } = governing;
  const [first] = failureOrder;
  const isSame = first?.part === part && first.id === id;
  const parts = [...new Set(review.unjudged.map((one) => partName(one.part)))];
  const isComplete = parts.length === 0;
  return [
    `Review: ${review.verdict}.`,
    review.passes
      ? `All ${isComplete ? '' : 'evaluated '}margins of safety are zero or greater at MEOP (${meop.pressure}).`
      : `At least one margin of safety is negative at MEOP (${meop.pressure}).`,
    `Minimum: ${signed(marginOfSafety).text}, ${partName(part)}, ${mode}.`,
    ...(first === undefined
      ? []
      : [
          `With increasing pressure ${isSame ? 'this mode also fails first' : `${partName(first.part)}, ${first.mode}, fails first`}, at ${first.failurePressure} (${first.meopRatio.toFixed(2)} × MEOP, no factor of safety).`,
        ]),
    ...(isComplete ? [] : [`Not evaluated: ${parts.join(', ')}; see the list of what is not evaluated.`]),
    ...(review.checks.every(({ passes }) => passes) ? [] : ['A check of a part is not satisfied.']),
    ...(review.sealsHold ? [] : ['A seal check is not satisfied.']),
    ...(review.flow.every(({ passes }) => passes) ? [] : ['A port flow limit is exceeded.']),
    ...(review.instruments.every(({ passes }) => passes) ? [] : ['An instrument range is not sufficient.']),
  ].join(' ');
}

function headlineVerdict({ governing, verdict }: Review): Verdict {
  if (verdict === 'fails' || governing === undefined) return 'fail';
  return verdict === 'satisfied' ? verdictOf(governing.marginOfSafety) : 'marginal';
}

/** The verdict of the review and of the recorded firing, whichever is worse. */
function reportVerdict({ verdict }: Review, comparison: MotorComparison | undefined): ReviewVerdict {
  const both = [verdict, ...(comparison === undefined ? [] : [comparisonVerdict(comparison)])];
  return (['fails', 'not fully evaluated'] as const).find((worse) => both.includes(worse)) ?? 'satisfied';
}

function assumptionSection({ assumptions, cautions }: Review): readonly ReportSection[] {
  const isEmpty = assumptions.length + cautions.length === 0;
  return isEmpty
    ? []
    : [
        {
          id: 'cautions',
          title: 'Cautions and assumptions',
          lead: ['Cautions that affect these results, and values assumed where the document specifies none.'],
          tables: [],
          figures: [],
          cautions,
          remarks: assumptions.map((text) => `Assumption: ${text}`),
        },
      ];
}
