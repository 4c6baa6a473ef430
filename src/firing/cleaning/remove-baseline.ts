import { type QuantityInput, readInput } from '../../units';
import { analysedRecord, type CleanedChannel } from '../analysis/analysed-record';
import { type AnalysedTrace, analysedTrace } from '../analysis/analysed-trace';
import {
  type Baseline,
  type BaselineMode,
  findBaseline,
  type TimeSpan,
  withoutBaseline,
} from '../analysis/baseline';
import { oncePer } from '../analysis/once';
import type { Firing } from '../firing';
import { baselineValue, channelsOf, shown, step, traceOf } from './step';

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
export function removeBaseline(firing: Firing, options: BaselineOptions = {}): Firing {
  const { mode = 'before' } = options;
  const record = analysedRecord(firing);
  const span = (name: 'before' | 'after'): TimeSpan | undefined => {
    const given = options[name];
    if (given === undefined) return undefined;
    return {
      from: readInput('time', `${name}.from`, given.from, 'removeBaseline').si,
      to: readInput('time', `${name}.to`, given.to, 'removeBaseline').si,
    };
  };
  const spans = { before: span('before'), after: span('after') };
  const channels: Partial<Record<CleanedChannel, AnalysedTrace>> = {};
  const lines: string[] = [];
  const cautions: string[] = [];
  for (const channel of channelsOf(record, options.channels, 'removeBaseline')) {
    const rest = baselineValue(record, channel, 'removeBaseline');
    const { baseline, levelled } = levelling(traceOf(record, channel, 'removeBaseline'), rest, spans);
    if (mode === 'line' && baseline.after === undefined)
      cautions.push(`${channel}: no quiet stretch after the burn: the zero before it is used throughout`);
    channels[channel] = levelled(mode);
    if (baseline.disturbed > 0.02)
      cautions.push(
        `${channel}: ${percent(baseline.disturbed)} of the samples before ignition are disturbed and left out of its zero: see what happened there, or say when it is quiet: { before: { from, to } }`,
      );
    const spread = baseline.after === undefined ? undefined : spreadOf(levelled, rest);
    if (spread !== undefined && spread > 0.02)
      cautions.push(
        `${channel}: the zero is not the same before and after: it moves the integral by ${percent(spread)}; which zero holds during the burn is not known`,
      );
    const note = spread === undefined ? '' : `, zero before or line: integral differs by ${percent(spread)}`;
    lines.push(
      `${channel} less ${shown(channel, baseline.before - rest)} (±${shown(channel, baseline.beforeDeviation)})${note}`,
    );
  }
  return step(record, { channels, cautions }, `baseline (${mode}): ${lines.join('; ')}`);
}

interface Levelling {
  readonly baseline: Baseline;
  readonly levelled: (mode: BaselineMode) => AnalysedTrace;
}

/** The baseline over the spans that were given, or else the one that was found. */
function levelling(
  trace: AnalysedTrace,
  rest: number,
  spans: { readonly before: TimeSpan | undefined; readonly after: TimeSpan | undefined },
): Levelling {
  if (spans.before === undefined && spans.after === undefined)
    return { baseline: trace.baseline(), levelled: (mode) => trace.levelled(mode, rest) };
  const { time, values } = trace;
  const baseline = findBaseline(trace, spans);
  return {
    baseline,
    levelled: oncePer((mode) => analysedTrace(time, withoutBaseline(time, values, baseline, mode, rest))),
  };
}

/** How far the choice of zero moves the integral over the burn, as a share. */
function spreadOf(levelled: Levelling['levelled'], rest: number): number {
  const [before, line] = [levelled('before'), levelled('line')].map((trace) => trace.integral(0.05, rest));
  return Math.abs(before - line) / line;
}

const percent = (share: number): string => `${Number((100 * share).toPrecision(2))} %`;
