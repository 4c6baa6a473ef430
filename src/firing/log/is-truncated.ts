import type { CellFormat } from './cell-scanner';

/**
 * Finds the columns that may be truncated at the end of a line without a line end; undefined where its last number is
 * complete. It is complete where a delimiter or a quote follows it, where it has as many decimals as every number above
 * it, or as many digits as the longest of them. Without numbers above it, truncation cannot be detected.
 */
export function isTruncated(
  text: string,
  before: readonly string[],
  format: CellFormat,
): { readonly columns: number | undefined; readonly at: number } {
  const cells = cellsOf(text, format);
  const columns = cells.length - 1;
  const last = cells[columns];
  const at = text.length - last.length;
  const known = before.flatMap((line) => {
    const cell = cellsOf(line.replace(/\r$/, ''), format)[columns]?.trim();
    return cell !== undefined && isNumber.test(cell) ? [cell] : [];
  });
  const whole = !isNumber.test(last) || known.length === 0 || believed(last, known);
  return { columns: whole ? undefined : columns, at };
}

const isNumber = /^[+-]?[\d.,]+(?:e[+-]?\d*)?$/i;

function believed(last: string, known: readonly string[]): boolean {
  const decimals = (cell: string): number => {
    const point = cell.search(/[.,]/);
    return point < 0 ? 0 : cell.length - point - 1;
  };
  const fixed = decimals(known[0]);
  if (fixed > 0 && known.every((cell) => decimals(cell) === fixed)) return decimals(last) === fixed;
  const length = (cell: string): number => cell.replace(/^[+-]/, '').length;
  return length(last) >= Math.max(...known.map(length));
}

function cellsOf(text: string, { delimiter, blanks }: CellFormat): string[] {
  return blanks ? text.trimStart().split(/[ \t]+/) : text.split(String.fromCharCode(delimiter));
}
