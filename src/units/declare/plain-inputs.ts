import { MeopError } from '../errors';
import type { Input, InputFacts } from './input';
import type { Place } from './place';

/** Makes an input of one type of value. */
interface Sort<A, V> extends InputFacts<A> {
  readonly type: string;
  readonly meaning: string;
  readonly takes: () => string;
  readonly read: (value: unknown, at: Place) => V;
}

/** A required input of any type. */
export const inputOf = <A, V>({ example, synonyms = [], ...rest }: Sort<A, V>): Input<A, V, 'required'> => ({
  ...rest,
  need: 'required',
  example,
  synonyms,
  absent: () => rest.read(example, { procedure: '', path: '' }),
});

/** The error for a value of the wrong type. */
export const notThat = (given: unknown, expected: string, at: Place, code = 'wrong-kind'): MeopError =>
  new MeopError({ code, procedure: at.procedure, path: at.path || undefined, given, expected });

/** A boolean. */
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

/** A non-empty string. */
export const words = (meaning: string, facts: InputFacts<string> = {}): Input<string, string, 'required'> =>
  inputOf({
    ...facts,
    type: 'text',
    meaning,
    takes: () => 'text',
    read: (value, at) => {
      if (typeof value === 'string' && value.trim() !== '') return value;
      throw notThat(value, 'a non-empty string', at);
    },
  });

/** A function of the caller, such as a progress callback. */
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
      if (typeof value === 'function') return value as F; // its signature is not checked
      throw notThat(value, 'a function', at);
    },
  });

/** A value that only the library makes, such as a firing or a grain, identified by a test function. */
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
