import type { CellFormat } from './cell-scanner';

const plain = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?$/i;
const groupedBeforePoint = /^[+-]?\d{1,3}([,'’_ \u00a0\u2009\u202f])\d{3}(?:\1\d{3})*(?:\.\d*)?$/;
const groupedBeforeComma = /^[+-]?\d{1,3}([.'’_ \u00a0\u2009\u202f])\d{3}(?:\1\d{3})*(?:,\d*)?$/;

/**
 * Returns a number in a spelling that programs do not use: `0x1F`, blanks within quotes, `1,024.5` and, where the
 * format groups thousands, `1,024`; NaN where the cell contains none. Slow: only for cells that the scanner cannot
 * read.
 */
export function spelledNumber(cell: string, { decimal, grouping }: CellFormat): number {
  const bare = cell.trim();
  const quoted = bare.startsWith('"');
  // A quote without its partner was truncated, and so was the number.
  if (quoted && !(bare.length > 2 && bare.endsWith('"'))) return Number.NaN;
  const text = (quoted ? bare.slice(1, -1).trim() : bare).replace('\u2212', '-');
  if (/^0x[0-9a-f]{1,12}$/i.test(text)) return Number(text);
  const groups = (decimal === 46 ? groupedBeforePoint : groupedBeforeComma).exec(text);
  // '1,024.5' is unambiguous; '1,024' may have a decimal comma where the format does not group.
  const mark = groups && (grouping || groups[0].split(/\D/).length > 2) ? groups[1] : undefined;
  const digits = mark === undefined ? text : text.replaceAll(mark, '');
  const pointed = decimal === 46 ? digits : digits.replace(String.fromCharCode(decimal), '.');
  const value = plain.test(pointed) ? Number(pointed) : Number.NaN;
  return Number.isFinite(value) ? value : Number.NaN;
}
