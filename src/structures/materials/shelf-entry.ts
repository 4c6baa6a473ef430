import { type NamedKind, type Quantity, quantity } from '../../units';
import type { Basis, Datum, Origin, Provenance, StressDatum } from './datum';
import type { BearingData } from './material';

/** An origin in one line: basis, source, provenance (published where left out). */
export const origin = (
  basis: Basis,
  source: string,
  provenance: Provenance = 'published',
  note?: string,
): Origin => ({ basis, source, provenance, ...(note !== undefined && { note }) });

/** Turns the numbers of one table column into stresses with an origin, in the unit the table prints. */
export const column =
  (unit: 'ksi' | 'MPa' | 'GPa', from: Origin): ((value: number) => StressDatum) =>
  (value) => ({ value: quantity('stress', `${value} ${unit}`), ...from });

/** Bearing at e/D 1.5 and 2.0; undefined where the table has no column. */
export function bearing(
  stress: (value: number) => StressDatum,
  at1_5: number | undefined,
  at2_0: number,
): BearingData {
  return { ...(at1_5 !== undefined && { at1_5: stress(at1_5) }), at2_0: stress(at2_0) };
}

/** A number with its origin. */
export const number = (value: number, from: Origin): Datum<number> => ({ value, ...from });

/** Any other quantity with its origin. */
export const value = <const K extends NamedKind>(
  kind: K,
  text: string,
  from: Origin,
): Datum<Quantity<K>> => ({
  value: quantity(kind, text),
  ...from,
});

/** The typical Brinell hardness of an aluminium alloy. */
export const typicalHardness = (alloy: string, hardness: number): Datum<number> =>
  number(
    hardness,
    origin('typical', `typical Brinell hardness of ${alloy}, 500 kg and 10 mm ball`, 'from memory'),
  );
