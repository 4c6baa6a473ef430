import type { NamedKind } from '../kinds';
import type { Domain, Given } from './declaration';

/** Any value above zero. */
export const positive: Domain = { above: 0 };
/** Any finite value. */
export const any: Domain = {};

/** One symbol of a formula. */
export const given = <K extends NamedKind>(
  kind: K,
  symbol: string,
  meaning: string,
  domain: Domain,
): Given<K, undefined> => ({
  kind,
  symbol,
  meaning,
  domain,
  standard: undefined,
});

/** The same symbol, with an SI value that is taken where it is left out. */
export function optional<K extends NamedKind>(symbol: Given<K>, standard: number): Given<K, number> {
  return { ...symbol, standard };
}

/** How a symbol of one kind is declared: symbol, meaning and, where the usual domain does not fit, its domain. */
export const givenOf =
  <const K extends NamedKind>(kind: K, usual: Domain) =>
  (symbol: string, meaning: string, domain: Domain = usual): Given<K, undefined> =>
    given(kind, symbol, meaning, domain);
