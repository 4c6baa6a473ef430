import { butterworthLowPass, filterZeroPhase } from '../../numerics';
import { choice, frequency, MeopError, optional, procedure, ratio } from '../../units';
import { analysedRecord, type CleanedChannel } from '../analysis/analysed-record';
import { type AnalysedTrace, analysedTrace } from '../analysis/analysed-trace';
import { type Firing, firingInput } from '../firing';
import { channels as channelsInput } from '../motor-inputs';
import { evenTimes, interpolated } from './resample';
import { baselineValue, channelsOf, step, traceOf } from './step';

export interface LowPassRule {
  /** Hz. */
  readonly cutoff: number;
  readonly order: number;
  /**
   * `'result'`: the cutoff (−3 dB) is that of the result; `'each pass'`: that of each of the two passes, so that the
   * result is −6 dB there.
   */
  readonly cutoffOf: 'result' | 'each pass';
}

/** Kernel: zero-phase Butterworth low-pass. An unevenly sampled record is resampled to even times and back. */
export function lowPassed(time: Float64Array, values: Float64Array, rule: LowPassRule): Float64Array {
  const n = time.length;
  const period = (time[n - 1] - time[0]) / (n - 1);
  let worst = 0;
  for (let i = 0; i < n; i++) worst = Math.max(worst, Math.abs(time[i] - time[0] - i * period));
  const even = worst < 0.01 * period;
  const at = even ? time : evenTimes(time, period);
  const signal = even ? values : interpolated(time, values, at);
  const { cutoff, order, cutoffOf } = rule;
  if (!(cutoff > 0 && cutoff < 0.5 / period))
    throw new MeopError({
      code: 'out-of-domain',
      procedure: 'lowPass',
      path: 'cutoff',
      given: `${cutoff} Hz`,
      expected: `below ${0.5 / period} Hz (half the sample rate of ${1 / period} Hz)`,
    });
  const sections = butterworthLowPass({
    order,
    cutoff,
    sampleRate: 1 / period,
    passes: cutoffOf === 'result' ? 2 : 1,
  });
  const filtered = filterZeroPhase(sections, signal);
  return even ? filtered : interpolated(at, filtered, time);
}

/**
 * Smooths pressure and thrust by a Butterworth low-pass run forward and backward, without delay. The history states the
 * change of peak and rise time: a cutoff that is too low reduces the peak.
 *
 * @example lowPass(firing({ origin: 'measured', time: series(Array.from({ length: 99 }, (_, i) => i / 100), 's'), thrust: series(new Float64Array(99).fill(5), 'N') }), { cutoff: '10 Hz' }).thrust?.at(40).in('N').toFixed(6) // => '5.000000'
 */
export const lowPass = /* @__PURE__ */ procedure({
  name: 'lowPass',
  title: 'Zero-phase Butterworth low-pass of pressure and thrust',
  source: 'Butterworth filter run forward and backward, textbooks on signal processing',
  subject: firingInput,
  inputs: {
    cutoff: frequency('f_c', 'cutoff frequency', { example: '100 Hz' }),
    order: optional(ratio('n', 'order of the filter', { min: 1, max: 20, whole: true, example: 4 }), 4),
    cutoffOf: optional(
      choice('whether the cutoff (−3 dB) is that of the result or of each of the two passes', [
        'result',
        'each pass',
      ]),
      'result',
    ),
    channels: channelsInput,
  },
  gives: 'the smoothed record; its history states the change of peak and rise time',
  example:
    "lowPass(firing({ origin: 'measured', time: series(Array.from({ length: 99 }, (_, i) => i / 100), 's'), thrust: series(new Float64Array(99).fill(5), 'N') }), { cutoff: '10 Hz' })",
  run: (given, options): Firing => {
    const record = analysedRecord(given);
    const { order, cutoffOf } = options;
    const cutoff = options.cutoff.si;
    const channels: Partial<Record<CleanedChannel, AnalysedTrace>> = {};
    const effects: string[] = [];
    const cautions: string[] = [];
    for (const channel of channelsOf(record, options.channels, 'lowPass')) {
      const trace = traceOf(record, channel, 'lowPass');
      const { time, values } = trace;
      const filtered = analysedTrace(time, lowPassed(time, values, { cutoff, order, cutoffOf }));
      channels[channel] = filtered;
      const rest = baselineValue(record, channel, 'lowPass');
      const before = shapeOf(trace, rest);
      const after = shapeOf(filtered, rest);
      if (before === undefined || after === undefined) continue;
      const peak = after.peak / before.peak - 1;
      effects.push(
        `${channel} peak ${signed(100 * peak)} %, rise ${milli(before.rise)} to ${milli(after.rise)} ms`,
      );
      if (peak < -0.02)
        cautions.push(
          `${channel}: the ${cutoff} Hz low-pass reduces the peak by ${(-100 * peak).toFixed(1)} %. The difference is noise or a true peak. Compare with the unfiltered trace.`,
        );
    }
    const meaning = cutoffOf === 'result' ? '−3 dB' : '−3 dB in each of two passes';
    const line = `low-pass ${cutoff} Hz (${meaning}), order ${order}, zero phase: ${effects.join('; ') || 'no burn to compare'}`;
    return step(record, { channels, cautions }, line);
  },
});

const signed = (value: number): string => `${value >= 0 ? '+' : '−'}${Math.abs(value).toFixed(2)}`;
const milli = (seconds: number): string => (1000 * seconds).toFixed(1);

/** Peak and rise time from 10 % to 90 % of it; undefined where nothing rises. */
function shapeOf(
  { time, values, highest, edges }: AnalysedTrace,
  rest: number,
): { readonly peak: number; readonly rise: number } | undefined {
  if (!(highest() > rest)) return undefined;
  const low = edges(0.1, rest);
  let i = low.first;
  while (values[i] < rest + 0.9 * low.peak) i++;
  return { peak: low.peak, rise: Math.max(0, time[i] - low.start) };
}
