import { table } from '../table';
import type { FormulaMetadata } from './declaration';
import type { Explanation } from './explain';

/** A formula of any shape, as lists, documentation and tests read it; its arguments are checked when it runs. */
export interface AnyFormula extends FormulaMetadata {
  evaluate(values: object): unknown;
  explain(values: object): Explanation;
  cautions(values: object): readonly string[];
}

const loaded = new Map<string, AnyFormula>();

/** Notes a formula as part of this program. */
export function register(formula: AnyFormula): void {
  loaded.set(formula.id, formula);
}

/** The formulas found, as an array that prints as an aligned table. */
export type FormulaList = readonly AnyFormula[];

/**
 * The formulas that this program has loaded, in alphabetical order; with words, those whose card holds every word.
 *
 * @example formulas('hoop stress').length > 0 // => true
 */
export function formulas(words = ''): FormulaList {
  const wanted = words.toLowerCase().split(/\s+/).filter(Boolean);
  const found = [...loaded.values()]
    .filter((formula) => wanted.every((word) => String(formula).toLowerCase().includes(word)))
    .sort((a, b) => a.id.localeCompare(b.id));
  const text = (): string =>
    found.length === 0
      ? `no formula holds '${words}'`
      : table(found.map(({ id, title, equation }) => ({ formula: id, title, equation })));
  return Object.assign(found, { toString: text, [Symbol.for('nodejs.util.inspect.custom')]: text });
}
