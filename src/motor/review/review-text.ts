import { table } from '../../units';
import { withTwins } from '../twin-rows';
import type { Review } from './review-result';
import { everySeal } from './seal-review';

/** A review as people read it in a terminal. */
export function reviewText(review: Omit<Review, 'toString'>): string {
  const { motor, meop, margins, governing, failureOrder, flow, instruments } = review;
  const sign = (value: number): string => `${value < 0 ? '−' : '+'}${Math.abs(value).toFixed(2)}`;
  const verdict = (holds: boolean): string => (holds ? 'holds' : 'FAILS');
  const rows = once(
    margins.map((one) => ({
      part: one.part,
      mode: one.mode,
      applied: one.applied,
      allowable: one.allowable,
      factor: one.factor,
      margin: sign(one.marginOfSafety),
      ...(one.reachedAt && { 'reached at': one.reachedAt }),
    })),
  );
  const order = once(
    failureOrder.map(({ part, mode, reachedAt, timesMeop }) => ({
      part,
      mode,
      at: reachedAt,
      'times MEOP': timesMeop.toFixed(2),
    })),
  ).slice(0, 8);
  const checks = [
    ...everySeal(review).flatMap(({ closure, place, seal }) =>
      seal.checks.map(({ check, holds, says }) => ({
        what: `${closure} seal ${place}`,
        check,
        '': verdict(holds),
        says,
      })),
    ),
    ...flow.map(({ check, holds, says }) => ({ what: 'flow', check, '': verdict(holds), says })),
    ...instruments.flatMap(({ name, checks: own }) =>
      own.map(({ check, holds, says }) => ({ what: name, check, '': verdict(holds), says })),
    ),
  ];
  return [
    `${motor.name}: MEOP ${meop.pressure} above ambient; ${
      governing === undefined
        ? 'no mode could be judged'
        : `${review.holds ? 'every margin holds' : 'NOT EVERY MARGIN HOLDS'}, governed by ${governing.part}, ${governing.mode} (${sign(governing.marginOfSafety)})`
    }`,
    '',
    ...(rows.length > 0 ? [table(rows), ''] : []),
    ...(order.length > 0 ? ['first to give way as pressure rises, without factors:', table(order), ''] : []),
    ...(checks.length > 0 ? [table(checks), ''] : []),
    ...review.assumptions.map((line) => `assumed: ${line}`),
    ...review.cautions.map((line) => `caution: ${line}`),
  ].join('\n');
}

const once = <R extends { readonly part: string }>(rows: readonly R[]): readonly R[] =>
  withTwins(rows, ({ part: _, ...rest }) => Object.values(rest));
