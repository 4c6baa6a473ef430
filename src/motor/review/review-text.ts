import type { NozzleBlowOut } from '../../nozzle';
import { type PartId, partName } from '../../structures';
import { failureOrderText } from '../../structures/failure-mode/failure-order';
import { table } from '../../units';
import { blockageText } from '../assumed-blockage';
import { heatLossText } from '../heat-loss-of';
import { notIncludedText } from '../meop/meop-result';
import { linesOf, written } from '../part-lines';
import { namedRows } from '../part-rows';
import { inspectionLines, lifeLines } from '../reuse/reuse-lines';
import { ignitionText } from './ignition-review';
import type { ProofReview } from './proof-review';
import type { Review } from './review-result';
import { allSeals } from './seal-review';

/** The review as text. */
export function reviewText(review: Omit<Review, 'toString'>): string {
  const { motor, meop, margins, failureOrder, flow, instruments } = review;
  const sign = (value: number): string => `${value < 0 ? '−' : '+'}${Math.abs(value).toFixed(2)}`;
  const verdict = (passes: boolean): string => (passes ? 'pass' : 'FAIL');
  const rows = once(
    margins.map(({ part, mode, applied, allowable, factor, marginOfSafety: left, failurePressure: at }) => ({
      part,
      cells: { mode, applied, allowable, factor, margin: sign(left), ...(at && { 'failure pressure': at }) },
    })),
  );
  const order = once(
    failureOrder.map(({ part, mode, consequence, failurePressure: at, meopRatio }) => ({
      part,
      cells: { mode, consequence, at, '× MEOP': meopRatio.toFixed(2) },
    })),
  ).slice(0, 8);
  const orders = written(
    (['head', 'aft'] as const).flatMap((end) => {
      const own = review.failureOrders[end];
      return own === undefined ? [] : linesOf(`${end}-joint`, [failureOrderText(own)]);
    }),
  );
  const checks = [
    ...review.checks.map(({ part, check, passes, message }) => ({
      what: partName(part),
      check,
      '': verdict(passes),
      message,
    })),
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
    `${motor.name}. ${review.verdictSentence}`,
    `MEOP ${meop.pressure}${notIncludedText(meop, '; ')}.`,
    '',
    ...(rows.length > 0 ? [table(rows), ''] : []),
    ...(order.length > 0 ? ['failure sequence, without factors of safety:', table(order), ''] : []),
    ...orders,
    proofLine(review.proof),
    ...(meop.worstCase.blockage === undefined ? [] : [blockageText(meop.worstCase.blockage)]),
    ...(review.heatLoss === undefined ? [] : [heatLossText(review.heatLoss)]),
    ignitionText(review.ignition),
    ...(checks.length > 0 ? [table(checks), ''] : []),
    ...(review.retention === undefined ? [] : [retentionLine(review.retention), '']),
    ...review.unjudged.map(({ part, reason }) => `not judged: ${partName(part)}: ${reason}`),
    ...lifeLines(review.reuse).map((line) => `reuse: ${line}`),
    ...inspectionLines(review.reuse).map((line) => `inspect: ${line}`),
    ...review.assumptions.map((line) => `assumption: ${line}`),
    ...review.cautions.map((line) => `caution: ${line}`),
  ].join('\n');
}

/** The proof test in one line. */
export function proofLine({ pressure, temperature, weakest, nearYield }: ProofReview): string {
  const weak =
    weakest === undefined
      ? 'no mode evaluated'
      : `minimum margin ${weakest.marginOfSafety < 0 ? '−' : '+'}${Math.abs(weakest.marginOfSafety).toFixed(2)}, ${partName(weakest.part)}, ${weakest.mode}`;
  const near = nearYield.map(({ part, mode }) => `${partName(part)}, ${mode}`);
  return `Proof test at ${pressure}, ${temperature ?? 'room temperature'}, against yield with a factor of 1: ${weak}. ${near.length === 0 ? 'No part is above 90 % of yield.' : `Above 90 % of yield: ${near.join('; ')}.`}`;
}

const once = <C extends object>(rows: readonly { readonly part: PartId; readonly cells: C }[]) =>
  namedRows(rows, ({ cells }) => Object.values(cells)).map(({ part, cells }) => ({ part, ...cells }));

const retentionLine = ({ blocked, annulus, flowing }: NozzleBlowOut): string =>
  `nozzle retention: ${blocked} with the throat blocked, for which it is evaluated; ${annulus} without the throat; ${flowing} in ideal flow`;
