import { coherentUnit, escaped, formatNumber, formatSi, prettyUnit } from '../format';
import { isQuantity } from '../quantity-mark';
import { shownUnits } from '../shown-unit';
import { aligned } from '../table';
import { fromSi, type Unit } from '../unit';
import type { FormulaMetadata, FormulaParameter } from './declaration';

/** A calculation written out; prints as text in a terminal and as HTML in a notebook. */
export interface Explanation {
  readonly title: string;
  readonly equation: string;
  /** One line a parameter: symbol, meaning, as given, in SI. */
  readonly givens: readonly ExplainedParameter[];
  /** The equation with the SI numbers in place of the symbols. */
  readonly substitution: string;
  /** The result in SI. */
  readonly value: number;
  /** The result as text, in the unit shown, in SI and in the other system. */
  readonly result: string;
  readonly cautions: readonly string[];
  readonly source: string;
  toString(): string;
  toHtml(): string;
}

/** One parameter of a calculation. */
export interface ExplainedParameter {
  readonly symbol: string;
  readonly meaning: string;
  readonly given: string;
  readonly si: string;
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

/** Writes a calculation out. */
export function explanation({ facts, given, si, shown, value, cautions }: Calculation): Explanation {
  const { title, equation, source, inputs, output } = facts;
  const fields = Object.entries(inputs);
  const givens = fields.map(([field, parameter]) => ({
    symbol: parameter.symbol,
    meaning: parameter.meaning,
    given: given[field] === undefined ? 'standard' : asGiven(given[field]),
    si: inSi(si[field], parameter),
  }));
  const numbers = new Map(fields.map(([field, { symbol }]) => [symbol, formatNumber(si[field], figures)]));
  const parts = {
    title,
    equation,
    givens,
    substitution: substituted(equation, numbers),
    value,
    result: resultText(value, output, shown),
    cautions,
    source,
  };
  const end = [...cautions.map((caution) => `caution: ${caution}`), `source: ${source}`];
  const text = (): string => asText(parts, output.meaning, end);
  const html = (): string => asHtml(parts, end);
  return {
    ...parts,
    toString: text,
    toHtml: html,
    ...{
      [Symbol.for('nodejs.util.inspect.custom')]: text,
      [Symbol.for('Jupyter.display')]: () => ({ 'text/plain': text(), 'text/html': html() }),
    },
  };
}

const asGiven = (value: unknown): string => (isQuantity(value) ? value.format({ figures }) : String(value));

const inSi = (value: number, { kind }: FormulaParameter): string =>
  `${formatNumber(value, figures)} ${prettyUnit(coherentUnit(kind))}`.trimEnd();

function resultText(value: number, output: FormulaParameter, shown: Unit): string {
  const rest = shownUnits(output.kind)
    .filter(({ text }) => text !== shown.text)
    .map((unit) => `${formatNumber(fromSi(value, unit), figures)} ${prettyUnit(unit.text)}`);
  const main = formatSi(value, output.kind, shown, { figures });
  return `${output.symbol} = ${main}${rest.length > 0 ? ` (${rest.join(', ')})` : ''}`;
}

// A symbol is a run of letters with what is attached to it; the longest that is known wins, so p_ref is not p.
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

type Parts = Omit<Explanation, 'toString' | 'toHtml'>;

function asText(
  { title, equation, givens, substitution, result }: Parts,
  meaning: string,
  end: readonly string[],
): string {
  const lines = [
    equation,
    ...aligned(givens.map((g) => [g.symbol, `= ${g.given}`, `= ${g.si}`, g.meaning])),
    substitution,
    `${result}  ${meaning}`,
    ...end,
  ];
  return [title, ...lines.map((line) => `  ${line}`)].join('\n');
}

const cells = (tag: string, texts: readonly string[]): string =>
  `<tr>${texts.map((text) => `<${tag}>${escaped(text)}</${tag}>`).join('')}</tr>`;

function asHtml({ title, equation, givens, substitution, result }: Parts, end: readonly string[]): string {
  const head = cells('th', ['symbol', 'meaning', 'given', 'SI']);
  const rows = givens.map(({ symbol, meaning, given, si }) => cells('td', [symbol, meaning, given, si]));
  const [first, ...rest] = [equation, substitution, result, ...end].map((line) => `<p>${escaped(line)}</p>`);
  return `<figure><b>${escaped(title)}</b>${first}<table>${head}${rows.join('')}</table>${rest.join('')}</figure>`;
}
