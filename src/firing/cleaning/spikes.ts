import { force, inputs, optional, pressureDifference, procedure, ratio } from '../../units';
import { analysedRecord, type CleanedChannel } from '../analysis/analysed-record';
import { type AnalysedTrace, analysedTrace } from '../analysis/analysed-trace';
import { exampleFiring, type Firing, firingInput } from '../firing';
import { channels as channelsInput } from '../motor-inputs';
import { channelsOf, step, traceOf } from './step';

export interface SpikeRule {
  /** Samples on either side in the window of a sample. */
  readonly halfWidth: number;
  /** Deviation from the median above which a sample is a spike, in robust standard deviations. */
  readonly threshold: number;
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
 */
export function findSpikes(values: Float64Array, rule: SpikeRule): readonly Spike[] {
  const { halfWidth, threshold, limit } = rule;
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

/**
 * Replaces isolated false samples by the median of their window (Hampel's rule), and lists each in the history.
 *
 * A true peak of a single sample looks like a spike. Where its neighbours are part of the burn and the burn has few
 * samples, it is kept, with a caution.
 *
 * @example removeSpikes(firing({ origin: 'measured', time: series([0, 1, 2, 3, 4, 5, 6], 's'), thrust: series([0, 0, 0, 40, 0, 0, 0], 'N') })).thrust?.max().in('N') // => 0
 */
export const removeSpikes = /* @__PURE__ */ procedure({
  name: 'removeSpikes',
  title: 'Removal of isolated false samples',
  source:
    'F. R. Hampel, "The influence curve and its role in robust estimation", J. American Statistical Association 69 (1974), 383-393; the moving window is engineering practice, no published source',
  subject: firingInput,
  inputs: {
    channels: channelsInput,
    halfWidth: optional(
      ratio('k', 'samples on either side in the window of a sample', { min: 1, whole: true, example: 3 }),
      3,
    ),
    threshold: optional(
      ratio('n_σ', 'threshold in robust standard deviations; 0 to use the limit alone', {
        min: 0,
        example: 6,
      }),
      6,
    ),
    limit: optional(
      inputs(
        {
          pressure: optional(
            pressureDifference('Δp', 'minimum deviation of a spike of pressure', { min: 0 }),
          ),
          thrust: optional(force('ΔF', 'minimum deviation of a spike of thrust', { min: 0 })),
        },
        {
          meaning:
            'minimum deviation of a spike, default 2 % of the range of the channel; it must exceed the largest true second difference',
        },
      ),
    ),
  },
  gives: 'the record without spikes; its history lists each',
  example: `removeSpikes(${exampleFiring}, { threshold: 6 })`,
  run: (of, { channels: asked, halfWidth, threshold, limit }): Firing => {
    const record = analysedRecord(of);
    const channels: Partial<Record<CleanedChannel, AnalysedTrace>> = {};
    const lines: string[] = [];
    const cautions: string[] = [];
    for (const channel of channelsOf(record, asked, 'removeSpikes')) {
      const trace = traceOf(record, channel, 'removeSpikes');
      const spikes = findSpikes(trace.values, {
        halfWidth,
        threshold,
        limit: limit?.[channel]?.si ?? (trace.highest() - trace.lowest() || 1) / 50,
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
  },
});

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
