/**
 * Indices of the points that represent a trace with far fewer samples: minimum and maximum of each interval, and
 * the ends.
 */
export function thinTrace(values: Float64Array, most = 500): readonly number[] {
  const { length } = values;
  if (length <= most) return Array.from(values, (_, i) => i);
  const stretches = Math.max(1, Math.floor((most - 2) / 2));
  const kept = [0];
  for (let s = 0; s < stretches; s++) {
    const from = 1 + Math.floor(((length - 2) * s) / stretches);
    const to = 1 + Math.floor(((length - 2) * (s + 1)) / stretches);
    let [low, high] = [from, from];
    for (let i = from; i < to; i++) {
      if (values[i] < values[low]) low = i;
      if (values[i] > values[high]) high = i;
    }
    kept.push(...(low === high ? [low] : low < high ? [low, high] : [high, low]));
  }
  kept.push(length - 1);
  return kept;
}
