import * as z from 'zod/mini';
import { MeopError, type QuantityInput } from '../../units';
import {
  type Calibration,
  isCalibration,
  type MeasuredKind,
  measuredKinds,
} from '../calibration/calibration';

/** Position and meaning of one channel of a log. */
export interface LogColumn {
  /** Heading, or number of the column counted from 1. Default: the name of the channel as heading. */
  readonly column?: string | number;
  /**
   * Measured quantity. Default: by the name of the channel, `thrust…` a force, `pressure…` a gauge pressure,
   * `temperature…` a temperature.
   */
  readonly measures?: MeasuredKind;
  /** Unit of the numbers. Default: the one in the heading. */
  readonly unit?: string;
  /** Converts readings into the quantity; {@link calibrate} can do this afterwards. */
  readonly calibration?: Calibration;
}

/** Source of time: a column, or the rate of the rows. */
export type LogTime =
  | {
      readonly column?: string | number;
      /** Unit of the stamps. Default: the one in the heading; otherwise inferred from the numbers, with a caution. */
      readonly unit?: string;
      /** Stamp after which the counter restarts from zero, in the same unit. Powers of two and one day are detected. */
      readonly wrapsAfter?: number;
      /** Treatment of samples with one stamp. Default `'auto'`. */
      readonly repeats?: 'auto' | 'uniform' | 'spread';
    }
  | { readonly rate: QuantityInput<'frequency'> };

/** Format of a log. Default: as detected from its first lines. */
export interface LogColumns {
  readonly time?: LogTime;
  /** Channels by the name they will have: `pressure`, `thrust`, `temperature nozzle`, … Default: all with a heading. */
  readonly channels?: Readonly<Record<string, LogColumn>>;
  /** One or more characters; `' '` for runs of blanks. */
  readonly delimiter?: string;
  readonly decimal?: '.' | ',';
  /** Start of a comment line. Default: one of # % // ! */
  readonly comment?: string;
  /** Number of lines to skip at the top. */
  readonly skipLines?: number;
  /** Interval in s of the clock of the log; rows with stamps outside it are dropped. */
  readonly window?: { readonly from?: QuantityInput<'time'>; readonly to?: QuantityInput<'time'> };
  /** Maximum number of rows kept. Default 50 million. */
  readonly maxRows?: number;
}

const name = z.string().check(z.minLength(1));
const wholeFrom = (least: number, otherwise?: string) => z.int().check(z.minimum(least, otherwise));
const place = z.union([name, wholeFrom(1, 'columns are counted from 1')]);
const calibration = z.custom<Calibration>(isCalibration, 'must be a calibration');
const quantityLike = z.custom<object | string>(
  (value) => typeof value === 'string' || (typeof value === 'object' && value !== null),
  "must be a quantity or a string such as '100 Hz'",
);
const channel = z.strictObject({
  column: z.optional(place),
  measures: z.optional(z.enum(measuredKinds)),
  unit: z.optional(z.string()),
  calibration: z.optional(calibration),
});
const clock = z.union([
  z.strictObject({ rate: quantityLike }),
  z.strictObject({
    column: z.optional(place),
    unit: z.optional(z.string()),
    wrapsAfter: z.optional(z.number().check(z.positive())),
    repeats: z.optional(z.enum(['auto', 'uniform', 'spread'])),
  }),
]);
const schema = z.strictObject({
  time: z.optional(clock),
  channels: z.optional(z.record(name, channel)),
  delimiter: z.optional(name),
  decimal: z.optional(z.enum(['.', ','])),
  comment: z.optional(name),
  skipLines: z.optional(wholeFrom(0)),
  window: z.optional(z.strictObject({ from: z.optional(quantityLike), to: z.optional(quantityLike) })),
  maxRows: z.optional(wholeFrom(1)),
});

/**
 * Rejects an invalid column map, with every problem and its path.
 *
 * @throws MeopError `log-columns`
 */
export function checkColumns(columns: unknown): void {
  const read = schema.safeParse(columns);
  if (read.success) return;
  const { issues } = read.error;
  const places = issues.map(({ path, message }) => `${path.join('.') || 'columns'}: ${message}`);
  throw new MeopError({
    code: 'log-columns',
    procedure: 'readLog',
    path: issues.length === 1 ? issues[0].path.join('.') || 'columns' : 'columns',
    given: columns,
    problem: issues.length === 1 ? issues[0].message : `${issues.length} problems\n  ${places.join('\n  ')}`,
  });
}
