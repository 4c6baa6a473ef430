import { any, MeopError, parameterOf } from '../../units';
import { applyCalibration } from '../calibration/calibration';
import { repairClock } from './clock';
import { clockUnit } from './clock-unit';
import type { LogColumns } from './columns';
import type { ReportWriter } from './import-report';
import type { LogLayout } from './layout';
import { type Log, type LogChannel, makeLog } from './log';
import { type ChannelPlan, planColumns } from './plan-columns';
import { type RawRows, type RowReader, rowReader } from './row-reader';

const moment = parameterOf('time', any)('t', 'end of the interval that is read');
const defaultMaxRows = 50_000_000;

/** A reader for a layout, with the settings of the column map. */
export function readerFor(layout: LogLayout, columns: LogColumns, report: ReportWriter): RowReader {
  const plan = planColumns(layout, columns);
  const { from, to } = columns.window ?? {};
  // The window is specified in seconds, but rows are tested in the unit of the log.
  const second = plan.period === undefined ? 1 / (clockUnit(plan.timeUnit)?.seconds ?? 1) : 1 / plan.period;
  const at = (field: string, given: NonNullable<typeof from>): number =>
    moment.read(given, { procedure: 'readLog', path: `window.${field}` }).si * second;
  return rowReader(
    layout,
    {
      timeColumn: plan.timeColumn,
      columns: plan.channels.map(({ column }) => column),
      names: plan.channels.map(({ name }) => name),
      from: from === undefined ? Number.NEGATIVE_INFINITY : at('from', from),
      to: to === undefined ? Number.POSITIVE_INFINITY : at('to', to),
      maxRows: columns.maxRows ?? defaultMaxRows,
    },
    report,
  );
}

/** Applies clock, units and calibration after all rows are read. */
export function buildLog(rows: RawRows, layout: LogLayout, columns: LogColumns, report: ReportWriter): Log {
  const plan = planColumns(layout, columns);
  const cautions = [...layout.cautions, ...plan.cautions];
  const { stamps, lineOf } = rows;
  if (stamps.length === 0) {
    throw new MeopError({
      code: 'log-empty',
      procedure: 'readLog',
      path: 'source',
      given: `${rows.lines} lines without a row of numbers`,
      expected: 'a log with rows of numbers',
      remedy: `Check its format:\n${report.finish(rows.lines, 0)}`,
    });
  }
  const time = timeOf(
    stamps,
    plan.period,
    rows.clockTexts ? 's' : plan.timeUnit,
    columns,
    lineOf,
    report,
    cautions,
  );
  const channels: Record<string, LogChannel> = {};
  plan.channels.forEach((channel, k) => {
    channels[channel.name] = channelOf(channel, rows.columns[k], time, cautions);
  });
  return makeLog({
    channels,
    clockOffset: time.clockOffset,
    report: report.finish(rows.lines, stamps.length),
    cautions,
    history: [
      `read ${stamps.length} rows of ${rows.lines} lines, delimiter ${JSON.stringify(layout.delimiter)}${layout.format.decimal === 44 ? ', decimal comma' : ''}${layout.format.grouping ? ', thousands grouped' : ''}`,
    ],
  });
}

interface LogClock {
  readonly time: Float64Array;
  readonly order: Int32Array | undefined;
  readonly clockOffset: number;
  /** Samples whose time is not later than the one before even after repair; none, except with unusable clocks. */
  readonly left: ReadonlySet<number>;
}

function timeOf(
  stamps: Float64Array,
  period: number | undefined,
  timeUnit: string | undefined,
  columns: LogColumns,
  lineOf: (row: number) => number,
  report: ReportWriter,
  cautions: string[],
): LogClock {
  if (period !== undefined) {
    for (let i = 0; i < stamps.length; i++) stamps[i] *= period;
    return { time: stamps, order: undefined, clockOffset: 0, left: new Set() };
  }
  const unit = clockUnit(timeUnit, stamps);
  if (unit.caution !== undefined) cautions.push(unit.caution);
  for (let i = 0; i < stamps.length; i++) stamps[i] *= unit.seconds;
  const given = columns.time && 'wrapsAfter' in columns.time ? columns.time.wrapsAfter : undefined;
  const repeats = (columns.time && 'repeats' in columns.time ? columns.time.repeats : undefined) ?? 'auto';
  const wrapsAfter =
    given === undefined
      ? [...[16, 24, 31, 32].map((bits) => 2 ** bits * unit.seconds), 3600, 86_400]
      : [given * unit.seconds];
  const clock = repairClock(stamps, { wrapsAfter, repeats, lineOf, report });
  cautions.push(...clock.cautions);
  const { time, order } = clock;
  // Only the differences of calendar times matter, and doubles resolve small numbers better.
  const clockOffset = Math.abs(time[0]) > 1e6 ? time[0] : 0;
  if (clockOffset !== 0) for (let i = 0; i < time.length; i++) time[i] -= clockOffset;
  const left = new Set<number>();
  let latest = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < time.length; i++) {
    if (time[i] > latest) latest = time[i];
    else {
      left.add(i);
      report.note('repeated stamp', 'dropped', lineOf(order ? order[i] : i), {
        note: 'no space before the next',
      });
    }
  }
  return { time, order, clockOffset, left };
}

/** The samples of the channel itself: a row without a number for the channel is not one of its samples. */
function channelOf(plan: ChannelPlan, column: Float64Array, clock: LogClock, cautions: string[]): LogChannel {
  const { order, left } = clock;
  let missing = left.size;
  for (let i = 0; i < column.length; i++) if (Number.isNaN(column[i])) missing++;
  let time = clock.time;
  let values = column;
  if (missing > 0 || order !== undefined) {
    if (missing > 0) time = new Float64Array(column.length);
    values = new Float64Array(column.length);
    let n = 0;
    for (let i = 0; i < column.length; i++) {
      const value = column[order ? order[i] : i];
      if (Number.isNaN(value) || left.has(i)) continue;
      if (missing > 0) time[n] = clock.time[i];
      values[n++] = value;
    }
    if (missing > 0) time = time.slice(0, n);
    values = values.slice(0, n);
  }
  const { name, measures, readingUnit, factor, origin, given } = plan;
  if (given.calibration === undefined) {
    if (factor !== 1 || origin !== 0)
      for (let i = 0; i < values.length; i++) values[i] = factor * values[i] + origin;
    return { name, measures, readingUnit, time, values };
  }
  return calibratedChannel(
    { name, measures: undefined, readingUnit, time, values },
    given.calibration,
    cautions,
  );
}

/**
 * A channel with its readings converted into the quantity. Readings without a physical value are omitted, with a
 * caution.
 */
export function calibratedChannel(
  channel: LogChannel,
  calibration: NonNullable<LogChannel['calibration']>,
  cautions: string[],
  coldJunctions?: Float64Array,
): LogChannel {
  const { name, readingUnit } = channel;
  const { values, beyondRange, impossible } = applyCalibration(calibration, channel.values, coldJunctions);
  cautions.push(...calibration.cautions.map((caution) => `${name}: ${caution}`));
  if (beyondRange > 0)
    cautions.push(
      `${name}: ${beyondRange} readings are at or beyond the limits of sensor or converter. They are not valid measurements.`,
    );
  const base = { name, measures: calibration.measures, readingUnit, calibration };
  const range = calibration.range && calibration.form === 'line' ? valueRange(calibration) : undefined;
  if (impossible === 0) return { ...base, time: channel.time, values, ...(range && { range }) };
  cautions.push(
    `${name}: ${impossible} readings correspond to no temperature and are omitted. Check for an open junction or a wrong type.`,
  );
  const keep = values.map((value) => (Number.isNaN(value) ? 0 : 1));
  return {
    ...base,
    time: channel.time.filter((_, i) => keep[i] === 1),
    values: values.filter((_, i) => keep[i] === 1),
  };
}

function valueRange(
  calibration: NonNullable<LogChannel['calibration']>,
): { low: number; high: number } | undefined {
  const { range, slope, intercept } = calibration;
  if (range === undefined) return undefined;
  const ends = [slope * range.low + intercept, slope * range.high + intercept];
  return { low: Math.min(...ends), high: Math.max(...ends) };
}
