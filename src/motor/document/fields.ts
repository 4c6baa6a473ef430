import * as z from 'zod/mini';
import { nearestName } from '../../units/nearest-name';

/** Returns the schema with the metadata that an editor and the JSON Schema use. */
export function explained<S extends z.core.$ZodType>(schema: S, facts: Readonly<Record<string, unknown>>): S {
  z.globalRegistry.add(schema, facts);
  return schema;
}

const shown = (value: unknown): string =>
  typeof value === 'string'
    ? `'${value.slice(0, 60)}'`
    : Array.isArray(value)
      ? 'a list'
      : typeof value === 'object' && value !== null
        ? 'an object'
        : String(value);

/** Message for a wrong value, or for a missing one. */
const required = (value: unknown, domain: string, meaning: string): string =>
  value === undefined
    ? `missing required field (${meaning}); give ${domain}`
    : `must be ${domain} (${meaning}), got ${shown(value)}`;

const suggestion = (near: string | undefined): string =>
  near === undefined ? '' : `. Did you mean '${near}'?`;

/**
 * A part of the document: an object with these fields only. `strangers` contains messages for likely unknown
 * fields.
 */
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
        return required(issue.input, `an object with ${shape(needed, optional)}`, meaning);
      return issue.keys
        .map((key) => (Object.hasOwn(strangers, key) ? strangers[key] : unknownField(key, names)))
        .join('\n'); // one line per key
    },
  });
  return explained(schema, { description: meaning });
}

const shape = (needed: readonly string[], optional: readonly string[]): string =>
  optional.length === 0
    ? needed.join(', ')
    : `${needed.length === 0 ? 'any of' : `${needed.join(', ')} and optionally`} ${optional.join(', ')}`;

/** Message for an unknown field. */
export function unknownField(key: string, names: readonly string[]): string {
  const near = nearestName(key, names);
  return near === undefined
    ? `unknown field. Available: ${names.join(', ')}.`
    : `unknown field; did you mean '${near}'?`;
}

/** A non-empty string. */
export function textField(meaning: string): z.ZodMiniString {
  const schema = z
    .string({ error: ({ input }) => required(input, 'a string', meaning) })
    .check(z.minLength(1, { error: `must not be empty (${meaning})` }));
  return explained(schema, { description: meaning });
}

/** One of several names. */
export function choice<const T extends readonly [string, ...string[]]>(
  names: T,
  meaning: string,
): z.ZodMiniEnum<{ readonly [K in T[number]]: K }> {
  const schema = z.enum(names, {
    error: ({ input }) => {
      const near = typeof input === 'string' ? nearestName(input, names) : undefined;
      const known = names.map((name) => `'${name}'`).join(', ');
      return `${required(input, `one of ${known}`, meaning)}${suggestion(near)}`;
    },
  });
  // Valid: zod types the enum of a list of names as the object of those names.
  return explained(schema, { description: meaning }) as z.ZodMiniEnum<{ readonly [K in T[number]]: K }>;
}

/** An integer of at least `least`. */
export function positiveCount(meaning: string, least = 1): z.ZodMiniNumber<number> {
  const error = ({ input }: { readonly input?: unknown }): string =>
    required(input, `an integer of at least ${least}`, meaning);
  const schema = z.number({ error }).check(z.int({ error }), z.minimum(least, { error }));
  return explained(schema, { description: meaning });
}

/** A list with at least one item. */
export function listOf<S extends z.core.$ZodType>(item: S, meaning: string): z.ZodMiniArray<S> {
  const error = ({ input }: { readonly input?: unknown }): string =>
    Array.isArray(input) ? `must not be empty (${meaning})` : required(input, 'a list', meaning);
  return explained(z.array(item, { error }).check(z.minLength(1, { error })), { description: meaning });
}

/** One of several parts, distinguished by the name in one field. */
export function oneOf<
  const D extends string,
  const T extends readonly [z.core.$ZodTypeDiscriminable, ...z.core.$ZodTypeDiscriminable[]],
>(discriminator: D, parts: T, meaning: string): z.ZodMiniDiscriminatedUnion<T, D> {
  const schema = z.discriminatedUnion(discriminator, parts, {
    error: (issue) => {
      const known =
        'options' in issue && Array.isArray(issue.options)
          ? issue.options.filter((name) => name !== undefined).map(String)
          : [];
      const input: unknown = issue.input;
      if (typeof input !== 'object' || input === null)
        return required(input, `an object with '${discriminator}'`, meaning);
      const value: unknown = Object.getOwnPropertyDescriptor(input, discriminator)?.value;
      const near = typeof value === 'string' ? nearestName(value, known) : undefined;
      return `${required(value, `one of ${known.map((name) => `'${name}'`).join(', ')}`, meaning)}${suggestion(near)}`;
    },
  });
  return explained(schema, { description: meaning });
}
