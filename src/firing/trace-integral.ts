/** A trace against time, in SI units. */
export interface Trace {
  readonly time: Float64Array;
  readonly values: Float64Array;
}

/** Integral of the trace between two times, linear between samples. */
export function integral({ time, values }: Trace, from: number, to: number): number {
  let sum = 0;
  for (let i = 1; i < time.length; i++) {
    if (time[i] <= from || time[i - 1] >= to) continue;
    const h = time[i] - time[i - 1];
    const slope = (values[i] - values[i - 1]) / h;
    const a = Math.max(from, time[i - 1]);
    const b = Math.min(to, time[i]);
    sum += (b - a) * (values[i - 1] + slope * (0.5 * (a + b) - time[i - 1]));
  }
  return sum;
}
