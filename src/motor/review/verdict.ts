import type { FailureMargin, PartId } from '../../structures';
import type { Unjudged } from './part-review';

/**
 * Result of a review or report: `fails` where a margin of safety is negative or a check is not satisfied, `not fully
 * evaluated` where a part that bears pressure could not be evaluated. It is not an approval to fire.
 */
export type ReviewVerdict = 'satisfied' | 'fails' | 'not fully evaluated';

const pressureParts: readonly PartId[] = [
  'case',
  'head-closure',
  'head-joint',
  'aft-closure',
  'aft-joint',
  'throat-insert',
];

/** What could not be evaluated, with every part that bears pressure and has neither a margin of safety nor a reason. */
export const withSilentParts = (
  margins: readonly FailureMargin[],
  unjudged: readonly Unjudged[],
): readonly Unjudged[] => [
  ...unjudged,
  ...pressureParts
    .filter((id) => ![...margins, ...unjudged].some(({ part }) => part === id))
    .map((part) => ({ part, reason: 'No failure mode could be evaluated.' })),
];

/** The verdict from margins of safety, checks and what could not be evaluated. */
export function verdictFrom(
  margins: readonly FailureMargin[],
  checks: readonly { readonly passes: boolean }[],
  unjudged: readonly Unjudged[],
): ReviewVerdict {
  const fails =
    margins.some(({ marginOfSafety }) => marginOfSafety < 0) || checks.some(({ passes }) => !passes);
  if (fails) return 'fails';
  return unjudged.length > 0 ? 'not fully evaluated' : 'satisfied';
}
