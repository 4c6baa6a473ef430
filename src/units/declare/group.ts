import type { ErrorFacts } from '../error-message';
import { MeopError } from '../errors';
import { exampleOf } from './example';
import type { Absent, Arguments, Input, Inputs, Need, Values } from './input';
import { type Place, pathTo } from './place';
import { readInputs } from './read-inputs';

/** Inputs that belong together, such as a tube or a seal: read once and passed on as one value. */
export interface Group<I extends Inputs = Inputs, N extends Need = Need>
  extends Input<Arguments<I>, Values<I> | Absent<N>, N> {
  readonly type: 'group';
  readonly fields: I;
  readonly checks: readonly Check<unknown>[];
  readonly instead: Readonly<Record<string, string>>;
}

/** Conflict between values of a group. */
export type Conflict = Pick<ErrorFacts, 'path' | 'given' | 'expected' | 'remedy' | 'problem'> & {
  /** Error code; default `out-of-domain`. */
  readonly code?: string;
};

/** Returns the conflict between the values; `undefined` where there is none. */
export type Check<V> = { check(values: V): Conflict | undefined }['check'];

/** Options of a group. */
export interface GroupFacts<I extends Inputs> {
  /** Description of the group: `the tube that contains the pressure`. */
  readonly meaning: string;
  readonly synonyms?: readonly string[];
  /** Likely unknown fields, each with the correct one. */
  readonly instead?: Readonly<Record<string, string>>;
  /** Checks between values, run after all fields are read. */
  readonly checks?: readonly Check<Values<I>>[];
}

/**
 * Declares inputs that belong together. A group is also an input, so that groups nest; its fields may be spread
 * into another declaration.
 *
 * @example inputs({ wall: length('t', 'wall thickness', { example: '3 mm' }) }, { meaning: 'the tube' }).example.wall // => '3 mm'
 */
export function inputs<const I extends Inputs>(fields: I, facts: GroupFacts<I>): Group<I, 'required'> {
  const { meaning, synonyms = [], checks = [], instead = {} } = facts;
  const names = Object.keys(fields).join(', ');
  return {
    type: 'group',
    meaning,
    need: 'required',
    fields,
    checks,
    instead,
    synonyms,
    get example() {
      return exampleOf(fields);
    },
    takes: () => `{ ${names} }`,
    read: (value, at) => checked(readInputs(fields, value, at), checks, at),
    absent: () => readInputs(fields, {}, { procedure: '', path: '' }),
  };
}

/** The values, after all checks between them. @throws MeopError `out-of-domain` or the code of the check */
export function checked<V>(values: V, checks: readonly Check<V>[], at: Place): V {
  for (const check of checks) {
    const conflict = check(values);
    if (conflict === undefined) continue;
    const { path, code = 'out-of-domain' } = conflict;
    throw new MeopError({
      ...conflict,
      code,
      procedure: at.procedure,
      path: path === undefined ? at.path || undefined : pathTo(at, path),
    });
  }
  return values;
}
