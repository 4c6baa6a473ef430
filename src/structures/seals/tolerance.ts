import {
  fromSiValue,
  MeopError,
  type NamedKind,
  type Quantity,
  type QuantityInput,
  readInput,
  unitOf,
} from '../../units';

/** A machined length: as it is (measured), or with limits. */
export type TolerancedLength =
  | QuantityInput<'length'>
  | {
      readonly nominal: QuantityInput<'length'>;
      /** Above and below the nominal alike; or give `plus` and `minus`. */
      readonly plusMinus?: QuantityInput<'length'>;
      readonly plus?: QuantityInput<'length'>;
      readonly minus?: QuantityInput<'length'>;
    };

/** The least, nominal and greatest that tolerances allow. */
export interface Band<V> {
  readonly min: V;
  readonly nominal: V;
  readonly max: V;
}

/** A band in SI. */
export type BandSi = Band<number>;

/** Reads a length with its limits; every limit is above zero. */
export function readBand(field: string, value: TolerancedLength, context: string): BandSi {
  const length = (given: QuantityInput<'length'> | undefined, path: string): number =>
    given === undefined ? 0 : readInput('length', path, given, context).si;
  const plain = typeof value !== 'object' || value === null || 'si' in value;
  const nominal = plain ? length(value, field) : length(value.nominal, `${field}.nominal`);
  if (!plain && value.plusMinus !== undefined && (value.plus !== undefined || value.minus !== undefined))
    throw new MeopError(
      'out-of-domain',
      `${context}: ${field}: plusMinus is given beside plus or minus; give the limits one way`,
      `${field}.plusMinus`,
      { value, expected: 'plusMinus alone, or plus and minus' },
    );
  const plus = plain ? 0 : length(value.plusMinus ?? value.plus, `${field}.plus`);
  const minus = plain ? 0 : length(value.plusMinus ?? value.minus, `${field}.minus`);
  if (nominal - minus > 0 && plus >= 0 && minus >= 0)
    return { min: nominal - minus, nominal, max: nominal + plus };
  throw new MeopError(
    'out-of-domain',
    `${context}: ${field}: ${plain ? String(value) : `${nominal * 1000} mm +${plus * 1000} −${minus * 1000}`} given; a length that stays above zero, with limits of zero or more, is expected`,
    field,
    { value, expected: 'a length above zero' },
  );
}

/** The band of a nominal value and a tolerance to both sides. */
export const around = (nominal: number, tolerance: number): BandSi => ({
  min: nominal - tolerance,
  nominal,
  max: nominal + tolerance,
});

/** A band of numbers as quantities. */
export const showBand = <const K extends NamedKind>(
  kind: K,
  band: BandSi,
  unit: string,
): Band<Quantity<K>> => {
  const show = (si: number): Quantity<K> => fromSiValue<K>(si, kind, unitOf(unit));
  return { min: show(band.min), nominal: show(band.nominal), max: show(band.max) };
};
