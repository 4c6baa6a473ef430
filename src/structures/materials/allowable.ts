import { fromSiValue, MeopError, type Quantity, type QuantityInput, readInput, unitFor } from '../../units';
import { type FieldsOf, requireFields } from '../../units/known-fields';
import { refusal } from '../../units/refusal';
import { datumCaution, type StressDatum } from './datum';
import { type MaterialName, materialOf } from './library';
import type { BearingData, Material } from './material';
import { strengthRetention } from './retention';
import { isBearing, isEstimated, strengthLimits } from './strength-limits';

/** A strength that may be asked for. */
export type StrengthProperty =
  | 'yield'
  | 'ultimate'
  | 'shear yield'
  | 'shear ultimate'
  | 'bearing yield'
  | 'bearing ultimate'
  | 'compressive yield';

/** What allowable is asked for. */
export interface AllowableInput {
  readonly material: Material | MaterialName;
  readonly property: StrengthProperty;
  /** Of the metal; room temperature where left out. */
  readonly temperature?: QuantityInput<'temperature'> | undefined;
  /** Time at that temperature; half an hour where left out. */
  readonly exposure?: QuantityInput<'time'> | undefined;
  /** Edge distance over hole diameter; needed for bearing. */
  readonly edgeRatio?: number | undefined;
  /** The lesser of along and across the grain where left out. */
  readonly direction?: 'least' | 'longitudinal' | 'transverse';
  /** `'typical'` estimates what will happen and is no allowable. Default `'minimum'`. */
  readonly basis?: 'minimum' | 'typical';
}

/** A strength to design on, with what it rests on. */
export interface Allowable extends StressDatum {
  readonly property: StrengthProperty;
  /** Fraction of the room-temperature strength that it contains. */
  readonly retention: number;
  readonly temperature?: Quantity<'temperature'>;
  readonly cautions: readonly string[];
}

const allowableFields: FieldsOf<AllowableInput> = {
  material: 'required',
  property: 'required',
  temperature: 'optional',
  exposure: 'optional',
  edgeRatio: 'optional',
  direction: 'optional',
  basis: 'optional',
};

/**
 * The strength to design on: the minimum of a standard or the A or S basis, the lesser of the grain directions, at a
 * temperature. Shear and bearing are taken to fall with temperature as the tensile strengths do; shear yield is yield/√3.
 *
 * @throws MeopError `no-allowable` where the material has no minimum value, `missing-field` where bearing has no edge
 * ratio, and all that {@link strengthRetention} throws
 * @example allowable({ material: '6061-T6 extruded tube', property: 'yield' }).value.in('ksi') // => 33
 */
export function allowable(input: AllowableInput): Allowable {
  requireFields('allowable', input, allowableFields);
  const { property, temperature, exposure, edgeRatio } = input;
  const record = materialOf(input.material);
  const cold = atRoom(record, input);
  const hot =
    temperature === undefined
      ? { fraction: 1, source: '', cautions: [] }
      : strengthRetention({
          material: record,
          property: strengthLimits[property],
          temperature,
          ...(exposure !== undefined && { exposure }),
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
  if (temperature !== undefined) found.temperature = temperatureOf(temperature);
  return found;
}

function temperatureOf(given: QuantityInput<'temperature'>): Quantity<'temperature'> {
  const { si, unit } = readInput('temperature', 'temperature', given, 'allowable');
  return fromSiValue(si, 'temperature', unit);
}

function atRoom(record: Material, input: AllowableInput): StressDatum {
  const { property, edgeRatio, direction = 'least', basis = 'minimum' } = input;
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
    default: // plain JavaScript may ask for anything
      return needed(record, input, undefined);
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

// Handbooks give e/D 1.5 and 2.0: linear between, no more above, no credit below 1.5 (MIL-HDBK-5, section 1.4.7). Where
// only 2.0 is given, in proportion to e/D, which lies below every alloy here that has both columns.
function bearingAt(
  record: Material,
  input: AllowableInput,
  data: BearingData | undefined,
  ratio: number | undefined,
): StressDatum {
  const high = needed(record, input, data?.at2_0);
  if (ratio === undefined)
    throw new MeopError(
      'missing-field',
      `allowable: edgeRatio is needed for ${input.property}: the edge distance over the hole diameter`,
      'edgeRatio',
      { expected: 'a number above zero' },
    );
  if (!(ratio > 0 && Number.isFinite(ratio)))
    throw refusal('allowable', 'edgeRatio', ratio, 'a number above zero');
  const top = high.value.si;
  const low = data?.at1_5?.value.si ?? 0.75 * top;
  const si = ratio < 1.5 ? 0 : ratio >= 2 ? top : low + (ratio - 1.5) * 2 * (top - low);
  const guessed = data?.at1_5 === undefined && ratio < 2;
  return {
    ...high,
    value: fromSiValue(si, 'stress', unitFor('stress', high.value.unit)),
    ...(guessed && {
      provenance: 'engineering practice, no published source',
      note: 'only e/D = 2.0 is published; taken in proportion to e/D',
    }),
  };
}

const edgeCaution = (ratio: number): readonly string[] =>
  ratio < 1.5
    ? [`edge distance is ${ratio} diameters: below 1.5 handbooks give no bearing strength at all`]
    : [];

function needed(record: Material, input: AllowableInput, datum: StressDatum | undefined): StressDatum {
  if (datum !== undefined) return datum;
  const { property, basis = 'minimum' } = input;
  throw new MeopError(
    'no-allowable',
    basis === 'typical'
      ? `allowable: ${record.name} has no typical ${property}; add it to the material`
      : `allowable: ${record.name} has no minimum for ${property}; give a Material with one${isEstimated(property) ? ', or withEstimatedStrengths(material), which puts it in from the tensile strength' : ''}; basis: 'typical' is an estimate only`,
    'property',
    { value: property, expected: `a material with a ${basis} ${property}` },
  );
}
