import { type QuantityInput, readInput } from '../../units';
import { analysedRecord, type CleanedChannel } from '../analysis/analysed-record';
import { type AnalysedTrace, analysedTrace } from '../analysis/analysed-trace';
import type { Firing } from '../firing';
import { channelsOf, step, traceOf } from './step';

export interface SpikeRule {
  /** Samples on either side in the window of a sample. Default 3. */
  readonly halfWidth?: number;
  /** Deviation from the median above which a sample is a spike, in robust standard deviations. Default 6. */
  readonly threshold?: number;
  /** Minimum deviation of a spike, SI. */
  readonly limit: number;
}

/** A replaced sample. */
export interface Spike {
  readonly index: number;
  readonly was: number;
  readonly is: number;
}

/** Ratio of the standard deviation of a normal distribution to its median absolute deviation. */
const madToSigma = 1.482602218505602;

/**
 * Kernel: finds isolated false samples by comparing each with the median of its window.
 *
 * Source: F. R. Hampel, "The influence curve and its role in robust estimation", J. American Statistical Association 69
 * (1974), 383-393, for the median and the median deviation as criterion; the moving window is engineering practice, no
 * published source.
 */
export function findSpikes(values: Float64Array, rule: SpikeRule): readonly Spike[] {
  const { halfWidth = 3, threshold = 6, limit } = rule;
  const n = values.length;
  const window = new Float64Array(2 * halfWidth + 1);
  const deviations = new Float64Array(2 * halfWidth + 1);
  const found: Spike[] = [];
  for (let i = 0; i < n; i++) {
    const value = values[i];
    // Most samples are within the limit of the sample at one end of their window, and need no median.
    const early = values[Math.max(0, i - halfWidth)];
    const late = values[Math.min(n - 1, i + halfWidth)];
    if ((i > 0 && Math.abs(value - early) <= limit) || (i < n - 1 && Math.abs(value - late) <= limit))
      continue;
    const from = Math.max(0, i - halfWidth);
    const to = Math.min(n, i + halfWidth + 1);
    const count = to - from;
    for (let k = 0; k < count; k++) window[k] = values[from + k];
    const median = medianInPlace(window, count);
    const deviation = Math.abs(value - median);
    if (deviation <= limit) continue;
    for (let k = 0; k < count; k++) deviations[k] = Math.abs(values[from + k] - median);
    if (deviation <= threshold * madToSigma * medianInPlace(deviations, count)) continue;
    found.push({ index: i, was: value, is: median });
  }
  return withoutRuns(found, Math.max(1, halfWidth - 1));
}

/** Several outliers in a row are a signal sampled at a slow rate, not spikes. */
function withoutRuns(found: readonly Spike[], most: number): readonly Spike[] {
  const kept: Spike[] = [];
  for (let i = 0; i < found.length; ) {
    let end = i + 1;
    while (end < found.length && found[end].index === found[end - 1].index + 1) end++;
    if (end - i <= most) kept.push(...found.slice(i, end));
    i = end;
  }
  return kept;
}

/** Median of the first `count` numbers, which are sorted in place by insertion because there are few. */
function medianInPlace(numbers: Float64Array, count: number): number {
  for (let i = 1; i < count; i++) {
    const value = numbers[i];
    let k = i - 1;
    for (; k >= 0 && numbers[k] > value; k--) numbers[k + 1] = numbers[k];
    numbers[k + 1] = value;
  }
  const half = count >> 1;
  return count % 2 === 1 ? numbers[half] : 0.5 * (numbers[half - 1] + numbers[half]);
}

/** Options of {@link removeSpikes}. */
export interface RemoveSpikesOptions {
  readonly channels?: readonly CleanedChannel[];
  /** Samples on either side in the window of a sample. Default 3. */
  readonly halfWidth?: number;
  /** Threshold in robust standard deviations. Default 6; 0 to use the limit alone. */
  readonly threshold?: number;
  /**
   * Minimum deviation of a spike. Default 2 % of the range of the channel. It must exceed the largest true second
   * difference.
   */
  readonly limit?: {
    readonly pressure?: QuantityInput<'pressure difference'>;
    readonly thrust?: QuantityInput<'force'>;
  };
}

/**
 * Replaces isolated false samples by the median of their window (Hampel's rule), and lists each in the history.
 *
 * A true peak of a single sample looks like a spike. Where its neighbours are part of the burn and the burn has few
 * samples, it is kept, with a caution.
 *
 * @example removeSpikes(firing({ origin: 'measured', time: series([0, 1, 2, 3, 4, 5, 6], 's'), thrust: series([0, 0, 0, 40, 0, 0, 0], 'N') })).thrust?.max().in('N') // => 0
 */
export function removeSpikes(firing: Firing, options: RemoveSpikesOptions = {}): Firing {
  const record = analysedRecord(firing);
  const { halfWidth, threshold, limit = {} } = options;
  const channels: Partial<Record<CleanedChannel, AnalysedTrace>> = {};
  const lines: string[] = [];
  const cautions: string[] = [];
  for (const channel of channelsOf(record, options.channels, 'removeSpikes')) {
    const trace = traceOf(record, channel, 'removeSpikes');
    const given =
      channel === 'thrust'
        ? limit.thrust && readInput('force', 'limit.thrust', limit.thrust, 'removeSpikes').si
        : limit.pressure &&
          readInput('pressure difference', 'limit.pressure', limit.pressure, 'removeSpikes').si;
    const spikes = findSpikes(trace.values, {
      ...(halfWidth !== undefined && { halfWidth }),
      ...(threshold !== undefined && { threshold }),
      limit: given ?? (trace.highest() - trace.lowest() || 1) / 50,
    });
    const { replaced, kept } = sortOut(trace.values, spikes);
    if (kept.length > 0)
      cautions.push(
        `${channel}: ${kept.length} isolated high samples within the burn may be spikes or true peaks of a single sample. They were kept (${times(record, kept)}). Check the trace.`,
      );
    if (replaced.length === 0) continue;
    const cleaned = trace.values.slice();
    for (const { index, is } of replaced) cleaned[index] = is;
    channels[channel] = analysedTrace(trace.time, cleaned);
    lines.push(`${channel} ${replaced.length} replaced (${times(record, replaced)})`);
  }
  return step(
    record,
    { channels, cautions },
    `spikes: ${lines.length === 0 ? 'none found' : lines.join('; ')}`,
  );
}

/** In a record with few samples a spike within the burn may be the true peak. */
function sortOut(
  values: Float64Array,
  spikes: readonly Spike[],
): { readonly replaced: readonly Spike[]; readonly kept: readonly Spike[] } {
  if (spikes.length === 0) return { replaced: spikes, kept: [] };
  const cleaned = values.slice();
  for (const { index, is } of spikes) cleaned[index] = is;
  let high = Number.NEGATIVE_INFINITY;
  let low = Number.POSITIVE_INFINITY;
  for (let i = 0; i < cleaned.length; i++) {
    if (cleaned[i] > high) high = cleaned[i];
    if (cleaned[i] < low) low = cleaned[i];
  }
  const level = low + 0.2 * (high - low);
  let burning = 0;
  for (let i = 0; i < cleaned.length; i++) if (cleaned[i] > level) burning++;
  const onBurn = ({ index, was, is }: Spike): boolean =>
    burning < 100 && was > is && (cleaned[index - 1] > level || cleaned[index + 1] > level);
  return { replaced: spikes.filter((spike) => !onBurn(spike)), kept: spikes.filter(onBurn) };
}

function times(record: Firing, spikes: readonly Spike[]): string {
  const first = spikes.slice(0, 8).map(({ index }) => `${Number(record.time.si[index].toFixed(4))} s`);
  return spikes.length > 8 ? `${first.join(', ')}, …` : first.join(', ');
}
