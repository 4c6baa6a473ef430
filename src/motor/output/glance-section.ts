import { formatNumber } from '../../units';
import type { MotorComparison } from '../compare/comparison';
import type { Review, ReviewPart } from '../review/review-result';
import { everySeal } from '../review/seal-review';
import { twinLines } from '../twin-lines';
import { type ReportSection, type Shown, section, signed, type Verdict, words } from './content';

/** What a recorded firing adds to the verdict on the motor. */
export function recordedLine(
  { meop }: Review,
  { pressureSeen, reuse, lesson, impliedArea }: MotorComparison,
): { readonly says: string; readonly speaksAgainst: boolean } {
  const against = reuse.facts.some(({ speaks }) => speaks === 'against');
  const flaw = lesson.length > 0 ? impliedArea?.flaw : undefined;
  const seen =
    pressureSeen === undefined
      ? 'What pressure its recorded firing reached is not known'
      : `Its recorded firing reached up to ${pressureSeen}, ${formatNumber(pressureSeen.si / meop.pressure.si, 3)} times MEOP`;
  const why = flaw === undefined ? '' : ', with more burning area than a sound grain has, as a flaw does';
  return { says: `${seen}${why}: ${reuse.says}.`, speaksAgainst: against };
}

/** The verdict part by part, for whoever reads the first page only. */
export function glanceSection(review: Review, comparison?: MotorComparison): readonly ReportSection[] {
  const { margins, sealsHold, flow, instruments, restraint, cautions, assumptions } = review;
  const seals = everySeal(review);
  const least = (parts: readonly ReviewPart[]): Shown | undefined => {
    const one = margins.find(({ part }) => parts.includes(part)); // the least comes first
    return one && { ...signed(one.marginOfSafety), text: `${signed(one.marginOfSafety).text}: ${one.mode}` };
  };
  const row = (name: string, verdict: Verdict | undefined, says: Shown): readonly Shown[] => [
    words(name),
    verdict === undefined
      ? { text: 'not judged', verdict: 'close' }
      : { text: verdict === 'holds' ? 'holds' : 'does not hold', verdict },
    says,
  ];
  const byMargin = (name: string, parts: readonly ReviewPart[]) => {
    const found = least(parts);
    const verdict = found === undefined ? undefined : (found.value ?? 0) < 0 ? 'fails' : 'holds';
    return row(name, verdict, found ?? words('the document does not describe it'));
  };
  const byChecks = (name: string, checks: readonly { readonly holds: boolean; readonly name: string }[]) => {
    const failed = checks.filter(({ holds }) => !holds).map((one) => one.name);
    const says = failed.length > 0 ? failed.join(', ') : `${checks.length} within limits`;
    return row(
      name,
      checks.length === 0 ? undefined : failed.length > 0 ? 'fails' : 'holds',
      words(checks.length === 0 ? 'the document does not describe it' : says),
    );
  };
  const firing = comparison && recordedLine(review, comparison);
  return section({
    id: 'glance',
    title: 'At a glance',
    lead: [
      `${twinLines(cautions).length} cautions and ${assumptions.length} assumptions stand behind this: read them before relying on it.`,
    ],
    tables: [
      {
        name: 'Part by part: the least margin, or what is outside its limits',
        columns: [{ name: 'part' }, { name: 'verdict' }, { name: 'what decides' }],
        rows: [
          byMargin('case', ['case']),
          byMargin('head closure and joint', ['head closure', 'head joint']),
          byMargin('aft closure and joint', ['aft closure', 'aft joint']),
          byMargin('throat insert', ['throat insert']),
          row(
            'seals',
            seals.length === 0 ? undefined : sealsHold ? 'holds' : 'fails',
            words(
              seals.length === 0
                ? 'the document does not describe them'
                : sealsHold
                  ? `${seals.length} within limits over all tolerances`
                  : seals
                      .filter(({ seal }) => !seal.holds)
                      .map(({ closure, place }) => `${closure} closure, seal ${place}`)
                      .join(', '),
            ),
          ),
          byChecks(
            'flow in the port',
            flow.map(({ check, holds }) => ({ name: check, holds })),
          ),
          byChecks('instruments', instruments),
          byMargin('stand', ['stand']),
          byMargin('restraint', restraint === undefined ? [] : ['restraint']),
          ...(firing === undefined
            ? []
            : [
                [
                  words('recorded firing'),
                  firing.speaksAgainst
                    ? ({ text: 'speaks against', verdict: 'fails' } as const)
                    : ({ text: 'nothing against', verdict: 'holds' } as const),
                  words('see what the hardware saw'),
                ],
              ]),
        ],
      },
    ],
  });
}
