import { readInput } from '../input';
import type { NamedKind } from '../kinds';
import { fromSiValue, type Quantity, type QuantityInput } from '../quantity';
import { shownIn } from '../shown-unit';
import type { Unit } from '../unit';
import { type Domain, domainText, inDomain, outOfDomain } from './domain';
import type { Absent, Input, InputFacts, Need, Worse } from './input';

/** Argument type of a kind: a quantity, a string with a unit or, if dimensionless, a number. */
export type FieldInput<K extends NamedKind> = K extends 'dimensionless'
  ? number | QuantityInput<K>
  : QuantityInput<K>;

/** A value of a kind in calculations and results: a number if it is dimensionless. */
export type Result<K extends NamedKind> = ResultOfKind[K];
type ResultOfKind = { readonly [K in NamedKind]: K extends 'dimensionless' ? number : Quantity<K> };

/** One quantity as an input or a result of a calculation. */
export interface Parameter<
  K extends NamedKind = NamedKind,
  N extends Need = Need,
  W extends Worse | undefined = Worse | undefined,
> extends Input<FieldInput<K>, Result<K> | Absent<N>, N> {
  readonly type: 'quantity';
  readonly kind: K;
  /** The textbook symbol, as in the equation. */
  readonly symbol: string;
  readonly domain: Domain;
  /** Default SI value. */
  readonly standard: number | undefined;
  /** Worst-case limit of its tolerance in a review. */
  readonly worse: W;
}

/** The parameters of a formula by field name. */
export type Parameters = Readonly<Record<string, Parameter>>;

/**
 * Options of a parameter in addition to symbol and meaning: its domain, an example, its worst-case limit,
 * synonyms.
 */
export interface ParameterFacts<K extends NamedKind, W extends Worse | undefined>
  extends Domain,
    InputFacts<FieldInput<K>> {
  readonly worse?: W;
}

/** Declaring function of a kind. `facts` restrict its usual domain and add options. */
export type ParameterOf<K extends NamedKind> = <const W extends Worse | undefined = undefined>(
  symbol: string,
  meaning: string,
  facts?: ParameterFacts<K, W>,
) => Parameter<K, 'required', NoInfer<W>>;

/** Any value above zero. */
export const positive: Domain = { above: 0 };
/** Any finite value. */
export const any: Domain = {};

/** Makes the declaring function of a kind. */
export const parameterOf =
  <const K extends NamedKind>(kind: K, usual: Domain): ParameterOf<K> =>
  (symbol, meaning, facts) => {
    const { example, synonyms = [], worse, ...domain } = facts ?? {};
    // Bounds replace the usual domain; `{}` allows any finite value.
    const isUsual = Object.keys(domain).length === 0 && Object.keys(facts ?? usual).length > 0;
    // Valid: W is undefined exactly where no worst-case limit is given.
    return parameter(kind, symbol, meaning, isUsual ? usual : domain, {
      example,
      synonyms,
      worse: worse as NonNullable<typeof worse>,
    });
  };

/** One quantity, whatever its kind. */
export function parameter<K extends NamedKind, W extends Worse | undefined>(
  kind: K,
  symbol: string,
  meaning: string,
  domain: Domain,
  { example, synonyms, worse }: Pick<Parameter<K, 'required', W>, 'example' | 'synonyms' | 'worse'>,
): Parameter<K, 'required', W> {
  return {
    type: 'quantity',
    kind,
    symbol,
    meaning,
    domain,
    need: 'required',
    standard: undefined,
    example,
    synonyms,
    worse,
    takes: () => {
      const text = domainText(kind, domain);
      const what = kind === 'dimensionless' ? 'number' : `${kind} (${shownIn(kind, false).text})`;
      return text === 'any finite value' ? what : `${what}, ${text}`;
    },
    read: (value, at) => {
      const { si, unit } = readInput(kind, at.path, value, at.procedure);
      if (!inDomain(si, domain)) throw outOfDomain(kind, domain, value, unit, at);
      return resultOf(kind, si, unit);
    },
    absent: () => resultOf(kind, Number.NaN, shownIn(kind, false)),
  };
}

/** A value of a kind from its SI number. */
export function resultOf<K extends NamedKind>(
  kind: K,
  si: number,
  unit: Unit = shownIn(kind, false),
  cautions?: readonly string[],
): Result<K> {
  // Valid by the definition of Result: a number if dimensionless, otherwise a quantity.
  return (kind === 'dimensionless' ? si : fromSiValue<K>(si, kind, unit, cautions)) as Result<K>;
}
