// Errors for dimensions of a grain that do not go together.
import { type Conflict, MeopError, type Quantity, q } from '../../units';

type Length = Quantity<'length'>;

/** What is wrong with a dimension, unless it fits. */
export const misfit = (
  fits: boolean,
  path: string,
  given: unknown,
  expected: string,
  remedy?: string,
): Conflict | undefined => (fits ? undefined : { code: 'grain-measure', path, given, expected, remedy });

/** The error for a dimension that does not fit, found while a surface is made. */
export const refused = (
  procedure: string,
  path: string,
  given: unknown,
  expected: string,
  remedy?: string,
): MeopError => new MeopError({ code: 'grain-measure', procedure, path, given, expected, remedy });

/** Throws unless a dimension fits. */
export function requireFit(
  procedure: string,
  fits: boolean,
  ...dimension: readonly [path: string, given: unknown, expected: string, remedy?: string]
): void {
  if (!fits) throw refused(procedure, ...dimension);
}

/** A check that one length is less than another, which the message calls `name`. */
export const lessThan =
  <F extends string, L extends string>(field: F, limit: L, name: string) =>
  (values: Readonly<Record<F | L, Length>>): Conflict | undefined =>
    misfit(
      values[field].si < values[limit].si,
      field,
      values[field],
      `less than ${name} (${inMillimetres(values[limit].si)})`,
    );

/** A check that one length is greater than another. */
export const greaterThan =
  <F extends string, L extends string>(field: F, limit: L) =>
  (values: Readonly<Record<F | L, Length>>): Conflict | undefined =>
    misfit(
      values[field].si > values[limit].si,
      field,
      values[field],
      `greater than ${limit} (${inMillimetres(values[limit].si)})`,
    );

/** A length in an error message. */
export const inMillimetres = (metres: number): string => String(q(metres, 'm').to('mm'));
