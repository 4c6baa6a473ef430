import type {
  JointReview,
  RetainingRingReview,
  TensionBoltReview,
  ThreadedClosureReview,
} from '../../structures';
import type { Path } from '../document/problems';
import { closureMargins, type Retention } from './closure-margins';
import { type PartConditions, type PartReview, partReview, together } from './part-review';

type Ends<V> = Readonly<Partial<Record<'head' | 'aft', V>>>;

/** The closures of both ends, with the retention of each. */
export interface ClosureReviews extends PartReview {
  readonly joints: Ends<JointReview>;
  readonly retainingRings: Ends<RetainingRingReview>;
  readonly threads: Ends<ThreadedClosureReview>;
  readonly axialBolts: Ends<TensionBoltReview>;
}

/** Evaluates the closures of both ends. */
export function closureReviews({ motor, pressure, settings, attempt }: PartConditions): ClosureReviews {
  const ends = (['head', 'aft'] as const).map((end): readonly [typeof end, PartReview & Retention] => {
    const closure = motor.closures?.[end];
    if (closure === undefined) return [end, missing(end)];
    const method = (['retainingRing', 'thread', 'axialBolts'] as const).find(
      (field) => closure[field] !== undefined,
    );
    const places: Path[] = [['closures', end, method ?? 'joint'], ['closures', end], ['case']];
    const found = attempt(places, () => closureMargins(motor, end, closure, pressure, settings));
    return [end, found ?? partReview({})];
  });
  const retained = <F extends keyof Retention>(field: F): Ends<NonNullable<Retention[F]>> =>
    Object.fromEntries(ends.flatMap(([end, one]) => (one[field] === undefined ? [] : [[end, one[field]]])));
  return {
    ...together(ends.map(([, one]) => one)),
    joints: retained('joint'),
    retainingRings: retained('retainingRing'),
    threads: retained('thread'),
    axialBolts: retained('axialBolts'),
  };
}

const missing = (end: 'head' | 'aft'): PartReview =>
  partReview({
    unjudged: [
      { part: `${end}-closure`, reason: `closures.${end} not specified; its plate is not evaluated.` },
      {
        part: `${end}-joint`,
        reason: `closures.${end} not specified; its retention and seals are not evaluated.`,
      },
    ],
  });
