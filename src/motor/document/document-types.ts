import type { Material, MaterialName } from '../../structures';
import type {
  Choice,
  FieldsOfCase,
  Group,
  Input,
  Inputs,
  List,
  Named,
  NamedKind,
  NameOf,
  Need,
  Parameter,
  Quantity,
  QuantityInput,
  Variants,
} from '../../units';
import type { OwnMaterialInput } from './own-material';

/** A value of the document with its tolerance. */
export interface Measured<K extends NamedKind = NamedKind> {
  readonly value: Quantity<K>;
  /** Half of the tolerance range [SI]; zero where none is given. */
  readonly plusMinus: number;
}

/** The kind of a tolerance: that of a difference between two such values. */
type ToleranceKind<K extends NamedKind> = K extends 'temperature'
  ? 'temperature difference'
  : K extends 'gauge pressure' | 'absolute pressure'
    ? 'pressure difference'
    : K;
type Bare<K extends NamedKind> = QuantityInput<K> | (K extends 'dimensionless' ? number : never);

/** A value in the document: a string with its unit, or an object with value and tolerance, absolute or in %. */
export type MeasureInput<K extends NamedKind> =
  | Bare<K>
  | { readonly value: Bare<K>; readonly plusMinus: Bare<ToleranceKind<K>> | `${number} %` };

type Flat<T> = { [F in keyof T]: T[F] };
type Told<D extends string, V, S> = [V] extends [S]
  ? { readonly [F in D]?: V | undefined }
  : { readonly [F in D]: V };

/** A document of declared inputs, as written. */
export type DocumentOf<I extends Inputs> = Flat<
  {
    readonly [F in keyof I as I[F]['need'] extends 'required' ? F : never]: Written<I[F]>;
  } & {
    readonly [F in keyof I as I[F]['need'] extends 'required' ? never : F]?: Written<I[F]> | undefined;
  }
>;

/** One declared input, as written in a document. */
export type Written<T extends Input> =
  T extends Parameter<infer K, Need, infer W>
    ? 'exact' extends W
      ? number
      : MeasureInput<K>
    : T extends Group<infer I>
      ? DocumentOf<I>
      : T extends List<infer X>
        ? readonly Written<X>[]
        : T extends Variants<infer D, infer C, Need, infer S>
          ? { [V in keyof C]: Flat<Told<D, V, S> & DocumentOf<FieldsOfCase<C[V]>>> }[keyof C]
          : T extends Named<infer V, infer N, Need>
            ? V extends Material
              ? MaterialName | OwnMaterialInput
              : NameOf<N>
            : T extends Choice<infer O, Need>
              ? O
              : T extends Input<infer A>
                ? A
                : never;

/** A document of declared inputs, as parsed. */
export type ModelOf<I extends Inputs> = Flat<
  {
    readonly [F in keyof I as I[F]['need'] extends 'required' ? F : never]: ReadAs<I[F]>;
  } & {
    readonly [F in keyof I as I[F]['need'] extends 'required' ? never : F]?: ReadAs<I[F]> | undefined;
  }
>;

/**
 * One declared input of a document, as parsed. A material is looked up, because it can be a user-defined record;
 * other entries of tables stay names, which the calculations look up.
 */
export type ReadAs<T extends Input> =
  T extends Parameter<infer K, Need, infer W>
    ? 'exact' extends W
      ? number
      : Measured<K>
    : T extends Group<infer I>
      ? ModelOf<I>
      : T extends List<infer X>
        ? readonly ReadAs<X>[]
        : T extends Variants<infer D, infer C, Need, infer S>
          ? { [V in keyof C]: Flat<Told<D, V, S> & ModelOf<FieldsOfCase<C[V]>>> }[keyof C]
          : T extends Named<infer V, infer N, Need>
            ? V extends Material
              ? Material
              : NameOf<N>
            : T extends Choice<infer O, Need>
              ? O
              : T extends Input<infer A>
                ? A
                : never;

/** The fields of a document that have a tolerance and whose worst-case limit is not declared. */
export type WithoutWorse<T extends Input> =
  T extends Parameter<NamedKind, Need, infer W>
    ? undefined extends W
      ? 'this quantity'
      : never
    : T extends Group<infer I>
      ? FieldsWithoutWorse<I>
      : T extends List<infer X>
        ? WithoutWorse<X>
        : T extends Variants<string, infer C>
          ? { [V in keyof C]: FieldsWithoutWorse<FieldsOfCase<C[V]>> }[keyof C]
          : never;
type FieldsWithoutWorse<I extends Inputs> = {
  [F in keyof I & string]: [WithoutWorse<I[F]>] extends [never] ? never : F;
}[keyof I & string];

/** A part of a document in which the worst-case limit of every tolerance is declared; the type error names the fields that lack it. */
export type Toleranced<T extends Input> = [WithoutWorse<T>] extends [never]
  ? T
  : { readonly 'declare the worst-case limit of': WithoutWorse<T> };

type Whole = Quantity | Measured | Material;

/** A model whose parts may be missing because they could not be parsed. */
export type Partly<T> = T extends Whole | string | number | boolean | undefined
  ? T
  : T extends readonly (infer X)[]
    ? readonly (Partly<X> | undefined)[]
    : { readonly [F in keyof T]?: Partly<T[F]> | undefined };
