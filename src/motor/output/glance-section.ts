import type { PartId } from '../../structures';
import { formatNumber } from '../../units';
import type { MotorComparison } from '../compare/comparison';
import type { Review } from '../review/review-result';
import { allSeals } from '../review/seal-review';
import { type ReportSection, type Shown, section, signed, textCell, type Verdict } from './content';

/** What a recorded firing adds to the verdict on the motor. */
export function recordedLine(
  { meop }: Review,
  { peakPressureUpperBound, reuse, diagnosis, impliedArea }: MotorComparison,
): { readonly message: string; readonly speaksAgainst: boolean } {
  const against = reuse.findings.some(({ effect }) => effect === 'adverse');
  const flaw = diagnosis.length > 0 ? impliedArea?.flaw : undefined;
  const seen =
    peakPressureUpperBound === undefined
      ? 'What pressure its recorded firing reached is not known'
      : `Its recorded firing reached up to ${peakPressureUpperBound}, ${formatNumber(peakPressureUpperBound.si / meop.pressure.si, 3)} times MEOP`;
  const why = flaw === undefined ? '' : ', with more burning area than a sound grain has, as a flaw does';
  return { message: `${seen}${why}: ${reuse.summary}.`, speaksAgainst: against };
}

/** The verdict part by part, for whoever reads the first page only. */
export function glanceSection(review: Review, comparison?: MotorComparison): readonly ReportSection[] {
  const { margins, sealsHold, flow, instruments, restraint, cautions, assumptions } = review;
  const seals = allSeals(review);
  const least = (parts: readonly PartId[]): Shown | undefined => {
    const one = margins.find(({ part }) => parts.includes(part)); // the least comes first
    return one && { ...signed(one.marginOfSafety), text: `${signed(one.marginOfSafety).text}: ${one.mode}` };
  };
  const row = (name: string, verdict: Verdict | undefined, message: Shown): readonly Shown[] => [
    textCell(name),
    verdict === undefined
      ? { text: 'not judged', verdict: 'marginal' }
      : { text: verdict === 'pass' ? 'holds' : 'does not hold', verdict },
    message,
  ];
  const byMargin = (name: string, parts: readonly PartId[]) => {
    const found = least(parts);
    const verdict = found === undefined ? undefined : (found.value ?? 0) < 0 ? 'fail' : 'pass';
    return row(name, verdict, found ?? textCell('the document does not describe it'));
  };
  const byChecks = (name: string, checks: readonly { readonly passes: boolean; readonly name: string }[]) => {
    const failed = checks.filter(({ passes }) => !passes).map((one) => one.name);
    const message = failed.length > 0 ? failed.join(', ') : `${checks.length} within limits`;
    return row(
      name,
      checks.length === 0 ? undefined : failed.length > 0 ? 'fail' : 'pass',
      textCell(checks.length === 0 ? 'the document does not describe it' : message),
    );
  };
  const firing = comparison && recordedLine(review, comparison);
  return section({
    id: 'glance',
    title: 'At a glance',
    lead: [
      `${cautions.length} cautions and ${assumptions.length} assumptions stand behind this: read them before relying on it.`,
    ],
    tables: [
      {
        name: 'Part by part: the least margin, or what is outside its limits',
        columns: [{ name: 'part' }, { name: 'verdict' }, { name: 'what decides' }],
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
                ? 'the document does not describe them'
                : sealsHold
                  ? `${seals.length} within limits over all tolerances`
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
                    ? ({ text: 'speaks against', verdict: 'fail' } as const)
                    : ({ text: 'nothing against', verdict: 'pass' } as const),
                  textCell('see what the hardware saw'),
                ],
              ]),
        ],
      },
    ],
  });
}
