import { readInput } from '../input';
import type { NamedKind } from '../kinds';
import { fromSiValue, type Quantity, type QuantityInput } from '../quantity';
import { shownIn } from '../shown-unit';
import type { Unit } from '../unit';
import { type Domain, domainText, inDomain, outOfDomain } from './domain';
import type { Absent, Input, InputFacts, Need, Worse } from './input';

/** What a field of a kind takes: a quantity, a text with a unit or, where there is no dimension, a number. */
export type FieldInput<K extends NamedKind> = K extends 'dimensionless'
  ? number | QuantityInput<K>
  : QuantityInput<K>;

/** A value of a kind as a calculation gets and gives it: a number where there is no dimension. */
export type Result<K extends NamedKind> = ResultOfKind[K];
type ResultOfKind = { readonly [K in NamedKind]: K extends 'dimensionless' ? number : Quantity<K> };

/** One quantity that a calculation takes or gives. */
export interface Parameter<
  K extends NamedKind = NamedKind,
  N extends Need = Need,
  W extends Worse | undefined = Worse | undefined,
> extends Input<FieldInput<K>, Result<K> | Absent<N>, N> {
  readonly type: 'quantity';
  readonly kind: K;
  /** The textbook symbol, as it stands in the equation. */
  readonly symbol: string;
  readonly domain: Domain;
  /** The SI value assumed where the parameter is left out. */
  readonly standard: number | undefined;
  /** The end of its tolerance that is the worse one for a review. */
  readonly worse: W;
}

/** The parameters of a formula by field name. */
export type Parameters = Readonly<Record<string, Parameter>>;

/** What a parameter may say beyond symbol and meaning: its domain, an example, the worse end of its tolerance, synonyms. */
export interface ParameterFacts<K extends NamedKind, W extends Worse | undefined>
  extends Domain,
    InputFacts<FieldInput<K>> {
  readonly worse?: W;
}

/** How a parameter of one kind is declared. `facts` narrow its usual domain and say more of it. */
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
    // True: W is undefined exactly where no worse end is given.
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
  // True by the definition of Result: a number where there is no dimension, else a quantity.
  return (kind === 'dimensionless' ? si : fromSiValue<K>(si, kind, unit, cautions)) as Result<K>;
}
