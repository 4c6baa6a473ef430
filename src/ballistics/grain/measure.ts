// Reading the measures of a grain at the door: unit texts in, SI numbers out, and a message that says the way out.
import { MeopError, type QuantityInput, readInput } from '../../units';
import { refusal } from '../../units/refusal';

/** A length in metres; positive unless `least` allows less. */
export function readLength(
  context: string,
  field: string,
  value: QuantityInput<'length'>,
  least: 'positive' | 'zero' | 'any' = 'positive',
): number {
  const { si } = readInput('length', field, value, context);
  if (least === 'any' || si > 0 || (least === 'zero' && si === 0)) return si;
  throw refused(context, field, value, least === 'zero' ? 'a length of zero or more' : 'a length above zero');
}

/** An angle in radians. */
export const readAngle = (context: string, field: string, value: QuantityInput<'angle'>): number =>
  readInput('angle', field, value, context).si;

/** A whole number of at least `least`. */
export function readCount(context: string, field: string, value: number, least: number): number {
  if (Number.isInteger(value) && value >= least) return value;
  throw refused(context, field, value, `a whole number of at least ${least}`);
}

/** One of a few words. */
export function readChoice<const T extends string>(
  context: string,
  field: string,
  value: T,
  choices: readonly T[],
): T {
  if (choices.includes(value)) return value;
  const list = choices.map((choice) => `'${choice}'`);
  throw refused(context, field, value, `${list.slice(0, -1).join(', ')} or ${list.at(-1)}`);
}

/** The error for a measure that does not fit. */
export const refused = (context: string, field: string, value: unknown, expected: string): MeopError =>
  new MeopError('grain-measure', refusal(context, field, value, expected).message, field, {
    value,
    expected,
  });

/** Throws unless `fits`. */
export function requireFit(
  fits: boolean,
  context: string,
  field: string,
  value: unknown,
  expected: string,
): void {
  if (!fits) throw refused(context, field, value, expected);
}
