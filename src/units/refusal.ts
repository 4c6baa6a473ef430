// Values that parse but are outside their domain, and the most frequent domains.
import { MeopError } from './errors';
import { readInput } from './input';
import type { NamedKind } from './kinds';
import type { SiInput } from './parse';
import { article } from './quantity-error';

/** `threadStripping: engagement must be a length above zero, got '0 mm'.` `why` follows as a separate sentence. */
export const refusal = (
  procedure: string,
  path: string,
  given: unknown,
  expected: string,
  remedy?: string,
): MeopError => new MeopError({ code: 'out-of-domain', procedure, path, given, expected, remedy });

/**
 * {@link readInput} of a value above zero.
 *
 * @throws MeopError `out-of-domain` naming the field, and the errors of {@link readInput}
 */
export function readPositive(kind: NamedKind, field: string, value: unknown, procedure: string): SiInput {
  const read = readInput(kind, field, value, procedure);
  if (read.si > 0) return read;
  throw refusal(procedure, field, value, `${article(kind)} above zero`);
}

/**
 * {@link readInput} of a value of zero or more.
 *
 * @throws MeopError `out-of-domain` naming the field, and the errors of {@link readInput}
 */
export function readNotNegative(kind: NamedKind, field: string, value: unknown, procedure: string): SiInput {
  const read = readInput(kind, field, value, procedure);
  if (read.si >= 0) return read;
  throw refusal(procedure, field, value, `${article(kind)} of zero or more`);
}
