import { MeopError, type QuantityInput, readInput } from '../../units';
import type { Firing } from '../firing';
import { type BurnEdges, burnEdges, integralBetween, lowerBound } from './burn-edges';
import { baselineValue, type CleanedChannel, channelSi, channelsOf, shown, step } from './step';

/** A stretch of time, s. */
export interface TimeSpan {
  readonly from: number;
  readonly to: number;
}

/** The resting level of a channel before and after the burn. */
export interface Baseline {
  readonly before: number;
  readonly beforeDeviation: number;
  /** Share of the samples before that are no rest and were left out of it. */
  readonly disturbed: number;
  readonly beforeSpan: TimeSpan;
  /** Undefined where the record ends before the channel is at rest again. */
  readonly after: number | undefined;
  readonly afterSpan: TimeSpan | undefined;
}

export type BaselineMode = 'before' | 'line';

/** Mean and standard deviation of the samples of a span. @throws MeopError `empty-window` */
export function restOver(
  time: Float64Array,
  values: Float64Array,
  span: TimeSpan,
): { readonly mean: number; readonly deviation: number; readonly count: number } {
  // The ends belong to the span.
  const from = lowerBound(time, span.from);
  let to = lowerBound(time, span.to);
  if (time[to] === span.to) to++;
  const count = to - from;
  if (count < 1)
    throw new MeopError('empty-window', `no sample lies between ${span.from} and ${span.to} s`, undefined, {
      value: span,
      expected: `a span within ${time[0]} to ${time[time.length - 1]} s`,
    });
  let sum = 0;
  for (let i = from; i < to; i++) sum += values[i];
  const mean = sum / count;
  let squares = 0;
  for (let i = from; i < to; i++) squares += (values[i] - mean) ** 2;
  return { mean, deviation: Math.sqrt(squares / count), count };
}

type QuietRest = ReturnType<typeof restOver> & { readonly disturbed: number };

/**
 * Rest over a span that was found and not given: hands on the stand, an igniter being fitted and the first flame are in
 * it too, so samples far from the median are left out: beyond five robust deviations, those of the samples or of the
 * differences of neighbours, whichever is more (a coarse converter often has none of the former).
 */
function quietRestOver(time: Float64Array, values: Float64Array, span: TimeSpan): QuietRest {
  const all = restOver(time, values, span);
  const from = lowerBound(time, span.from);
  const inside = values.subarray(from, from + all.count);
  if (all.count < 8) return { ...all, disturbed: 0 };
  const middle = medianOf(inside);
  let squares = 0;
  for (let i = 1; i < inside.length; i++) squares += (inside[i] - inside[i - 1]) ** 2;
  const limit =
    5 *
    Math.max(
      1.4826 * medianOf(inside.map((value) => Math.abs(value - middle))),
      Math.sqrt(squares / (2 * (inside.length - 1))),
    );
  const kept = inside.filter((value) => Math.abs(value - middle) <= limit);
  const mean = kept.reduce((sum, value) => sum + value, 0) / kept.length;
  const deviation = Math.sqrt(kept.reduce((sum, value) => sum + (value - mean) ** 2, 0) / kept.length);
  return { mean, deviation, count: kept.length, disturbed: (all.count - kept.length) / all.count };
}

function medianOf(values: Float64Array): number {
  const sorted = sortedSample(values, values.length);
  return sorted[sorted.length >> 1];
}

/** Kernel: values less a constant or a line through the rests before and after, at the middles of their spans. */
export function withoutBaseline(
  time: Float64Array,
  values: Float64Array,
  baseline: Baseline,
  mode: BaselineMode,
  rest = 0,
): Float64Array {
  const { before, after, beforeSpan, afterSpan } = baseline;
  const middle = (beforeSpan.from + beforeSpan.to) / 2;
  const slope =
    mode === 'line' && after !== undefined && afterSpan !== undefined
      ? (after - before) / ((afterSpan.from + afterSpan.to) / 2 - middle)
      : 0;
  const cleaned = new Float64Array(values.length);
  for (let i = 0; i < values.length; i++)
    cleaned[i] = values[i] - (before + slope * (time[i] - middle)) + rest;
  return cleaned;
}

/** Kernel: the quiet stretches on either side of the burn, kept clear of its edges. */
export function baselineSpans(
  time: Float64Array,
  values: Float64Array,
): { readonly before: TimeSpan; readonly after: TimeSpan | undefined } {
  const n = time.length;
  const edges = burnOverRest(time, values);
  const length = Math.max(edges.end - edges.start, 1e-9);
  const clear = 0.15 * length;
  const start = time[0];
  const stop = time[n - 1];
  const beforeEnd = Math.max(edges.start - clear, start + 0.5 * (edges.start - start));
  // Cells creep back after the load: the first fifth of the burn's length is not yet rest.
  const afterStart = edges.end + Math.max(2 * clear, 0.2 * length);
  const after =
    stop - afterStart > 0.05 * length
      ? { from: afterStart, to: Math.min(stop, afterStart + 3 * length) }
      : undefined;
  return { before: { from: Math.max(start, beforeEnd - 3 * length), to: beforeEnd }, after };
}

/** The burn, when the resting level is not yet known: by a first guess, then by the median of what lies before it. */
function burnOverRest(time: Float64Array, values: Float64Array): BurnEdges {
  const sorted = sortedSample(values, values.length);
  const count = sorted.length;
  const middle = (sorted[0] + sorted[count - 1]) / 2;
  // Where most of the record is quiet its median is rest; where most of it burns, its least tenth.
  const quiet = sorted.findIndex((value) => value > middle) > 0.65 * count;
  const guess = sorted[Math.floor(count * (quiet ? 0.45 : 0.1))];
  const edges = burnEdges(time, values, { threshold: 0.1, rest: guess });
  if (edges.first < 4) return edges;
  const before = sortedSample(values, edges.first);
  return burnEdges(time, values, { threshold: 0.1, rest: before[before.length >> 1] });
}

/** At most 2000 of the first `length` values, evenly spread and sorted. */
function sortedSample(values: Float64Array, length: number): Float64Array {
  const count = Math.min(length, 2000);
  return Float64Array.from({ length: count }, (_, i) => values[Math.floor((i * length) / count)]).sort();
}

/** Kernel: the rests of a channel over given spans, or over the quiet ones found. */
export function findBaseline(
  time: Float64Array,
  values: Float64Array,
  spans?: { readonly before?: TimeSpan | undefined; readonly after?: TimeSpan | undefined },
): Baseline {
  const quiet = spans?.before === undefined ? baselineSpans(time, values) : undefined;
  const beforeSpan = spans?.before ?? quiet?.before ?? { from: time[0], to: time[0] };
  const afterSpan = spans?.after ?? quiet?.after;
  const rest = (span: TimeSpan, found: boolean): QuietRest =>
    found ? quietRestOver(time, values, span) : { ...restOver(time, values, span), disturbed: 0 };
  const before = rest(beforeSpan, spans?.before === undefined);
  const after = afterSpan && rest(afterSpan, spans?.after === undefined);
  return {
    before: before.mean,
    beforeDeviation: before.deviation,
    disturbed: before.disturbed,
    beforeSpan,
    after: after?.mean,
    afterSpan,
  };
}

/** Where the rests are taken by {@link removeBaseline}, and which of them counts. */
export interface BaselineOptions {
  /** Default: pressure and thrust, as far as the record has them. */
  readonly channels?: readonly CleanedChannel[];
  /** Default: the quiet stretch before ignition. */
  readonly before?: { readonly from: QuantityInput<'time'>; readonly to: QuantityInput<'time'> };
  /** Default: the quiet stretch after burnout. */
  readonly after?: { readonly from: QuantityInput<'time'>; readonly to: QuantityInput<'time'> };
  /** `'before'` (default): the rest before ignition throughout; `'line'`: a line through both rests, for a drifting zero. */
  readonly mode?: BaselineMode;
}

/**
 * Takes the resting level of each channel off: thrust rests at zero, chamber pressure at ambient. The history tells
 * both rests and what the integral over the burn would be with the other choice, which is a fair measure of how well
 * the zero is known.
 *
 * @throws MeopError `missing-field` where a pressure's ambient is not known, `empty-window`, `no-pulse`
 * @example removeBaseline(firing({ origin: 'measured', time: series([0, 1, 2, 3, 4], 's'), thrust: series([2, 2, 9, 2, 2], 'N') }), { before: { from: '0 s', to: '1 s' } }).thrust?.max().in('N') // => 7
 */
export function removeBaseline(record: Firing, options: BaselineOptions = {}): Firing {
  const { mode = 'before' } = options;
  const time = record.time.si;
  const span = (name: 'before' | 'after'): TimeSpan | undefined => {
    const given = options[name];
    if (given === undefined) return undefined;
    return {
      from: readInput('time', `${name}.from`, given.from, 'removeBaseline').si,
      to: readInput('time', `${name}.to`, given.to, 'removeBaseline').si,
    };
  };
  const spans = { before: span('before'), after: span('after') };
  const channels: Partial<Record<CleanedChannel, Float64Array>> = {};
  const lines: string[] = [];
  const cautions: string[] = [];
  for (const channel of channelsOf(record, options.channels, 'removeBaseline')) {
    const values = channelSi(record, channel, 'removeBaseline');
    const rest = baselineValue(record, channel, 'removeBaseline');
    const baseline = findBaseline(time, values, spans);
    if (mode === 'line' && baseline.after === undefined)
      cautions.push(`${channel}: no quiet stretch after the burn: the zero before it is used throughout`);
    const cleaned = withoutBaseline(time, values, baseline, mode, rest);
    if (baseline.disturbed > 0.02)
      cautions.push(
        `${channel}: ${percent(baseline.disturbed)} of the samples before ignition are disturbed and left out of its zero: see what happened there, or say when it is quiet: { before: { from, to } }`,
      );
    const { note, spread } = effectOf(time, values, baseline, rest);
    if (spread > 0.02)
      cautions.push(
        `${channel}: the zero is not the same before and after: it moves the integral by ${percent(spread)}; which zero holds during the burn is not known`,
      );
    channels[channel] = cleaned;
    lines.push(
      `${channel} less ${shown(channel, baseline.before - rest)} (±${shown(channel, baseline.beforeDeviation)})${note}`,
    );
  }
  return step(record, { channels, cautions }, `baseline (${mode}): ${lines.join('; ')}`);
}

/** How far the choice of zero moves the integral over the burn. */
function effectOf(
  time: Float64Array,
  values: Float64Array,
  baseline: Baseline,
  rest: number,
): { note: string; spread: number } {
  if (baseline.after === undefined) return { note: '', spread: 0 };
  const integrals = (['before', 'line'] as const).map((mode) => {
    const cleaned = withoutBaseline(time, values, baseline, mode, rest);
    const edges = burnEdges(time, cleaned, { threshold: 0.05, rest });
    return integralBetween(time, cleaned, edges.start, edges.end, rest);
  });
  const spread = Math.abs(integrals[0] - integrals[1]) / integrals[1];
  return { note: `, zero before or line: integral differs by ${percent(spread)}`, spread };
}

const percent = (share: number): string => `${Number((100 * share).toPrecision(2))} %`;
