import * as z from 'zod/mini';
import { datum, type Material, type MaterialName, material } from '../../structures';
import { fromSiValue, MeopError, type NamedKind, unitFor } from '../../units';
import { choice, explained, part, textField } from './fields';
import { type Measured, measure } from './measure';
import { codeOf } from './problems';

const datumOf = <const K extends NamedKind>(kind: K, meaning: string, example: string) =>
  z.optional(
    part(
      {
        value: measure(kind, meaning, example),
        basis: choice(
          ['A', 'B', 'S', 'specified minimum', 'typical', 'computed'],
          'statistical basis of the value',
        ),
        source: textField('mill certificate, test or data sheet'),
      },
      meaning,
    ),
  );

const strength = (meaning: string) => datumOf('stress', meaning, '240 MPa');
const bearing = (meaning: string) =>
  z.optional(
    part(
      {
        at1_5: strength(`${meaning} at an edge distance of 1.5 hole diameters`),
        at2_0: strength(`${meaning} at an edge distance of 2 hole diameters`),
      },
      meaning,
    ),
  );

/** A user-defined material; the JSON Schema contains it once, under `$defs`. */
export const ownMaterial = /* @__PURE__ */ (() =>
  part(
    {
      name: textField('name of the material'),
      form: textField('product form and size range of the values'),
      class: choice(['metal', 'brittle', 'elastomer', 'liner'], 'class of the material'),
      yieldStrength: strength('tensile yield strength'),
      ultimateStrength: strength('tensile ultimate strength'),
      shearUltimate: strength('ultimate shear strength'),
      compressiveYield: strength('compressive yield strength'),
      bearingYield: bearing('bearing yield strength'),
      bearingUltimate: bearing('ultimate bearing strength'),
      elasticModulus: strength("Young's modulus"),
      poissonRatio: datumOf('dimensionless', "Poisson's ratio", '0.33'),
      density: datumOf('density', 'density', '2700 kg/m^3'),
      thermalExpansion: datumOf('thermal expansion', 'thermal expansion', '23e-6 1/K'),
    },
    'user-defined material',
  ))();

type OwnMaterial = z.output<typeof ownMaterial>;

/** A material in the document: the name of a library material, or a user-defined record. */
export type MaterialInput = MaterialName | z.input<typeof ownMaterial>;

const ownShape =
  'must be an object with name, form, class and strengths, each with value, basis and source (user-defined material)';

/** A material: the name of a library material, or a record with sources. */
export function materialField(meaning: string): z.ZodMiniType<Material, MaterialInput> {
  const schema = z.pipe(
    z.unknown(),
    z.transform((value, context): Material => {
      if (typeof value === 'object' && value !== null && !Array.isArray(value)) {
        const found = ownMaterial.safeParse(value);
        if (found.success) return materialRecord(found.data);
        for (const issue of found.error.issues)
          context.issues.push({
            code: 'custom',
            message: issue.message,
            input: issue.input,
            path: [...issue.path],
            params: { code: codeOf(issue) },
          });
        return z.NEVER;
      }
      const problem = (code: string, message: string): Material => {
        context.issues.push({ code: 'custom', message, input: value, params: { code } });
        return z.NEVER;
      };
      if (typeof value !== 'string')
        return problem(
          value === undefined ? 'missing-field' : 'wrong-kind',
          `${value === undefined ? `missing required field (${meaning}); give` : 'must be'} a material name such as '6061-T6 drawn tube' or a user-defined material object${value === undefined ? '' : ` (${meaning}), got ${String(value)}`}`,
        );
      try {
        return material(value);
      } catch (error) {
        if (!(error instanceof MeopError)) throw error;
        return problem(
          error.code,
          error.message.replace(/^material: /, '').replace(/a material of your own is a record.*$/, ownShape),
        );
      }
    }),
  );
  // Valid: the names and records of the input type are what is parsed.
  const typed = schema as z.ZodMiniType<Material, MaterialInput>;
  return explained(typed, {
    description: meaning,
    anyOf: [{ $ref: '#/$defs/material-name' }, { $ref: '#/$defs/material' }],
  });
}

interface GivenDatum<K extends NamedKind> {
  readonly value: Measured<K>;
  readonly basis: 'A' | 'B' | 'S' | 'specified minimum' | 'typical' | 'computed';
  readonly source: string;
}

/** A datum at its worst-case limit: the lower one for strengths and moduli, the upper one for expansion. */
const asDatum = <const K extends NamedKind>(kind: K, { value, ...origin }: GivenDatum<K>) => {
  const end = kind === 'thermal expansion' ? 1 : -1;
  const { si, unit } = value.value;
  return datum(kind, fromSiValue<K>(si + end * value.plusMinus, kind, unitFor(kind, unit)), origin);
};

function materialRecord(given: OwnMaterial): Material {
  const { name, form, class: kind, poissonRatio, density, thermalExpansion } = given;
  const stress = (value: GivenDatum<'stress'> | undefined) => value && asDatum('stress', value);
  const pair = (value: OwnMaterial['bearingYield']) =>
    value && known({ at1_5: stress(value.at1_5), at2_0: stress(value.at2_0) });
  return {
    name,
    form,
    class: kind,
    ...known({
      yieldStrength: stress(given.yieldStrength),
      ultimateStrength: stress(given.ultimateStrength),
      shearUltimate: stress(given.shearUltimate),
      compressiveYield: stress(given.compressiveYield),
      bearingYield: pair(given.bearingYield),
      bearingUltimate: pair(given.bearingUltimate),
      elasticModulus: stress(given.elasticModulus),
      poissonRatio: poissonRatio && {
        value: poissonRatio.value.value.si + poissonRatio.value.plusMinus, // a plate deflects more
        basis: poissonRatio.basis,
        source: poissonRatio.source,
        provenance: "user's own" as const,
      },
      density: density && asDatum('density', density),
      thermalExpansion: thermalExpansion && asDatum('thermal expansion', thermalExpansion),
    }),
  };
}

type Known<T> = { readonly [K in keyof T]?: Exclude<T[K], undefined> };

/** The fields that are given. */
export function known<T extends Readonly<Record<string, unknown>>>(fields: T): Known<T> {
  const entries = Object.entries(fields).filter(([, value]) => value !== undefined);
  return Object.fromEntries(entries) as Known<T>; // valid: only undefined fields are omitted
}
