import {
  fromSiValue,
  type Input,
  isQuantity,
  length,
  MeopError,
  type NamedKind,
  optional,
  type Parameter,
  type Quantity,
  type QuantityInput,
  readInputs,
  unitOf,
} from '../../units';

/** A machined length: as measured, or with limits. */
export type TolerancedLength =
  | QuantityInput<'length'>
  | {
      readonly nominal: QuantityInput<'length'>;
      /** Equal tolerance above and below the nominal; or give `plus` and `minus`. */
      readonly plusMinus?: QuantityInput<'length'>;
      readonly plus?: QuantityInput<'length'>;
      readonly minus?: QuantityInput<'length'>;
    };

/** The minimum, nominal and maximum over the tolerances. */
export interface Band<V> {
  readonly min: V;
  readonly nominal: V;
  readonly max: V;
}

/** A band in SI. */
export type BandSi = Band<number>;

const limit = (symbol: string, meaning: string) => optional(length(symbol, meaning, { min: 0 }));

/** The same length as a calculation over tolerances takes it: as measured, or with limits, all of them above zero. */
export const toleranced = (
  of: Parameter<'length', 'required'>,
): Input<TolerancedLength, BandSi, 'required'> => ({
  ...of,
  type: 'toleranced length',
  takes: () => `${of.takes()}; or { nominal, plusMinus } or { nominal, plus, minus }`,
  read: (value, at) => {
    if (typeof value !== 'object' || value === null || isQuantity(value)) {
      const { si } = of.read(value, at);
      return { min: si, nominal: si, max: si };
    }
    const limits = {
      nominal: of,
      plusMinus: limit('±', 'tolerance to both sides'),
      plus: limit('+', 'upper tolerance'),
      minus: limit('−', 'lower tolerance'),
    };
    const { nominal, plusMinus, plus, minus } = readInputs(limits, value, at);
    if (plusMinus !== undefined && (plus ?? minus) !== undefined)
      throw new MeopError({
        code: 'out-of-domain',
        procedure: at.procedure,
        path: `${at.path}.plusMinus`,
        given: value,
        problem: 'plusMinus excludes plus and minus',
        remedy: 'Give either plusMinus, or plus and minus',
      });
    const [up, down] = [(plusMinus ?? plus)?.si ?? 0, (plusMinus ?? minus)?.si ?? 0];
    if (nominal.si - down > 0) return { min: nominal.si - down, nominal: nominal.si, max: nominal.si + up };
    throw new MeopError({
      code: 'out-of-domain',
      procedure: at.procedure,
      path: at.path,
      given: value,
      expected: 'a length that remains above zero over its tolerance',
    });
  },
  absent: () => ({ min: Number.NaN, nominal: Number.NaN, max: Number.NaN }),
});

/** The band of a nominal value and an equal tolerance to both sides. */
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
