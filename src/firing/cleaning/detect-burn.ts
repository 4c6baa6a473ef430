import { fromSiValue, unitOf } from '../../units';
import { type Firing, firing } from '../firing';
import { findBaseline } from './baseline';
import { burnEdges } from './burn-edges';
import { baselineValue, type CleanedChannel } from './step';

/** Ignition and end of action of a channel, s. */
export interface BurnMoments {
  /** Last moment at rest before the rise: the channel leaves its noise (five standard deviations, 2 % of peak at least). */
  readonly ignition: number;
  /** The 10 % points of the peak. */
  readonly start: number;
  readonly end: number;
}

/** Kernel: when a channel rises from its rest and when it has fallen again, walking outward from the peak. */
export function burnMoments(time: Float64Array, values: Float64Array, rest = 0): BurnMoments {
  const ten = burnEdges(time, values, { threshold: 0.1, rest });
  const { beforeDeviation } = findBaseline(time, values);
  const threshold = Math.min(0.1, Math.max(0.02, (5 * beforeDeviation) / ten.peak));
  const low = burnEdges(time, values, { threshold, rest });
  return { ignition: low.start, start: ten.start, end: ten.end };
}

/**
 * Finds ignition, the 10 % points and the end of action by pressure, or by thrust where there is no pressure, and adds
 * them to the record's events. The edges are walked outward from the peak: the quiet parts hold spikes.
 *
 * @throws MeopError `no-pulse`
 * @example detectBurn(firing({ origin: 'measured', time: series([0, 1, 2, 3, 4, 5, 6], 's'), thrust: series([0, 0, 10, 10, 0, 0, 0], 'N') })).events.length // => 3
 */
export function detectBurn(record: Firing, options: { readonly channel?: CleanedChannel } = {}): Firing {
  const channel: CleanedChannel = options.channel ?? (record.pressure ? 'pressure' : 'thrust');
  const values = record[channel]?.si ?? new Float64Array(0);
  const rest = baselineValue(record, channel, 'detectBurn');
  const moments = burnMoments(record.time.si, values, rest);
  const event = (name: string, si: number) => ({ name, time: fromSiValue<'time'>(si, 'time', unitOf('s')) });
  return firing({
    ...record,
    events: [
      ...record.events,
      event('ignition', moments.ignition),
      event('10 % of peak, rising', moments.start),
      event('10 % of peak, falling', moments.end),
    ],
    history: [
      ...record.history,
      `burn by ${channel}: ignition ${moments.ignition.toFixed(4)} s, 10 % points ${moments.start.toFixed(4)} and ${moments.end.toFixed(4)} s`,
    ],
  });
}
