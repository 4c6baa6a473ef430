import { type ErrorFacts, errorMessage, errorStatement } from './error-message';

const mark = Symbol.for('meop.error');

/**
 * The only error class of this library. `code` is stable and for programs; the message is for people and is
 * rendered from the other fields: the calculation, the field, the value as given, the accepted values and the fix.
 * Every copy of the library that a program loads recognises the errors of the others.
 *
 * @example new MeopError({ code: 'out-of-domain', path: 'wall', expected: 'above 0 mm', given: '0 mm' }).message // => "wall must be above 0 mm, got '0 mm'."
 */
export class MeopError extends Error {
  /** A stable, hyphenated identifier such as `unknown-unit`. */
  readonly code: string;
  /** The calculation that was called, if any. */
  readonly procedure: string | undefined;
  /** The field that is wrong, as a dotted path, if any. */
  readonly path: string | undefined;
  /** The value as given, if any. */
  readonly given: unknown;
  /** Description of the accepted values. */
  readonly expected: string | undefined;
  /** The fix, in the imperative. */
  readonly remedy: string | undefined;
  override readonly name = 'MeopError';
  readonly #facts: ErrorFacts;

  constructor(facts: ErrorFacts) {
    super(errorMessage(facts));
    this.code = facts.code;
    this.procedure = facts.procedure;
    this.path = facts.path;
    this.given = facts.given;
    this.expected = facts.expected;
    this.remedy = facts.remedy;
    this.#facts = facts;
    if (facts.cause !== undefined) this.cause = facts.cause;
  }
  get [mark](): true {
    return true;
  }
  /** The message without the name of the calculation. */
  get statement(): string {
    return errorStatement(this.#facts);
  }
  /** The same error as reported by the calling calculation: under its name, below the path of its field, with a fix if it has none. */
  within(procedure: string, path?: string, remedy?: string): MeopError {
    const places = [path, this.path].filter((place) => place !== undefined && place !== '');
    return remade({ ...this.#facts, remedy: this.remedy ?? remedy }, procedure, places.join('.'));
  }
  /** The same error at another path. */
  at(procedure: string, path: string): MeopError {
    return remade(this.#facts, procedure, path);
  }
  static override [Symbol.hasInstance](value: unknown): boolean {
    return typeof value === 'object' && value !== null && mark in value;
  }
}

// Outside the class, which a bundler would rename if it spoke of itself.
const remade = (facts: ErrorFacts, procedure: string, path: string): MeopError =>
  new MeopError({ ...facts, procedure, path: path || undefined });
