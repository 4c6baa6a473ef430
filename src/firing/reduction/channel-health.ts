import { median } from '../../numerics';
import type { AnalysedTrace } from '../analysis/analysed-trace';
import { averaged, evenTimes } from '../cleaning/resample';
import { localParabola } from '../saturation/smooth';

/** Whether a channel tells of a firing at all. */
export interface ChannelHealth {
  readonly usable: boolean;
  /** Why it is not. */
  readonly reason: string | undefined;
  /** Standard deviation at rest, SI. */
  readonly noise: number;
}

/**
 * Kernel: refuses a channel that shows only noise, and one whose zero has moved for good: numbers taken from either look
 * like results and are none.
 */
export function channelHealth({ values, lowest, highest, baseline }: AnalysedTrace): ChannelHealth {
  const low = lowest();
  const high = highest();
  if (!(high > low)) return { usable: false, reason: 'it does not move: a dead channel', noise: 0 };
  if (turned(values, low, high))
    return {
      usable: false,
      reason: 'it falls where a firing would make it rise: turn its sign (invertCalibration), or its wires',
      noise: 0,
    };
  const { before, beforeDeviation, after } = baseline();
  const peak = high - before;
  if (peak < 6 * beforeDeviation)
    return {
      usable: false,
      reason: `its highest sample is ${(peak / beforeDeviation).toFixed(1)} standard deviations of its noise above rest: no signal`,
      noise: beforeDeviation,
    };
  if (after !== undefined && Math.abs(after - before) > 0.2 * peak)
    return {
      usable: false,
      reason: `its zero after the burn is off by ${(100 * Math.abs((after - before) / peak)).toFixed(0)} % of the peak: it was damaged, or the motor came loose`,
      noise: beforeDeviation,
    };
  return { usable: true, reason: undefined, noise: beforeDeviation };
}

/** Whether a channel rests at both ends and falls far below its rest between them, and hardly rises. */
function turned(values: Float64Array, low: number, high: number): boolean {
  const share = Math.max(1, Math.floor(0.05 * values.length));
  const start = median(values.subarray(0, share));
  const end = median(values.subarray(values.length - share));
  return start - low > 3 * (high - start) && Math.abs(end - start) < 0.2 * (start - low);
}

/** Kernel: peak with the noise taken off by local parabolas, and its standard deviation. */
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
