import type { NamedKind } from '../kinds';
import type { Choice, Named } from './choice';
import type { Group } from './group';
import type { Input, Inputs, Worse } from './input';
import type { List } from './list';
import { type Parameter, resultOf } from './parameter';
import type { Cases, Variants } from './variants';

/** The same parameter, with a default SI value. */
export function optional<K extends NamedKind, W extends Worse | undefined>(
  parameter: Parameter<K, 'required', W>,
  standard: number,
): Parameter<K, 'standard', W>;
/** The same parameter, optional. */
export function optional<K extends NamedKind, W extends Worse | undefined>(
  parameter: Parameter<K, 'required', W>,
): Parameter<K, 'optional', W>;
/** The same group of inputs, optional as a whole. */
export function optional<I extends Inputs>(group: Group<I, 'required'>): Group<I, 'optional'>;
/** The same input, with a default value. */
export function optional<A, V, const S extends V>(
  input: Input<A, V, 'required'>,
  standard: S,
): Input<A, V, 'standard'>;
/** The same choice, optional. */
export function optional<T extends string>(input: Choice<T>): Choice<T, 'optional'>;
/** The same entry of a table, optional. */
export function optional<V, N extends string>(input: Named<V, N>): Named<V, N, 'optional'>;
/** The same variants, optional. */
export function optional<D extends string, C extends Cases, S>(
  input: Variants<D, C, 'required', S>,
): Variants<D, C, 'optional', S>;
/** The same list, optional. */
export function optional<T extends Input>(input: List<T, 'required'>): List<T, 'optional'>;
/** The same input, optional. */
export function optional<A, V>(input: Input<A, V, 'required'>): Input<A, V | undefined, 'optional'>;
export function optional(input: Input, standard?: unknown): Input {
  if (standard === undefined) return { ...input, need: 'optional', absent: () => undefined };
  if (!isParameter(input)) return { ...input, need: 'standard', absent: () => standard };
  const si = Number(standard);
  const made: Parameter = {
    ...input,
    need: 'standard',
    standard: si,
    absent: () => resultOf(input.kind, si),
  };
  return made;
}

/** True if a declared input is a quantity. */
export const isParameter = (input: Input): input is Parameter => input.type === 'quantity';
