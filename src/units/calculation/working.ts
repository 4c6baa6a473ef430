import { escaped } from '../format';
import { aligned } from '../table';

/** An explained calculation; prints as text in a terminal and as HTML in a notebook. */
export interface Working {
  readonly title: string;
  /** One line per parameter: symbol, meaning, value as given, value in SI. */
  readonly givens: readonly ExplainedParameter[];
  /** The result as text; for a formula in the unit shown, in SI and in the other unit system. */
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

interface Lines {
  readonly title: string;
  /** Line above the parameters: the equation. */
  readonly above: readonly string[];
  readonly givens: readonly ExplainedParameter[];
  /** Lines below the parameters: substitution and result. */
  readonly below: readonly string[];
}

/** The lines of a calculation with their output formats. */
export function printed(lines: Lines): Pick<Working, 'toString' | 'toHtml'> {
  const text = (): string => asText(lines);
  const html = (): string => asHtml(lines);
  return {
    toString: text,
    toHtml: html,
    ...{
      [Symbol.for('nodejs.util.inspect.custom')]: text,
      [Symbol.for('Jupyter.display')]: () => ({ 'text/plain': text(), 'text/html': html() }),
    },
  };
}

/** Cautions, and the publication of the equation. */
export const closingLines = (cautions: readonly string[], source: string): readonly string[] => [
  ...cautions.map((caution) => `caution: ${caution}`),
  `source: ${source}`,
];

function asText({ title, above, givens, below }: Lines): string {
  const rows = aligned(
    givens.map(({ symbol, meaning, given, si }) => [symbol, `= ${given}`, si && `= ${si}`, meaning]),
  );
  return [title, ...[...above, ...rows, ...below].map((line) => `  ${line.replaceAll('\n', '\n  ')}`)].join(
    '\n',
  );
}

const cells = (tag: string, texts: readonly string[]): string =>
  `<tr>${texts.map((text) => `<${tag}>${escaped(text)}</${tag}>`).join('')}</tr>`;

const paragraphs = (lines: readonly string[]): string =>
  lines.map((line) => `<p>${escaped(line).replaceAll('\n', '<br>')}</p>`).join('');

function asHtml({ title, above, givens, below }: Lines): string {
  const head = cells('th', ['symbol', 'meaning', 'given', 'SI']);
  const rows = givens.map(({ symbol, meaning, given, si }) => cells('td', [symbol, meaning, given, si]));
  return `<figure><b>${escaped(title)}</b>${paragraphs(above)}<table>${head}${rows.join('')}</table>${paragraphs(below)}</figure>`;
}
