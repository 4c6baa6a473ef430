/** Descriptive statistics of plain samples. All throw `invalid-argument` for samples too few or not finite. */
import { invalidArgument, requireFiniteArray } from './checks';

/**
 * Compensated sum, which carries the rounding error of each addition, so its error does not grow with the count.
 * Source: A. Neumaier, "Rundungsfehleranalyse einiger Verfahren zur Summation endlicher Summen", ZAMM 54 (1974),
 * 39-51.
 *
 * @example
 * compensatedSum([1e16, 1, -1e16]) // => 1
 */
export function compensatedSum(values: ArrayLike<number>): number {
  requireFiniteArray('values', values, 0);
  let sum = 0;
  let lost = 0;
  for (let i = 0; i < values.length; i++) {
    const value = values[i];
    const total = sum + value;
    lost += Math.abs(sum) >= Math.abs(value) ? sum - total + value : value - total + sum;
    sum = total;
  }
  return sum + lost;
}

/**
 * Arithmetic mean.
 *
 * @example
 * mean([1, 2, 6]) // => 3
 */
export function mean(values: ArrayLike<number>): number {
  requireFiniteArray('values', values);
  return compensatedSum(values) / values.length;
}

/**
 * Sample variance, with n - 1 in the denominator; needs two values. Two passes, the second corrected for the
 * rounding of the mean.
 * Source: T. F. Chan, G. H. Golub, R. J. LeVeque, "Algorithms for computing the sample variance", The American
 * Statistician 37 (1983), 242-247 (corrected two-pass algorithm).
 *
 * @example
 * variance([1, 2, 6]) // => 7
 */
export function variance(values: ArrayLike<number>): number {
  requireFiniteArray('values', values, 2);
  const centre = mean(values);
  let squares = 0;
  let rest = 0;
  for (let i = 0; i < values.length; i++) {
    const deviation = values[i] - centre;
    squares += deviation * deviation;
    rest += deviation;
  }
  return (squares - (rest * rest) / values.length) / (values.length - 1);
}

/**
 * Sample standard deviation, the square root of `variance`.
 *
 * @example
 * standardDeviation([1, 3, 5]) // => 2
 */
export function standardDeviation(values: ArrayLike<number>): number {
  return Math.sqrt(variance(values));
}

/**
 * Quantile by linear interpolation between order statistics: definition R-7 of Hyndman and Fan, the default of R
 * and NumPy. `p` is from 0 (minimum) to 1 (maximum). Source: R. J. Hyndman and Y. Fan, "Sample quantiles in
 * statistical packages", The American Statistician 50 (1996), 361-365, definition 7.
 *
 * @example
 * quantile([4, 1, 3, 2], 0.25) // => 1.75
 */
export function quantile(values: ArrayLike<number>, p: number): number {
  requireFiniteArray('values', values);
  if (!(p >= 0 && p <= 1)) throw invalidArgument('p', p, 'from 0 to 1');
  return quantileOfSorted(Float64Array.from(values).sort(), p);
}

function quantileOfSorted(sorted: Float64Array, p: number): number {
  const position = p * (sorted.length - 1);
  const below = Math.floor(position);
  const low = sorted[below];
  if (below + 1 >= sorted.length) return low;
  return low + (position - below) * (sorted[below + 1] - low);
}

/**
 * Median: the quantile at one half.
 *
 * @example
 * median([5, 1, 4, 2]) // => 3
 */
export function median(values: ArrayLike<number>): number {
  return quantile(values, 0.5);
}

/**
 * Median absolute deviation from the median, unscaled. Times 1.4826 it estimates the standard deviation of a
 * normal sample and, unlike it, is robust to outliers.
 *
 * @example
 * medianAbsoluteDeviation([1, 1, 2, 2, 4, 6, 9]) // => 1
 */
export function medianAbsoluteDeviation(values: ArrayLike<number>): number {
  const centre = median(values);
  return median(Float64Array.from(values, (value) => Math.abs(value - centre)));
}
