import { partName } from '../../structures';
import { formatNumber } from '../../units';
import type { MotorComparison } from '../compare/comparison';
import type { Review } from '../review/review-result';
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

/** What a report on a review says. */
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
      { message: headline(review), verdict: overall(review) },
      ...(recorded === undefined
        ? []
        : [{ message: recorded.message, verdict: recorded.speaksAgainst ? 'fail' : 'pass' } as const]),
    ],
    verdict: recorded?.speaksAgainst && overall(review) === 'pass' ? 'marginal' : overall(review),
    keyFigures: [
      ['MEOP', shown(meop.pressure)],
      ...(governing === undefined
        ? []
        : [['least margin', signed(governing.marginOfSafety, verdictOf(governing.marginOfSafety))] as const]),
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

/** The numbers that a recorded firing adds. */
function firedFigures(
  { meop }: Review,
  { peakPressureUpperBound, measured, reuse }: MotorComparison,
): ReportContent['keyFigures'] {
  const against = reuse.findings.filter(({ effect }) => effect === 'adverse').length;
  const over = peakPressureUpperBound !== undefined && peakPressureUpperBound.si > meop.pressure.si;
  return [
    ...(peakPressureUpperBound === undefined
      ? []
      : [['reached when fired', shown(peakPressureUpperBound, over ? 'fail' : 'pass')] as const]),
    ...(measured.totalImpulse === undefined
      ? []
      : [['impulse when fired', shown(measured.totalImpulse.value)] as const]),
    [
      'facts against using it again',
      { text: String(against), value: against, verdict: against > 0 ? 'fail' : 'pass' },
    ],
  ];
}

function headline(review: Review): string {
  const { governing, failureOrder, meop } = review;
  if (governing === undefined)
    return 'No failure mode could be judged: the document does not describe the hardware.';
  const { id, part, mode, marginOfSafety } = governing;
  const [first] = failureOrder;
  const least = `the least margin is ${signed(marginOfSafety).text}: ${partName(part)}, ${mode}`;
  const isSame = first?.part === part && first.id === id;
  const order =
    first === undefined
      ? ''
      : `. As pressure rises, ${isSame ? 'the same mode comes first' : `${partName(first.part)}, ${first.mode}, comes first`}, at ${first.failurePressure} (${formatNumber(first.meopRatio, 3)} times MEOP)`;
  const others = [
    ...(review.sealsHold ? [] : ['a seal is outside its limits']),
    ...(review.flow.every(({ passes }) => passes) ? [] : ['a limit of the port is passed']),
    ...(review.instruments.every(({ passes }) => passes)
      ? []
      : ['an instrument does not cover what it will see']),
  ];
  const also = others.length === 0 ? '' : `. Besides, ${others.join(', and ')}`;
  const missing = missingClosures(review);
  const unjudged =
    missing.length === 0
      ? ''
      : `. Not judged, since the document does not describe it: ${missing.join(' and ')}, with joint and seals`;
  const verdict = review.passes
    ? `Every margin ${missing.length === 0 ? '' : 'that was judged '}holds at ${meop.pressure}`
    : `Not every margin holds at ${meop.pressure}`;
  return `${verdict}; ${least}${order}${unjudged}${also}.`;
}

/** Ends of the pressure vessel that nobody has described: what was judged is not the whole of it. */
const missingClosures = ({ motor }: Review): readonly string[] =>
  (['head', 'aft'] as const)
    .filter((end) => motor.closures?.[end] === undefined)
    .map((end) => `the ${end} closure`);

function overall(review: Review): Verdict {
  const { governing, passes, sealsHold, flow, instruments } = review;
  if (!passes || governing === undefined) return 'fail';
  const sound =
    missingClosures(review).length === 0 && sealsHold && [...flow, ...instruments].every((one) => one.passes);
  return sound ? verdictOf(governing.marginOfSafety) : 'marginal';
}

function assumptionSection({ assumptions, cautions }: Review): readonly ReportSection[] {
  const isEmpty = assumptions.length + cautions.length === 0;
  return isEmpty
    ? []
    : [
        {
          id: 'cautions',
          title: 'Cautions and assumptions',
          lead: [
            'What this review rests on that could be wrong, and what was taken where the document does not say.',
          ],
          tables: [],
          figures: [],
          cautions,
          remarks: assumptions.map((text) => `Assumed: ${text}`),
        },
      ];
}
