import { MeopError } from '../errors';
import { nearestName } from '../nearest-name';
import type { Absent, Input, InputFacts, Need } from './input';
import type { Place } from './place';
import { inputOf, notThat } from './plain-inputs';

/** One of a few strings, which the editor completes. */
export interface Choice<T extends string, N extends Need = 'required'> extends Input<T, T | Absent<N>, N> {
  readonly type: 'choice';
  readonly options: readonly T[];
}

/**
 * Declares a choice of strings.
 *
 * @example choice('plane of shear', ['thread', 'shank']).options.length // => 2
 */
export function choice<const T extends string>(
  meaning: string,
  options: readonly T[],
  facts: InputFacts<T> = {},
): Choice<T> {
  const made = inputOf<T, T>({
    example: options[0],
    ...facts,
    type: 'choice',
    meaning,
    takes: () => quotedList(options),
    read: (value, at) => {
      const found = options.find((option) => option === value);
      if (found !== undefined) return found;
      throw unknownName(value, options, meaning, at);
    },
  });
  return { ...made, type: 'choice', options };
}

const quotedList = (names: readonly string[]): string => names.map((name) => `'${name}'`).join(' or ');

/** A table whose entries are known by name: threads, materials, bolt classes. */
export interface NamedTable<V, N extends string = string> {
  /** Description of an entry: `thread`, `material`. */
  readonly what: string;
  /** All names. */
  readonly names: () => readonly string[];
  /** The names that an editor completes. */
  readonly usual: readonly N[];
  /** The entry of a name. @throws MeopError `unknown-name` */
  readonly find: (name: string) => V;
  /** True if a value is itself an entry, so that a user-defined entry may be given. */
  readonly is: (value: unknown) => value is V;
}

/** An entry of a table, by name or as a value. */
export interface Named<V, N extends string, R extends Need = 'required'>
  extends Input<NameOf<N> | V, V | Absent<R>, R> {
  readonly type: 'named';
  readonly table: NamedTable<V, N>;
}

/** A name that the editor completes, or any other string. */
export type NameOf<N extends string> = N | (string & Readonly<Record<never, never>>);

/** Declares an entry of a table, given by its name or as a value; the calculation receives the entry. */
export function named<V, N extends string>(
  meaning: string,
  table: NamedTable<V, N>,
  facts: InputFacts<NameOf<N> | V> = {},
): Named<V, N> {
  const made = inputOf<NameOf<N> | V, V>({
    ...facts,
    type: 'named',
    meaning,
    takes: () => `name of a ${table.what}, or a ${table.what}`,
    read: (value, at) => {
      if (table.is(value)) return value;
      if (typeof value !== 'string')
        throw notThat(value, `the name of a ${table.what}, or a ${table.what}`, at);
      try {
        return table.find(value);
      } catch (error) {
        throw error instanceof MeopError ? error.at(at.procedure, at.path) : error;
      }
    },
  });
  return { ...made, type: 'named', table };
}

/** The error for an unknown name, with the nearest known one. */
export function unknownName(given: unknown, known: readonly string[], what: string, at: Place): MeopError {
  if (typeof given !== 'string') return notThat(given, quotedList(known), at, 'unknown-name');
  const near = nearestName(given, known);
  return new MeopError({
    code: 'unknown-name',
    procedure: at.procedure,
    path: at.path || undefined,
    given,
    note: what,
    expected: known.map((name) => `'${name}'`).join(', '),
    remedy: near && `did you mean '${near}'?`,
  });
}
