import type { Dimension } from './dimension';
import type { DimensionText, GeneralOf, Kind, KindOfDimension } from './kinds';
import { generalKind, kindOfDimension } from './kinds';

// Rules of addition, subtraction and division, for the compiler and for run time.
// A point (gauge reading, temperature) has an origin: points cannot be added, and their difference is not a point.

/** The kind of difference that belongs to a point. */
type DifferenceOf<K extends Kind> = K extends 'temperature'
  ? 'temperature difference'
  : K extends 'gauge pressure' | 'absolute pressure'
    ? 'pressure difference'
    : K;

/** Kinds that can be added to a kind: itself, its general kind, its difference; to a point only a difference. */
export type AddableTo<K extends Kind> = K extends 'temperature'
  ? 'temperature difference'
  : K extends 'gauge pressure'
    ? 'pressure difference' | 'pressure'
    : K extends 'temperature difference'
      ? 'temperature difference'
      : K | GeneralOf<K> | DifferenceOf<K>;

/** Kinds that can be subtracted from a kind. */
export type SubtractableFrom<K extends Kind> = K | AddableTo<K>;

/** The kind of a − b: two points give their difference. */
export type KindOfMinus<K extends Kind, O extends Kind> = K extends O ? DifferenceOf<K> : K;

/** Kinds by which a kind can be divided: a gauge reading has no true zero, so it has no ratio with a pressure. */
export type DivisorOf<K extends Kind> = K extends 'gauge pressure'
  ? Exclude<Kind, Reading>
  : K extends Reading
    ? Exclude<Kind, 'gauge pressure'>
    : Kind;
type Reading = 'pressure' | 'gauge pressure' | 'absolute pressure';

/** Kinds that a parameter accepts: its own, or its general kind with the reference that the parameter declares. */
export type Accepts<K extends Kind> = K extends 'temperature difference' ? K : K | GeneralOf<K>;

// Sums of exponents between -8 and 8, tabulated rather than computed, which is fast for the compiler.
type Digit = -8 | -7 | -6 | -5 | -4 | -3 | -2 | -1 | 0 | 1 | 2 | 3 | 4 | 5 | 6 | 7 | 8;
// biome-ignore format: a table of sums reads best in rows
interface Up {
  '-8': -7; '-7': -6; '-6': -5; '-5': -4; '-4': -3; '-3': -2; '-2': -1; '-1': 0;
  '0': 1; '1': 2; '2': 3; '3': 4; '4': 5; '5': 6; '6': 7; '7': 8; '8': never;
}
// biome-ignore format: a table of sums reads best in rows
interface Down {
  '-8': never; '-7': -8; '-6': -7; '-5': -6; '-4': -5; '-3': -4; '-2': -3; '-1': -2;
  '0': -1; '1': 0; '2': 1; '3': 2; '4': 3; '5': 4; '6': 5; '7': 6; '8': 7;
}
// biome-ignore format: a table of sums reads best in rows
interface Opposite {
  '-8': 8; '-7': 7; '-6': 6; '-5': 5; '-4': 4; '-3': 3; '-2': 2; '-1': 1;
  '0': 0; '1': -1; '2': -2; '3': -3; '4': -4; '5': -5; '6': -6; '7': -7; '8': -8;
}
type Text<N> = N extends Digit ? `${N}` : never;
type Sum<A, B> = B extends 0
  ? A
  : Text<B> extends `-${string}`
    ? Sum<Down[Text<A>], Up[Text<B>]>
    : Sum<Up[Text<A>], Down[Text<B>]>;
type Negated<A> = Opposite[Text<A>];
type ToDigit<S extends string> = S extends `${infer N extends Digit}` ? N : never;

type SumText<
  A extends string,
  B extends string,
> = A extends `${infer A1},${infer A2},${infer A3},${infer A4},${infer A5}`
  ? B extends `${infer B1},${infer B2},${infer B3},${infer B4},${infer B5}`
    ? `${Sum<ToDigit<A1>, ToDigit<B1>>},${Sum<ToDigit<A2>, ToDigit<B2>>},${Sum<ToDigit<A3>, ToDigit<B3>>},${Sum<ToDigit<A4>, ToDigit<B4>>},${Sum<ToDigit<A5>, ToDigit<B5>>}`
    : never
  : never;
type NegatedText<A extends string> = A extends `${infer A1},${infer A2},${infer A3},${infer A4},${infer A5}`
  ? `${Negated<ToDigit<A1>>},${Negated<ToDigit<A2>>},${Negated<ToDigit<A3>>},${Negated<ToDigit<A4>>},${Negated<ToDigit<A5>>}`
  : never;
type Named<D extends string> = [D] extends [never]
  ? Kind
  : D extends keyof KindOfDimension
    ? KindOfDimension[D]
    : `dimension ${D}`;

/** Angle per time is an angular speed; without an angle it is a frequency. */
type Turning<K extends Kind, Factors extends Kind> = K extends 'frequency'
  ? 'angle' extends Factors
    ? 'angular speed'
    : K
  : K;

/** The kind of a product; a number leaves the kind as it is. */
export type KindOfTimes<A extends Kind, B extends Kind> = Kind extends A | B
  ? Kind
  : Turning<Named<SumText<DimensionText<A>, DimensionText<B>>>, A | B>;

/** The kind of a quotient. */
export type KindOfPer<A extends Kind, B extends Kind> = Kind extends A | B
  ? Kind
  : Turning<Named<SumText<DimensionText<A>, NegatedText<DimensionText<B>>>>, A | B>;

/** The kind of a square or a cube; other powers are computed at run time. */
export type KindOfPow<A extends Kind, N extends number> = N extends 1
  ? A
  : N extends 2
    ? KindOfTimes<A, A>
    : N extends 3
      ? KindOfTimes<KindOfTimes<A, A>, A>
      : Kind;

/** The named kind whose n-th power is A, among those whose roots are in use. */
export type KindOfRoot<A extends Kind, N extends number> = [A, N] extends ['area', 2]
  ? 'length'
  : [A, N] extends ['volume', 3]
    ? 'length'
    : [A, N] extends ['specific energy', 2]
      ? 'speed'
      : Kind;

/** The kind of difference that belongs to a point; any other kind itself. */
export const differenceOf = (kind: Kind): Kind =>
  kind === 'temperature'
    ? 'temperature difference'
    : kind === 'gauge pressure' || kind === 'absolute pressure'
      ? 'pressure difference'
      : kind;

/** The kind of a ± b at run time; `undefined` where they cannot be combined. */
export function kindOfSum(a: Kind, b: Kind, minus: boolean): Kind | undefined {
  const point = a === 'temperature' || a === 'gauge pressure';
  const difference = differenceOf(a);
  if (a === b) return minus ? difference : point ? undefined : a;
  if (b === difference) return a;
  if (a === 'temperature difference') return undefined;
  if (b === 'pressure' && generalKind(a) === 'pressure') return a;
  return generalKind(a) === b && a !== 'gauge pressure' ? a : undefined;
}

/** The kind of a product or quotient at run time, from its dimension and whether an angle went into it. */
export function kindOfProduct(dimension: Dimension, turning: boolean): Kind {
  const kind = kindOfDimension(dimension);
  return turning && kind === 'frequency' ? 'angular speed' : kind;
}

/** True if a quotient would divide one gauge reading by another reading; a stress and a difference are loads. */
export const isGaugeRatio = (a: Kind, b: Kind): boolean =>
  (a === 'gauge pressure' || b === 'gauge pressure') && /pressure$/.test(a) && /pressure$/.test(b);

/** True if a parameter of kind `declared` accepts a quantity of kind `given`. */
export function accepts(declared: Kind, given: Kind): boolean {
  if (declared === given) return true;
  return declared !== 'temperature difference' && generalKind(declared) === given;
}

/** True if one kind is a meaning of the other. */
export const isSameKind = (a: Kind, b: Kind): boolean => accepts(a, b) || accepts(b, a);
