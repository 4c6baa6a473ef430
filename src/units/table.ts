/** A cell of a printed table. */
export type Cell = string | number | { toString(): string };

/** Lines of cells with their columns aligned; columns named in `right` to the right. */
export function aligned(rows: readonly (readonly string[])[], right: readonly boolean[] = []): string[] {
  const widths: number[] = [];
  for (const row of rows)
    row.forEach((text, j) => {
      widths[j] = Math.max(widths[j] ?? 0, width(text));
    });
  const padded = (text: string, j: number): string => {
    const space = ' '.repeat(widths[j] - width(text));
    return right[j] ? space + text : text + space;
  };
  return rows.map((row) => row.map(padded).join('  ').trimEnd());
}

/**
 * Rows as text with aligned columns: the field names as heads, numbers to the right.
 *
 * @example table([{ size: 'M6', pitch: 1 }]).split('\n').length // => 3
 */
export function table(rows: readonly Readonly<Record<string, Cell>>[]): string {
  const columns = [...new Set(rows.flatMap((row) => Object.keys(row)))];
  const cells = rows.map((row) => columns.map((column) => String(row[column] ?? '')));
  const numeric = columns.map((_, j) => cells.every((row) => /^[-+]?[\d.]/.test(row[j])));
  const [head, ...lines] = aligned([columns, ...cells], numeric);
  return [head, '─'.repeat(Math.max(...[head ?? '', ...lines].map(width))), ...lines].join('\n');
}

// Characters as counted by a terminal: combining marks have no width.
const width = (text: string): number => [...text.replace(/\p{M}/gu, '')].length;
