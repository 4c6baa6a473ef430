import { linearFit } from '../../numerics';

/**
 * Kernel: peak of a clipped top by a parabola through the samples on either side of it. It is exact only for a
 * parabola, otherwise an estimate. Undefined where the parabola has no maximum.
 */
export function peakFromShoulders(
  time: ArrayLike<number>,
  values: ArrayLike<number>,
): { readonly peak: number; readonly time: number } | undefined {
  const n = time.length;
  if (n < 3) return undefined;
  const middle = (time[0] + time[n - 1]) / 2;
  const scale = (time[n - 1] - time[0]) / 2;
  const x = Array.from({ length: n }, (_, i) => (time[i] - middle) / scale);
  const { coefficients } = linearFit({
    columns: [x.map(() => 1), x, x.map((v) => v * v)],
    observations: values,
  });
  const [a, b, c] = coefficients;
  if (!(c < 0)) return undefined;
  const at = -b / (2 * c);
  return { peak: a + b * at + c * at * at, time: middle + scale * at };
}
