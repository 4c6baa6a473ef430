import { type FailureMargin, partName } from '../../structures';
import type { PartCheck, Unjudged } from './part-review';
import type { ReviewCheck } from './review-check';
import type { InstrumentReview, Review } from './review-result';
import { allSeals } from './seal-review';

/** A margin, a check or a part that is not judged, as it counts in the verdict. */
export interface Finding {
  /** Part, seal, port or instrument. */
  readonly about: string;
  /** Failure mode or check; for what is not judged, empty. */
  readonly item: string;
  readonly state: 'holds' | 'does not hold' | 'not judged';
  /** The figure: a margin of safety, the result of a check, or the reason why it is not judged. */
  readonly message: string;
  readonly marginOfSafety?: number;
}

/** What the verdict depends on. */
export interface Judged extends Pick<Review, 'seals' | 'faceSeals' | 'flow'> {
  readonly margins: readonly FailureMargin[];
  /** Margins of the proof test. */
  readonly proofMargins: readonly FailureMargin[];
  readonly checks: readonly PartCheck[];
  readonly instruments: readonly InstrumentReview[];
  readonly unjudged: readonly Unjudged[];
}

/** The name of a seal. */
export const sealName = (closure: 'head' | 'aft', place: number): string =>
  `${closure} closure, seal ${place}`;

/** The name of the flow in the port. */
export const portName = 'flow in the port';

const order: readonly Finding['state'][] = ['does not hold', 'not judged', 'holds'];

/**
 * All findings, the worst first: negative margins of safety from the lowest, checks that are not satisfied, what is
 * not judged, then the margins and checks that hold, the lowest margin first.
 */
export function findingsOf(judged: Judged): readonly Finding[] {
  const { margins, proofMargins, checks, flow, instruments, unjudged } = judged;
  const all = [
    ...margins.map((one) => ofMargin(one, '')),
    ...proofMargins.map((one) => ofMargin(one, ' at proof pressure')),
    ...checks.map((one) => ofCheck(partName(one.part), one)),
    ...allSeals(judged).flatMap(({ closure, place, seal }) =>
      seal.checks.map((one) => ofCheck(sealName(closure, place), one)),
    ),
    ...flow.map((one) => ofCheck(portName, one)),
    ...instruments.flatMap(({ name, checks: own }) => own.map((one) => ofCheck(name, one))),
    ...unjudged.map(
      ({ part, reason }): Finding => ({
        about: partName(part),
        item: '',
        state: 'not judged',
        message: reason,
      }),
    ),
  ];
  const margin = ({ marginOfSafety = Number.POSITIVE_INFINITY }: Finding): number => marginOfSafety;
  return order.flatMap((state) =>
    all
      .filter((one) => one.state === state)
      .sort((a, b) => (margin(a) === margin(b) ? 0 : margin(a) - margin(b))),
  );
}

const ofMargin = ({ part, mode, marginOfSafety }: FailureMargin, when: string): Finding => ({
  about: partName(part),
  item: `${mode}${when}`,
  state: marginOfSafety < 0 ? 'does not hold' : 'holds',
  message: `MS ${marginOfSafety < 0 ? '−' : '+'}${Math.abs(marginOfSafety).toFixed(2)}`,
  marginOfSafety,
});

const ofCheck = (
  about: string,
  { check, passes, message }: Pick<ReviewCheck, 'check' | 'passes' | 'message'>,
): Finding => ({ about, item: check, state: passes ? 'holds' : 'does not hold', message });

/** Findings with equal ones of head and aft merged, as they are counted and listed. */
export function mergedFindings(findings: readonly Finding[]): readonly Finding[] {
  const ofEnd = (one: Finding, end: string): string =>
    JSON.stringify([one.about.replace(/^(?:head|aft) /, `${end} `), one.item, one.state, one.message]);
  const keys = new Set(
    findings.map(({ about, item, state, message }) => JSON.stringify([about, item, state, message])),
  );
  return findings.flatMap((one) => {
    const end = /^(head|aft) /.exec(one.about)?.[1];
    if (end === undefined || !keys.has(ofEnd(one, end === 'head' ? 'aft' : 'head'))) return [one];
    return end === 'aft' ? [] : [{ ...one, about: one.about.replace(/^head/, 'head and aft') }];
  });
}
