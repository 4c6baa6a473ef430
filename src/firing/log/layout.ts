import Papa from 'papaparse';
import { type CellFormat, cellEmpty, cellNumber, type ScannedRow, scanCells } from './cell-scanner';
import { type HeaderCell, headerCell, unitInHeading } from './header-cell';
import { type WordColumn, wordColumns } from './word-columns';

/** Format of a log, as detected from its first lines or specified. */
export interface LogLayout {
  readonly format: CellFormat;
  /** The delimiter as specified or detected; `' '` denotes any run of blanks. */
  readonly delimiter: string;
  readonly headers: readonly HeaderCell[];
  /** Number of columns of numbers, without a trailing delimiter. */
  readonly width: number;
  /** Number of lines before the first row of numbers. */
  readonly firstRow: number;
  /** The heading lines as written, to recognise repetitions. */
  readonly headingLines: ReadonlySet<string>;
  readonly commentMarks: readonly string[];
  readonly words: readonly WordColumn[];
  readonly cautions: readonly string[];
}

export interface LayoutHints {
  readonly delimiter?: string | undefined;
  readonly decimal?: '.' | ',' | undefined;
  readonly comment?: string | undefined;
  /** Number of lines skipped at the top, whatever they contain. */
  readonly skipLines?: number | undefined;
}

/** A delimiter of several characters is replaced by this one before scanning. */
export const standIn = '\u001f';
const maxColumns = 256;
const marks = ['#', '%', '//', '!', "'"];

/** Detects delimiter, decimal sign, headings and the first row of numbers from the first lines of a log. */
export function findLayout(lines: readonly string[], hints: LayoutHints): LogLayout {
  const commentMarks = hints.comment === undefined ? marks : [hints.comment];
  const skip = hints.skipLines ?? 0;
  const body = lines
    .slice(skip)
    .flatMap((line) => line.split('\r'))
    .filter((line) => line.trim() !== '' && !isComment(line, commentMarks));
  const { format, delimiter } = bestFormat(body, hints);
  const scratch = scratchRow();
  const scanned = (line: string): string =>
    delimiter.length > 1 ? line.replaceAll(delimiter, standIn) : line;
  const widths = body.map((line) => rowWidth(scanned(line), format, scratch));
  const width = widestUsual(widths.filter((w) => w > 0));
  const isRow = (line: string): boolean =>
    line.trim() !== '' &&
    !isComment(line, commentMarks) &&
    rowWidth(scanned(line), format, scratch) >= Math.min(width, 2);
  const found = width === 0 ? -1 : lines.findIndex((line, i) => i >= skip && isRow(line));
  const firstRow =
    found < 0
      ? Math.min(skip, lines.length)
      : pastSettings(lines, found, isRow, (line) => {
          const cells = textCells(scanned(line), delimiter.length > 1 ? standIn : delimiter);
          while (cells.at(-1) === '') cells.pop();
          return cells;
        });
  const above = lines.slice(skip, Math.max(firstRow, skip)).filter((line) => line.trim() !== '');
  const headings = headingsOf(above, delimiter, width, commentMarks);
  const words = wordColumns(
    lines
      .slice(firstRow)
      .filter(isRow)
      .slice(0, 500)
      .map((line) => textCells(scanned(line), delimiter.length > 1 ? standIn : delimiter)),
  );
  const doubt = hints.decimal === undefined && format.decimal === 44 && commaInDoubt(body, delimiter);
  const cautions = doubt
    ? [
        "Numbers such as 1,024 are read with a decimal comma. If the comma groups thousands, specify { decimal: '.' }.",
      ]
    : [];
  return { format, delimiter, width, firstRow, commentMarks, words, cautions, ...headings };
}

/**
 * Settings above the headings, such as 'Rate,100', look like rows. Where apparent rows begin with a word at first and
 * later never do, the log begins with the first that does not.
 */
function pastSettings(
  lines: readonly string[],
  found: number,
  isRow: (line: string) => boolean,
  cellsOf: (line: string) => readonly string[],
): number {
  const startsWithWord = (line: string): boolean => /^[a-z_]/i.test(cellsOf(line)[0] ?? '');
  if (!startsWithWord(lines[found])) return found;
  const next = lines.findIndex((line, i) => i > found && isRow(line) && !startsWithWord(line));
  if (next < 0 || next > found + maxSettings) return found;
  const after = lines.slice(next, next + maxSettings).filter(isRow);
  return after.some(startsWithWord) ? found : next;
}
const maxSettings = 100; // lines

/** Whether each comma of a log is at a position where it could group thousands. */
function commaInDoubt(body: readonly string[], delimiter: string): boolean {
  const cells = body
    .slice(0, 500)
    .flatMap((line) => textCells(line, delimiter))
    .filter((cell) => /^[+-]?\d*,\d*$/.test(cell));
  return cells.length > 0 && cells.every((cell) => /^[+-]?[1-9]\d{0,2},\d{3}$/.test(cell));
}

export const isComment = (line: string, commentMarks: readonly string[]): boolean => {
  const text = line.trimStart();
  return commentMarks.some((mark) => text.startsWith(mark));
};

export function scratchRow(): ScannedRow {
  return {
    values: new Float64Array(maxColumns),
    states: new Uint8Array(maxColumns),
    wanted: new Uint8Array(maxColumns).fill(1),
  };
}

/** Number of cells up to the last that is not empty, where most of them are numbers; otherwise 0. */
function rowWidth(line: string, format: CellFormat, row: ScannedRow): number {
  const text = prepared(line, format);
  const count = Math.min(scanCells(text, 0, text.length, format, row), maxColumns);
  let numbers = 0;
  let filled = 0;
  let last = 0;
  for (let i = 0; i < count; i++) {
    if (row.states[i] === cellEmpty) continue;
    filled++;
    last = i + 1;
    if (row.states[i] === cellNumber) numbers++;
  }
  return numbers > 0 && numbers * 2 >= filled ? last : 0;
}

const prepared = (line: string, format: CellFormat): string =>
  line.endsWith('\r') && !format.blanks ? line.slice(0, -1) : line.trimEnd() === '' ? '' : line;

function bestFormat(body: readonly string[], hints: LayoutHints): { format: CellFormat; delimiter: string } {
  const delimiters = hints.delimiter === undefined ? [',', ';', '\t', '|', ' '] : [hints.delimiter];
  const decimals = hints.decimal === undefined ? ['.', ','] : [hints.decimal];
  const scratch = scratchRow();
  let best = { format: formatOf(delimiters[0], decimals[0], false), delimiter: delimiters[0] };
  let bestScore = -1;
  // Grouped thousands come last: '1,025' is a decimal comma unless other cells show otherwise.
  for (const grouping of [false, true])
    for (const delimiter of delimiters)
      for (const decimal of decimals) {
        const format = formatOf(delimiter, decimal, grouping);
        const score = scoreOf(body, delimiter, format, scratch);
        // A strict comparison keeps the first of equals, so the commoner spelling has priority.
        if (score > bestScore + 1e-9) {
          bestScore = score;
          best = { format, delimiter };
        }
      }
  return best;
}

function scoreOf(
  body: readonly string[],
  delimiter: string,
  format: CellFormat,
  scratch: ScannedRow,
): number {
  let score = 0;
  for (const line of body) {
    // With blanks as delimiter, '10, 0.3' would be two numbers, the first with a decimal comma and nothing after it.
    if (format.blanks && format.decimal === 44 && /,[ \t]/.test(line)) continue;
    const text = delimiter.length > 1 ? line.replaceAll(delimiter, standIn) : line;
    const count = Math.min(scanCells(text, 0, text.length, format, scratch), maxColumns);
    let numbers = 0;
    let texts = 0;
    for (let i = 0; i < count; i++) {
      if (scratch.states[i] === cellNumber) numbers++;
      else if (scratch.states[i] !== cellEmpty) texts++;
    }
    // Every cell should be a number; more columns decide between formats that read all cells.
    if (numbers > 0) score += numbers / (numbers + texts) + Math.min(numbers, 50) * 1e-3;
  }
  return score;
}

function formatOf(delimiter: string, decimal: string, grouping: boolean): CellFormat {
  const code = delimiter.length > 1 ? standIn.charCodeAt(0) : delimiter.charCodeAt(0);
  return { delimiter: code, blanks: delimiter === ' ', decimal: decimal.charCodeAt(0), grouping };
}

function headingsOf(
  above: readonly string[],
  delimiter: string,
  width: number,
  commentMarks: readonly string[],
): Pick<LogLayout, 'headers' | 'headingLines'> {
  const none = { headers: [], headingLines: new Set<string>() };
  const cellsOf = (line: string): string[] => headingCells(line, delimiter, width);
  const suits = (line: string): boolean => {
    const filled = cellsOf(line).filter((cell) => cell !== '');
    return (
      filled.length >= (width <= 2 ? width : width - 1) && !filled.some((cell) => /^[+-]?[\d.]+$/.test(cell))
    );
  };
  const plain = above.filter((line) => !isComment(line, commentMarks));
  const commented = above
    .filter((line) => isComment(line, commentMarks))
    .map((line) => line.replace(/^[\s#%!/']+/, ''));
  // A title or a date above the numbers is not a heading: there is one heading per column. Headings are often in a
  // comment.
  const lines = plain.some(suits) ? plain.slice(0, plain.findLastIndex(suits) + 1) : commented.filter(suits);
  const last = lines.at(-1);
  if (last === undefined) return { ...none, headingLines: new Set(plain.map((line) => line.trim())) };
  const cells = cellsOf(last);
  const before = lines.at(-2);
  const onlyUnits =
    cells.length > 1 && cells.every((cell) => cell === '' || unitInHeading(unbracketed(cell)) !== undefined);
  const headingLines = new Set([...plain, ...lines].map((line) => line.trim()));
  if (onlyUnits && before !== undefined) {
    const names = cellsOf(before);
    if (names.length >= cells.length - 1)
      return {
        headers: names.map((name, i) => ({ name, unit: unitInHeading(unbracketed(cells[i] ?? '')) })),
        headingLines,
      };
  }
  return { headers: cells.map(headerCell), headingLines };
}

/** With blanks as delimiter, 't (s)' is one heading if that gives as many headings as columns. */
function headingCells(line: string, delimiter: string, width: number): string[] {
  const cells = textCells(line, delimiter);
  if (delimiter !== ' ' || cells.length === width) return cells;
  const joined = textCells(line.replace(/\s+(?=[[({])/g, ''), delimiter);
  return joined.length === width ? joined : cells;
}

const unbracketed = (cell: string): string => cell.replace(/^[[(<{\s]+|[\])>}\s]+$/g, '');

/** The cells of a line of text, by the CSV parser because of quotes. */
export function textCells(line: string, delimiter: string): string[] {
  if (delimiter === ' ') return line.trim().split(/\s+/);
  const { data } = Papa.parse<string[]>(line, { delimiter, header: false });
  return (data[0] ?? []).map((cell) => cell.trim());
}

/**
 * The largest width that at least one row in fifty has: with sensors of different rates, the slow ones fill few rows.
 */
function widestUsual(widths: readonly number[]): number {
  const counts = new Map<number, number>();
  for (const width of widths) counts.set(width, (counts.get(width) ?? 0) + 1);
  const usual = [...counts].filter(([, count]) => count >= widths.length / 50).map(([width]) => width);
  return Math.max(0, ...usual);
}
