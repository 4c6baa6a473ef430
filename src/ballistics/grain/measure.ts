// Reads the arguments of grain functions: text with units in, SI numbers out, or an error with the limit and the fix.
import { isQuantity, MeopError, type QuantityInput, q, readInput } from '../../units';

/** Reads a length in metres: above zero, zero or more, or of either sign. */
export function readLength(
  context: string,
  field: string,
  value: QuantityInput<'length'>,
  domain: 'positive' | 'zero' | 'any' = 'positive',
): number {
  const { si } = readInput('length', field, value, context);
  if (domain === 'any' || si > 0 || (domain === 'zero' && si === 0)) return si;
  throw refused(
    context,
    field,
    value,
    domain === 'zero' ? 'a length of zero or more' : 'a length above zero',
  );
}

/** Reads an angle in radians. */
export const readAngle = (context: string, field: string, value: QuantityInput<'angle'>): number =>
  readInput('angle', field, value, context).si;

/** Reads a whole number of at least `minimum`. */
export function readCount(context: string, field: string, value: number, minimum: number): number {
  if (Number.isInteger(value) && value >= minimum) return value;
  throw refused(context, field, value, `a whole number of at least ${minimum}`);
}

/** Reads one of the given choices. */
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

/** The error for an argument outside its limits: `star: points must be a whole number of at least 3, got 2.` */
export const refused = (
  context: string,
  field: string,
  value: unknown,
  expected: string,
  remedy?: string,
): MeopError =>
  new MeopError(
    'grain-measure',
    `${context}: ${field} must be ${expected}, got ${shown(value)}.${remedy === undefined ? '' : ` ${remedy}.`}`,
    field,
    { value, expected },
  );

/** Throws unless `fits`. */
export function requireFit(
  fits: boolean,
  context: string,
  field: string,
  value: unknown,
  expected: string,
  remedy?: string,
): void {
  if (!fits) throw refused(context, field, value, expected, remedy);
}

/** A length in an error message. */
export const inMillimetres = (metres: number): string => String(q(metres, 'm').to('mm'));

/** A value as it was given, cut to a readable length. */
function shown(value: unknown): string {
  if (value === undefined) return 'nothing';
  const text =
    typeof value === 'string'
      ? `'${value}'`
      : typeof value === 'object' && value !== null && !isQuantity(value)
        ? JSON.stringify(value)
        : String(value);
  return text.length > 80 ? `${text.slice(0, 80)}…` : text;
}
