import { MeopError } from '../../units';
import { analysedRecord, type CleanedChannel } from '../analysis/analysed-record';
import { type AnalysedTrace, analysedTrace } from '../analysis/analysed-trace';
import type { Firing } from '../firing';
import { channelsOf, shown, step, traceOf } from './step';

/** Kernel: mean of `samples` neighbours about each sample (one more before it where they are even); fewer at the ends. */
export function movingMean(values: Float64Array, samples: number): Float64Array {
  const n = values.length;
  const before = samples >> 1;
  const after = samples - before - 1;
  // Sums from the start, about the first value so that a large offset costs no digits.
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
 * Smooths pressure and thrust by the mean of neighbouring samples, centred so that nothing is delayed. The history tells
 * what it did to the peak; {@link lowPass} keeps more of it for the same noise.
 *
 * @throws MeopError `out-of-domain` for a number of samples that is not whole and at least 2, or more than the record has
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
      `movingAverage: samples: ${samples} given; a whole number from 2 to the ${record.time.length} of the record is expected`,
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
