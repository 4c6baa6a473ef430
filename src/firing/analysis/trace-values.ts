// Values and integrals of a trace, linear between its samples, in SI units.

/** Kernel: value at a time; beyond the ends, the end values. */
export function valueAt(time: Float64Array, values: Float64Array, t: number): number {
  const n = time.length;
  if (t <= time[0]) return values[0];
  if (t >= time[n - 1]) return values[n - 1];
  const i = lowerBound(time, t);
  if (time[i] === t) return values[i];
  return values[i - 1] + ((t - time[i - 1]) / (time[i] - time[i - 1])) * (values[i] - values[i - 1]);
}

/** Kernel: index of the first time that is not before t. */
export function lowerBound(time: Float64Array, t: number): number {
  let low = 0;
  let high = time.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (time[middle] < t) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Kernel: integral of the values above rest between two times by the trapezoidal rule, with interpolated ends. */
export function integralBetween(
  time: Float64Array,
  values: Float64Array,
  from: number,
  to: number,
  rest = 0,
): number {
  const n = time.length;
  let i = lowerBound(time, from);
  let t = from;
  let v = valueAt(time, values, from) - rest;
  let sum = 0;
  for (; i < n && time[i] < to; i++) {
    const next = values[i] - rest;
    sum += 0.5 * (v + next) * (time[i] - t);
    t = time[i];
    v = next;
  }
  return sum + 0.5 * (v + valueAt(time, values, to) - rest) * (to - t);
}
