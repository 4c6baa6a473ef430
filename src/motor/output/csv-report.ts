import type { ReportContent, Shown } from './content';

/**
 * Report for a spreadsheet: one number per line, in full precision and as printed in the other formats. Commas,
 * quotes and line ends follow RFC 4180.
 */
export function csvReport(content: ReportContent): string {
  const lines = [csvLine(['part', 'table', 'row', 'column', 'shown', 'value', 'unit', 'kind'])];
  const add = (part: string, table: string, row: string, column: string, cell: Shown): void => {
    const { text, value, unit = '', kind = '' } = cell;
    const number = value === undefined ? '' : String(value);
    lines.push(csvLine([part, table, row, column, text, number, unit, kind]));
  };
  for (const [name, cell] of content.keyFigures) add('summary', '', name, 'value', cell);
  for (const { title, tables } of content.sections)
    for (const { name, columns, rows } of tables)
      for (const [first, ...cells] of rows)
        for (const [j, cell] of cells.entries()) add(title, name, first.text, columns[j + 1].name, cell);
  return lines.join('');
}

// A leading quote mark keeps a spreadsheet from evaluating the cell as a formula.
const csvCell = (text: string): string => {
  const safe = /^[=@\t\r]/.test(text) || /^[-+](?![\d.])/.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(safe) ? `"${safe.replace(/"/g, '""')}"` : safe;
};

/** Cells as one line of a CSV file. */
export const csvLine = (cells: readonly string[]): string => `${cells.map(csvCell).join(',')}\r\n`;
