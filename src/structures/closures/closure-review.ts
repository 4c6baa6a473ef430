import type { Quantity } from '../../units';
import type { PressureDrivenMargin } from '../failure-mode';
import { governing, marginTable } from '../margin';

/** The retention of a closure and the margins of its failure modes. */
export interface ClosureReview {
  readonly endForce: Quantity<'force'>;
  readonly margins: readonly PressureDrivenMargin[];
  readonly governing: PressureDrivenMargin;
  readonly passes: boolean;
  readonly cautions: readonly string[];
  toString(): string;
}

/** A check of the retention of a closure without a margin of safety. */
export interface ClosureCheck {
  readonly check: string;
  readonly passes: boolean;
  readonly value: Quantity | number;
  readonly limit: Quantity | number;
  /** Result in words. */
  readonly message: string;
  readonly source: string;
}

/** A closure in a retaining ring and the margins of its failure modes. */
export interface RetainingRingReview extends ClosureReview {
  /** Wall under the groove and edge margin, against practice and the ring tables. */
  readonly checks: readonly ClosureCheck[];
  /** Failure modes that could not be evaluated, each as a sentence that names the field to specify. */
  readonly notEvaluated: readonly string[];
}

/** A threaded closure and the margins of its failure modes. */
export interface ThreadedClosureReview extends ClosureReview {
  /** Growth of the case in diameter relative to the closure by pressure, flanks and heat, which reduces the thread overlap. */
  readonly growth: Quantity<'length'>;
}

type Facts = Pick<ClosureReview, 'endForce' | 'margins' | 'cautions'>;

/** The review of a retaining ring from its margins and checks. */
export const retainingRingReview = (
  facts: Facts & Pick<RetainingRingReview, 'checks' | 'notEvaluated'>,
): RetainingRingReview =>
  reviewed(
    facts,
    ({ endForce, governing: worst }) => `end force ${endForce}; governed by ${worst.mode}`,
    facts.checks.every(({ passes }) => passes),
    [
      ...facts.checks.map(
        ({ check, passes, message }) => `${passes ? 'satisfied' : 'NOT SATISFIED'}: ${check}. ${message}`,
      ),
      ...facts.notEvaluated.map((one) => `not evaluated: ${one}`),
    ],
  );

/** The review of a threaded closure from its margins. */
export const threadedClosureReview = (
  facts: Facts & Pick<ThreadedClosureReview, 'growth'>,
): ThreadedClosureReview =>
  reviewed(
    facts,
    ({ endForce, governing: worst }) =>
      `end force ${endForce}; growth of the case relative to the closure ${facts.growth}; governed by ${worst.mode}`,
  );

function reviewed<F extends Facts>(
  facts: F,
  head: (review: ClosureReview) => string,
  isSatisfied = true,
  more: readonly string[] = [],
): F & ClosureReview {
  const { margins, cautions } = facts;
  const worst = governing(margins);
  const text = (): string =>
    [head(review), marginTable(margins), ...more, ...cautions.map((caution) => `caution: ${caution}`)].join(
      '\n',
    );
  const review = {
    ...facts,
    governing: worst,
    passes: isSatisfied && worst.marginOfSafety >= 0,
    toString: text,
    ...{ [Symbol.for('nodejs.util.inspect.custom')]: text },
  };
  return review;
}
