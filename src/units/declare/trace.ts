import { MeopError } from '../errors';
import { accepts } from '../kind-rules';
import type { NamedKind } from '../kinds';
import { article, otherKind } from '../quantity-error';
import { isSeries, type Series } from '../series';
import type { Input, InputFacts } from './input';
import { inputOf } from './plain-inputs';

/** A series of values of one kind, such as the times of samples. */
export interface Trace<K extends NamedKind> extends Input<Series<K>, Series<K>, 'required'> {
  readonly kind: K;
}

/** Declares a series of values of a kind; `min` is the minimum number of values. */
export function trace<const K extends NamedKind>(
  kind: K,
  meaning: string,
  {
    min = 1,
    remedy: fix,
    ...facts
  }: InputFacts<Series<K>> & {
    readonly min?: number;
    /** What to do with a series of another kind. */
    readonly remedy?: string;
  } = {},
): Trace<K> {
  const made = inputOf<Series<K>, Series<K>>({
    ...facts,
    type: 'series',
    meaning,
    takes: () => `series of ${kind}`,
    read: (given, at) => {
      const { procedure, path } = at;
      const remedy = `Make one with seriesOf('${kind}', values, unit)`;
      const wanted = `a series of ${kind === 'dimensionless' ? 'numbers' : article(kind).replace(/^an? /, '')}`;
      if (!isSeries(given))
        throw new MeopError({ code: 'wrong-kind', procedure, path, given, expected: wanted, remedy });
      if (!accepts(kind, given.kind))
        throw otherKind(given, given.kind, kind, { procedure, path, remedy: fix ?? remedy });
      if (given.length < min)
        throw new MeopError({
          code: 'out-of-domain',
          procedure,
          path,
          given: given.length,
          expected: `at least ${min} values long`,
        });
      return given as Series<K>; // true: its kind was just checked
    },
  });
  return { ...made, kind };
}
