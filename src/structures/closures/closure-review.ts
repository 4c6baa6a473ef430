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

/** A closure in a retaining ring and the margins of its failure modes. */
export type RetainingRingReview = ClosureReview;

/** A threaded closure and the margins of its failure modes. */
export interface ThreadedClosureReview extends ClosureReview {
  /** Growth of the case in diameter relative to the closure by pressure, flanks and heat, which reduces the thread overlap. */
  readonly growth: Quantity<'length'>;
}

type Facts = Pick<ClosureReview, 'endForce' | 'margins' | 'cautions'>;

/** The review of a retaining ring from its margins. */
export const retainingRingReview = (facts: Facts): RetainingRingReview =>
  reviewed(facts, ({ endForce, governing: worst }) => `end force ${endForce}; governed by ${worst.mode}`);

/** The review of a threaded closure from its margins. */
export const threadedClosureReview = (
  facts: Facts & Pick<ThreadedClosureReview, 'growth'>,
): ThreadedClosureReview =>
  reviewed(
    facts,
    ({ endForce, governing: worst }) =>
      `end force ${endForce}; growth of the case relative to the closure ${facts.growth}; governed by ${worst.mode}`,
  );

function reviewed<F extends Facts>(facts: F, head: (review: ClosureReview) => string): F & ClosureReview {
  const { margins, cautions } = facts;
  const worst = governing(margins);
  const text = (): string =>
    [head(review), marginTable(margins), ...cautions.map((caution) => `caution: ${caution}`)].join('\n');
  const review = {
    ...facts,
    governing: worst,
    passes: worst.marginOfSafety >= 0,
    toString: text,
    ...{ [Symbol.for('nodejs.util.inspect.custom')]: text },
  };
  return review;
}
