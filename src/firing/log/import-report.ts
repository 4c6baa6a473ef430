import { table } from '../../units';

/** Findings in a log other than plain rows of numbers. */
export type LogFinding =
  | 'comment'
  | 'blank line'
  | 'repeated header'
  | 'unreadable line'
  | 'unreadable cell'
  | 'missing cell'
  | 'surplus cells'
  | 'partial last line'
  | 'repeated stamp'
  | 'missing stamp'
  | 'false stamp'
  | 'clock wrap'
  | 'clock restart'
  | 'out of order'
  | 'gap in time'
  | 'outside the window'
  | 'beyond the reading limit';

/** Action on a finding. */
export type LogAction = 'skipped' | 'dropped' | 'repaired' | 'kept';

/** A run of findings of one sort: first and last line, and their number. */
export interface LogFindingRun {
  readonly finding: LogFinding;
  readonly action: LogAction;
  /** The affected column or channel, where there is one. */
  readonly column: string | undefined;
  readonly firstLine: number;
  readonly lastLine: number;
  readonly count: number;
  /** Description of the action. */
  readonly note: string;
}

/** Treatment of every line and sample of a log. */
export interface ImportReport {
  /** Number of lines of text, a partial last one included. */
  readonly lines: number;
  /** Number of rows of numbers kept. */
  readonly rows: number;
  /** Number of cells and rows with content that were dropped. */
  readonly dropped: number;
  /** Number of cells and stamps that were repaired. */
  readonly repaired: number;
  readonly findings: readonly LogFindingRun[];
  /** Number of findings whose lines are not listed because the list was full. */
  readonly unlisted: number;
  toString(): string;
}

interface OpenRun {
  finding: LogFinding;
  action: LogAction;
  column: string | undefined;
  firstLine: number;
  lastLine: number;
  count: number;
  note: string;
}

/** Collects findings as runs, so that a log with a million missing cells still gives a short list. */
export interface ReportWriter {
  note(
    finding: LogFinding,
    action: LogAction,
    line: number,
    options?: { column?: string; note?: string; count?: number },
  ): void;
  finish(lines: number, rows: number): ImportReport;
}

const maxRuns = 20_000; // listed; the rest is counted, so that an unreadable file cannot fill the memory
const sameRun = 1000; // maximum number of lines between two findings of one run

export function reportWriter(): ReportWriter {
  const runs: OpenRun[] = [];
  const open = new Map<string, OpenRun>();
  let unlisted = 0;
  const totals: Record<LogAction, number> = { skipped: 0, dropped: 0, repaired: 0, kept: 0 };
  return {
    note(finding, action, line, { column, note = '', count = 1 } = {}) {
      totals[action] += count;
      const key = `${finding}/${action}/${column ?? ''}`;
      const run = open.get(key);
      if (run && line - run.lastLine <= sameRun && run.note === note) {
        run.lastLine = Math.max(run.lastLine, line);
        run.count += count;
      } else if (runs.length < maxRuns) {
        const started = { finding, action, column, firstLine: line, lastLine: line, count, note };
        runs.push(started);
        open.set(key, started);
      } else unlisted += count;
    },
    finish: (lines, rows) => {
      const findings = [...runs].sort((a, b) => a.firstLine - b.firstLine);
      return {
        lines,
        rows,
        dropped: totals.dropped,
        repaired: totals.repaired,
        findings,
        unlisted,
        toString: () => reportText(lines, rows, totals, findings, unlisted),
      };
    },
  };
}

const maxPrinted = 40;

function reportText(
  lines: number,
  rows: number,
  totals: Readonly<Record<LogAction, number>>,
  findings: readonly LogFindingRun[],
  unlisted: number,
): string {
  const head = `${lines} lines, ${rows} rows kept, ${totals.dropped} dropped, ${totals.repaired} repaired`;
  if (findings.length === 0) return head;
  const shown = findings.slice(0, maxPrinted).map((run) => ({
    lines: run.firstLine === run.lastLine ? `${run.firstLine}` : `${run.firstLine} to ${run.lastLine}`,
    finding: run.finding,
    column: run.column ?? '',
    count: run.count,
    done: run.note === '' ? run.action : `${run.action}: ${run.note}`,
  }));
  const more = findings.length - shown.length;
  const rest = [
    ...(more > 0 ? [`and ${more} further runs`] : []),
    ...(unlisted > 0 ? [`and ${unlisted} further findings, counted but not listed`] : []),
  ];
  return [head, table(shown), ...rest].join('\n');
}
