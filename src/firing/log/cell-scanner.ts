import { spelledNumber } from './spelled-number';

/** Content of a cell: a number, nothing, or other text. */
export const cellNumber = 0;
export const cellEmpty = 1;
export const cellText = 2;

/** The cells of one row, reused for every row of a log. */
export interface ScannedRow {
  /** Numbers, one per column; NaN where the cell contains none. */
  readonly values: Float64Array;
  /** `cellNumber`, `cellEmpty` or `cellText`, one per column. */
  readonly states: Uint8Array;
  /** 1 for the columns whose numbers are required; the others are skipped. */
  readonly wanted: Uint8Array;
}

/** Format of the cells of a log, as character codes. */
export interface CellFormat {
  readonly delimiter: number;
  /** True where a run of blanks counts as one delimiter. */
  readonly blanks: boolean;
  /** May also be the delimiter; then it counts within quotes only. */
  readonly decimal: number;
  /** Thousands are grouped: `1,024.5`, `1'024.5`. */
  readonly grouping: boolean;
}

const space = 32;
const tab = 9;
const quote = 34;
const trueMinus = 0x2212; // as in spreadsheets
const longestNumber = 64; // characters of a cell

/**
 * Kernel: splits one line into cells and reads their numbers, exactly as `Number` would, but without making a string of
 * each cell. Returns the number of cells, which may exceed the columns of `row`.
 */
export function scanCells(
  text: string,
  start: number,
  end: number,
  format: CellFormat,
  row: ScannedRow,
): number {
  const { delimiter, blanks } = format;
  const bare = format.decimal === delimiter ? -1 : format.decimal;
  const { values, states, wanted } = row;
  const columns = values.length;
  let i = start;
  let count = 0;
  let stop = end;
  if (blanks) while (stop > i && isBlank(text.charCodeAt(stop - 1))) stop--;
  for (;;) {
    while (i < stop && isBlank(text.charCodeAt(i)) && text.charCodeAt(i) !== delimiter) i++;
    if (blanks) while (i < stop && isBlank(text.charCodeAt(i))) i++;
    if (count < columns && wanted[count] === 1) {
      const from = i;
      let c = i < stop ? text.charCodeAt(i) : -1;
      const quoted = c === quote;
      const decimal = quoted ? format.decimal : bare;
      if (quoted) c = ++i < stop ? text.charCodeAt(i) : -1;
      let negative = false;
      if (c === 45 || c === 43 || c === trueMinus) {
        negative = c !== 43;
        c = ++i < stop ? text.charCodeAt(i) : -1;
      }
      let mantissa = 0;
      const whole = i;
      while (c >= 48 && c <= 57) {
        mantissa = mantissa * 10 + (c - 48);
        c = ++i < stop ? text.charCodeAt(i) : -1;
      }
      let digits = i - whole;
      let decimals = 0;
      if (c === decimal) {
        const fraction = i + 1;
        do {
          c = ++i < stop ? text.charCodeAt(i) : -1;
          if (c < 48 || c > 57) break;
          mantissa = mantissa * 10 + (c - 48);
        } while (c >= 0);
        decimals = i - fraction;
        digits += decimals;
      }
      let hasExponent = false;
      if (digits > 0 && (c === 101 || c === 69)) {
        hasExponent = true;
        i++;
        c = i < stop ? text.charCodeAt(i) : -1;
        if (c === 45 || c === 43) i++;
        const exponentFrom = i;
        c = i < stop ? text.charCodeAt(i) : -1;
        while (c >= 48 && c <= 57) c = ++i < stop ? text.charCodeAt(i) : -1;
        if (i === exponentFrom) digits = 0;
      }
      const last = i;
      const unquoted = !quoted || c === quote;
      if (quoted && unquoted) i++;
      if (i < stop) {
        while (i < stop && isBlank(text.charCodeAt(i)) && text.charCodeAt(i) !== delimiter) i++;
      }
      const closed = unquoted && (i >= stop || text.charCodeAt(i) === delimiter || (blanks && i > last));
      if (closed && digits > 0) {
        // Clinger: a whole number below 2^53 divided by a power of ten up to 10^22 is rounded once, hence exact.
        if (!hasExponent && digits <= 15) {
          const size = mantissa / tens[decimals];
          values[count] = negative ? -size : size;
        } else {
          const size = slowNumber(text, whole, last, decimal);
          values[count] = negative ? -size : size;
        }
        // A number beyond the range of a double is not a reading.
        const finite = Number.isFinite(values[count]);
        states[count] = finite ? cellNumber : cellText;
        if (!finite) values[count] = Number.NaN;
      } else {
        i = cellEnd(text, from, stop, format);
        if (isNothing(text, from, i)) {
          values[count] = Number.NaN;
          states[count] = cellEmpty;
        } else {
          values[count] = i - from > longestNumber ? Number.NaN : spelledNumber(text.slice(from, i), format);
          states[count] = Number.isNaN(values[count]) ? cellText : cellNumber;
        }
      }
    } else i = cellEnd(text, i, stop, format);
    count++;
    if (i >= stop) return count;
    if (!(blanks && isBlank(text.charCodeAt(i - 1)))) i++;
  }
}

const isBlank = (code: number): boolean => code === space || code === tab;

const tens = /* @__PURE__ */ Float64Array.from({ length: 16 }, (_, i) => 10 ** i);

function slowNumber(text: string, from: number, to: number, decimal: number): number {
  const cell = text.slice(from, to);
  return Number(decimal === 46 ? cell : cell.replace(String.fromCharCode(decimal), '.'));
}

/** End of a cell that is not read: its delimiter, quoted ones excluded. */
function cellEnd(text: string, from: number, stop: number, format: CellFormat): number {
  let i = from;
  let inside = false;
  for (; i < stop; i++) {
    const c = text.charCodeAt(i);
    if (c === quote) inside = !inside;
    else if (!inside && (c === format.delimiter || (format.blanks && isBlank(c)))) return i;
  }
  return stop;
}

/** Whether a cell contains no value: empty, or one of the words that loggers write for it. */
function isNothing(text: string, from: number, to: number): boolean {
  const cell = text
    .slice(from, Math.min(to, from + 12))
    .replaceAll('"', '')
    .trim()
    .toLowerCase();
  return cell === '' || nothings.has(cell);
}

const nothings: ReadonlySet<string> = /* @__PURE__ */ new Set([
  'nan',
  '-',
  '--',
  'null',
  'none',
  'n/a',
  'na',
  '#n/a',
]);
