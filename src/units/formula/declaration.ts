import type { NamedKind } from '../kinds';
import type { Quantity, QuantityInput } from '../quantity';

/** The values, in SI, that a parameter may take. */
export interface Domain {
  /** Greater than. */
  readonly above?: number;
  /** Less than. */
  readonly below?: number;
  /** At least. */
  readonly min?: number;
  /** At most. */
  readonly max?: number;
  /** Whole numbers only. */
  readonly whole?: boolean;
}

/** One symbol of a formula: a parameter or the result. */
export interface FormulaParameter<
  K extends NamedKind = NamedKind,
  D extends number | undefined = number | undefined,
> {
  readonly kind: K;
  /** The textbook symbol, as it stands in the equation. */
  readonly symbol: string;
  /** What it means, in words. */
  readonly meaning: string;
  readonly domain: Domain;
  /** The SI value taken where the parameter is left out. */
  readonly standard: D;
}

/** The parameters of a formula by field name. */
export type Givens = Readonly<Record<string, FormulaParameter>>;

type Optional<I extends Givens> = { [F in keyof I]: I[F]['standard'] extends number ? F : never }[keyof I];

/** What a field takes in the unit-aware call. */
export type FieldInput<K extends NamedKind> = K extends 'dimensionless'
  ? number | QuantityInput<K>
  : QuantityInput<K>;

type Required<I extends Givens> = Exclude<keyof I, Optional<I>>;

/** The argument of the unit-aware call. */
export type Arguments<I extends Givens> = { readonly [F in Required<I>]: FieldInput<I[F]['kind']> } & {
  readonly [F in Optional<I>]?: FieldInput<I[F]['kind']>;
};

/** The argument of `.si`: plain SI numbers. */
export type SiArguments<I extends Givens> = { readonly [F in Required<I>]: number } & {
  readonly [F in Optional<I>]?: number;
};

/** Every parameter in SI, as the validity checks see them. */
export type SiValues<I extends Givens> = { readonly [F in keyof I]: number };

/** What a formula gives back: a number where the result has no dimension. */
export type Result<K extends NamedKind> = ResultOfKind[K];
type ResultOfKind = { readonly [K in NamedKind]: K extends 'dimensionless' ? number : Quantity<K> };

/** Everything a careful engineer wants to know about one closed-form equation. */
export interface Declaration<I extends Givens, K extends NamedKind> {
  /** The name it is exported under. */
  readonly name: string;
  readonly title: string;
  /** The equation in the symbols of its givens, every product written out: `σ_h = p·r / t`. */
  readonly equation: string;
  /** Where the equation is published: title, edition, section or equation number. */
  readonly source: string;
  readonly inputs: I;
  readonly output: FormulaParameter<K>;
  /** A typical call: shown on the card, and the point around which every formula is tested. */
  readonly example: Arguments<I>;
  /** Each returns true where the formula may be trusted, else the caution to attach to the result. */
  readonly valid?: readonly ((values: SiValues<I>) => true | string)[];
  /** Each returns true where the formula exists at all, else what is wrong with these values together. */
  readonly requires?: readonly ((values: SiValues<I>) => true | string)[];
  readonly si: (values: SiArguments<I>) => number;
  /** The equation solved for a parameter, in SI. */
  readonly solve?: { readonly [F in keyof I]?: (result: number, values: SiValues<I>) => number };
}

/** What every formula tells of itself, whatever its parameters. */
export interface FormulaMetadata {
  /** The name it is exported under. */
  readonly id: string;
  readonly title: string;
  readonly equation: string;
  readonly source: string;
  readonly inputs: Givens;
  readonly output: FormulaParameter;
  /** A typical call. */
  readonly example: Readonly<Record<string, unknown>>;
  /** The parameters that `solveFor` solves for. */
  readonly solvable: readonly string[];
}
