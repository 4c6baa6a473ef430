import { missingField, notAnObject, unknownField } from './field-errors';
import type { Inputs, Values } from './input';
import { type Place, pathTo } from './place';

/**
 * Reads an object of declared inputs: reads and checks each value, and replaces omitted ones by their default or
 * `undefined`.
 *
 * @throws MeopError `missing-field`, `unknown-field`, and the errors of the inputs, each with its path
 */
export function readInputs<const I extends Inputs>(inputs: I, given: unknown, at: Place): Values<I> {
  const fields = Object.keys(inputs);
  if (typeof given !== 'object' || given === null || Array.isArray(given))
    throw notAnObject(given, fields, at);
  const unknown = Object.keys(given).find((field) => !Object.hasOwn(inputs, field));
  if (unknown !== undefined) throw unknownField(unknown, fields, at);
  const values: Record<string, unknown> = {};
  for (const field of fields) {
    const input = inputs[field];
    const value: unknown = Reflect.get(given, field);
    if (value !== undefined)
      values[field] = input.read(value, { procedure: at.procedure, path: pathTo(at, field) });
    else if (input.need === 'required') throw missingField(field, input.meaning, at);
    else values[field] = input.absent();
  }
  return values as Values<I>; // true: the loop has set every declared field
}
