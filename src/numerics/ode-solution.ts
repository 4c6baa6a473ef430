/** Stored steps of an integration, and the solution between them. */
import { MeopError } from '../units/errors';
import { denseState, type StepWorkspace } from './ode-step';
import { findInterval } from './sorted-search';

const ROWS = 5;

/** Growing record of accepted steps: their start, size, two end states and three dense rows. */
export interface StepRecord {
  readonly n: number;
  readonly keep: 'steps' | 'end';
  readonly start: number;
  readonly initial: Float64Array;
  count: number;
  /** Start time of each step, then the end of the last. */
  times: Float64Array;
  /** Full size of each step; the last may have been shortened by an event. */
  sizes: Float64Array;
  rows: Float64Array;
}

export function makeStepRecord(
  n: number,
  keep: 'steps' | 'end',
  start: number,
  initial: Float64Array,
): StepRecord {
  const capacity = keep === 'steps' ? 64 : 0;
  return {
    n,
    keep,
    start,
    initial: initial.slice(),
    count: 0,
    times: new Float64Array(capacity + 1).fill(start, 0, 1),
    sizes: new Float64Array(capacity),
    rows: new Float64Array(capacity * ROWS * n),
  };
}

/** Appends the step just attempted by the workspace, which ends at `end`. */
export function appendStep(record: StepRecord, ws: StepWorkspace, t: number, h: number, end: number): void {
  if (record.keep === 'end') return;
  const { n, count } = record;
  if (count === record.sizes.length) grow(record);
  record.times[count] = t;
  record.times[count + 1] = end;
  record.sizes[count] = h;
  const base = count * ROWS * n;
  const { rows } = record;
  rows.set(ws.y, base);
  rows.set(ws.next, base + n);
  rows.set(ws.dense, base + 2 * n);
  record.count = count + 1;
}

function grow(record: StepRecord): void {
  const capacity = 2 * record.sizes.length;
  const times = new Float64Array(capacity + 1);
  const sizes = new Float64Array(capacity);
  const rows = new Float64Array(capacity * ROWS * record.n);
  times.set(record.times);
  sizes.set(record.sizes);
  rows.set(record.rows);
  record.times = times;
  record.sizes = sizes;
  record.rows = rows;
}

/**
 * Times of the steps and, component by component, the states there; time and state of the end are given
 * separately.
 */
export function stepSeries(
  record: StepRecord,
  end: number,
  last: Float64Array,
): { t: Float64Array; y: Float64Array[] } {
  const { n, count, rows, start, initial } = record;
  // Without stored steps the record contains only the start.
  const length = end === start ? 1 : count === 0 ? 2 : count + 1;
  const t = count === 0 ? new Float64Array(length).fill(start) : record.times.slice(0, length);
  t[length - 1] = end;
  const y = Array.from({ length: n }, (_, i) => {
    const series = new Float64Array(length).fill(initial[i], 0, 1);
    for (let step = 0; step < count; step++) series[step] = rows[step * ROWS * n + i];
    series[length - 1] = last[i];
    return series;
  });
  return { t, y };
}

/** The state at any time covered by the record, from the continuous extension of the method. */
export function denseLookup(record: StepRecord): (t: number, out?: Float64Array) => Float64Array {
  const { n, count, start, initial } = record;
  const times = record.times.subarray(0, count + 1);
  const end = times[count];
  let cursor = 0;
  return (t, out = new Float64Array(n)) => {
    if (!(t >= start && t <= end)) {
      throw new MeopError({
        code: 'out-of-range',
        path: 't',
        given: t,
        expected: `within what was kept of the integration, from ${start} to ${end}`,
      });
    }
    if (count === 0) {
      out.set(initial);
      return out;
    }
    cursor = findInterval(times, t, cursor);
    denseState(record.rows, cursor * ROWS * n, n, (t - times[cursor]) / record.sizes[cursor], out);
    return out;
  };
}
