import type { FailureMargin, PartId } from '../../structures';

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

/** The parts that bear pressure and have no margin of safety. */
export const partsNotEvaluated = (margins: readonly FailureMargin[]): readonly PartId[] =>
  pressureParts.filter((id) => margins.every(({ part }) => part !== id));

/** The verdict from margins of safety and checks. */
export function verdictFrom(
  margins: readonly FailureMargin[],
  checks: readonly { readonly passes: boolean }[],
): ReviewVerdict {
  const fails =
    margins.some(({ marginOfSafety }) => marginOfSafety < 0) || checks.some(({ passes }) => !passes);
  if (fails) return 'fails';
  return partsNotEvaluated(margins).length > 0 ? 'not fully evaluated' : 'satisfied';
}
