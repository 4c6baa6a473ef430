import * as z from 'zod/mini';
import { nearestName } from '../../units/nearest-name';

/** The same schema, with what an editor shows and the JSON Schema carries. */
export function explained<S extends z.core.$ZodType>(schema: S, facts: Readonly<Record<string, unknown>>): S {
  z.globalRegistry.add(schema, facts);
  return schema;
}

const given = (value: unknown): string =>
  value === undefined
    ? 'missing'
    : `${typeof value === 'string' ? `'${value.slice(0, 60)}'` : Array.isArray(value) ? 'a list' : typeof value === 'object' && value !== null ? 'an object' : String(value)} given`;

/** A part of the document: an object with these fields and no others; of `strangers`, names that people try, it says what is meant. */
export function part<const S extends z.core.$ZodLooseShape>(
  fields: S,
  meaning: string,
  strangers: Readonly<Record<string, string>> = {},
): z.ZodMiniObject<S, z.core.$strict> {
  const names = Object.keys(fields);
  const optional = names.filter((name) => fields[name] instanceof z.ZodMiniOptional);
  const needed = names.filter((name) => !optional.includes(name));
  const schema = z.strictObject(fields, {
    error: (issue) => {
      if (issue.code !== 'unrecognized_keys')
        return `${given(issue.input)}; expected is ${meaning}: an object with ${shape(needed, optional)}`;
      return issue.keys
        .map((key) => (Object.hasOwn(strangers, key) ? strangers[key] : unknownField(key, names)))
        .join('\n'); // a line a key
    },
  });
  return explained(schema, { description: meaning });
}

const shape = (needed: readonly string[], optional: readonly string[]): string =>
  optional.length === 0
    ? needed.join(', ')
    : `${needed.length === 0 ? 'any of' : `${needed.join(', ')} and, where known,`} ${optional.join(', ')}`;

/** What to say of a field that does not exist. */
export function unknownField(key: string, names: readonly string[]): string {
  const near = nearestName(key, names);
  return near === undefined
    ? `no field of that name here; there are ${names.join(', ')}`
    : `no field of that name here; did you mean '${near}'?`;
}

/** A free text, not empty. */
export function textField(meaning: string): z.ZodMiniString {
  const schema = z
    .string({ error: ({ input }) => `${given(input)}; expected is a text: ${meaning}` })
    .check(z.minLength(1, { error: `an empty text given; expected is ${meaning}` }));
  return explained(schema, { description: meaning });
}

/** One of some names. */
export function choice<const T extends readonly [string, ...string[]]>(
  names: T,
  meaning: string,
): z.ZodMiniEnum<{ readonly [K in T[number]]: K }> {
  const schema = z.enum(names, {
    error: ({ input }) => {
      const near = typeof input === 'string' ? nearestName(input, names) : undefined;
      const known = names.map((name) => `'${name}'`).join(', ');
      return `${given(input)}; expected is ${meaning}, one of ${known}${near === undefined ? '' : `: did you mean '${near}'?`}`;
    },
  });
  // True: zod types the enum of a list of names as the object of those names.
  return explained(schema, { description: meaning }) as z.ZodMiniEnum<{ readonly [K in T[number]]: K }>;
}

/** A whole number of at least `least`. */
export function positiveCount(meaning: string, least = 1): z.ZodMiniNumber<number> {
  const expected = `expected is ${meaning}: a whole number of at least ${least}`;
  const error = ({ input }: { readonly input?: unknown }): string => `${given(input)}; ${expected}`;
  const schema = z.number({ error }).check(z.int({ error }), z.minimum(least, { error }));
  return explained(schema, { description: meaning });
}

/** A list of at least one. */
export function listOf<S extends z.core.$ZodType>(item: S, meaning: string): z.ZodMiniArray<S> {
  const error = ({ input }: { readonly input?: unknown }): string =>
    `${Array.isArray(input) ? 'an empty list given' : given(input)}; expected is a list of ${meaning}`;
  return explained(z.array(item, { error }).check(z.minLength(1, { error })), { description: meaning });
}

/** One of several parts, told apart by the name in one field. */
export function oneOf<
  const D extends string,
  const T extends readonly [z.core.$ZodTypeDiscriminable, ...z.core.$ZodTypeDiscriminable[]],
>(discriminator: D, parts: T, meaning: string): z.ZodMiniDiscriminatedUnion<T, D> {
  const schema = z.discriminatedUnion(discriminator, parts, {
    error: (issue) => {
      const known = 'options' in issue && Array.isArray(issue.options) ? issue.options.map(String) : [];
      const input: unknown = issue.input;
      if (typeof input !== 'object' || input === null)
        return `${given(input)}; expected is ${meaning}: an object whose '${discriminator}' says which`;
      const value: unknown = Object.getOwnPropertyDescriptor(input, discriminator)?.value;
      const near = typeof value === 'string' ? nearestName(value, known) : undefined;
      return `${given(value)}; expected is ${meaning}, one of ${known.map((name) => `'${name}'`).join(', ')}${near === undefined ? '' : `: did you mean '${near}'?`}`;
    },
  });
  return explained(schema, { description: meaning });
}
