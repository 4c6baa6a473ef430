// The zod schemas of composite parts: objects, lists, one of several objects.
import * as z from 'zod/mini';
import { MeopError, unknownName } from '../../units';
import { unknownField } from '../../units/declare/field-errors';
import { type DocumentProblem, pathText, problemOf } from './problems';

const here = { procedure: '', path: '' };

/** The schema with the metadata that an editor and the JSON Schema use. */
export function described<S extends z.core.$ZodType>(schema: S, facts: Readonly<Record<string, unknown>>): S {
  z.globalRegistry.add(schema, facts);
  return schema;
}

/** The errors of a zod issue at a path of the document; the path of an error takes precedence. */
type Errors = (issue: z.core.$ZodRawIssue, at: string) => readonly MeopError[];

const errorsBySchema = new WeakMap<object, Errors>();

/** The errors of a zod issue. */
export function problemsOf(issue: z.core.$ZodRawIssue): readonly DocumentProblem[] {
  const at = pathText(issue.path ?? []);
  const own: unknown = issue.code === 'custom' ? issue.params?.error : undefined;
  if (own instanceof MeopError) return [problemOf(own, at)];
  const errors = (issue.inst && errorsBySchema.get(issue.inst)) ?? unexpected;
  return errors(issue, at).map((error) => problemOf(error, error.path ?? at));
}

const unexpected: Errors = ({ input, code }) => [
  new MeopError({ code: 'wrong-kind', given: input, problem: `is not accepted (${code})` }),
];

/** Makes a schema that reports its issues as errors; zod shows their messages. */
function reporting<S extends object>(
  errors: Errors,
  make: (error: (issue: z.core.$ZodRawIssue) => string) => S,
): S {
  const schema = make((issue) =>
    errors(issue, '')
      .map(({ statement }) => statement)
      .join(' '),
  );
  errorsBySchema.set(schema, errors);
  return schema;
}

/** The error for a missing value or a value of the wrong type. */
export function misfit(given: unknown, expected: string, meaning: string): MeopError {
  return given === undefined
    ? new MeopError({ code: 'missing-field', expected: `${meaning}: ${expected}` })
    : new MeopError({ code: 'wrong-kind', given, expected: `${expected} (${meaning})` });
}

/** A value parsed by a function, whose error becomes the issue. */
export function leaf<V>(read: (value: unknown) => V, facts: Readonly<Record<string, unknown>>) {
  const schema = z.pipe(
    z.unknown(),
    z.transform((value, context): V | undefined => {
      try {
        return read(value);
      } catch (error) {
        if (!(error instanceof MeopError)) throw error;
        refuse(context, error, value);
        return undefined;
      }
    }),
  );
  return described(schema, facts);
}

/** Records an error of a value, or at a path in it. */
export function refuse(
  context: { readonly issues: z.core.$ZodRawIssue[] },
  error: MeopError,
  input: unknown,
  path: readonly PropertyKey[] = [],
): void {
  const { statement } = error;
  context.issues.push({ code: 'custom', message: statement, input, path: [...path], params: { error } });
}

/** A part of the document: an object with these fields and no others; `instead` contains likely errors with the fix. */
export function part(
  fields: Readonly<Record<string, z.core.$ZodType>>,
  meaning: string,
  instead: Readonly<Record<string, string>> = {},
) {
  const names = Object.keys(fields);
  const needed = names.filter((name) => !(fields[name] instanceof z.ZodMiniOptional));
  const others = names.filter((name) => !needed.includes(name));
  const listed = [needed.join(', '), others.join(', ')].filter(Boolean).join(' and optionally ');
  const errors: Errors = (issue, at) =>
    issue.code === 'unrecognized_keys'
      ? issue.keys.map((key) =>
          strange(key, names, at, Object.hasOwn(instead, key) ? instead[key] : undefined),
        )
      : [misfit(issue.input, `an object with ${listed}`, meaning)];
  const schema = reporting(errors, (error) => z.strictObject(fields, { error }));
  return described(schema, { description: meaning });
}

/** The error for an unknown field. */
const strange = (key: string, names: readonly string[], at: string, fix: string | undefined): MeopError =>
  fix === undefined
    ? unknownField(key, names, { procedure: '', path: at })
    : new MeopError({
        code: 'unknown-field',
        path: at === '' ? key : `${at}.${key}`,
        problem: 'unknown field',
        remedy: fix,
      });

/** A list with a minimum number of items. */
export function listOf(item: z.core.$ZodType, meaning: string, min: number) {
  const errors: Errors = ({ input }) => [
    Array.isArray(input) && input.length < min
      ? new MeopError({
          code: 'out-of-domain',
          given: input,
          expected: `a list of at least ${min} (${meaning})`,
        })
      : misfit(input, 'a list', meaning),
  ];
  const least = reporting(errors, (error) => z.minLength(min, { error }));
  const schema = reporting(errors, (error) => z.array(item, { error })).check(least);
  errorsBySchema.set(schema, errors);
  return described(schema, { description: meaning });
}

/** One of several parts, distinguished by the name in one field. */
export function oneOf(
  discriminator: string,
  parts: readonly [z.core.$ZodTypeDiscriminable, ...z.core.$ZodTypeDiscriminable[]],
  names: readonly string[],
  meaning: string,
) {
  const errors: Errors = ({ input }) => {
    if (typeof input !== 'object' || input === null || Array.isArray(input))
      return [misfit(input, `an object with '${discriminator}'`, meaning)];
    const given: unknown = Object.getOwnPropertyDescriptor(input, discriminator)?.value;
    return [
      given === undefined
        ? misfit(given, names.map((name) => `'${name}'`).join(' or '), meaning)
        : unknownName(given, names, discriminator, here),
    ];
  };
  const schema = reporting(errors, (error) => z.discriminatedUnion(discriminator, parts, { error }));
  return described(schema, { description: meaning });
}
