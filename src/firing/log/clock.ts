import { MeopError } from '../../units';
import type { ReportWriter } from './import-report';
import { spreadRepeats } from './repeated-stamps';

export interface ClockOptions {
  /** Stamps after which the counter of the logger restarts from zero, s. */
  readonly wrapsAfter: readonly number[];
  readonly repeats: 'auto' | 'uniform' | 'spread';
  readonly lineOf: (row: number) => number;
  readonly report: ReportWriter;
}

export interface RepairedClock {
  /** Seconds, strictly increasing. */
  readonly time: Float64Array;
  /** Original position of each sample in the log; undefined where the order was kept. */
  readonly order: Int32Array | undefined;
  readonly medianStep: number;
  readonly cautions: readonly string[];
}

/**
 * Converts the stamps of a log (s, overwritten) into increasing times. Missing and false stamps are interpolated, a
 * wrapped counter is continued, a restarted logger continues one step later, rows out of order are sorted, and repeated
 * stamps are spread. Each repair is noted.
 */
export function repairClock(stamps: Float64Array, options: ClockOptions): RepairedClock {
  const { report, lineOf } = options;
  const cautions: string[] = [];
  fillMissing(stamps, options);
  const medianStep = medianOfSteps(stamps);
  let order: Int32Array | undefined;
  if (!neverFalls(stamps) && follow(stamps, medianStep, options, cautions)) {
    order = sortedOrder(stamps);
    const given = stamps.slice();
    for (let i = 0; i < order.length; i++) {
      stamps[i] = given[order[i]];
      if (order[i] !== i)
        report.note('out of order', 'repaired', lineOf(order[i]), { note: 'sorted by stamp' });
    }
    cautions.push('The rows were not in order of time and were sorted.');
  }
  const rowLine = (i: number): number => lineOf(order ? order[i] : i);
  cautions.push(...spreadRepeats(stamps, medianStep, { ...options, lineOf: rowLine }));
  const usual = medianOfSteps(stamps);
  for (let i = 1; i < stamps.length; i++) {
    const step = stamps[i] - stamps[i - 1];
    if (step > 3.5 * usual)
      report.note('gap in time', 'kept', rowLine(i), { note: `${(step / usual).toFixed(1)} usual steps` });
  }
  return { time: stamps, order, medianStep: usual, cautions };
}

function fillMissing(stamps: Float64Array, { report, lineOf }: ClockOptions): void {
  let previous = -1;
  for (let i = 0; i < stamps.length; i++) {
    if (!Number.isFinite(stamps[i])) continue;
    if (previous < i - 1) {
      // Before the first readable stamp interpolation is impossible: the missing ones are extrapolated backwards.
      const step = previous < 0 ? stepAfter(stamps, i) : (stamps[i] - stamps[previous]) / (i - previous);
      for (let k = previous + 1; k < i; k++) {
        stamps[k] = stamps[i] - (i - k) * step;
        report.note('missing stamp', 'repaired', lineOf(k), { note: 'interpolated' });
      }
    }
    previous = i;
  }
  if (previous < 0)
    throw new MeopError({
      code: 'log-clock',
      procedure: 'readLog',
      path: 'time',
      problem: 'no row has a readable time',
      remedy: "Name the column of time, or give the rate: time: { rate: '100 Hz' }",
    });
  const step = previous > 0 ? Math.max(0, stamps[previous] - stamps[previous - 1]) : 0;
  for (let k = previous + 1; k < stamps.length; k++) {
    stamps[k] = stamps[previous] + (k - previous) * step;
    report.note('missing stamp', 'repaired', lineOf(k), { note: 'extrapolated' });
  }
}

function stepAfter(stamps: Float64Array, i: number): number {
  for (let k = i + 1; k < stamps.length; k++)
    if (stamps[k] > stamps[i]) return (stamps[k] - stamps[i]) / (k - i);
  return 0;
}

/** Median of the positive steps, of about ten thousand at most, spread over the log; 1 where there is none. */
export function medianOfSteps(stamps: Float64Array): number {
  const stride = Math.max(1, Math.floor(stamps.length / 10_000));
  const steps: number[] = [];
  for (let i = 1; i < stamps.length; i += stride) {
    const step = stamps[i] - stamps[i - 1];
    if (step > 0) steps.push(step);
  }
  if (steps.length === 0) return 1;
  const sorted = Float64Array.from(steps).sort();
  return sorted[sorted.length >> 1];
}

function neverFalls(stamps: Float64Array): boolean {
  for (let i = 1; i < stamps.length; i++) if (stamps[i] < stamps[i - 1]) return false;
  return true;
}

/** Repairs wraps, restarts and single false stamps in place; returns whether rows remain out of order. */
function follow(
  stamps: Float64Array,
  step: number,
  { wrapsAfter, lineOf, report }: ClockOptions,
  cautions: string[],
): boolean {
  let offset = 0;
  let unsorted = false;
  const first = stamps[0];
  let previousRaw = stamps[0];
  for (let i = 1; i < stamps.length; i++) {
    const raw = stamps[i];
    const fall = previousRaw - raw;
    if (fall > 0) {
      const wrap = wrapsAfter.find((modulus) => isWrap(previousRaw, raw, modulus, step));
      if (wrap !== undefined) {
        offset += wrap;
        report.note('clock wrap', 'repaired', lineOf(i), {
          note: `the counter restarts after ${wrap} s`,
        });
      } else if (i >= 2 && isBetween(stamps[i - 2], raw + offset, step) && fall > 20 * step) {
        stamps[i - 1] = (stamps[i - 2] + raw + offset) / 2;
        report.note('false stamp', 'repaired', lineOf(i - 1), {
          note: 'interpolated between its neighbours',
        });
      } else if (fall > 20 * step && i + 1 < stamps.length && isBetween(previousRaw, stamps[i + 1], step)) {
        const mended = (previousRaw + stamps[i + 1]) / 2;
        stamps[i] = mended + offset;
        previousRaw = mended;
        report.note('false stamp', 'repaired', lineOf(i), { note: 'interpolated between its neighbours' });
        continue;
      } else if (
        fall > 20 * step &&
        raw < first + Math.max(100 * step, 5) &&
        runsOn(stamps, i, previousRaw)
      ) {
        offset += fall + step;
        const note = 'the clock returned to its start; the following stamps continue one step later';
        report.note('clock restart', 'repaired', lineOf(i), { note });
        cautions.push(
          `The logger restarted at line ${lineOf(i)}. The duration of the interruption is not known, and the record continues without a gap.`,
        );
      } else {
        unsorted = true;
        stamps[i] = raw + offset;
        // A row out of order is not a reference for the rows after it.
        if (fall < 20 * step) continue;
      }
    }
    stamps[i] = raw + offset;
    previousRaw = raw;
  }
  return unsorted;
}

const isWrap = (before: number, after: number, modulus: number, step: number): boolean =>
  before > 0.9 * modulus &&
  before <= 1.001 * modulus &&
  after < 0.1 * modulus &&
  after + modulus - before > 0 &&
  after + modulus - before < Math.max(100 * step, 2);

const isBetween = (before: number, after: number, step: number): boolean =>
  after > before && after - before <= 10 * step;

/** Ten increasing steps after the fall indicate a running clock, not shuffled rows. */
function runsOn(stamps: Float64Array, from: number, before: number): boolean {
  const to = Math.min(stamps.length - 1, from + 10);
  for (let i = from + 1; i <= to; i++)
    if (stamps[i] < stamps[i - 1] || stamps[i] > before + 1e6) return false;
  return to > from;
}

/** A stable sort: equal stamps stay in the order of reading. */
function sortedOrder(stamps: Float64Array): Int32Array {
  const order = Int32Array.from(stamps, (_, i) => i);
  return order.sort((a, b) => stamps[a] - stamps[b] || a - b);
}
