import type { Arguments, Inputs } from './input';

/** A typical argument, from the examples of the fields; `undefined` where a required field has none. */
export function exampleOf<I extends Inputs>(fields: I): Arguments<I> | undefined {
  const entries = Object.entries(fields);
  if (entries.some(([, { need, example }]) => need === 'required' && example === undefined)) return undefined;
  const given = entries.filter(([, { need }]) => need === 'required');
  const example: unknown = Object.fromEntries(given.map(([field, input]) => [field, input.example]));
  return example as Arguments<I>; // true: every required field has its own example
}
