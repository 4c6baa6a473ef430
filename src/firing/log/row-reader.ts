import { cellEmpty, cellNumber, cellText, scanCells } from './cell-scanner';
import { clockSeconds } from './clock-text';
import type { ReportWriter } from './import-report';
import { isTruncated } from './is-truncated';
import { isComment, type LogLayout, standIn, textCells } from './layout';
import { rowStore } from './row-store';

/** Columns of a layout to read, counted from 0, and limits. */
export interface ReadingPlan {
  /** The column of time; undefined where rows follow at a stated rate and are only counted. */
  readonly timeColumn: number | undefined;
  readonly columns: readonly number[];
  readonly names: readonly string[];
  /** Lowest and highest stamp kept, in the time unit of the log. */
  readonly from: number;
  readonly to: number;
  readonly maxRows: number;
}

/** The numbers of a log as written, before clock and units are applied. */
export interface RawRows {
  /** Stamps in the unit of the log (NaN where unreadable), or row numbers where there is no time column. */
  readonly stamps: Float64Array;
  /** One array per column; NaN where a cell contained no number. */
  readonly columns: readonly Float64Array[];
  /** Line of the text, counted from 1, that contains a row. */
  readonly lineOf: (row: number) => number;
  readonly lines: number;
  /** Whether stamps were written as clock times, which count seconds. */
  readonly clockTexts: boolean;
}

/** Reads the text of a log piece by piece and stores its numbers. */
export interface RowReader {
  /** Reads whole lines from `start` to `end`. */
  readLines(text: string, start: number, end: number): void;
  finish(partialLine: string): RawRows;
}

export function rowReader(layout: LogLayout, plan: ReadingPlan, report: ReportWriter): RowReader {
  const { format, delimiter, headingLines, commentMarks, firstRow, width } = layout;
  const reach = 1 + Math.max(plan.timeColumn ?? -1, ...plan.columns);
  const row = {
    values: new Float64Array(reach),
    states: new Uint8Array(reach),
    wanted: new Uint8Array(reach),
  };
  for (const column of plan.columns) row.wanted[column] = 1;
  if (plan.timeColumn !== undefined) row.wanted[plan.timeColumn] = 1;
  const { values, states } = row;
  const columns = Int32Array.from(plan.columns);
  const store = rowStore(plan.columns.length + 1);
  let rows = 0;
  // Row and line numbers differ by the lines dropped; each change of the difference is stored.
  const stepRows: number[] = [];
  const stepOffsets: number[] = [];
  let offset = Number.NaN;
  let line = 0;
  let ticks = 0;
  let clockTexts = false;
  const widest = Math.max(layout.headers.length > 0 ? layout.headers.length : width, reach);
  // The lines read last, to check a last line without an end; and the cell in which it was cut.
  let tail = '';
  let cutCell = Number.POSITIVE_INFINITY;
  const timeColumn = plan.timeColumn ?? -1;
  const stampsWanted = timeColumn >= 0;

  const readLine = (text: string, from: number, end: number): void => {
    line++;
    let to = end;
    if (to > from && text.charCodeAt(to - 1) === 13) to--;
    let at = from;
    while (at < to && (text.charCodeAt(at) === 32 || text.charCodeAt(at) === 9)) at++;
    const first = at < to ? text.charCodeAt(at) : 0;
    // A line that starts like a number is neither comment nor heading: the common case, tested first.
    const plain = (first >= 48 && first <= 57) || first === 45 || first === 46;
    if (!plain && leftOut(text, from, to)) return;
    if (line > firstRow) readRow(text, from, to);
  };

  const readRow = (text: string, from: number, to: number): void => {
    const count = scanCells(text, from, to, format, row);
    let numbers = 0;
    for (let k = 0; k < columns.length; k++) {
      const c = columns[k];
      if (c >= count) {
        states[c] = cellEmpty;
        values[c] = Number.NaN;
      } else if (states[c] === cellNumber) numbers++;
    }
    const surplus = count > widest && count > widest + Number(isEmptyTail(text, to));
    const plain = numbers === columns.length && !surplus;
    if (!plain && readParts(text, from, to, surplus)) return;
    let stamp = ticks++;
    if (stampsWanted) {
      if (count > timeColumn && states[timeColumn] === cellNumber) stamp = values[timeColumn];
      else {
        stamp = count > timeColumn ? clockSeconds(cellAt(text, from, to, timeColumn)) : Number.NaN;
        if (!Number.isNaN(stamp)) clockTexts = true;
      }
    }
    if (numbers === 0) {
      emptyRow(text, from, to, stamp);
      return;
    }
    if (stamp < plan.from || stamp > plan.to) {
      report.note('outside the window', 'skipped', line);
      return;
    }
    if (rows >= plan.maxRows) {
      report.note('beyond the reading limit', 'dropped', line);
      return;
    }
    if (numbers < columns.length) noteMissing(count);
    if (surplus) report.note('surplus cells', 'dropped', line, { count: count - widest });
    const now = line - rows;
    if (now !== offset) {
      offset = now;
      stepRows.push(rows);
      stepOffsets.push(now);
    }
    // Written directly into the blocks: a call for each number would box it.
    const into = store.next();
    const { blocks } = store;
    blocks[0][into] = stamp;
    for (let k = 0; k < columns.length; k++) blocks[k + 1][into] = values[columns[k]];
    rows++;
  };

  /**
   * A row that is not readable as such may be two rows with a bare carriage return between them, or be followed by a
   * comment.
   */
  const readParts = (text: string, from: number, to: number, surplus: boolean): boolean => {
    if (!surplus && !columns.some((c) => states[c] === cellText)) return false;
    const shown = text.slice(from, to);
    const end = shown.indexOf('\r');
    if (end >= 0) {
      readRow(text, from, from + end);
      line++;
      readRow(text, from + end + 1, to);
      return true;
    }
    const comment = commentMarks
      .filter((mark) => mark !== "'")
      .map((mark) => shown.search(new RegExp(`[\\s${escaped(delimiter)}]${escaped(mark)}`)))
      .filter((at) => at > 0);
    if (comment.length === 0) return false;
    report.note('comment', 'skipped', line, { note: 'after the numbers' });
    readRow(text, from, from + Math.min(...comment));
    return true;
  };

  const isEmptyTail = (text: string, to: number): boolean =>
    text.charCodeAt(to - 1) === format.delimiter || text.charCodeAt(to - 1) === 32;

  const cellAt = (text: string, from: number, to: number, column: number): string =>
    textCells(text.slice(from, Math.min(to, from + 1000)), delimiter.length > 1 ? standIn : delimiter)[
      column
    ] ?? '';

  function leftOut(text: string, from: number, to: number): boolean {
    const shown = text.slice(from, Math.min(to, from + 2000)).trim();
    if (line <= firstRow) {
      if (shown !== '' && isComment(shown, commentMarks)) report.note('comment', 'skipped', line);
      return true;
    }
    if (shown === '') report.note('blank line', 'skipped', line);
    else if (headingLines.has(shown)) report.note('repeated header', 'skipped', line);
    else if (isComment(shown, commentMarks)) report.note('comment', 'skipped', line);
    else return false;
    return true;
  }

  function emptyRow(text: string, from: number, to: number, stamp: number): void {
    const cells = columns.some((c) => states[c] === cellText);
    if (!cells && Number.isFinite(stamp) && stampsWanted)
      report.note('missing cell', 'skipped', line, { note: 'the row contains a stamp and no reading' });
    else {
      const shown = text.slice(from, Math.min(to, from + 24)).replace(/[^\x20-\x7e]/g, '?');
      report.note('unreadable line', 'dropped', line, { note: `'${shown}'` });
    }
  }

  function noteMissing(count: number): void {
    for (let k = 0; k < columns.length; k++) {
      const state = states[columns[k]];
      if (state === cellNumber || columns[k] >= cutCell) continue;
      const column = plan.names[k];
      if (state === cellText && columns[k] < count)
        report.note('unreadable cell', 'dropped', line, { column });
      else report.note('missing cell', 'skipped', line, { column });
    }
  }

  return {
    readLines(given, start, stop) {
      let text = given;
      let from = start;
      let end = stop;
      tail = (tail + given.slice(Math.max(start, stop - tailLength), stop)).slice(-tailLength);
      if (delimiter.length > 1) {
        text = given.slice(start, stop).replaceAll(delimiter, standIn);
        from = 0;
        end = text.length;
      }
      while (from < end) {
        const found = text.indexOf('\n', from);
        const to = found < 0 || found > end ? end : found;
        readLine(text, from, to);
        from = to + 1;
      }
    },
    finish(partialLine) {
      if (partialLine.trim() !== '') readPartial(partialLine);
      const [stamps, ...numbers] = store.take();
      return {
        stamps,
        columns: numbers,
        lineOf: (index) => lineOfRow(index, stepRows, stepOffsets),
        lines: line,
        clockTexts,
      };
    },
  };

  /** Power may fail in the middle of a number: "89095,181,195,6" for 69. */
  function readPartial(partialLine: string): void {
    const within = (text: string): string =>
      delimiter.length > 1 ? text.replaceAll(delimiter, standIn) : text;
    const text = within(partialLine);
    const before = within(tail).split('\n').slice(-65, -1);
    const { columns: whole, at } = isTruncated(text, before, format);
    if (text.endsWith('\r') || line < firstRow || whole === undefined || !(row.wanted[whole] === 1)) {
      readLine(text, 0, text.length);
      return;
    }
    report.note('partial last line', 'dropped', line + 1, {
      note: `The log ends within '${text.slice(-24).replace(/[^\x20-\x7e]/g, '?')}'. Its last number may be truncated.`,
    });
    cutCell = whole;
    const count = scanCells(text, 0, at, format, row);
    if (columns.some((c) => c < Math.min(count, whole) && states[c] === cellNumber)) readLine(text, 0, at);
    else line++;
  }
}

const tailLength = 1 << 13;

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

function lineOfRow(index: number, rows: readonly number[], offsets: readonly number[]): number {
  let low = 0;
  let high = rows.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (rows[middle] <= index) low = middle;
    else high = middle - 1;
  }
  return index + (offsets[low] ?? 1);
}
