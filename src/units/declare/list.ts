import type { Absent, Argument, Input, InputFacts, Need } from './input';
import { pathTo } from './place';
import { inputOf, notThat } from './plain-inputs';

/** Allowed number of items of a list. */
export interface ListFacts<A> extends InputFacts<readonly A[]> {
  /** Minimum; default 1. */
  readonly min?: number;
  /** Maximum. */
  readonly max?: number;
}

/** A list of inputs of one type. */
export interface List<T extends Input = Input, N extends Need = Need>
  extends Input<readonly Argument<T>[], readonly ReturnType<T['read']>[] | Absent<N>, N> {
  readonly type: 'list';
  readonly item: T;
  readonly min: number;
}

/** Declares a list. Its items are read one by one, and an error names the index of the item. */
export function list<const T extends Input>(
  meaning: string,
  item: T,
  facts: ListFacts<Argument<T>> = {},
): List<T, 'required'> {
  type V = ReturnType<T['read']>;
  const { min = 1, max = Infinity, ...rest } = facts;
  const expected =
    max === Infinity
      ? `a list of ${min} or more`
      : min === max
        ? `a list of ${min}`
        : `a list of ${min} to ${max}`;
  const made = inputOf<readonly Argument<T>[], readonly V[]>({
    ...(item.example !== undefined && { example: [item.example as Argument<T>] }), // true: it is defined
    ...rest,
    type: 'list',
    meaning,
    takes: () => `${expected}: ${item.takes()}`,
    read: (value, at) => {
      if (!Array.isArray(value) || value.length < min || value.length > max)
        throw notThat(value, expected, at);
      return value.map((one: unknown, i): V => {
        // True: the item has read it.
        return item.read(one, { procedure: at.procedure, path: pathTo(at, i) }) as V;
      });
    },
  });
  return { ...made, type: 'list', item, min };
}
