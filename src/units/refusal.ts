// A value that reads well and yet cannot be: the one sentence for it, and the readings that are asked for most.
import { MeopError } from './errors';
import { readInput } from './input';
import type { NamedKind } from './kinds';
import type { SiInput } from './parse';
import { article } from './quantity-error';
import { isQuantity } from './quantity-mark';

/** `threadStripping: engagement: 0 mm given; a length above zero is expected`; `why` follows behind a colon. */
export function refusal(
  procedure: string,
  field: string,
  value: unknown,
  expected: string,
  why?: string,
): MeopError {
  const reason = why === undefined ? '' : `: ${why}`;
  return new MeopError(
    'out-of-domain',
    `${procedure}: ${field}: ${shown(value)} given; ${expected} is expected${reason}`,
    field,
    { value, expected },
  );
}

/** A value as it was given; of a record what it holds, where it has no text of its own. */
function shown(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (typeof value !== 'object' || value === null || isQuantity(value)) return String(value);
  const text = JSON.stringify(value);
  return text.length > 80 ? `${text.slice(0, 80)}…` : text;
}

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
