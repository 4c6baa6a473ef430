/**
 * Kernel: local parabolas. Each sample becomes the value at its time of the parabola fitted to the samples within half
 * a width of it. This removes noise and preserves the height of a peak as wide as the window.
 *
 * Source: A. Savitzky and M. J. E. Golay, Analytical Chemistry 36 (1964), 1627-1639, for unequal steps.
 */
export function localParabola(
  time: Float64Array,
  values: Float64Array,
  width: number,
): { readonly values: Float64Array; readonly deviation: number } {
  const n = time.length;
  const smooth = new Float64Array(n);
  let from = 0;
  let to = 0;
  let squares = 0;
  let freedom = 0;
  let gain = 0;
  for (let i = 0; i < n; i++) {
    while (time[from] < time[i] - width / 2) from++;
    while (to < n && time[to] <= time[i] + width / 2) to++;
    const count = to - from;
    const value = count < 4 ? values[i] : parabolaAt(time, values, from, to, time[i], width);
    smooth[i] = value;
    if (count < 4) continue;
    squares += (values[i] - value) ** 2;
    // Weight of the central sample in a parabola of many points: 9/4 divided by their number.
    freedom += Math.max(0.1, 1 - 2.25 / count);
    gain += 2.25 / count;
  }
  const used = Math.max(1, freedom);
  const noise = Math.sqrt(squares / used);
  return { values: smooth, deviation: noise * Math.sqrt(gain / Math.max(1, n)) };
}

/**
 * Kernel: local parabolas of adaptive width: at each sample the widest whose value agrees, within the noise, with those
 * of all narrower ones. This preserves the height of a corner and removes the noise of a plateau.
 *
 * Source: A. Goldenshluger and A. Nemirovski, "On spatially adaptive estimation of nonparametric regression",
 * Mathematical Methods of Statistics 6 (1997), 135-170 (intersection of confidence intervals).
 */
export function adaptiveParabola(
  time: Float64Array,
  values: Float64Array,
  options: { readonly narrowest: number; readonly widest: number; readonly noise: number },
): { readonly values: Float64Array; readonly deviation: Float64Array } {
  const { narrowest, widest } = options;
  const n = time.length;
  const result = values.slice();
  const deviation = new Float64Array(n);
  const low = new Float64Array(n).fill(Number.NEGATIVE_INFINITY);
  const high = new Float64Array(n).fill(Number.POSITIVE_INFINITY);
  const open = new Uint8Array(n).fill(1);
  const spacing = (time[n - 1] - time[0]) / Math.max(1, n - 1);
  const noise = options.noise > 0 ? options.noise : localParabola(time, values, narrowest).deviation;
  for (let width = narrowest; width <= widest * 1.001; width *= 1.5) {
    const smooth = localParabola(time, values, width).values;
    const sigma = noise * Math.min(1, Math.sqrt((2.25 * spacing) / width));
    for (let i = 0; i < n; i++) {
      if (open[i] === 0) continue;
      low[i] = Math.max(low[i], smooth[i] - 2 * sigma);
      high[i] = Math.min(high[i], smooth[i] + 2 * sigma);
      if (low[i] > high[i]) open[i] = 0;
      else {
        result[i] = smooth[i];
        deviation[i] = sigma;
      }
    }
  }
  return { values: result, deviation };
}

function parabolaAt(
  time: Float64Array,
  values: Float64Array,
  from: number,
  to: number,
  t: number,
  width: number,
): number {
  let s1 = 0;
  let s2 = 0;
  let s3 = 0;
  let s4 = 0;
  let y0 = 0;
  let y1 = 0;
  let y2 = 0;
  const n = to - from;
  for (let k = from; k < to; k++) {
    const x = (time[k] - t) / width;
    const xx = x * x;
    const y = values[k];
    s1 += x;
    s2 += xx;
    s3 += xx * x;
    s4 += xx * xx;
    y0 += y;
    y1 += x * y;
    y2 += xx * y;
  }
  // Cramer's rule for the constant term of the normal equations.
  const determinant = n * (s2 * s4 - s3 * s3) - s1 * (s1 * s4 - s2 * s3) + s2 * (s1 * s3 - s2 * s2);
  if (Math.abs(determinant) < 1e-12) return y0 / n;
  return (y0 * (s2 * s4 - s3 * s3) - s1 * (y1 * s4 - y2 * s3) + s2 * (y1 * s3 - y2 * s2)) / determinant;
}
