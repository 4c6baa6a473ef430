import { missingField, notAnObject, unknownField } from './declare/field-errors';

/** The keys of every member of a union. */
type AnyKey<T> = T extends unknown ? keyof T : never;

/**
 * The fields of an options object by name, so that a misspelt one cannot pass for one left out. The compiler wants the
 * list complete; of a union, a field may be either.
 */
export type FieldsOf<T> = {
  readonly [F in AnyKey<T> & string]: F extends keyof T
    ? Record<never, never> extends Pick<T, F>
      ? 'optional'
      : 'required'
    : 'optional';
};

/**
 * Refuses what is not an options object, a field that is missing and a field that is not known, before any of them is read.
 *
 * @throws MeopError `missing-field` or `unknown-field`, naming the procedure and every field there is
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
