import type * as z from 'zod/mini';
import { MeopError } from '../../units';

/** An error of a document. */
export interface DocumentProblem {
  /** Path, such as `grain.segments[0].boreDiameter`; empty for the document as a whole. */
  readonly path: string;
  /** Error code, as of a {@link MeopError}. */
  readonly code: string;
  /** Limit, value as given, and fix. */
  readonly message: string;
  /** The value as given, if any. */
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

const codes: Readonly<Record<string, string>> = {
  unrecognized_keys: 'unknown-field',
  invalid_union: 'unknown-name',
  invalid_value: 'unknown-name',
  too_small: 'out-of-domain',
};

/** Error code of a zod issue. */
export function codeOf(issue: z.core.$ZodIssue): string {
  const own: unknown = issue.code === 'custom' ? issue.params?.code : undefined;
  const missing = issue.message.startsWith('missing');
  return typeof own === 'string' ? own : missing ? 'missing-field' : (codes[issue.code] ?? 'wrong-kind');
}

/** Errors found by zod, each with its path, an unknown field under its own name. */
export function problemsOfIssues(issues: readonly z.core.$ZodIssue[]): DocumentProblem[] {
  return issues.flatMap((issue): DocumentProblem[] => {
    if (issue.code === 'unrecognized_keys') {
      const messages = issue.message.split('\n');
      return issue.keys.map((key, i) => ({
        path: pathText([...issue.path, key]),
        code: 'unknown-field',
        message: messages[i] ?? issue.message,
      }));
    }
    return [
      {
        path: pathText(issue.path),
        code: codeOf(issue),
        message: issue.message,
        ...(issue.input !== undefined && { value: issue.input }),
      },
    ];
  });
}

/** The error with all errors of a document: one line each in its message, and the list in `value`. */
export function documentError(problems: readonly DocumentProblem[], name: string): MeopError {
  const lines = problems.map(({ path, message }) => `  ${path === '' ? 'document' : path}: ${message}`);
  const count = problems.length === 1 ? '1 error' : `${problems.length} errors`;
  return new MeopError(
    'motor-document',
    `${name}: ${count} in the motor document\n${lines.join('\n')}`,
    problems[0]?.path,
    { value: problems, expected: 'a motor document without errors' },
  );
}
