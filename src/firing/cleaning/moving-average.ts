import { MeopError, procedure, ratio } from '../../units';
import { analysedRecord, type CleanedChannel } from '../analysis/analysed-record';
import { type AnalysedTrace, analysedTrace } from '../analysis/analysed-trace';
import { exampleFiring, type Firing, firingInput } from '../firing';
import { channels as channelsInput } from '../motor-inputs';
import { channelsOf, shown, step, traceOf } from './step';

/**
 * Kernel: mean of `samples` neighbours about each sample (one more before it where the number is even); fewer at the
 * ends.
 */
export function movingMean(values: Float64Array, samples: number): Float64Array {
  const n = values.length;
  const before = samples >> 1;
  const after = samples - before - 1;
  // Running sums of differences from the first value, so that a large offset costs no precision.
  const origin = values[0] ?? 0;
  const sums = new Float64Array(n + 1);
  for (let i = 0; i < n; i++) sums[i + 1] = sums[i] + (values[i] - origin);
  return values.map((_, i) => {
    const from = Math.max(0, i - before);
    const to = Math.min(n, i + after + 1);
    return origin + (sums[to] - sums[from]) / (to - from);
  });
}

/**
 * Smooths pressure and thrust by the mean of neighbouring samples, centred so that nothing is delayed. The history
 * states the change of peak; {@link lowPass} preserves more of the peak for the same noise.
 *
 * @example movingAverage(firing({ origin: 'measured', time: series([0, 1, 2, 3, 4], 's'), thrust: series([0, 3, 6, 3, 0], 'N') }), { samples: 3 }).thrust.max().in('N') // => 4
 */
export const movingAverage = /* @__PURE__ */ procedure({
  name: 'movingAverage',
  title: 'Centred moving average of pressure and thrust',
  source: 'definition',
  subject: firingInput,
  inputs: {
    samples: ratio('n', 'number of samples averaged', { min: 2, whole: true, example: 5 }),
    channels: channelsInput,
  },
  gives: 'the smoothed record; its history states the change of peak',
  example: `movingAverage(${exampleFiring}, { samples: 5 })`,
  run: (given, { samples, channels: asked }): Firing => {
    const record = analysedRecord(given);
    if (samples > record.time.length)
      throw new MeopError({
        code: 'out-of-domain',
        procedure: 'movingAverage',
        path: 'samples',
        given: samples,
        expected: `at most ${record.time.length}, the length of the record`,
      });
    const channels: Partial<Record<CleanedChannel, AnalysedTrace>> = {};
    const effects = channelsOf(record, asked, 'movingAverage').map((channel) => {
      const before = traceOf(record, channel, 'movingAverage');
      const after = analysedTrace(before.time, movingMean(before.values, samples));
      channels[channel] = after;
      return `${channel} peak ${shown(channel, before.highest())} to ${shown(channel, after.highest())}`;
    });
    return step(record, { channels }, `mean of ${samples} neighbours: ${effects.join('; ')}`);
  },
});
