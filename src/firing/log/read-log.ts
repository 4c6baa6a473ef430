import { MeopError } from '../../units';
import { buildLog, readerFor } from './build-log';
import { type LogSource, textChunks } from './chunks';
import { checkColumns, type LogColumns } from './columns';
import { headerCell } from './header-cell';
import { type ReportWriter, reportWriter } from './import-report';
import { type LineReading, lineReading } from './labelled-lines';
import { findLayout, type LogLayout } from './layout';
import type { Log } from './log';
import type { RowReader } from './row-reader';

/**
 * Reads the log of a test stand, with any delimiter, headings with units, comments, repeated headings, missing cells,
 * clocks that wrap, restart or repeat themselves, a truncated last line, and labelled values (JSON lines, `F=3.4 N`).
 * Every dropped or repaired line or cell is counted and listed in the report.
 *
 * A string gives the log at once. A Blob, a stream or an iterable of pieces gives a promise and is never held in memory
 * as a whole. Fields omitted from `columns` are detected from the headings.
 *
 * @throws MeopError `log-columns` where a column cannot be found or its meaning is not known, `log-empty`, `log-clock`,
 * `log-source`, `unknown-unit`, `wrong-unit`
 * @example readLog('time_ms,thrust (N)\n0,1.5\n10,2.5\n').channels.thrust.values[1] // => 2.5
 */
export function readLog(source: string, columns?: LogColumns): Log;
export function readLog(source: Exclude<LogSource, string>, columns?: LogColumns): Promise<Log>;
export function readLog(source: LogSource, columns: LogColumns = {}): Log | Promise<Log> {
  checkColumns(columns);
  const feed = feeder(columns);
  if (typeof source === 'string') {
    feed.take(source);
    return feed.finish();
  }
  return drain(source, feed);
}

async function drain(source: Exclude<LogSource, string>, feed: Feeder): Promise<Log> {
  for await (const chunk of textChunks(source)) feed.take(chunk);
  return feed.finish();
}

interface Begun {
  readonly reader: RowReader;
  readonly layout: LogLayout;
  readonly reading: LineReading | undefined;
}

interface Feeder {
  take(chunk: string): void;
  finish(): Log;
}

const sampleLength = 1 << 16; // characters from which the layout is detected
const longestLine = 1 << 20; // a longer "line" is not a line of a log

function feeder(columns: LogColumns): Feeder {
  const report = reportWriter();
  let held = '';
  let begun: Begun | undefined;
  let lineEnds: '\n' | '\r' = '\n';
  const begin = (whole: boolean): Begun => {
    if (held.charCodeAt(0) === 0xfeff) held = held.slice(1);
    const sample = held.slice(0, sampleLength);
    // Old loggers end lines with a carriage return alone.
    lineEnds = sample.includes('\n') || !sample.includes('\r') ? '\n' : '\r';
    const lines = sample.split(lineEnds);
    if (lines.length > 1) lines.pop();
    const bare = lines.map((line) => line.replace(/\r$/, ''));
    const reading = lineReading(bare.slice(columns.skipLines ?? 0));
    // Labelled values are separated by tabs here, whatever separated them before.
    const found = reading?.headings
      ? findLayout(bare.map(reading.row), { ...columns, delimiter: undefined })
      : findLayout(reading ? bare.map(reading.row) : bare, columns);
    const layout = reading?.headings ? { ...found, headers: reading.headings.map(headerCell) } : found;
    if (whole && layout.width === 0) refuseEmpty(lines);
    return { layout, reading, reader: readerFor(layout, columns, report) };
  };
  const drainLines = ({ reader, reading }: Begun): void => {
    if (lineEnds === '\r') held = held.replaceAll('\r\n', '\n').replaceAll('\r', '\n');
    const end = held.lastIndexOf('\n') + 1;
    if (reading === undefined) reader.readLines(held, 0, end);
    else {
      const rows = held.slice(0, end).split(/\r?\n/).map(reading.row).join('\n');
      reader.readLines(rows, 0, rows.length);
    }
    held = held.slice(end);
    if (held.length > longestLine) dropEndless(report);
  };
  const dropEndless = (writer: ReportWriter): void => {
    writer.note('unreadable line', 'dropped', 0, { note: `${held.length} characters without a line end` });
    held = '';
  };
  return {
    take(chunk) {
      held = held === '' ? chunk : held + chunk;
      if (begun === undefined) {
        if (held.length < sampleLength) return;
        begun = begin(false);
      }
      drainLines(begun);
    },
    finish() {
      begun ??= begin(true);
      drainLines(begun);
      const rows = begun.reader.finish(begun.reading && held !== '' ? begun.reading.row(held) : held);
      held = '';
      return buildLog(rows, begun.layout, columns, report);
    },
  };
}

/** @throws MeopError `log-empty` */
function refuseEmpty(lines: readonly string[]): never {
  const first = lines.find((line) => line.trim() !== '');
  throw new MeopError({
    code: 'log-empty',
    procedure: 'readLog',
    path: 'source',
    given: first ?? '',
    expected: first === undefined ? 'a log with text' : 'a log with rows of numbers',
    ...(first !== undefined && {
      note: `first of ${lines.length} lines`,
      remedy: 'Specify { delimiter, decimal, comment, skipLines } as needed',
    }),
  });
}
