import { partName } from '../../structures';
import type { MotorComparison } from '../compare/comparison';
import { notIncludedText } from '../meop/meop-result';
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
import { drawingSection } from './drawing-section';
import { firingSection, simulatedSummary } from './firing-section';
import { glanceSection, recordedLine } from './glance-section';
import { grainSection } from './grain-section';
import { instrumentSection, retentionSection, sealSection, standSection } from './hardware-sections';
import { failureSection, marginSection, sourceSection } from './margin-section';
import { meopFigures, pressureSection } from './pressure-section';
import { proofSection } from './proof-section';
import { reuseSection } from './reuse-section';

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
      { message: review.verdictSentence, verdict: headlineVerdict(review) },
      { message: pressureLine(review) },
      ...(recorded === undefined
        ? []
        : [{ message: recorded.message, verdict: recorded.speaksAgainst ? 'fail' : 'pass' } as const]),
    ],
    verdict: reportVerdict(review, comparison),
    keyFigures: [
      ['verdict', { text: review.verdict, verdict: headlineVerdict(review) }],
      ...meopFigures(meop),
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
      ...drawingSection(review),
      ...pressureSection(review),
      ...marginSection(review),
      ...failureSection(review),
      ...proofSection(review),
      ...checkSection(review),
      ...unjudgedSection(review),
      ...firingSection(review, summary),
      ...grainSection(review),
      ...retentionSection(review),
      ...sealSection(review),
      ...instrumentSection(review),
      ...standSection(review),
      ...reuseSection(review),
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

/** MEOP with what it does not include, and the first failure with increasing pressure. */
function pressureLine({ failureOrder, meop }: Review): string {
  const [first] = failureOrder;
  return [
    `MEOP: ${meop.pressure}${notIncludedText(meop, '; ')}.`,
    ...(first === undefined
      ? []
      : [
          `With increasing pressure, ${partName(first.part)}, ${first.mode}, is the first limit reached, at ${first.failurePressure} (${first.meopRatio.toFixed(2)} × MEOP, no factor of safety).`,
        ]),
  ].join(' ');
}

function headlineVerdict({ governing, verdict }: Review): Verdict {
  if (verdict === 'does not hold' || governing === undefined) return 'fail';
  return verdict === 'holds' ? verdictOf(governing.marginOfSafety) : 'marginal';
}

/** The verdict of the review and of the recorded firing, whichever is worse. */
function reportVerdict({ verdict }: Review, comparison: MotorComparison | undefined): ReviewVerdict {
  const both = [verdict, ...(comparison === undefined ? [] : [comparisonVerdict(comparison)])];
  return (['does not hold', 'not judged'] as const).find((worse) => both.includes(worse)) ?? 'holds';
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
