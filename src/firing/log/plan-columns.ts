import { frequency, MeopError, unitOf } from '../../units';
import type { MeasuredKind } from '../calibration/calibration';
import { kindOfName, roleOfName, rolesOf, timeHeading } from './column-roles';
import type { LogColumn, LogColumns } from './columns';
import { isRawUnit } from './header-cell';
import type { LogLayout } from './layout';

/** A channel to be read: its column, and the conversion of its numbers to SI. */
export interface ChannelPlan {
  readonly name: string;
  /** Index of the column, counted from 0. */
  readonly column: number;
  readonly measures: MeasuredKind | undefined;
  readonly readingUnit: string;
  /** SI = factor·number + origin; readings without a unit are not converted. */
  readonly factor: number;
  readonly origin: number;
  readonly given: LogColumn;
}

export interface ColumnPlan {
  readonly channels: readonly ChannelPlan[];
  readonly timeColumn: number | undefined;
  /** Seconds per row, where rows follow at a rate. */
  readonly period: number | undefined;
  /** Undefined where neither a heading nor the caller specifies it. */
  readonly timeUnit: string | undefined;
  readonly cautions: readonly string[];
}

const procedure = 'readLog';
const rate = frequency('f', 'rate of the rows');

// A scale shows grams, but it measures a force.
const weights: Readonly<Record<string, string>> = { g: 'gf', kg: 'kgf', lb: 'lbf', oz: 'ozf' };

/** Selects the columns to read, and their meaning. */
export function planColumns(layout: LogLayout, columns: LogColumns): ColumnPlan {
  const cautions: string[] = [];
  const period =
    columns.time && 'rate' in columns.time
      ? 1 / rate.read(columns.time.rate, { procedure, path: 'time.rate' }).si
      : undefined;
  const timeColumn = period === undefined ? findTime(layout, columns) : undefined;
  const stated = columns.time && 'unit' in columns.time ? columns.time.unit : undefined;
  const timeUnit = stated ?? (timeColumn === undefined ? undefined : layout.headers[timeColumn]?.unit);
  const given = columns.channels ?? channelsFromHeadings(layout, timeColumn);
  const channels = Object.entries(given).map(([name, column]) => planChannel(name, column, layout, cautions));
  const read = new Set([timeColumn, ...channels.map(({ column }) => column)]);
  for (const { column, sensors } of layout.words)
    if (sensors.length > 0 && !read.has(column))
      cautions.push(
        `Column ${column + 1} alternates between ${sensors.join(', ')}. If the rows are those of several sensors, each channel was read from all of them. Separate the rows first.`,
      );
  if (channels.length === 0)
    throw new MeopError({
      code: 'log-columns',
      procedure,
      path: 'channels',
      problem: `the meaning of the columns is not known: ${seen(layout)}`,
      remedy: "Specify, for example, channels: { thrust: { column: 2, unit: 'N' } }",
    });
  return { channels, timeColumn, period, timeUnit, cautions };
}

function findTime(layout: LogLayout, { time }: LogColumns): number | undefined {
  if (time && 'column' in time && time.column !== undefined) return columnIndex('time', time.column, layout);
  const named = timeHeading(layout.headers);
  if (named >= 0) return named;
  if (layout.headers.length === 0 && layout.width >= 2) return 0;
  throw new MeopError({
    code: 'log-columns',
    procedure,
    path: 'time',
    problem: `the column of time is not known: ${seen(layout)}`,
    remedy:
      "Name the column (time: { column: 1, unit: 'ms' }) or give the rate of the rows (time: { rate: '100 Hz' })",
  });
}

function channelsFromHeadings(
  layout: LogLayout,
  timeColumn: number | undefined,
): Readonly<Record<string, LogColumn>> {
  const found: Record<string, LogColumn> = {};
  const roles = rolesOf(layout.headers);
  layout.headers.forEach(({ name, unit }, i) => {
    if (i === timeColumn || name === '') return;
    if (layout.words.some(({ column }) => column === i)) return;
    const role = roles[i];
    const alone =
      role !== undefined && roles.filter((other, k) => k !== timeColumn && other === role).length === 1;
    // 'Chamber pressure (psi)' becomes 'pressure'; of two pressures, each keeps its own name.
    const named = role === undefined || name.toLowerCase().startsWith(role) ? name : `${role} ${name}`;
    const key = role !== undefined && alone && role !== 'temperature' ? role : named;
    found[key in found ? `${key} ${i + 1}` : key] = { column: i + 1, ...(unit !== undefined && { unit }) };
  });
  return found;
}

function planChannel(name: string, given: LogColumn, layout: LogLayout, cautions: string[]): ChannelPlan {
  const only = layout.width === 1 && given.column === undefined;
  const column = only ? 0 : columnIndex(`channels.${name}`, given.column ?? name, layout);
  const inLog = given.unit ?? layout.headers[column]?.unit;
  const unit = inLog ?? given.calibration?.readingUnit;
  const role = kindOfName(name);
  const base = { name, column, given };
  if (given.calibration && unit !== undefined) {
    const { readingUnit } = given.calibration;
    if (unit === readingUnit) return { ...base, measures: undefined, readingUnit, factor: 1, origin: 0 };
    // A calibration in V would be accepted for mV, a thousand times too large.
    throw new MeopError({
      code: 'wrong-unit',
      procedure,
      path: `channels.${name}.calibration`,
      given: readingUnit,
      expected: `for ${unit}, the unit of the numbers`,
      remedy: `Make the calibration for ${unit}, or specify the unit of the numbers: { unit: '${readingUnit}' }`,
    });
  }
  if (unit === undefined || isRawUnit(unit)) {
    if (unit === undefined)
      cautions.push(
        `${name}: unit not specified. The numbers are kept as readings until they are calibrated.`,
      );
    return { ...base, measures: undefined, readingUnit: unit ?? 'readings', factor: 1, origin: 0 };
  }
  const spelled = role === 'force' || given.measures === 'force' ? (weights[unit] ?? unit) : unit;
  if (spelled !== unit)
    cautions.push(
      `${name}: ${unit} is a unit of mass. The readings are interpreted as weight in ${spelled} (standard gravity), not as newtons.`,
    );
  const { kind, factor, divisor, origin, originSi, dimension } = unitOf(spelled);
  const measures = given.measures ?? kindOfChannel(kind, role, name, unit, cautions);
  if (measures === undefined)
    throw new MeopError({
      code: 'log-columns',
      procedure,
      path: `channels.${name}.measures`,
      given: unit,
      problem: `the measured quantity is not known, since ${unit} is a unit of ${kind}`,
      remedy: "Specify { measures: 'gauge pressure' | 'force' | 'temperature' | … }",
    });
  const expected = unitOf(siUnits[measures]).dimension;
  if (expected.key !== dimension.key)
    throw new MeopError({
      code: 'wrong-unit',
      procedure,
      path: `channels.${name}.unit`,
      given: unit,
      note: `a unit of ${kind}`,
      expected: `a unit of ${measures}`,
    });
  return {
    ...base,
    measures,
    readingUnit: unit,
    factor: factor / divisor,
    origin: originSi - (origin * factor) / divisor,
  };
}

const siUnits: Readonly<Record<MeasuredKind, string>> = {
  'gauge pressure': 'Pa',
  'absolute pressure': 'Pa',
  force: 'N',
  temperature: 'K',
  mass: 'kg',
  length: 'm',
  'mass flow': 'kg/s',
  acceleration: 'm/s^2',
};

function kindOfChannel(
  kind: string,
  role: MeasuredKind | undefined,
  name: string,
  unit: string,
  cautions: string[],
): MeasuredKind | undefined {
  if (kind === 'pressure') {
    cautions.push(
      `${name}: ${unit} does not state gauge or absolute; assumed gauge (as most transducers read).`,
    );
    return 'gauge pressure';
  }
  const found = Object.keys(siUnits).find((measured): measured is MeasuredKind => measured === kind);
  return found ?? role;
}

function columnIndex(path: string, column: string | number, layout: LogLayout): number {
  if (typeof column === 'number') {
    const widest = Math.max(layout.width, layout.headers.length);
    if (column <= widest || layout.width === 0) return column - 1;
    throw new MeopError({
      code: 'log-columns',
      procedure,
      path: `${path}.column`,
      given: column,
      expected: `at most ${widest} (columns are counted from 1)`,
    });
  }
  const wanted = plain(column);
  const exact = layout.headers.findIndex(({ name }) => plain(name) === wanted);
  if (exact >= 0) return exact;
  const whole = layout.headers.findIndex(({ name, unit }) => plain(`${name}${unit ?? ''}`) === wanted);
  if (whole >= 0) return whole;
  const byRole = layout.headers.findIndex(
    ({ name }) => roleOfName(name) !== undefined && roleOfName(name) === roleOfName(column),
  );
  if (byRole >= 0) return byRole;
  throw new MeopError({
    code: 'log-columns',
    procedure,
    path: `${path}.column`,
    given: column,
    problem: `unknown heading '${column}': ${seen(layout)}`,
  });
}

const plain = (text: string): string => text.toLowerCase().replace(/[^a-z0-9µ%°]/g, '');

const seen = (layout: LogLayout): string =>
  layout.headers.length > 0
    ? `the headings are ${layout.headers.map(({ name }) => `'${name}'`).join(', ')}`
    : layout.width === 0
      ? 'the log does not begin with a row of numbers'
      : `the log has ${layout.width} column${layout.width === 1 ? '' : 's'} and no headings`;
