import { MeopError } from '../errors';
import type { Argument, Input, InputFacts } from './input';
import { inputOf } from './plain-inputs';

/**
 * Declares an input that accepts values of several types: the first declaration that reads the value is used.
 * Where none does, the error is that of the sort that found it deepest inside the value, or of the last.
 */
export function either<const T extends readonly Input[]>(
  meaning: string,
  sorts: T,
  facts: InputFacts<Argument<T[number]>> = {},
): Input<Argument<T[number]>, ReturnType<T[number]['read']>, 'required'> {
  return inputOf<Argument<T[number]>, ReturnType<T[number]['read']>>({
    ...facts,
    type: 'either',
    meaning,
    takes: () => sorts.map((sort) => sort.takes()).join('; or '),
    read: (value, at) => {
      let last: MeopError | undefined;
      for (const sort of sorts)
        try {
          return sort.read(value, at) as ReturnType<T[number]['read']>; // valid: one of the types has read it
        } catch (error) {
          if (!(error instanceof MeopError)) throw error;
          if (last === undefined || depth(error) >= depth(last)) last = error;
        }
      throw last;
    },
  });
}

const depth = ({ path = '' }: MeopError): number => path.split('.').length;
