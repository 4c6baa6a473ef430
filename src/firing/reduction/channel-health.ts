import { median } from '../../numerics';
import type { AnalysedTrace } from '../analysis/analysed-trace';
import { averaged, evenTimes } from '../cleaning/resample';
import { localParabola } from '../saturation/smooth';

/** Whether a channel contains a firing. */
export interface ChannelHealth {
  readonly usable: boolean;
  /** Why it is not usable. */
  readonly reason: string | undefined;
  /** Standard deviation at rest, SI. */
  readonly noise: number;
}

/**
 * Kernel: rejects a channel that contains only noise, and one whose zero has shifted permanently. Results from either
 * would be meaningless.
 */
export function channelHealth({ values, lowest, highest, baseline }: AnalysedTrace): ChannelHealth {
  const low = lowest();
  const high = highest();
  if (!(high > low))
    return { usable: false, reason: 'the signal is constant. The channel is dead.', noise: 0 };
  if (turned(values, low, high))
    return {
      usable: false,
      reason:
        'the signal falls where a firing must make it rise. Invert its sign (invertCalibration), or its wiring.',
      noise: 0,
    };
  const { before, beforeDeviation, after } = baseline();
  const peak = high - before;
  if (peak < 6 * beforeDeviation)
    return {
      usable: false,
      reason: `the highest sample is ${(peak / beforeDeviation).toFixed(1)} standard deviations of the noise above the baseline (required ≥ 6). There is no signal.`,
      noise: beforeDeviation,
    };
  if (after !== undefined && Math.abs(after - before) > 0.2 * peak)
    return {
      usable: false,
      reason: `the zero after the burn differs by ${(100 * Math.abs((after - before) / peak)).toFixed(0)} % of the peak (allowed ≤ 20 %). The sensor was damaged, or the motor came loose.`,
      noise: beforeDeviation,
    };
  return { usable: true, reason: undefined, noise: beforeDeviation };
}

/** Whether a channel rests at both ends, falls far below its baseline between them, and hardly rises. */
function turned(values: Float64Array, low: number, high: number): boolean {
  const share = Math.max(1, Math.floor(0.05 * values.length));
  const start = median(values.subarray(0, share));
  const end = median(values.subarray(values.length - share));
  return start - low > 3 * (high - start) && Math.abs(end - start) < 0.2 * (start - low);
}

/** Kernel: peak without noise, by local parabolas, and its standard deviation. */
export function smoothPeak(
  time: Float64Array,
  values: Float64Array,
  width: number,
): { readonly value: number; readonly deviation: number } {
  const period = width / 60;
  const thin = time.length > 4 && (time[time.length - 1] - time[0]) / (time.length - 1) < period;
  const at = thin ? evenTimes(time, period) : time;
  const smooth = localParabola(at, thin ? averaged(time, values, at, period) : values, width);
  return { value: smooth.values.reduce((a, b) => Math.max(a, b)), deviation: smooth.deviation };
}
