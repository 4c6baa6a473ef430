import * as z from 'zod/mini';
import { MeopError, type QuantityInput } from '../../units';
import type { Calibration, MeasuredKind } from '../calibration/calibration';

/** What one channel of a log is, and where it stands. */
export interface LogColumn {
  /** Heading, or number of the column counted from 1. Default: the channel's own name as heading. */
  readonly column?: string | number;
  /** What is measured. Default: by the channel's name, `thrust…` a force, `pressure…` a gauge pressure, `temperature…` a temperature. */
  readonly measures?: MeasuredKind;
  /** Unit of the numbers. Default: the one in the heading. */
  readonly unit?: string;
  /** Turns readings into the quantity; {@link calibrate} does it afterwards just as well. */
  readonly calibration?: Calibration;
}

/** Where time comes from: a column, or a rate at which rows follow each other. */
export type LogTime =
  | {
      readonly column?: string | number;
      /** Default: the one in the heading; else guessed from the numbers, with a caution. */
      readonly unit?: string;
      /** Stamp after which the counter starts again from zero, in the same unit. Powers of two and a day are known. */
      readonly wrapsAfter?: number;
      /** How samples of one stamp get times of their own. Default `'auto'`. */
      readonly repeats?: 'auto' | 'uniform' | 'spread';
    }
  | { readonly rate: QuantityInput<'frequency'> };

/** How a log is to be read. Everything left out is taken from its first lines. */
export interface LogColumns {
  readonly time?: LogTime;
  /** Channels by the name they shall have: `pressure`, `thrust`, `temperature nozzle`, … Default: all with a heading. */
  readonly channels?: Readonly<Record<string, LogColumn>>;
  /** One or more characters; `' '` for runs of blanks. */
  readonly delimiter?: string;
  readonly decimal?: '.' | ',';
  /** What a comment line starts with. Default: one of # % // ! */
  readonly comment?: string;
  /** Lines at the top to pass over. */
  readonly skipLines?: number;
  /** Only rows with stamps from `from` to `to`, in s of the log's clock, are kept. */
  readonly window?: { readonly from?: QuantityInput<'time'>; readonly to?: QuantityInput<'time'> };
  /** Rows kept at most. Default 50 million. */
  readonly maxRows?: number;
}

const name = z.string().check(z.minLength(1));
const wholeFrom = (least: number, otherwise?: string) => z.int().check(z.minimum(least, otherwise));
const place = z.union([name, wholeFrom(1, 'columns are counted from 1')]);
const anyObject = z.custom<object>(
  (value) => typeof value === 'object' && value !== null,
  'a calibration is expected',
);
const quantityLike = z.custom<object | string>(
  (value) => typeof value === 'string' || (typeof value === 'object' && value !== null),
  "a quantity or a text such as '100 Hz' is expected",
);
const measuredKinds: readonly [MeasuredKind, ...MeasuredKind[]] = [
  'gauge pressure',
  'absolute pressure',
  'force',
  'temperature',
  'mass',
  'length',
  'mass flow',
  'acceleration',
];

const channel = z.strictObject({
  column: z.optional(place),
  measures: z.optional(z.enum(measuredKinds)),
  unit: z.optional(z.string()),
  calibration: z.optional(anyObject),
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
 * Refuses a column map that cannot be meant, with every problem and its path.
 *
 * @throws MeopError `log-columns`
 */
export function checkColumns(columns: unknown): void {
  const read = schema.safeParse(columns);
  if (read.success) return;
  const problems = read.error.issues.map((issue) => `${issue.path.join('.') || 'columns'}: ${issue.message}`);
  throw new MeopError(
    'log-columns',
    `readLog: columns: ${problems.length === 1 ? problems[0] : `${problems.length} problems\n  ${problems.join('\n  ')}`}`,
    read.error.issues[0].path.join('.'),
    { value: columns },
  );
}
