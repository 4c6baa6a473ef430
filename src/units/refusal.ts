// A value that reads well and yet cannot be, and the readings that are asked for most.
import { MeopError } from './errors';
import { readInput } from './input';
import type { NamedKind } from './kinds';
import type { SiInput } from './parse';
import { article } from './quantity-error';

/** `threadStripping: engagement must be a length above zero, got '0 mm'.` `why` follows as a sentence of its own. */
export const refusal = (
  procedure: string,
  path: string,
  given: unknown,
  expected: string,
  remedy?: string,
): MeopError => new MeopError({ code: 'out-of-domain', procedure, path, given, expected, remedy });

/**
 * {@link readInput} of what must be above zero.
 *
 * @throws MeopError `out-of-domain` naming the field, and all that {@link readInput} throws
 */
export function readPositive(kind: NamedKind, field: string, value: unknown, procedure: string): SiInput {
  const read = readInput(kind, field, value, procedure);
  if (read.si > 0) return read;
  throw refusal(procedure, field, value, `${article(kind)} above zero`);
}

/**
 * {@link readInput} of what may be zero and not less.
 *
 * @throws MeopError `out-of-domain` naming the field, and all that {@link readInput} throws
 */
export function readNotNegative(kind: NamedKind, field: string, value: unknown, procedure: string): SiInput {
  const read = readInput(kind, field, value, procedure);
  if (read.si >= 0) return read;
  throw refusal(procedure, field, value, `${article(kind)} of zero or more`);
}
