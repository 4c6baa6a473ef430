import { datum, type Material } from '../../structures';
import { cyclicConstants } from '../../structures/inputs';
import {
  choice,
  density,
  fromSiValue,
  type Group,
  inputs,
  type NamedKind,
  optional,
  type Parameter,
  ratio,
  stress,
  thermalExpansion,
  unitFor,
  type Worse,
  words,
} from '../../units';
import type { DocumentOf, Measured, ModelOf } from './document-types';

const datumOf = <K extends NamedKind, W extends Worse>(value: Parameter<K, 'required', W>) =>
  optional(
    inputs(
      {
        value,
        basis: choice('statistical basis of the value', [
          'A',
          'B',
          'S',
          'specified minimum',
          'typical',
          'computed',
        ]),
        source: words('mill certificate, test or data sheet'),
      },
      { meaning: value.meaning },
    ),
  );
const strength = (meaning: string) =>
  datumOf(stress('', meaning, { above: 0, example: '240 MPa', worse: 'low' }));
const bearing = (meaning: string) =>
  optional(
    inputs(
      {
        at1_5: strength(`${meaning} at an edge distance of 1.5 hole diameters`),
        at2_0: strength(`${meaning} at an edge distance of 2 hole diameters`),
      },
      { meaning },
    ),
  );

/** A user-defined material. */
export const ownMaterial = /* @__PURE__ */ inputs(
  {
    name: words('name of the material'),
    form: words('product form and sizes for which the values are valid'),
    class: choice('class of the material', ['metal', 'brittle', 'elastomer', 'liner']),
    yieldStrength: strength('tensile yield strength'),
    ultimateStrength: strength('tensile ultimate strength'),
    shearUltimate: strength('ultimate shear strength'),
    compressiveYield: strength('compressive yield strength'),
    bearingYield: bearing('bearing yield strength'),
    bearingUltimate: bearing('ultimate bearing strength'),
    elasticModulus: strength('elastic modulus'),
    // The plate stress increases with Poisson's ratio.
    poissonRatio: datumOf(ratio('ν', "Poisson's ratio", { example: 0.33, worse: 'high' })),
    elongation: datumOf(
      ratio('A', 'elongation at fracture as a fraction', { above: 0, max: 1, example: 0.1, worse: 'low' }),
    ),
    cyclic: optional(cyclicConstants),
    density: datumOf(density('ρ', 'density', { example: '2700 kg/m^3', worse: 'low' })),
    thermalExpansion: datumOf(
      thermalExpansion('α', 'coefficient of thermal expansion', {
        above: 0,
        example: '23e-6 1/K',
        worse: 'high',
      }),
    ),
  },
  { meaning: 'material of the user' },
);

/** A user-defined material in document form. */
export type OwnMaterialInput = DocumentOf<(typeof ownMaterial)['fields']>;

type OwnMaterial = ModelOf<(typeof ownMaterial)['fields']>;

interface GivenDatum<K extends NamedKind> {
  readonly value: Measured<K>;
  readonly basis: 'A' | 'B' | 'S' | 'specified minimum' | 'typical' | 'computed';
  readonly source: string;
}

type DatumGroup<K extends NamedKind> = Group<{ readonly value: Parameter<K> } & Group['fields']>;

/** The SI value at the declared worst-case limit of its tolerance. */
const atWorse = ({ value, plusMinus }: Measured, { worse }: Parameter): number =>
  value.si + (worse === 'high' ? plusMinus : -plusMinus);

const asDatum = <K extends NamedKind>(
  { value, ...origin }: GivenDatum<K>,
  { fields: { value: declared } }: DatumGroup<K>,
) => {
  const { kind } = declared;
  const si = atWorse(value, declared);
  return datum(kind, fromSiValue<K>(si, kind, unitFor(kind, value.value.unit)), origin);
};

/** The material of a user-defined record, each value at its worst-case limit. */
export function materialRecord(given: OwnMaterial): Material {
  const { fields } = ownMaterial;
  const { name, form, class: kind, poissonRatio, density: mass, thermalExpansion: expansion } = given;
  const { elongation, cyclic } = given;
  const of = (value: GivenDatum<'stress'> | undefined) => value && asDatum(value, fields.yieldStrength);
  const pair = (value: OwnMaterial['bearingYield']) =>
    value && known({ at1_5: of(value.at1_5), at2_0: of(value.at2_0) });
  return {
    name,
    form,
    class: kind,
    ...known({
      yieldStrength: of(given.yieldStrength),
      ultimateStrength: of(given.ultimateStrength),
      shearUltimate: of(given.shearUltimate),
      compressiveYield: of(given.compressiveYield),
      bearingYield: pair(given.bearingYield),
      bearingUltimate: pair(given.bearingUltimate),
      elasticModulus: of(given.elasticModulus),
      poissonRatio: poissonRatio && {
        value: atWorse(poissonRatio.value, fields.poissonRatio.fields.value),
        basis: poissonRatio.basis,
        source: poissonRatio.source,
        provenance: "user's own" as const,
      },
      elongation: elongation && {
        value: atWorse(elongation.value, fields.elongation.fields.value),
        basis: elongation.basis,
        source: elongation.source,
        provenance: "user's own" as const,
      },
      cyclic: cyclic && cyclicOf(cyclic),
      density: mass && asDatum(mass, fields.density),
      thermalExpansion: expansion && asDatum(expansion, fields.thermalExpansion),
    }),
  };
}

/** Constants of strain-controlled tests in SI, each at its worst-case limit. */
function cyclicOf({ source, ...constants }: NonNullable<OwnMaterial['cyclic']>): Material['cyclic'] {
  const { fields } = cyclicConstants;
  return {
    strengthCoefficient: atWorse(constants.strengthCoefficient, fields.strengthCoefficient),
    hardeningExponent: constants.hardeningExponent.value.si,
    fatigueStrength: atWorse(constants.fatigueStrength, fields.fatigueStrength),
    fatigueExponent: atWorse(constants.fatigueExponent, fields.fatigueExponent),
    fatigueDuctility: atWorse(constants.fatigueDuctility, fields.fatigueDuctility),
    ductilityExponent: atWorse(constants.ductilityExponent, fields.ductilityExponent),
    source,
  };
}

type Known<T> = { readonly [K in keyof T]?: Exclude<T[K], undefined> };

/** The fields that are given. */
function known<T extends Readonly<Record<string, unknown>>>(fields: T): Known<T> {
  const entries = Object.entries(fields).filter(([, value]) => value !== undefined);
  return Object.fromEntries(entries) as Known<T>; // true: only undefined fields are omitted
}
