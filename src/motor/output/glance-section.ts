import type { PartId } from '../../structures';
import type { MotorComparison } from '../compare/comparison';
import type { Review } from '../review/review-result';
import { allSeals } from '../review/seal-review';
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

/** Summary of the evaluation, one row per part. */
export function glanceSection(review: Review, comparison?: MotorComparison): readonly ReportSection[] {
  const { margins, sealsHold, flow, instruments, restraint, cautions, assumptions } = review;
  const seals = allSeals(review);
  const least = (parts: readonly PartId[]): Shown | undefined => {
    const one = margins.find(({ part }) => parts.includes(part)); // sorted, lowest first
    return one && { ...signed(one.marginOfSafety), text: `${signed(one.marginOfSafety).text}: ${one.mode}` };
  };
  const row = (name: string, verdict: Verdict | undefined, message: Shown): readonly Shown[] => [
    textCell(name),
    verdict === undefined
      ? { text: 'not evaluated', verdict: 'marginal' }
      : { text: verdict === 'pass' ? 'pass' : 'fail', verdict },
    message,
  ];
  const byMargin = (name: string, parts: readonly PartId[]) => {
    const found = least(parts);
    const verdict = found === undefined ? undefined : (found.value ?? 0) < 0 ? 'fail' : 'pass';
    return row(name, verdict, found ?? textCell('not described in the document'));
  };
  const byChecks = (name: string, checks: readonly { readonly passes: boolean; readonly name: string }[]) => {
    const failed = checks.filter(({ passes }) => !passes).map((one) => one.name);
    const message = failed.length > 0 ? failed.join(', ') : `${checks.length} within limits`;
    return row(
      name,
      checks.length === 0 ? undefined : failed.length > 0 ? 'fail' : 'pass',
      textCell(checks.length === 0 ? 'not described in the document' : message),
    );
  };
  const firing = comparison && recordedLine(review, comparison);
  return section({
    id: 'glance',
    title: 'Summary',
    lead: [
      `These results carry ${cautions.length} cautions and depend on ${assumptions.length} assumptions. Read both before using them.`,
    ],
    tables: [
      {
        name: 'Summary by part: minimum margin of safety, or checks not satisfied',
        columns: [{ name: 'part' }, { name: 'result' }, { name: 'governing item' }],
        rows: [
          byMargin('case', ['case']),
          byMargin('head closure and joint', ['head-closure', 'head-joint']),
          byMargin('aft closure and joint', ['aft-closure', 'aft-joint']),
          byMargin('throat insert', ['throat-insert']),
          row(
            'seals',
            seals.length === 0 ? undefined : sealsHold ? 'pass' : 'fail',
            textCell(
              seals.length === 0
                ? 'not described in the document'
                : sealsHold
                  ? `${seals.length} within limits over the full tolerance range`
                  : seals
                      .filter(({ seal }) => !seal.passes)
                      .map(({ closure, place }) => `${closure} closure, seal ${place}`)
                      .join(', '),
            ),
          ),
          byChecks(
            'flow in the port',
            flow.map(({ check, passes }) => ({ name: check, passes })),
          ),
          byChecks('instruments', instruments),
          byMargin('stand', ['stand']),
          byMargin('restraint', restraint === undefined ? [] : ['restraint']),
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
