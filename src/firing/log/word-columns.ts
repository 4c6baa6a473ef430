/** A column of a log that contains words where others contain numbers. */
export interface WordColumn {
  /** Index of the column, counted from 0. */
  readonly column: number;
  /** True where a few words alternate from row to row, as with rows of several sensors. */
  readonly sensors: readonly string[];
}

const most = 8; // sensors

/** The columns that contain words in most rows and a number in none. */
export function wordColumns(rows: readonly (readonly string[])[]): readonly WordColumn[] {
  const width = rows.reduce((widest, { length }) => Math.max(widest, length), 0);
  return Array.from({ length: width }, (_, column) => column).flatMap((column) => {
    const cells = rows.map((row) => row[column] ?? '');
    const words = cells.filter((cell) => /[a-z:]|\d[/-]\d/i.test(cell) && Number.isNaN(Number(cell)));
    if (words.length < 0.5 * rows.length || cells.some((cell) => /^[+-]?[\d.,]+$/.test(cell))) return [];
    const distinct = [...new Set(words)];
    const changes = words.filter((word, i) => i > 0 && word !== words[i - 1]).length;
    const several = distinct.length > 1 && distinct.length <= most && changes > 0.3 * words.length;
    return [{ column, sensors: several ? distinct : [] }];
  });
}
