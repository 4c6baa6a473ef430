import { formatNumber, instance, printable } from '../../units';
import type { Calibration, MeasuredKind, ReadingRange } from '../calibration/calibration';
import type { ImportReport } from './import-report';

/** Samples of one sensor. Channels that were read together share one array of times. */
export interface LogChannel {
  readonly name: string;
  /** Kind of the values; undefined for readings without calibration. */
  readonly measures: MeasuredKind | undefined;
  /** Unit of the numbers in the log: `psi`, `counts`, `V`, … */
  readonly readingUnit: string;
  /** Times in s, strictly increasing. */
  readonly time: Float64Array;
  /** Values in SI units, or readings where `measures` is undefined. */
  readonly values: Float64Array;
  /** Lower and upper limit of the converter or sensor, in the unit of `values`. */
  readonly range?: ReadingRange;
  readonly calibration?: Calibration;
}

/** A log as read: channels by name, and the treatment of every line. */
export interface Log {
  readonly channels: Readonly<Record<string, LogChannel>>;
  /** Seconds of the clock of the logger at time zero: not 0 where the clock shows the time of day or a date. */
  readonly clockOffset: number;
  readonly report: ImportReport;
  readonly cautions: readonly string[];
  readonly history: readonly string[];
  toString(): string;
}

/** Makes a log with its printed form. */
export const makeLog = (parts: Omit<Log, 'toString'>): Log => printable(parts, () => logText(parts));

const isLog = (value: unknown): value is Log =>
  typeof value === 'object' &&
  value !== null &&
  'channels' in value &&
  typeof value.channels === 'object' &&
  value.channels !== null &&
  'report' in value &&
  'history' in value;

/** A log as read. */
export const logInput = /* @__PURE__ */ instance('the log, as read', 'a Log', isLog, {
  remedy: 'Read one with readLog',
});

function logText({ channels, report, cautions }: Omit<Log, 'toString'>): string {
  const lines = Object.values(channels).map(({ name, measures, readingUnit, time }) => {
    const span =
      time.length > 0
        ? `over ${formatNumber(time[time.length - 1] - time[0])} s from ${formatNumber(time[0])} s`
        : 'empty';
    const inLog = readingUnit === 'readings' ? 'no unit' : readingUnit;
    return `  ${name}: ${measures ?? 'readings'} (${inLog} in the log), ${time.length} samples ${span}`;
  });
  return [
    'log',
    ...lines,
    ...cautions.map((caution) => `  caution: ${caution}`),
    `  ${report.toString().replaceAll('\n', '\n  ')}`,
  ].join('\n');
}
