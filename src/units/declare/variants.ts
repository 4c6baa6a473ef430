import { choice } from './choice';
import { notAnObject } from './field-errors';
import type { Arguments, Input, InputFacts, Inputs, Values } from './input';
import { pathTo } from './place';
import { inputOf } from './plain-inputs';
import { readInputs } from './read-inputs';

type Cases = Readonly<Record<string, Inputs>>;

/** The argument of one of several variants, told apart by the name in one field. */
export type VariantArgument<D extends string, C extends Cases> = {
  [V in keyof C]: { readonly [F in D]: V } & Arguments<C[V]>;
}[keyof C];

/** One of several variants as a calculation is given it. */
export type VariantValue<D extends string, C extends Cases> = {
  [V in keyof C]: { readonly [F in D]: V } & Values<C[V]>;
}[keyof C];

/** One of several groups of inputs, told apart by the name in one field. */
export interface Variants<D extends string, C extends Cases>
  extends Input<VariantArgument<D, C>, VariantValue<D, C>, 'required'> {
  readonly discriminator: D;
  readonly cases: C;
}

/** Declares one of several groups of inputs, told apart by the name in the field `discriminator`. */
export function variants<const D extends string, const C extends Cases>(
  discriminator: D,
  meaning: string,
  cases: C,
  facts: InputFacts<VariantArgument<D, C>> = {},
): Variants<D, C> {
  const names = Object.keys(cases);
  const which = choice(meaning, names);
  const made = inputOf<VariantArgument<D, C>, VariantValue<D, C>>({
    ...facts,
    type: 'variants',
    meaning,
    takes: () => `{ ${discriminator}: ${names.map((name) => `'${name}'`).join(' | ')}, … }`,
    read: (value, at) => {
      if (typeof value !== 'object' || value === null) throw notAnObject(value, [discriminator], at);
      const place = { procedure: at.procedure, path: pathTo(at, discriminator) };
      const { [discriminator]: name, ...rest }: Readonly<Record<string, unknown>> = { ...value };
      const variant = which.read(name, place);
      // True: the fields are those of the variant that the discriminator names.
      return { [discriminator]: variant, ...readInputs(cases[variant], rest, at) } as VariantValue<D, C>;
    },
  });
  return { ...made, discriminator, cases };
}
