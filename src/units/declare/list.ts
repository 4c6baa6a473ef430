import type { Input, InputFacts, Need } from './input';
import { pathTo } from './place';
import { inputOf, notThat } from './plain-inputs';

/** How many items a list must have. */
export interface ListFacts<A> extends InputFacts<readonly A[]> {
  /** At least; 1 where it is left out. */
  readonly min?: number;
  /** At most. */
  readonly max?: number;
}

/** A list of inputs of one sort. */
export interface List<A, V> extends Input<readonly A[], readonly V[], 'required'> {
  readonly item: Input<A, V, Need>;
}

/** Declares a list. Its items are read one by one, and an error names the item by its index. */
export function list<A, V>(meaning: string, item: Input<A, V>, facts: ListFacts<A> = {}): List<A, V> {
  const { min = 1, max = Infinity, ...rest } = facts;
  const expected =
    max === Infinity
      ? `a list of ${min} or more`
      : min === max
        ? `a list of ${min}`
        : `a list of ${min} to ${max}`;
  const made = inputOf<readonly A[], readonly V[]>({
    ...(item.example !== undefined && { example: [item.example] }),
    ...rest,
    type: 'list',
    meaning,
    takes: () => `${expected}: ${item.takes()}`,
    read: (value, at) => {
      if (!Array.isArray(value) || value.length < min || value.length > max)
        throw notThat(value, expected, at);
      return value.map((one: unknown, i) => item.read(one, { procedure: at.procedure, path: pathTo(at, i) }));
    },
  });
  return { ...made, item };
}
