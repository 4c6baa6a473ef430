import { crossCorrelation } from '../../numerics';
import { MeopError, type QuantityInput, readInput } from '../../units';
import type { Firing } from '../firing';
import { burnEdges } from './burn-edges';
import { interpolated } from './resample';
import { baselineValue, type CleanedChannel, channelSi, step } from './step';

/** How one trace lies in time against another. All lags: positive where the second comes later, s. */
export interface TraceLag {
  /** Shift at which the two look most alike. */
  readonly lag: number;
  /** Correlation there, 1 for traces of one shape. */
  readonly correlation: number;
  /** Of the 10 % points at the start and at the end. */
  readonly startLag: number;
  readonly endLag: number;
}

const mostSamples = 1 << 12;

/**
 * Kernel: lag of one trace behind another by cross-correlation, sharpened by a parabola through its peak, and the lags
 * of their edges. A clock offset shifts all three alike; friction or a blocked port shifts the start alone.
 * @example traceLag({ time: Float64Array.of(0, 1, 2, 3, 4, 5, 6), values: Float64Array.of(0, 5, 9, 5, 0, 0, 0) }, { time: Float64Array.of(0, 1, 2, 3, 4, 5, 6), values: Float64Array.of(0, 0, 5, 9, 5, 0, 0) }).lag.toFixed(1) // => '1.0'
 */
export function traceLag(
  first: { readonly time: Float64Array; readonly values: Float64Array; readonly rest?: number },
  second: { readonly time: Float64Array; readonly values: Float64Array; readonly rest?: number },
): TraceLag {
  const a = burnEdges(first.time, first.values, { threshold: 0.1, rest: first.rest ?? 0 });
  const b = burnEdges(second.time, second.values, { threshold: 0.1, rest: second.rest ?? 0 });
  const length = Math.max(a.end, b.end) - Math.min(a.start, b.start);
  const from = Math.min(a.start, b.start) - 0.5 * length;
  const to = Math.max(a.end, b.end) + 0.5 * length;
  const finest = Math.max(meanStep(first.time), meanStep(second.time));
  const period = Math.max(finest, (to - from) / mostSamples);
  const at = Float64Array.from({ length: Math.floor((to - from) / period) + 1 }, (_, i) => from + i * period);
  const x = normalised(interpolated(first.time, first.values, at), first.rest ?? 0);
  const y = normalised(interpolated(second.time, second.values, at), second.rest ?? 0);
  const { lag, value } = crossCorrelation(y, x);
  let best = 0;
  for (let i = 0; i < value.length; i++) if (value[i] > value[best]) best = i;
  const left = value[best - 1] ?? value[best];
  const right = value[best + 1] ?? value[best];
  const curve = left - 2 * value[best] + right;
  const within = curve < 0 ? (0.5 * (left - right)) / curve : 0;
  return {
    lag: (lag[best] + within) * period,
    correlation: value[best],
    startLag: b.start - a.start,
    endLag: b.end - a.end,
  };
}

const meanStep = (time: Float64Array): number =>
  (time[time.length - 1] - time[0]) / Math.max(1, time.length - 1);

/** Above rest, not above the mean: beyond its ends the record is at rest, which the correlation takes for zero. */
function normalised(values: Float64Array, rest: number): Float64Array {
  const above = values.map((value) => value - rest);
  const norm = Math.sqrt(above.reduce((sum, value) => sum + value * value, 0)) || 1;
  return above.map((value) => value / norm);
}

/** Which channel {@link align} moves, and by how much at most. */
export interface AlignOptions {
  /** The channel that is moved. Default `'thrust'`; the other one stays. */
  readonly move?: CleanedChannel;
  /** Largest offset believed. Default 1 s. */
  readonly maxLag?: QuantityInput<'time'>;
}

/**
 * Moves one channel in time onto the other, where they came from loggers of their own: by cross-correlation. A start
 * that lags while the end does not is no clock offset but slack, friction or a blocked port: then nothing is moved and
 * a caution says so.
 *
 * @throws MeopError `missing-field`, `lag-too-large`
 * @example align(firing({ origin: 'measured', time: series([0, 1, 2, 3, 4, 5], 's'), pressure: series([0.1, 1, 5, 5, 1, 0.1], 'MPa'), thrust: series([0, 1, 5, 5, 1, 0], 'N'), ambientPressure: quantity('absolute pressure', '1 atm') })).history.length // => 1
 */
export function align(record: Firing, options: AlignOptions = {}): Firing {
  const { move = 'thrust', maxLag = '1 s' } = options;
  const stays: CleanedChannel = move === 'thrust' ? 'pressure' : 'thrust';
  const most = readInput('time', 'maxLag', maxLag, 'align').si;
  const time = record.time.si;
  const fixed = channelSi(record, stays, 'align');
  const moved = channelSi(record, move, 'align');
  const rest = (channel: CleanedChannel): number => baselineValue(record, channel, 'align');
  const found = traceLag(
    { time, values: fixed, rest: rest(stays) },
    { time, values: moved, rest: rest(move) },
  );
  const { lag, correlation, startLag, endLag } = found;
  const text = `${move} lags ${stays} by ${ms(lag)} (likeness ${correlation.toFixed(3)}; start ${ms(startLag)}, end ${ms(endLag)})`;
  const step1 = meanStep(time);
  if (
    Math.abs(startLag - endLag) > Math.max(0.05, 5 * step1) &&
    Math.abs(startLag - endLag) > Math.abs(endLag)
  )
    return step(
      record,
      {
        cautions: [
          `${text}: the start lags and the end does not: slack or friction in the stand, or a blocked port, not the clock; nothing was moved`,
        ],
      },
      `align: ${text}; not moved`,
    );
  if (Math.abs(lag) < 0.5 * step1)
    return step(record, {}, `align: ${text}; less than half a sample, not moved`);
  if (Math.abs(lag) > most)
    throw new MeopError(
      'lag-too-large',
      `align: ${text}; at most ${most} s is believed: raise maxLag if it is true`,
      'maxLag',
      {
        value: lag,
      },
    );
  const shifted = interpolated(
    time,
    moved,
    time.map((t) => t + lag),
  );
  return step(record, { channels: { [move]: shifted } }, `align: ${text}; moved`);
}

const ms = (seconds: number): string => `${(1000 * seconds).toFixed(1)} ms`;
