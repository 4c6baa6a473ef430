import * as z from 'zod/mini';
import { type Material, material } from '../../structures';
import { materials } from '../../structures/inputs';
import {
  type Choice,
  caseFields,
  type Group,
  type Input,
  type Inputs,
  isChoice,
  isGroup,
  isList,
  isNamed,
  isParameter,
  isVariants,
  MeopError,
  type Named,
  type Parameter,
  unknownName,
  type Variants,
} from '../../units';
import { inDomain, outOfDomain } from '../../units/declare/domain';
import { unitOf } from '../../units/unit';
import type { ReadAs, Toleranced, Written } from './document-types';
import { measure } from './measure';
import { materialRecord, ownMaterial } from './own-material';
import { described, leaf, listOf, misfit, oneOf, part, refuse } from './parts';
import { runSchema } from './run-schema';

const here = { procedure: '', path: '' };

/** The zod schema of a declared part of the document, with tolerances on its quantities. */
export function schemaOf<const T extends Input>(
  input: T & Toleranced<T>,
): z.ZodMiniType<ReadAs<T>, Written<T>> {
  // Valid: each type of input is parsed as declared; the compiler cannot check a schema made at run time.
  return required(input) as z.ZodMiniType<ReadAs<T>, Written<T>>;
}

/** The schemas of the fields of a group; the type error names those whose worst-case limit is not declared. */
export const fieldsOf = <const T extends Group>({ fields }: T & Toleranced<T>) => schemasOf(fields);

/** The schemas of declared fields, by name. */
export const schemasOf = (fields: Inputs): Readonly<Record<string, z.core.$ZodType>> =>
  Object.fromEntries(
    Object.entries(fields).map(([name, input]) => {
      const schema = required(input);
      return [name, input.need === 'required' ? schema : z.optional(schema)];
    }),
  );

// The variants of one declaration have one schema, so that the JSON Schema contains them once.
const made = new WeakMap<Input, z.core.$ZodType>();

function required(input: Input): z.core.$ZodType {
  if (isParameter(input)) return input.worse === 'exact' ? wholeNumber(input) : measure(input);
  if (isGroup(input)) return part(schemasOf(input.fields), input.meaning, input.instead);
  if (isList(input)) return listOf(required(input.item), input.meaning, input.min);
  if (isChoice(input)) return oneWord(input);
  if (isNamed(input)) return tableName(input);
  if (isVariants(input)) {
    const known = made.get(input) ?? variant(input);
    made.set(input, known);
    return known;
  }
  return plain(input);
}

function wholeNumber({ kind, domain, meaning }: Parameter): z.core.$ZodType {
  const expected = outOfDomain(kind, domain, 0, unitOf('1'), here).expected ?? 'a whole number';
  return leaf(
    (given) => {
      if (typeof given !== 'number' || !Number.isInteger(given)) throw misfit(given, expected, meaning);
      if (inDomain(given, domain)) return given;
      throw new MeopError({ code: 'out-of-domain', given, expected: `${expected} (${meaning})` });
    },
    { description: meaning, type: 'integer', minimum: domain.min, maximum: domain.max },
  );
}

function oneWord({ options, meaning }: Choice<string>): z.core.$ZodType {
  return leaf(
    (given) => {
      const found = options.find((option) => option === given);
      if (found !== undefined) return found;
      const quoted = options.map((option) => `'${option}'`).join(' or ');
      throw given === undefined ? misfit(given, quoted, meaning) : unknownName(given, options, meaning, here);
    },
    { description: meaning, type: 'string', enum: options },
  );
}

/** The name of an entry of a table; a material can also be a user-defined record. */
function tableName({ table, meaning, example }: Named<unknown, string>): z.core.$ZodType {
  if (table.what === materials.what) return materialOf(meaning, String(example));
  const expected = `the name of a ${table.what}, for example '${String(example)}'`;
  return leaf(
    (given) => {
      if (typeof given !== 'string') throw misfit(given, expected, meaning);
      table.find(given);
      return given;
    },
    {
      description: meaning,
      type: 'string',
      examples: table.usual.length > 0 ? table.usual : [String(example)],
    },
  );
}

let ownSchema: z.ZodMiniType<ReadAs<typeof ownMaterial>, Written<typeof ownMaterial>> | undefined;

/** A material: the name of a library material, or a record with sources. */
function materialOf(meaning: string, example: string): z.core.$ZodType {
  const expected = `the name of a material, for example '${example}', or an object with name, form, class and strengths`;
  const schema = z.pipe(
    z.unknown(),
    z.transform((value, context): Material | undefined => {
      if (typeof value === 'object' && value !== null && !Array.isArray(value)) {
        ownSchema ??= schemaOf(ownMaterial);
        const { whole, issues } = runSchema(ownSchema, value);
        context.issues.push(...issues);
        return whole && materialRecord(whole);
      }
      try {
        if (typeof value !== 'string') throw misfit(value, expected, meaning);
        return material(value);
      } catch (error) {
        if (!(error instanceof MeopError)) throw error;
        refuse(context, error.code === 'unknown-name' ? unknownMaterial(error, value) : error, value);
        return undefined;
      }
    }),
  );
  return described(schema, {
    description: meaning,
    anyOf: [{ $ref: '#/$defs/material-name' }, { $ref: '#/$defs/material' }],
  });
}

/** In a document a user-defined material is a record, in a program a Material. */
const unknownMaterial = ({ code, expected }: MeopError, given: unknown): MeopError =>
  new MeopError({
    code,
    given,
    note: 'material',
    expected,
    remedy:
      'give a name of the list or, for a material of the user, an object with name, form, class and strengths',
  });

function variant({
  discriminator,
  cases,
  standard,
  meaning,
}: Variants<string, Record<string, Inputs | Group>>) {
  const [first, ...others] = Object.entries(cases).map(([name, one]) => {
    const literal = z.literal(name);
    const told = { [discriminator]: name === standard ? z.optional(literal) : literal };
    const fields = { ...told, ...schemasOf(caseFields(one)) };
    return isDeclaredGroup(one) ? part(fields, one.meaning, one.instead) : part(fields, name);
  });
  return oneOf(discriminator, [first, ...others], Object.keys(cases), meaning);
}

const isDeclaredGroup = (one: Inputs | Group): one is Group => caseFields(one) !== one;

/** Strings, booleans and other values without conversion. */
function plain(input: Input): z.core.$ZodType {
  const { type, meaning } = input;
  if (type === 'text')
    return leaf(
      (given) => {
        if (typeof given !== 'string') throw misfit(given, 'a string', meaning);
        if (given !== '') return given;
        throw new MeopError({
          code: 'out-of-domain',
          given,
          expected: `a string that is not empty (${meaning})`,
        });
      },
      { description: meaning, type: 'string', minLength: 1 },
    );
  if (type === 'flag')
    return leaf(
      (given) => {
        if (typeof given === 'boolean') return given;
        throw misfit(given, 'true or false', meaning);
      },
      { description: meaning, type: 'boolean' },
    );
  if (type === 'texts') {
    const text = plain({ ...input, type: 'text', meaning: 'source' });
    return described(z.record(z.string(), text), { description: meaning });
  }
  throw new MeopError({ code: 'wrong-kind', problem: `a document cannot contain '${meaning}'` });
}
