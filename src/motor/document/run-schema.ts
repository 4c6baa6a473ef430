import type * as z from 'zod/mini';
import type { Partly } from './document-types';

/** Result of a schema. */
export interface SchemaRun<T> {
  /** The parsed value; undefined where there is an issue. */
  readonly whole: T | undefined;
  /** The parsed part; values with an issue are absent. */
  readonly parts: Partly<T> | undefined;
  readonly issues: readonly z.core.$ZodRawIssue[];
}

/** Runs a schema once, and keeps both the parsed part and the issues; `safeParse` discards the former. */
export function runSchema<T>(schema: z.ZodMiniType<T>, given: unknown): SchemaRun<T> {
  const run = schema._zod.run({ value: given, issues: [] }, {});
  if (run instanceof Promise) throw new TypeError('a schema of a document does not wait');
  const { issues } = run;
  // Valid: without issues the result has the type of the schema.
  if (issues.length === 0) return { whole: run.value as T, parts: run.value as Partly<T>, issues };
  const parts: unknown = issues.reduce<unknown>(
    (value, { code, path = [] }) =>
      code === 'custom' || code === 'unrecognized_keys' ? value : without(value, told(path, code)),
    run.value,
  );
  // Valid: rejected values have been removed.
  return { whole: undefined, parts: parts as Partly<T> | undefined, issues };
}

/** For an unknown discriminator, the object that contains it is rejected. */
const told = (path: readonly PropertyKey[], code: string | undefined): readonly PropertyKey[] =>
  code === 'invalid_union' ? path.slice(0, -1) : path;

/** The value without the value at a path. */
function without(value: unknown, path: readonly PropertyKey[]): unknown {
  const [key, ...rest] = path;
  if (key === undefined) return undefined;
  if (Array.isArray(value)) return value.map((item: unknown, i) => (i === key ? without(item, rest) : item));
  if (typeof value !== 'object' || value === null) return value;
  return { ...value, [key]: without(Reflect.get(value, key), rest) };
}
