import { type PartId, partName } from '../../structures';
import type { MotorComparison } from '../compare/comparison';
import { mergedFindings, portName, sealName } from '../review/finding';
import type { Review } from '../review/review-result';
import { allSeals } from '../review/seal-review';
import type { ReviewVerdict } from '../review/verdict';
import { type ReportSection, type Shown, section, signed, textCell, type Verdict } from './content';

/** Statement on the recorded firing for the headline of a review. */
export function recordedLine(
  { meop }: Review,
  { peakPressureUpperBound, reuse, diagnosis, impliedArea }: MotorComparison,
): { readonly message: string; readonly speaksAgainst: boolean } {
  const against = reuse.findings.some(({ effect }) => effect === 'adverse');
  const flaw = diagnosis.length > 0 ? impliedArea?.flaw : undefined;
  const seen =
    peakPressureUpperBound === undefined
      ? 'The peak pressure of the recorded firing is not known'
      : `The recorded firing reached up to ${peakPressureUpperBound} (${(peakPressureUpperBound.si / meop.pressure.si).toFixed(2)} × MEOP)`;
  const why =
    flaw === undefined ? '' : ', with more burning area than the flaw-free grain, consistent with a flaw';
  return { message: `${seen}${why}. ${reuse.summary}`, speaksAgainst: against };
}

const statedVerdict: Readonly<Record<ReviewVerdict, Verdict>> = {
  holds: 'pass',
  'not judged': 'marginal',
  'does not hold': 'fail',
};

/** Summary of the evaluation: the verdict, what prevents a better one, and one row per part. */
export function glanceSection(review: Review, comparison?: MotorComparison): readonly ReportSection[] {
  const { cautions, assumptions, findings, verdictSentence } = review;
  const against = mergedFindings(findings).filter(({ state }) => state !== 'holds');
  const firing = comparison && recordedLine(review, comparison);
  return section({
    id: 'glance',
    title: 'Summary',
    lead: [
      verdictSentence,
      `These results carry ${cautions.length} cautions and depend on ${assumptions.length} assumptions. Read both before using them.`,
    ],
    tables: [
      {
        name: 'What does not hold or is not judged, the most severe first',
        columns: [{ name: 'part' }, { name: 'result' }, { name: 'item' }],
        rows: against.map(({ about, item, state, message }) => [
          textCell(about),
          { text: state, verdict: statedVerdict[state] },
          textCell(item === '' ? message : `${item}: ${message}`),
        ]),
      },
      {
        name: 'Summary by part: minimum margin of safety, or what does not hold or is not judged',
        columns: [{ name: 'part' }, { name: 'result' }, { name: 'governing item' }],
        rows: [
          ...partRows(review),
          ...(firing === undefined
            ? []
            : [
                [
                  textCell('recorded firing'),
                  firing.speaksAgainst
                    ? ({ text: 'adverse findings', verdict: 'fail' } as const)
                    : ({ text: 'no adverse findings', verdict: 'pass' } as const),
                  textCell('see the section on the hardware after the firing'),
                ],
              ]),
        ],
      },
    ],
  });
}

/** One row per part: the worst finding on it. */
function partRows(review: Review): readonly (readonly Shown[])[] {
  const { findings, instruments } = review;
  const names = (parts: readonly PartId[]): readonly string[] => parts.map(partName);
  const groups: readonly (readonly [name: string, about: readonly string[]])[] = [
    ['case', names(['case'])],
    ['head closure and joint', names(['head-closure', 'head-joint'])],
    ['aft closure and joint', names(['aft-closure', 'aft-joint'])],
    ['throat insert', names(['throat-insert'])],
    ['seals', allSeals(review).map(({ closure, place }) => sealName(closure, place))],
    ['flow in the port', [portName]],
    ['instruments', instruments.map(({ name }) => name)],
    ['stand', names(['stand'])],
    ['restraint', names(['restraint'])],
  ];
  const grouped = new Set(groups.flatMap(([, about]) => about));
  const others = [...new Set(findings.map(({ about }) => about))].filter((about) => !grouped.has(about));
  return [...groups, ...others.map((about) => [about, [about]] as const)].map(([name, about]) => {
    const own = findings.filter((one) => about.includes(one.about)); // sorted, the worst first
    const [worst] = own;
    if (worst === undefined)
      return [
        textCell(name),
        { text: 'not described', verdict: 'marginal' },
        textCell(name === portName ? 'no port' : 'not described in the document'),
      ];
    const { state, item, message, marginOfSafety } = worst;
    const count = own.filter((one) => one.state === state).length;
    const text =
      marginOfSafety !== undefined
        ? `${signed(marginOfSafety).text}: ${item}`
        : state === 'holds'
          ? `${count} within limits`
          : `${item === '' ? message : `${item}: ${message}`}${count > 1 ? ` (${count - 1} more)` : ''}`;
    return [
      textCell(name),
      { text: state, verdict: statedVerdict[state] },
      { text, ...(marginOfSafety !== undefined && { value: marginOfSafety }) },
    ];
  });
}
