// The only place where the data of an error become a sentence.
import { isQuantity } from './quantity-mark';

/** An error as data: the message is rendered from it and never parsed. */
export interface ErrorFacts {
  /** A stable, hyphenated identifier such as `unknown-unit`. */
  readonly code: string;
  /** The calculation that was called. */
  readonly procedure?: string | undefined;
  /** The field that is wrong, as a dotted path. */
  readonly path?: string | undefined;
  /** The value as given. */
  readonly given?: unknown;
  /** Description of the value, if it is of the wrong type (`a length`); for an unknown name, what it should name. */
  readonly note?: string | undefined;
  /** The accepted values, as after "must be"; for an unknown or missing field, the available fields. */
  readonly expected?: string | undefined;
  /** The fix, in the imperative. */
  readonly remedy?: string | undefined;
  /** Statement of the error, where "must be …, got …" does not express it. */
  readonly problem?: string | undefined;
  readonly cause?: unknown;
}

/** The message of an error: `hoopStress: wall must be above 0 mm, got '0 mm'.` */
export function errorMessage(facts: ErrorFacts): string {
  const text = errorStatement(facts);
  return facts.procedure ? `${facts.procedure}: ${text}` : text;
}

/** The message without the name of the calculation. */
export function errorStatement(facts: ErrorFacts): string {
  const { code, path, given, note, expected, remedy, problem } = facts;
  if (problem !== undefined) return sentences(path ? `${path}: ${problem}` : problem, remedy);
  if (code === 'missing-field')
    return sentences(`missing required field ${path}${expected ? ` (${expected})` : ''}`, remedy);
  if (code.startsWith('unknown-')) {
    const field = code === 'unknown-field';
    const thing = `unknown ${note ?? code.slice(8)} ${quoted(given)}${remedy ? `; ${remedy}` : ''}`;
    const known = expected && `${field ? 'Fields' : 'Available'}: ${expected}`;
    return sentences(field || !path ? thing : `${path}: ${thing}`, known);
  }
  const got = 'given' in facts ? `, got ${shownValue(given)}${note ? ` (${note})` : ''}` : '';
  return sentences(`${path || 'value'} must be ${expected}${got}`, remedy);
}

const sentences = (...texts: readonly (string | undefined)[]): string =>
  texts.flatMap((text) => (text ? [/[.?!]$/.test(text) ? text : `${text}.`] : [])).join(' ');

/** A string in quotation marks, shortened to a readable length; a description of any other value. */
export function quoted(value: unknown): string {
  if (typeof value === 'string') return `'${value.length > 60 ? `${value.slice(0, 60)}…` : value}'`;
  return Object(value) === value ? `this ${typeof value}` : String(value);
}

/** A value as given; of a record its content, shortened to a readable length. */
export function shownValue(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (typeof value === 'function') return value.name ? `the function ${value.name}` : 'a function';
  if (typeof value !== 'object' || value === null) return quoted(value);
  if (isQuantity(value)) return value.format({ figures: 12 });
  if (!Array.isArray(value) && Object.getPrototypeOf(value) !== Object.prototype) return 'an object';
  const text = asJson(value);
  return text.length > 80 ? `${text.slice(0, 80)}…` : text;
}

function asJson(value: object): string {
  try {
    return JSON.stringify(value);
  } catch {
    return 'an object that refers to itself';
  }
}
