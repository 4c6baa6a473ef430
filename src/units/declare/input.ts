import type { Place } from './place';

/** Whether an input is required, optional, or has a default value. */
export type Need = 'required' | 'optional' | 'standard';

/** Value of an optional input in a calculation. */
export type Absent<N extends Need> = N extends 'optional' ? undefined : never;

/**
 * Worst-case limit of a tolerance. A review uses a value at its `low` or `high` limit, or over the full tolerance
 * range (`both`); the worst-case firing is simulated with a value `firing low` or `firing high`. `neither`: the
 * nominal value is used, unless the pressure depends on it. `exact`: a count, which has no tolerance.
 */
export type Worse = 'low' | 'high' | 'both' | 'firing low' | 'firing high' | 'neither' | 'exact';

/**
 * One declared input: `A` is the type of the argument, `V` the type of the value after the checks. Types, checks,
 * cards, documentation and the motor document follow from its declaration.
 */
export interface Input<out A = unknown, out V = unknown, out N extends Need = Need> {
  /** Type of value: a quantity, a choice, a group of inputs, … */
  readonly type: string;
  /** Meaning, without unit and domain. */
  readonly meaning: string;
  readonly need: N;
  /** A typical value. */
  readonly example: A | undefined;
  /** Synonyms for search. */
  readonly synonyms: readonly string[];
  /** Accepted values, for the card: `length (mm)`, `'hard' or 'soft'`. */
  takes(): string;
  /** Reads and checks a given value. @throws MeopError naming the place */
  read(value: unknown, at: Place): V;
  /** Value in the calculation if the input is omitted. */
  absent(): V;
}

/** Declared inputs by field name. */
export type Inputs = Readonly<Record<string, Input>>;

/** Argument type of one input. */
export type Argument<T extends Input> = Exclude<T['example'], undefined>;

// Mapped over the declaration, so that an editor shows the comment of each declared field.
/** The argument of a call: the argument type of each declared input. */
export type Arguments<I extends Inputs> = {
  readonly [F in keyof I as I[F]['need'] extends 'required' ? F : never]: Argument<I[F]>;
} & {
  readonly [F in keyof I as I[F]['need'] extends 'required' ? never : F]?: Argument<I[F]> | undefined;
};

/** The values of a calculation: every declared input, read and checked. */
export type Values<I extends Inputs> = { readonly [F in keyof I]: ReturnType<I[F]['read']> };

/** Options of an input in addition to its meaning. */
export interface InputFacts<A> {
  /** A typical value. */
  readonly example?: A;
  /** Synonyms for search. */
  readonly synonyms?: readonly string[];
}
