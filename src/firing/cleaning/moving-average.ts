import { MeopError } from '../../units';
import { analysedRecord, type CleanedChannel } from '../analysis/analysed-record';
import { type AnalysedTrace, analysedTrace } from '../analysis/analysed-trace';
import type { Firing } from '../firing';
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
 * @throws MeopError `out-of-domain` unless the number of samples is whole, at least 2 and at most that of the record
 * @example movingAverage(firing({ origin: 'measured', time: series([0, 1, 2, 3, 4], 's'), thrust: series([0, 3, 6, 3, 0], 'N') }), { samples: 3 }).thrust.max().in('N') // => 4
 */
export function movingAverage(
  firing: Firing,
  options: { readonly samples: number; readonly channels?: readonly CleanedChannel[] },
): Firing {
  const record = analysedRecord(firing);
  const { samples } = options;
  if (!(Number.isInteger(samples) && samples >= 2 && samples <= record.time.length))
    throw new MeopError(
      'out-of-domain',
      `movingAverage: samples must be a whole number from 2 to ${record.time.length} (length of the record), got ${samples}`,
      'samples',
      { value: samples },
    );
  const channels: Partial<Record<CleanedChannel, AnalysedTrace>> = {};
  const effects = channelsOf(record, options.channels, 'movingAverage').map((channel) => {
    const before = traceOf(record, channel, 'movingAverage');
    const after = analysedTrace(before.time, movingMean(before.values, samples));
    channels[channel] = after;
    return `${channel} peak ${shown(channel, before.highest())} to ${shown(channel, after.highest())}`;
  });
  return step(record, { channels }, `mean of ${samples} neighbours: ${effects.join('; ')}`);
}
