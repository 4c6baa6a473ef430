import { type Quantity, table } from '../../units';
import type { PressureDrivenMargin } from '../failure-mode';
import type { HolePattern } from '../holes';
import { governing } from '../margin';
import type { PeakStress } from './joint-peak';

/** One way the joint can fail. */
export interface JointMode extends PressureDrivenMargin {
  /** For fatigue, where the mode has a stress concentration. */
  readonly peak?: PeakStress | undefined;
}

/** A radial-bolt joint and the margins of its failure modes. */
export interface JointReview {
  /** On the closure. */
  readonly endForce: Quantity<'force'>;
  /** Of the worst bolt. */
  readonly boltLoad: Quantity<'force'>;
  /** The worst bolt's load over the equal share. */
  readonly shareFactor: number;
  readonly modes: readonly JointMode[];
  /** The mode of least margin. */
  readonly governing: JointMode;
  /** Whether every margin is zero or more. */
  readonly passes: boolean;
  /** The mode that is reached first as pressure rises, without factors. */
  readonly firstToFail: JointMode;
  /** Whether a bearing mode is reached before bolts, threads, tear-out and net section: holes stretch before anything breaks. */
  readonly bearingFirst: boolean;
  readonly pattern: HolePattern;
  readonly cautions: readonly string[];
  toString(): string;
}

/** What the rest of a joint's review follows from. */
export interface JointFacts extends Omit<JointReview, 'governing' | 'passes' | 'firstToFail' | 'toString'> {
  readonly pressure: Quantity<'gauge pressure'>;
}

/** The review of a joint from its modes. */
export function jointReview({ pressure, ...facts }: JointFacts): JointReview {
  const { modes } = facts;
  const text = (): string => reviewText(review, pressure);
  const review = {
    ...facts,
    governing: governing(modes),
    passes: modes.every(({ marginOfSafety }) => marginOfSafety >= 0),
    firstToFail: modes.reduce((first, next) =>
      next.failurePressure.si < first.failurePressure.si ? next : first,
    ),
    toString: text,
    [Symbol.for('nodejs.util.inspect.custom')]: text,
  };
  return review;
}

const signed = (left: number): string => `${left < 0 ? '−' : '+'}${Math.abs(left).toFixed(2)}`;

function reviewText(review: Omit<JointReview, 'toString'>, pressure: Quantity<'gauge pressure'>): string {
  const rows = [...review.modes]
    .sort((a, b) => a.marginOfSafety - b.marginOfSafety)
    .map(({ mode, applied, allowable, factor, marginOfSafety: left, failurePressure, temperature }) => ({
      mode,
      stress: applied,
      allowable,
      factor,
      margin: signed(left),
      'reached at': failurePressure,
      ...(temperature !== undefined && { temperature }),
    }));
  const peaks = review.modes.flatMap(({ mode, limit, peak }) =>
    peak === undefined || limit === 'yield'
      ? []
      : [`${mode}: peak ${peak.stress}, ${peak.concentration.toFixed(2)} times, ${peak.reason}`],
  );
  const { governing: least, firstToFail: first } = review;
  return [
    `${review.passes ? 'HOLDS' : 'DOES NOT HOLD'} at ${pressure}: least margin ${signed(least.marginOfSafety)}, ${least.mode}`,
    `end force ${review.endForce}, worst bolt ${review.boltLoad}`,
    `first as pressure rises: ${first.mode} at ${first.failurePressure}; ${review.bearingFirst ? 'bearing comes before anything lets go, as it should' : 'something lets go before bearing shows: not the preferred order'}`,
    'margin: 0 is exactly enough, with the factor; reached at: the pressure that brings the stress to the allowable, without factor',
    table(rows),
    ...peaks,
    ...review.cautions.map((caution) => `caution: ${caution}`),
  ].join('\n');
}
