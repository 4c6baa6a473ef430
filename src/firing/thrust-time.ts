// Points on a trace: where it crosses a share of its peak, and where burning ends.

/** A trace against time, in SI. */
export interface Trace {
  readonly time: Float64Array;
  readonly value: Float64Array;
}

/** Index of the largest sample. */
export function peakIndex({ value }: Trace): number {
  let at = 0;
  for (let i = 1; i < value.length; i++) if (value[i] > value[at]) at = i;
  return at;
}

/**
 * Times at which a trace rises above and falls below a level, walking outward from its peak so that spikes in the quiet
 * parts do not count; straight lines between samples. The end of the record stands in where the level is not reached.
 */
export function crossings(trace: Trace, level: number): { readonly rise: number; readonly fall: number } {
  const { time, value } = trace;
  const peak = peakIndex(trace);
  let first = peak;
  while (first > 0 && value[first - 1] >= level) first--;
  let last = peak;
  while (last < value.length - 1 && value[last + 1] >= level) last++;
  const cut = (i: number, j: number): number =>
    time[i] + ((level - value[i]) / (value[j] - value[i])) * (time[j] - time[i]);
  return {
    rise: first === 0 ? time[0] : cut(first - 1, first),
    fall: last === value.length - 1 ? time[last] : cut(last, last + 1),
  };
}

/** ∫ value dt by straight lines between samples, from one time to another. */
export function integral({ time, value }: Trace, from: number, to: number): number {
  let sum = 0;
  for (let i = 1; i < time.length; i++) {
    if (time[i] <= from || time[i - 1] >= to) continue;
    const h = time[i] - time[i - 1];
    const slope = (value[i] - value[i - 1]) / h;
    const a = Math.max(from, time[i - 1]);
    const b = Math.min(to, time[i]);
    sum += (b - a) * (value[i - 1] + slope * (0.5 * (a + b) - time[i - 1]));
  }
  return sum;
}

/** Value at a time, on straight lines between samples; the end values outside. */
export function valueAt({ time, value }: Trace, t: number): number {
  if (t <= time[0]) return value[0];
  const last = time.length - 1;
  if (t >= time[last]) return value[last];
  let low = 0;
  let high = last;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (time[middle] <= t) low = middle;
    else high = middle;
  }
  return value[low] + ((t - time[low]) / (time[high] - time[low])) * (value[high] - value[low]);
}
