import { notAnObject } from './field-errors';
import type { Argument, Input, InputFacts } from './input';
import { pathTo } from './place';
import { inputOf } from './plain-inputs';

/** Declares values of one sort by names that the caller chooses. An error names the value by its name. */
export function byName<const T extends Input>(
  meaning: string,
  item: T,
  facts: InputFacts<Readonly<Record<string, Argument<T>>>> = {},
): Input<Readonly<Record<string, Argument<T>>>, Readonly<Record<string, ReturnType<T['read']>>>, 'required'> {
  type V = ReturnType<T['read']>;
  return inputOf<Readonly<Record<string, Argument<T>>>, Readonly<Record<string, V>>>({
    ...facts,
    type: 'by name',
    meaning,
    takes: () => `{ name: ${item.takes()}, … }`,
    read: (value, at) => {
      if (typeof value !== 'object' || value === null || Array.isArray(value))
        throw notAnObject(value, ['name'], at);
      const read = Object.entries(value).map(([name, one]): readonly [string, V] => [
        name,
        item.read(one, { procedure: at.procedure, path: pathTo(at, name) }) as V, // true: the item has read it
      ]);
      return Object.fromEntries(read);
    },
  });
}
