import { table } from '../../units';
import { mergeHeadAftRows } from '../merge-head-aft-rows';
import type { Review } from './review-result';
import { allSeals } from './seal-review';

/** A review as people read it in a terminal. */
export function reviewText(review: Omit<Review, 'toString'>): string {
  const { motor, meop, margins, governing, failureOrder, flow, instruments } = review;
  const sign = (value: number): string => `${value < 0 ? '−' : '+'}${Math.abs(value).toFixed(2)}`;
  const verdict = (passes: boolean): string => (passes ? 'holds' : 'FAILS');
  const rows = once(
    margins.map((one) => ({
      part: one.part,
      mode: one.mode,
      applied: one.applied,
      allowable: one.allowable,
      factor: one.factor,
      margin: sign(one.marginOfSafety),
      ...(one.failurePressure && { 'reached at': one.failurePressure }),
    })),
  );
  const order = once(
    failureOrder.map(({ part, mode, failurePressure, meopRatio }) => ({
      part,
      mode,
      at: failurePressure,
      'times MEOP': meopRatio.toFixed(2),
    })),
  ).slice(0, 8);
  const checks = [
    ...allSeals(review).flatMap(({ closure, place, seal }) =>
      seal.checks.map(({ check, passes, message }) => ({
        what: `${closure} seal ${place}`,
        check,
        '': verdict(passes),
        message,
      })),
    ),
    ...flow.map(({ check, passes, message }) => ({ what: 'flow', check, '': verdict(passes), message })),
    ...instruments.flatMap(({ name, checks: own }) =>
      own.map(({ check, passes, message }) => ({ what: name, check, '': verdict(passes), message })),
    ),
  ];
  return [
    `${motor.name}: MEOP ${meop.pressure} above ambient; ${
      governing === undefined
        ? 'no mode could be judged'
        : `${review.passes ? 'every margin holds' : 'NOT EVERY MARGIN HOLDS'}, governed by ${governing.part}, ${governing.mode} (${sign(governing.marginOfSafety)})`
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
  mergeHeadAftRows(rows, ({ part: _, ...rest }) => Object.values(rest));
