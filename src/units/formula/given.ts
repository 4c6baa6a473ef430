import type { NamedKind } from '../kinds';
import type { Domain, FormulaParameter } from './declaration';

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
): FormulaParameter<K, undefined> => ({
  kind,
  symbol,
  meaning,
  domain,
  standard: undefined,
});

/** The same symbol, with an SI value that is taken where it is left out. */
export function optional<K extends NamedKind>(
  symbol: FormulaParameter<K>,
  standard: number,
): FormulaParameter<K, number> {
  return { ...symbol, standard };
}

/** How a symbol of one kind is declared: symbol, meaning and, where the usual domain does not fit, its domain. */
export const givenOf =
  <const K extends NamedKind>(kind: K, usual: Domain) =>
  (symbol: string, meaning: string, domain: Domain = usual): FormulaParameter<K, undefined> =>
    given(kind, symbol, meaning, domain);
