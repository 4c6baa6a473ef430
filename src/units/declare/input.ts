import type { Place } from './place';

/** Whether an input must be given, may be left out, or has a standard value where it is left out. */
export type Need = 'required' | 'optional' | 'standard';

/** What a calculation is given for an input that may be left out. */
export type Absent<N extends Need> = N extends 'optional' ? undefined : never;

/**
 * Which end of a tolerance is the worse one. A review takes a value at its `low` or `high` end, or over the whole of its
 * tolerance (`both`); the worst-case firing is simulated with a value `firing low` or `firing high`. `neither`: the
 * nominal value is used, unless the pressure depends on it. `exact`: a count, which has no tolerance.
 */
export type Worse = 'low' | 'high' | 'both' | 'firing low' | 'firing high' | 'neither' | 'exact';

/**
 * One declared input: `A` is what the argument takes, `V` what a calculation is given after the checks. All that is said
 * of an input anywhere (types, checks, cards, documentation, the motor document) comes from its declaration.
 */
export interface Input<out A = unknown, out V = unknown, out N extends Need = Need> {
  /** What sort of value it takes: a quantity, a choice, a group of inputs, … */
  readonly type: string;
  /** What it means, in words; the unit and the domain are declared beside it. */
  readonly meaning: string;
  readonly need: N;
  /** A typical value. */
  readonly example: A | undefined;
  /** Other names that people search by. */
  readonly synonyms: readonly string[];
  /** What it takes, for the card: `length (mm)`, `'hard' or 'soft'`. */
  takes(): string;
  /** Reads and checks a value that is given. @throws MeopError naming the place */
  read(value: unknown, at: Place): V;
  /** What a calculation is given where the value is left out. */
  absent(): V;
}

/** Declared inputs by field name. */
export type Inputs = Readonly<Record<string, Input>>;

/** What one input takes. */
export type Argument<T extends Input> = Exclude<T['example'], undefined>;

// Mapped over the declaration itself, so that an editor shows the comment of each declared field.
/** The argument of a call: what each declared input takes. */
export type Arguments<I extends Inputs> = {
  readonly [F in keyof I as I[F]['need'] extends 'required' ? F : never]: Argument<I[F]>;
} & {
  readonly [F in keyof I as I[F]['need'] extends 'required' ? never : F]?: Argument<I[F]> | undefined;
};

/** What a calculation is given: every declared input, read and checked. */
export type Values<I extends Inputs> = { readonly [F in keyof I]: ReturnType<I[F]['read']> };

/** What an input may say beyond its meaning. */
export interface InputFacts<A> {
  /** A typical value. */
  readonly example?: A;
  /** Other names that people search by. */
  readonly synonyms?: readonly string[];
}
