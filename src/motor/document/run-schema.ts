import type * as z from 'zod/mini';
import type { Partly } from './document-types';

/** What a schema makes of a value. */
export interface SchemaRun<T> {
  /** The value as read; undefined where there is any issue. */
  readonly whole: T | undefined;
  /** What of it could be read: where an issue lies, nothing stands. */
  readonly parts: Partly<T> | undefined;
  readonly issues: readonly z.core.$ZodRawIssue[];
}

/** Runs a schema once, and keeps both the readable part and the issues: `safeParse` drops the former. */
export function runSchema<T>(schema: z.ZodMiniType<T>, given: unknown): SchemaRun<T> {
  const run = schema._zod.run({ value: given, issues: [] }, {});
  if (run instanceof Promise) throw new TypeError('a schema of a document does not wait');
  const { issues } = run;
  // True: a schema without issues has made what its type says.
  if (issues.length === 0) return { whole: run.value as T, parts: run.value as Partly<T>, issues };
  const parts: unknown = issues.reduce<unknown>(
    (value, { code, path = [] }) =>
      code === 'custom' || code === 'unrecognized_keys' ? value : without(value, told(path, code)),
    run.value,
  );
  // True: what was refused has been taken out.
  return { whole: undefined, parts: parts as Partly<T> | undefined, issues };
}

/** What is refused where a discriminator names no variant is the object that has it. */
const told = (path: readonly PropertyKey[], code: string | undefined): readonly PropertyKey[] =>
  code === 'invalid_union' ? path.slice(0, -1) : path;

/** The value with nothing at a path. */
function without(value: unknown, path: readonly PropertyKey[]): unknown {
  const [key, ...rest] = path;
  if (key === undefined) return undefined;
  if (Array.isArray(value)) return value.map((item: unknown, i) => (i === key ? without(item, rest) : item));
  if (typeof value !== 'object' || value === null) return value;
  return { ...value, [key]: without(Reflect.get(value, key), rest) };
}
