import { MeopError } from './errors';
import { quoted } from './quantity-error';

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
 * Refuses what is no options object, a field that is missing and a field that is not known, before any of them is read.
 *
 * @throws MeopError `missing-field` or `unknown-field`, naming the procedure and every field there is
 */
export function requireFields<T extends object>(procedure: string, given: T, fields: FieldsOf<T>): void {
  const facts: Readonly<Record<string, string>> = fields;
  if (typeof given !== 'object' || given === null || Array.isArray(given))
    throw new MeopError(
      'missing-field',
      `${procedure}: ${Array.isArray(given) ? 'a list' : quoted(given)} given; ${shape(facts)} is expected`,
      undefined,
      {
        value: given,
      },
    );
  const unknown = Object.keys(given).find((field) => !Object.hasOwn(facts, field));
  if (unknown !== undefined)
    throw new MeopError(
      'unknown-field',
      `${procedure}: there is no field '${unknown}'; ${shape(facts)} is expected`,
      unknown,
      { expected: shape(facts) },
    );
  const missing = Object.keys(facts).find(
    (field) => facts[field] === 'required' && Reflect.get(given, field) === undefined,
  );
  if (missing !== undefined)
    throw new MeopError(
      'missing-field',
      `${procedure}: ${missing} is missing; ${shape(facts)} is expected`,
      missing,
      { expected: shape(facts) },
    );
}

function shape(fields: Readonly<Record<string, string>>): string {
  const names = Object.entries(fields).map(([name, need]) => (need === 'required' ? name : `${name}?`));
  return `{ ${names.join(', ')} }`;
}
