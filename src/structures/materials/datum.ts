import { choice, type NamedKind, optional, type Quantity, quantity, readInputs, words } from '../../units';

/**
 * The statistical basis of a value. `A`: 99 % of the population is above it with 95 % confidence; `B`: 90 %; `S` and
 * `specified minimum`: the minimum of a standard; `typical`: about half of the stock is below it.
 */
export type Basis = (typeof origin.basis.options)[number];

/** How the value reached this library. */
export type Provenance = (typeof provenance.options)[number];

const provenance = choice('how the value was obtained', [
  'published',
  'from memory',
  'engineering practice, no published source',
  'computed',
  "user's own",
]);

const origin = {
  basis: choice('statistical basis of the value', [
    'A',
    'B',
    'S',
    'specified minimum',
    'typical',
    'computed',
  ]),
  source: words('title, edition and table, or who measured it', { example: 'mill certificate' }),
  provenance: optional(provenance, "user's own"),
  note: optional(words('note on the use of the value')),
};

/** Where a value comes from. */
export interface Origin {
  readonly basis: Basis;
  /** Title, edition and table, or who measured it. */
  readonly source: string;
  readonly provenance: Provenance;
  /** A note on the use of the value. */
  readonly note?: string;
}

/** A value that carries its origin. */
export interface Datum<V> extends Origin {
  readonly value: V;
}

/** A stress that carries its origin. */
export type StressDatum = Datum<Quantity<'stress'>>;

/**
 * A value with its origin, for a user-defined material: from a mill certificate, a hardness test, a data sheet of the supplier.
 *
 * @throws MeopError as {@link quantity} does
 * @example datum('stress', '262 MPa', { basis: 'S', source: 'mill certificate' }).value.in('MPa') // => 262
 */
export function datum<const K extends NamedKind>(
  kind: K,
  value: string | Quantity,
  from: Omit<Origin, 'provenance'> & { readonly provenance?: Provenance },
): Datum<Quantity<K>> {
  const { note, ...rest } = readInputs(origin, from, { procedure: 'datum', path: 'origin' });
  return { value: quantity(kind, value), ...rest, ...(note !== undefined && { note }) };
}

/** The caution for every result that uses a datum; `undefined` where there is none. */
export function datumCaution(what: string, { basis, source, provenance, note }: Origin): string | undefined {
  const parts = [
    ...(basis === 'typical'
      ? ['is a typical value, below which about half of the stock falls, and not a design allowable']
      : []),
    ...(provenance === 'from memory' ? ['is quoted from memory, not verified against the document'] : []),
    ...(provenance === 'engineering practice, no published source'
      ? ['is engineering practice without a published source']
      : []),
  ];
  if (parts.length === 0) return undefined;
  return `${what} ${parts.join(' and ')} (${source}${note === undefined ? '' : `; ${note}`})`;
}
