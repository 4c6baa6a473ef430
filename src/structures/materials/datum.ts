import { type NamedKind, type Quantity, quantity } from '../../units';

/**
 * What a value stands for. `A`: 99 % of the population is above it with 95 % confidence; `B`: 90 %; `S` and
 * `specified minimum`: the least a standard lets be sold; `typical`: about half the stock is below it.
 */
export type Basis = 'A' | 'B' | 'S' | 'specified minimum' | 'typical' | 'computed';

/** How the value reached this library. */
export type Provenance =
  | 'published'
  | 'from memory'
  | 'engineering practice, no published source'
  | 'computed'
  | "user's own";

/** Where a value comes from. */
export interface Origin {
  readonly basis: Basis;
  /** Title, edition and table, or who measured it. */
  readonly source: string;
  readonly provenance: Provenance;
  /** What to know before using it. */
  readonly note?: string;
}

/** A value that carries its origin. */
export interface Datum<V> extends Origin {
  readonly value: V;
}

/** A stress that carries its origin. */
export type StressDatum = Datum<Quantity<'stress'>>;

/**
 * A value with its origin, for materials of one's own: a mill certificate, a hardness test, a supplier's sheet.
 *
 * @throws MeopError as {@link quantity} does
 * @example datum('stress', '262 MPa', { basis: 'S', source: 'mill certificate' }).value.in('MPa') // => 262
 */
export function datum<const K extends NamedKind>(
  kind: K,
  value: string | Quantity,
  origin: Omit<Origin, 'provenance'> & { readonly provenance?: Provenance },
): Datum<Quantity<K>> {
  return { value: quantity(kind, value), ...origin, provenance: origin.provenance ?? "user's own" };
}

/**
 * The caution that a datum brings to whatever rests on it; undefined where it brings none.
 *
 * @example datumCaution('ultimate', { basis: 'S', source: 'a table', provenance: 'published' }) // => undefined
 */
export function datumCaution(what: string, { basis, source, provenance, note }: Origin): string | undefined {
  const parts = [
    ...(basis === 'typical'
      ? ['is a typical value, which about half the stock does not reach: no design allowable']
      : []),
    ...(provenance === 'from memory' ? ['is from memory and was not checked against the document'] : []),
    ...(provenance === 'engineering practice, no published source'
      ? ['is common practice without a source']
      : []),
  ];
  if (parts.length === 0) return undefined;
  return `${what} ${parts.join(' and ')} (${source}${note === undefined ? '' : `; ${note}`})`;
}
