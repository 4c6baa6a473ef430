import { choice } from './choice';
import { notAnObject } from './field-errors';
import { checked, type Group } from './group';
import type { Absent, Arguments, Input, InputFacts, Inputs, Need, Values } from './input';
import { pathTo } from './place';
import { inputOf } from './plain-inputs';
import { readInputs } from './read-inputs';

export type Cases = Readonly<Record<string, Inputs | Group>>;

/** The fields of a variant, declared as a group or as bare fields. */
export type FieldsOfCase<X> = X extends Group<infer I> ? I : X extends Inputs ? X : never;

type Told<D extends string, V, S> = V extends S
  ? { readonly [F in D]?: V | undefined }
  : { readonly [F in D]: V };

/**
 * The argument of one of several variants, distinguished by the name in one field, which the default variant may
 * omit.
 */
export type VariantArgument<D extends string, C extends Cases, S = never> = {
  [V in keyof C]: Told<D, V, S> & Arguments<FieldsOfCase<C[V]>>;
}[keyof C];

/** One of several variants in a calculation. */
export type VariantValue<D extends string, C extends Cases> = {
  [V in keyof C]: { readonly [F in D]: V } & Values<FieldsOfCase<C[V]>>;
}[keyof C];

/** One of several groups of inputs, distinguished by the name in one field. */
export interface Variants<D extends string, C extends Cases, N extends Need = Need, S = never>
  extends Input<VariantArgument<D, C, S>, VariantValue<D, C> | Absent<N>, N> {
  readonly type: 'variants';
  /** Default variant, used if the discriminator is omitted. */
  readonly standard: S | undefined;
  readonly discriminator: D;
  readonly cases: C;
}

/** Declares one of several groups of inputs, distinguished by the name in the field `discriminator`. */
export function variants<
  const D extends string,
  const C extends Cases,
  const S extends keyof C & string = never,
>(
  discriminator: D,
  meaning: string,
  cases: C,
  {
    standard,
    ...facts
  }: InputFacts<VariantArgument<D, C, S>> & {
    /** Default variant, used if the discriminator is omitted. */
    readonly standard?: S;
  } = {},
): Variants<D, C, 'required', S> {
  const names = Object.keys(cases);
  const which = choice(meaning, names);
  const made = inputOf<VariantArgument<D, C, S>, VariantValue<D, C>>({
    ...facts,
    type: 'variants',
    meaning,
    takes: () => `{ ${discriminator}: ${names.map((name) => `'${name}'`).join(' | ')}, … }`,
    read: (value, at) => {
      if (typeof value !== 'object' || value === null) throw notAnObject(value, [discriminator], at);
      const place = { procedure: at.procedure, path: pathTo(at, discriminator) };
      const { [discriminator]: name = standard, ...rest }: Readonly<Record<string, unknown>> = { ...value };
      const variant = which.read(name, place);
      const one = cases[variant];
      const values = readInputs(caseFields(one), rest, at);
      if (isGroup(one)) checked(values, one.checks, at);
      // True: the fields are those of the variant that the discriminator names.
      return { [discriminator]: variant, ...values } as VariantValue<D, C>;
    },
  });
  return { ...made, type: 'variants', discriminator, cases, standard };
}

const isGroup = (one: Inputs | Group): one is Group => one.type === 'group';

/** The fields of a variant. */
export const caseFields = (one: Inputs | Group): Inputs => (isGroup(one) ? one.fields : one);
