import { MeopError } from '../../units';

/** Path of a value in a document: `['grain', 'segments', 0, 'boreDiameter']`. */
export type Path = readonly (string | number)[];

/** One error of a document. */
export interface DocumentProblem {
  /** Path, such as `grain.segments[0].boreDiameter`; empty for the document as a whole. */
  readonly path: string;
  /** As of a {@link MeopError}. */
  readonly code: string;
  /** Error, value as given, requirement and fix. */
  readonly message: string;
  /** The value as given, where there is one. */
  readonly value?: unknown;
}

/** A path as a string: `grain.segments[0].boreDiameter`. */
export function pathText(path: readonly PropertyKey[]): string {
  return path.reduce<string>(
    (text, key) =>
      typeof key === 'number' ? `${text}[${key}]` : text === '' ? String(key) : `${text}.${String(key)}`,
    '',
  );
}

/** An error at a place of the document. */
export function problemOf(
  error: MeopError,
  path: Path | string,
  value: unknown = error.given,
): DocumentProblem {
  const text = typeof path === 'string' ? path : pathText(path);
  const { code, statement: message } = error.at('', text || 'document');
  return { path: text, code, message, ...(value !== undefined && { value }) };
}

/** The value at a path of a document as given; undefined where there is none. */
export function givenAt(json: unknown, path: Path): unknown {
  return path.reduce<unknown>(
    (value, key) =>
      typeof value === 'object' && value !== null
        ? Object.getOwnPropertyDescriptor(value, key)?.value
        : undefined,
    json,
  );
}

/** The error with all errors of a document: one line each in its message, the list in `given`. */
export function documentError(problems: readonly DocumentProblem[], procedure: string): MeopError {
  const lines = problems.map(({ message }) => `  ${message}`);
  const count = problems.length === 1 ? '1 problem' : `${problems.length} problems`;
  const error = new MeopError({
    code: 'motor-document',
    procedure,
    given: problems,
    expected: 'a motor document without problems',
    problem: `${count} in the motor document\n${lines.join('\n')}`,
  });
  return error;
}
