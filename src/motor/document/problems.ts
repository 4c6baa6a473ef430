import type * as z from 'zod/mini';
import { MeopError } from '../../units';

/** One thing that is wrong with a document. */
export interface DocumentProblem {
  /** Where it is, such as `grain.segments[0].boreDiameter`; empty where it is the document as a whole. */
  readonly path: string;
  /** As of a {@link MeopError}. */
  readonly code: string;
  /** The value as given, what was expected, and the way out. */
  readonly message: string;
  /** The value as given, where there is one. */
  readonly value?: unknown;
}

/** A path as it is written: `grain.segments[0].boreDiameter`. */
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

/** The code of one issue. */
export function codeOf(issue: z.core.$ZodIssue): string {
  const own: unknown = issue.code === 'custom' ? issue.params?.code : undefined;
  const missing = issue.message.startsWith('missing');
  return typeof own === 'string' ? own : missing ? 'missing-field' : (codes[issue.code] ?? 'wrong-kind');
}

/** The problems that zod found, each with its own path, an unknown field under its own name. */
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

/** The error that carries every problem of a document: in its message a line each, in `value` the list. */
export function documentError(problems: readonly DocumentProblem[], name: string): MeopError {
  const lines = problems.map(({ path, message }) => `  ${path === '' ? 'document' : path}: ${message}`);
  const count = problems.length === 1 ? '1 problem' : `${problems.length} problems`;
  return new MeopError(
    'motor-document',
    `${name}: ${count} in the motor document\n${lines.join('\n')}`,
    problems[0]?.path,
    { value: problems, expected: 'a motor document without problems' },
  );
}
