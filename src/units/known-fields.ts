import { missingField, notAnObject, unknownField } from './declare/field-errors';

/** The keys of every member of a union. */
type AnyKey<T> = T extends unknown ? keyof T : never;

/**
 * The fields of an options object by name, so that a misspelled one is not treated as omitted. The compiler checks
 * that the list is complete; of a union, a field may be either.
 */
export type FieldsOf<T> = {
  readonly [F in AnyKey<T> & string]: F extends keyof T
    ? Record<never, never> extends Pick<T, F>
      ? 'optional'
      : 'required'
    : 'optional';
};

/**
 * Rejects a value that is not an options object, a missing field and an unknown field, before any field is read.
 *
 * @throws MeopError `missing-field` or `unknown-field`, naming the procedure and all fields
 */
export function requireFields<T extends object>(procedure: string, given: T, fields: FieldsOf<T>): void {
  const facts: Readonly<Record<string, string>> = fields;
  const known = Object.keys(facts);
  const at = { procedure, path: '' };
  if (typeof given !== 'object' || given === null || Array.isArray(given))
    throw notAnObject(given, known, at);
  const unknown = Object.keys(given).find((field) => !known.includes(field));
  if (unknown !== undefined) throw unknownField(unknown, known, at);
  const missing = known.find(
    (field) => facts[field] === 'required' && Reflect.get(given, field) === undefined,
  );
  if (missing !== undefined) throw missingField(missing, undefined, at);
}
