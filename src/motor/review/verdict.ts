import type { FailureMargin, PartId } from '../../structures';
import type { Motor } from '../document';
import { type Finding, mergedFindings } from './finding';
import type { Unjudged } from './part-review';

/**
 * Result of a review or report. `does not hold`: a margin of safety is negative or a check is not satisfied. `not judged`: a
 * part that bears pressure, or an aspect of it, could not be evaluated. It is not an approval to fire.
 */
export type ReviewVerdict = 'holds' | 'does not hold' | 'not judged';

/** The parts of a motor that bear pressure. */
export const pressureParts: readonly PartId[] = [
  'case',
  'head-closure',
  'head-joint',
  'aft-closure',
  'aft-joint',
  'throat-insert',
];

/**
 * What could not be evaluated, from the case to the nozzle, with every part that bears pressure and has neither a margin of
 * safety nor a reason.
 */
export const withSilentParts = (
  margins: readonly FailureMargin[],
  unjudged: readonly Unjudged[],
): readonly Unjudged[] =>
  [
    ...unjudged,
    ...pressureParts
      .filter((id) => ![...margins, ...unjudged].some(({ part }) => part === id))
      .map((part) => ({ part, reason: 'No failure mode could be evaluated.' })),
  ].sort((a, b) => orderOf(a.part) - orderOf(b.part));

/** Place of a part among those that bear pressure; any other part is last. */
const orderOf = (part: PartId): number => {
  const place = pressureParts.indexOf(part);
  return place < 0 ? pressureParts.length : place;
};

/** The verdict from findings, of which the worst is the first. */
export const verdictFrom = ([worst]: readonly Finding[]): ReviewVerdict => worst?.state ?? 'not judged';

/** The verdict in one sentence that names the worst item with its figure. */
export function verdictSentence(all: readonly Finding[], { stand, instruments = [] }: Motor): string {
  const findings = mergedFindings(all);
  const [worst] = findings;
  if (worst === undefined) return 'Not judged: the document does not describe the hardware.';
  const others = (state: Finding['state']): number =>
    findings.filter((one) => one !== worst && one.state === state).length;
  const failing = others('does not hold');
  const open = others('not judged');
  const { state, about, item, message } = worst;
  if (state === 'does not hold')
    return `Does not hold: ${about}, ${item}${worst.marginOfSafety === undefined ? ': ' : ', '}${bare(message)}${counted(failing, '; # more')}${counted(open, '; # not judged')}.`;
  if (state === 'not judged')
    return `Not judged: ${about} (${bare(message)})${counted(open, ' and # more')}.`;
  const checks = findings.filter(({ marginOfSafety }) => marginOfSafety === undefined).length;
  const absent = [
    ...(stand === undefined ? ['stand'] : []),
    ...(stand?.restraint === undefined ? ['restraint'] : []),
    ...(instruments.length === 0 ? ['instruments'] : []),
  ];
  return `Holds at MEOP: minimum ${message}, ${about}, ${item}${counted(checks, '; all # checks are satisfied')}${absent.length === 0 ? '' : `; not described: ${absent.join(', ')}`}.`;
}

/** A sentence without its full stop. */
const bare = (message: string): string => message.replace(/\.$/, '');

const counted = (count: number, text: string): string => (count === 0 ? '' : text.replace('#', `${count}`));
