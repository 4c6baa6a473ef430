import { any, choice, inputs, optional, parameterOf, procedure } from '../../units';
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
import { exampleFiring, type Firing, firingInput } from '../firing';
import { channels as channelsInput } from '../motor-inputs';
import { baselineValue, channelsOf, shown, step, traceOf } from './step';

const moment = /* @__PURE__ */ parameterOf('time', any);
const interval = (meaning: string) =>
  optional(
    inputs(
      { from: moment('t_1', 'start of the interval'), to: moment('t_2', 'end of the interval') },
      { meaning },
    ),
  );

/**
 * Subtracts the baseline of each channel, so that thrust rests at zero and chamber pressure at ambient. The history
 * states both baselines, and the change of the integral over the burn with the other mode, which indicates how well the
 * zero is known.
 *
 * @example removeBaseline(firing({ origin: 'measured', time: series([0, 1, 2, 3, 4], 's'), thrust: series([2, 2, 9, 2, 2], 'N') }), { before: { from: '0 s', to: '1 s' } }).thrust?.max().in('N') // => 7
 */
export const removeBaseline = /* @__PURE__ */ procedure({
  name: 'removeBaseline',
  title: 'Subtraction of the baseline of pressure and thrust',
  source: 'engineering practice, no published source',
  subject: firingInput,
  inputs: {
    channels: channelsInput,
    before: interval('pre-fire baseline; default: detected'),
    after: interval('post-fire baseline; default: detected'),
    mode: optional(
      choice('the pre-fire baseline throughout, or a line through both baselines, for a drifting zero', [
        'before',
        'line',
      ]),
      'before',
    ),
  },
  gives: 'the record with thrust at rest at zero and chamber pressure at ambient',
  example: `removeBaseline(${exampleFiring}, { before: { from: '0 s', to: '1 s' } })`,
  run: (given, options): Firing => {
    const { mode } = options;
    const record = analysedRecord(given);
    const spans = { before: spanOf(options.before), after: spanOf(options.after) };
    const channels: Partial<Record<CleanedChannel, AnalysedTrace>> = {};
    const lines: string[] = [];
    const cautions: string[] = [];
    for (const channel of channelsOf(record, options.channels, 'removeBaseline')) {
      const rest = baselineValue(record, channel, 'removeBaseline');
      const { baseline, levelled } = levelling(traceOf(record, channel, 'removeBaseline'), rest, spans);
      if (mode === 'line' && baseline.after === undefined)
        cautions.push(`${channel}: there is no post-fire baseline. The pre-fire zero is used throughout.`);
      channels[channel] = levelled(mode);
      if (baseline.disturbed > 0.02)
        cautions.push(
          `${channel}: ${percent(baseline.disturbed)} of the samples before ignition are disturbed and excluded from the zero. Check the cause, or specify an undisturbed interval: { before: { from, to } }.`,
        );
      const spread = baseline.after === undefined ? undefined : spreadOf(levelled, rest);
      if (spread !== undefined && spread > 0.02)
        cautions.push(
          `${channel}: the zero differs before and after the burn, which changes the integral by ${percent(spread)}. The zero during the burn is not known.`,
        );
      const note =
        spread === undefined
          ? ''
          : `, integral changes by ${percent(spread)} between modes 'before' and 'line'`;
      lines.push(
        `${shown(channel, baseline.before - rest)} (±${shown(channel, baseline.beforeDeviation)}) subtracted from ${channel}${note}`,
      );
    }
    return step(record, { channels, cautions }, `baseline (${mode}): ${lines.join('; ')}`);
  },
});

interface Given {
  readonly from: { readonly si: number };
  readonly to: { readonly si: number };
}
const spanOf = (given: Given | undefined): TimeSpan | undefined =>
  given && { from: given.from.si, to: given.to.si };

interface Levelling {
  readonly baseline: Baseline;
  readonly levelled: (mode: BaselineMode) => AnalysedTrace;
}

/** The baseline over the specified intervals, or else the one found. */
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

/** Relative change of the integral over the burn between the two modes. */
function spreadOf(levelled: Levelling['levelled'], rest: number): number {
  const [before, line] = [levelled('before'), levelled('line')].map((trace) => trace.integral(0.05, rest));
  return Math.abs(before - line) / line;
}

const percent = (share: number): string => `${Number((100 * share).toPrecision(2))} %`;
