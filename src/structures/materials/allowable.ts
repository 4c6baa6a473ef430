import {
  choice,
  fromSiValue,
  MeopError,
  named,
  optional,
  procedure,
  type Quantity,
  ratio,
  unitFor,
  type Values,
} from '../../units';
import { datumCaution, type StressDatum } from './datum';
import type { BearingData, Material } from './material';
import { materials } from './material-table';
import { exposure, partTemperature } from './part-temperature';
import { retentionOf } from './retention';
import { isBearing, isEstimated, strengthLimits } from './strength-limits';

const property = choice('strength property', [
  'yield',
  'ultimate',
  'shear yield',
  'shear ultimate',
  'bearing yield',
  'bearing ultimate',
  'compressive yield',
]);

/** A strength property. */
export type StrengthProperty = (typeof property.options)[number];

const inputs = {
  material: named('material of the part', materials, { example: '6061-T6 drawn tube' }),
  property,
  temperature: partTemperature,
  exposure,
  edgeRatio: optional(
    ratio('e/D', 'edge distance/hole diameter; required for bearing', { above: 0, example: 2 }),
  ),
  direction: optional(
    choice("grain direction; 'least' is the weaker of both", ['least', 'longitudinal', 'transverse']),
    'least',
  ),
  basis: optional(
    choice("statistical basis; 'typical' is an estimate and not an allowable", ['minimum', 'typical']),
    'minimum',
  ),
};
type Given = Values<typeof inputs>;

/** A design allowable with its origin. */
export interface Allowable extends StressDatum {
  readonly property: StrengthProperty;
  /** Fraction of the room-temperature strength included in the value. */
  readonly retention: number;
  readonly temperature?: Quantity<'temperature'>;
  readonly cautions: readonly string[];
}

/**
 * The minimum of a standard or the A or S basis. Shear and bearing are assumed to decrease with temperature as the tensile
 * strengths do; shear yield is yield/√3.
 *
 * @throws MeopError `no-allowable` where the material has no minimum value, `missing-field` where bearing has no edge ratio
 * @example allowable({ material: '6061-T6 extruded tube', property: 'yield' }).value.in('ksi') // => 33
 */
export const allowable = /* @__PURE__ */ procedure({
  name: 'allowable',
  title: 'Design allowable of a material at a temperature',
  source: 'the values of the material, each with its source; edge distance as in MIL-HDBK-5, section 1.4.7',
  inputs,
  gives: 'the strength with its basis and source',
  example: { material: '6061-T6 extruded tube', property: 'yield' },
  run: (values) => allowableOf(values),
});

/** The same from values that are read. */
export function allowableOf(input: Given): Allowable {
  const { material: record, property, temperature, exposure, edgeRatio } = input;
  const cold = atRoom(record, input);
  const hot =
    temperature === undefined
      ? { fraction: 1, source: '', cautions: [] }
      : retentionOf({
          material: record,
          property: strengthLimits[property],
          temperature,
          exposure,
          state: 'hot',
        });
  const credit = edgeRatio !== undefined && isBearing(property) ? edgeCaution(edgeRatio) : [];
  const own = datumCaution(`${property} of ${record.name}`, cold);
  const { value, basis, provenance, note } = cold;
  // Written out, and added to only where there is something: a spread costs more than all the rest.
  const found: { -readonly [F in keyof Allowable]: Allowable[F] } = {
    property,
    value: fromSiValue(value.si * hot.fraction, 'stress', unitFor('stress', value.unit)),
    basis,
    provenance,
    source: hot.fraction === 1 ? cold.source : `${cold.source}; at temperature: ${hot.source}`,
    retention: hot.fraction,
    cautions: [...(record.cautions ?? []), ...(own === undefined ? [] : [own]), ...hot.cautions, ...credit],
  };
  if (note !== undefined) found.note = note;
  if (temperature !== undefined) found.temperature = temperature;
  return found;
}

function atRoom(record: Material, input: Given): StressDatum {
  const { property, edgeRatio, direction, basis } = input;
  const from = basis === 'typical' ? record.typical : record;
  const across = basis === 'typical' ? undefined : record.transverse;
  switch (property) {
    case 'yield':
      return needed(record, input, grain(direction, from?.yieldStrength, across?.yieldStrength));
    case 'ultimate':
      return needed(record, input, grain(direction, from?.ultimateStrength, across?.ultimateStrength));
    case 'compressive yield':
      return needed(record, input, basis === 'typical' ? undefined : record.compressiveYield);
    case 'shear ultimate':
      return needed(record, input, from?.shearUltimate);
    case 'shear yield':
      return vonMisesShear(
        needed(record, input, grain(direction, from?.yieldStrength, across?.yieldStrength)),
      );
    case 'bearing yield':
      return bearingAt(record, input, from?.bearingYield, edgeRatio);
    case 'bearing ultimate':
      return bearingAt(record, input, from?.bearingUltimate, edgeRatio);
  }
}

function grain(
  direction: 'least' | 'longitudinal' | 'transverse',
  along: StressDatum | undefined,
  across: StressDatum | undefined,
): StressDatum | undefined {
  if (direction === 'longitudinal') return along;
  if (along === undefined || across === undefined) return along ?? across;
  if (direction === 'transverse') return across;
  return across.value.si < along.value.si ? across : along;
}

function vonMisesShear(tension: StressDatum): StressDatum {
  const { value } = tension;
  return {
    ...tension,
    value: fromSiValue(value.si / Math.sqrt(3), 'stress', unitFor('stress', value.unit)),
    basis: tension.basis === 'typical' ? 'typical' : 'computed',
    source: `yield/√3 (distortion energy) of ${tension.source}`,
  };
}

// Handbooks state e/D 1.5 and 2.0: linear between, constant above, no credit below 1.5 (MIL-HDBK-5, section 1.4.7). Where
// only 2.0 is stated, proportional to e/D, which is below every alloy here that has both columns.
function bearingAt(
  record: Material,
  input: Given,
  data: BearingData | undefined,
  ratio: number | undefined,
): StressDatum {
  const high = needed(record, input, data?.at2_0);
  if (ratio === undefined)
    throw new MeopError({
      code: 'missing-field',
      procedure: 'allowable',
      path: 'edgeRatio',
      expected: `edge distance/hole diameter, for ${input.property}`,
    });
  const top = high.value.si;
  const low = data?.at1_5?.value.si ?? 0.75 * top;
  const si = ratio < 1.5 ? 0 : ratio >= 2 ? top : low + (ratio - 1.5) * 2 * (top - low);
  const guessed = data?.at1_5 === undefined && ratio < 2;
  return {
    ...high,
    value: fromSiValue(si, 'stress', unitFor('stress', high.value.unit)),
    ...(guessed && {
      provenance: 'engineering practice, no published source',
      note: 'only e/D = 2.0 is published; assumed proportional to e/D',
    }),
  };
}

const edgeCaution = (ratio: number): readonly string[] =>
  ratio < 1.5
    ? [`The edge distance is ${ratio} diameters. Handbooks state no bearing strength below 1.5 diameters.`]
    : [];

function needed(record: Material, input: Given, datum: StressDatum | undefined): StressDatum {
  if (datum !== undefined) return datum;
  const { property, basis } = input;
  const estimate = isEstimated(property) ? ', or use withEstimatedStrengths(material)' : '';
  throw new MeopError({
    code: 'no-allowable',
    procedure: 'allowable',
    path: 'property',
    given: property,
    problem: `${record.name} has no ${basis} value for '${property}'`,
    expected: `a material with a ${basis} ${property}`,
    remedy: `Pass a Material object that has one${basis === 'minimum' ? estimate : ''}`,
  });
}
