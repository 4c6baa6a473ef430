import type { Input, Place } from '../../units';
import { notAnObject } from '../../units/declare/field-errors';
import { pathTo } from '../../units/declare/place';
import { inputOf } from '../../units/declare/plain-inputs';

/** Kind of amounts by name. */
interface Amounts<V> {
  /** Description of the names, for the card: `atoms by element`. */
  readonly what: string;
  /** The meaning of a name. @throws MeopError where it is unknown */
  readonly find: (name: string, at: Place) => V;
  /** Reads one amount. */
  readonly amount: Input<unknown, number>;
  readonly example: Readonly<Record<string, number>>;
}

/** Declares amounts by name, such as atoms by element, which are read to pairs in the order given. */
export const amountsByName = <V>(
  meaning: string,
  { what, find, amount, example }: Amounts<V>,
): Input<Readonly<Record<string, number>>, readonly (readonly [V, number])[], 'required'> =>
  inputOf<Readonly<Record<string, number>>, readonly (readonly [V, number])[]>({
    type: 'amounts',
    meaning,
    example,
    takes: () => what,
    read: (value, at) => {
      if (typeof value !== 'object' || value === null || Array.isArray(value))
        throw notAnObject(value, Object.keys(example), at);
      return Object.entries(value).map(([name, given]: readonly [string, unknown]) => {
        const place = { procedure: at.procedure, path: pathTo(at, name) };
        return [find(name, place), amount.read(given, place)] as const;
      });
    },
  });
