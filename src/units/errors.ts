/** What a {@link MeopError} may say beyond its sentence. */
export interface MeopErrorDetails {
  /** The value as it was given. */
  readonly value?: unknown;
  /** What would have been accepted. */
  readonly expected?: string | undefined;
}

/**
 * The one error of this library. `code` is stable and meant for programs; the message is for people and
 * names the field, the value as given, what was expected and the way out.
 *
 * @example new MeopError('unknown-unit', "no unit 'mmm'").code // => 'unknown-unit'
 */
export class MeopError extends Error {
  /** A stable, hyphenated identifier such as `unknown-unit`. */
  readonly code: string;
  /** The field that is wrong, as a dotted path, where there is one. */
  readonly path: string | undefined;
  /** The value as it was given, where there is one. */
  readonly value: unknown;
  /** What would have been accepted, in words. */
  readonly expected: string | undefined;
  override readonly name = 'MeopError';

  constructor(code: string, message: string, path?: string, details: MeopErrorDetails = {}) {
    super(message);
    this.code = code;
    this.path = path;
    this.value = details.value;
    this.expected = details.expected;
  }
}
