import { MeopError } from '../errors';
import type { Input, InputFacts } from './input';
import type { Place } from './place';

/** What makes an input of one sort of value. */
interface Sort<A, V> extends InputFacts<A> {
  readonly type: string;
  readonly meaning: string;
  readonly takes: () => string;
  readonly read: (value: unknown, at: Place) => V;
}

/** An input of any sort, required. */
export const inputOf = <A, V>({ example, synonyms = [], ...rest }: Sort<A, V>): Input<A, V, 'required'> => ({
  ...rest,
  need: 'required',
  example,
  synonyms,
  absent: () => rest.read(example, { procedure: '', path: '' }),
});

/** The error for a value that is not of the sort that an input takes. */
export const notThat = (given: unknown, expected: string, at: Place, code = 'wrong-kind'): MeopError =>
  new MeopError({ code, procedure: at.procedure, path: at.path || undefined, given, expected });

/** Yes or no. */
export const flag = (meaning: string, facts: InputFacts<boolean> = {}): Input<boolean, boolean, 'required'> =>
  inputOf({
    ...facts,
    type: 'flag',
    meaning,
    takes: () => 'true or false',
    read: (value, at) => {
      if (typeof value === 'boolean') return value;
      throw notThat(value, 'true or false', at);
    },
  });

/** A text that is not empty. */
export const words = (meaning: string, facts: InputFacts<string> = {}): Input<string, string, 'required'> =>
  inputOf({
    ...facts,
    type: 'text',
    meaning,
    takes: () => 'text',
    read: (value, at) => {
      if (typeof value === 'string' && value.trim() !== '') return value;
      throw notThat(value, 'a text that is not empty', at);
    },
  });

/** A function that the caller passes, such as one that is told of progress. */
export const callback = <F extends (...values: never[]) => unknown>(
  meaning: string,
  facts: InputFacts<F> = {},
): Input<F, F, 'required'> =>
  inputOf({
    ...facts,
    type: 'function',
    meaning,
    takes: () => 'function',
    read: (value, at) => {
      if (typeof value === 'function') return value as F; // its signature is the caller's word
      throw notThat(value, 'a function', at);
    },
  });

/** A value that only the library makes, such as a firing or a grain, known by a test of its own. */
export const instance = <V>(
  meaning: string,
  what: string,
  is: (value: unknown) => value is V,
  facts: InputFacts<V> & { readonly remedy?: string } = {},
): Input<V, V, 'required'> => {
  const { remedy, ...rest } = facts;
  return inputOf({
    ...rest,
    type: 'instance',
    meaning,
    takes: () => what,
    read: (given, at) => {
      if (is(given)) return given;
      const path = at.path || undefined;
      throw new MeopError({
        code: 'wrong-kind',
        procedure: at.procedure,
        path,
        given,
        expected: what,
        remedy,
      });
    },
  });
};
