// Values of a motor's options, in SI, each refused by name where it cannot be.
import { MeopError, type NamedKind, readInput } from '../units';
import { readNotNegative, readPositive, refusal } from '../units/refusal';

export const context = 'simulate';

export function share(field: string, value: number): number {
  const { si } = readInput('dimensionless', field, value, context);
  if (si > 0 && si <= 1.05) return si;
  throw refused(field, value, 'above 0 and at most 1.05');
}

export const positive = (kind: NamedKind, field: string, value: unknown): number =>
  readPositive(kind, field, value, context).si;

export const atLeastZero = (kind: NamedKind, field: string, value: unknown): number =>
  readNotNegative(kind, field, value, context).si;

export const missing = (field: string): MeopError =>
  new MeopError('missing-field', `${context}: ${field} is missing`, field, { value: undefined });

export const refused = (field: string, value: unknown, expected: string): MeopError =>
  refusal(context, field, value, expected);

/** A field of the options that there is not; `known` are those that there are. */
export function checkFields(given: object, known: readonly string[], within = ''): void {
  for (const name of Object.keys(given)) {
    if (known.includes(name)) continue;
    throw new MeopError(
      'unknown-field',
      `${context}: there is no field '${within}${name}'; ${known.join(', ')} are the fields`,
      `${within}${name}`,
      { expected: known.join(', ') },
    );
  }
}
