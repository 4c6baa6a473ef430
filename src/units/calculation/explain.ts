import type { Parameter } from '../declare/parameter';
import { coherentUnit, formatNumber, formatSi, prettyUnit } from '../format';
import { isQuantity } from '../quantity-mark';
import { shownUnits } from '../shown-unit';
import { fromSi, type Unit } from '../unit';
import type { FormulaMetadata } from './declaration';
import { closingLines, printed, type Working } from './working';

/** Explanation of a formula. */
export interface Explanation extends Working {
  readonly equation: string;
  /** The equation with the SI numbers in place of the symbols. */
  readonly substitution: string;
  /** The result in SI units. */
  readonly value: number;
}

interface Calculation {
  readonly facts: FormulaMetadata;
  readonly given: Readonly<Record<string, unknown>>;
  readonly si: Readonly<Record<string, number>>;
  readonly shown: Unit;
  readonly value: number;
  readonly cautions: readonly string[];
}

const figures = 7;

/** Writes the explanation of a formula. */
export function explanation({ facts, given, si, shown, value, cautions }: Calculation): Explanation {
  const { title, equation, source, inputs, output } = facts;
  const fields = Object.entries(inputs);
  const givens = fields.map(([field, { symbol, meaning, kind }]) => ({
    symbol,
    meaning,
    given: given[field] === undefined ? 'assumed' : asGiven(given[field]),
    si: `${formatNumber(si[field], figures)} ${prettyUnit(coherentUnit(kind))}`.trimEnd(),
  }));
  const numbers = new Map(fields.map(([field, { symbol }]) => [symbol, formatNumber(si[field], figures)]));
  const substitution = substituted(equation, numbers);
  const result = resultText(value, output, shown);
  const below = [substitution, `${result}  ${output.meaning}`, ...closingLines(cautions, source)];
  return {
    ...{ title, equation, givens, substitution, value, result, cautions, source },
    ...printed({ title, above: [equation], givens, below }),
  };
}

/** A value as given, with the significant figures of a hand calculation. */
export const asGiven = (value: unknown): string =>
  isQuantity(value) ? value.format({ figures }) : String(value);

function resultText(value: number, output: Parameter, shown: Unit): string {
  const rest = shownUnits(output.kind)
    .filter(({ text }) => text !== shown.text)
    .map((unit) => `${formatNumber(fromSi(value, unit), figures)} ${prettyUnit(unit.text)}`);
  const main = formatSi(value, output.kind, shown, { figures });
  return `${output.symbol} = ${main}${rest.length > 0 ? ` (${rest.join(', ')})` : ''}`;
}

// A symbol is a sequence of letters with its subscript; the longest known symbol matches, so p_ref is not p.
function substituted(equation: string, numbers: ReadonlyMap<string, string>): string {
  const at = equation.indexOf('=');
  const symbols = [...numbers.keys()]
    .sort((a, b) => b.length - a.length)
    .map((s) => s.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'));
  const symbol = new RegExp(`(?<![\\p{L}_])(?:${symbols.join('|')})(?![\\p{L}_\\p{M}₀-₉])`, 'gu');
  const right = equation.slice(at + 1).replace(symbol, (found) => wrapped(numbers.get(found) ?? found));
  return `${equation.slice(0, at + 1)}${right}`;
}

const wrapped = (number: string): string =>
  number.startsWith('-') || number.includes('e') ? `(${number})` : number;
