/** Interpolants through data: straight lines, monotone cubics, and cubics with given slopes. */
import { requireFiniteArray, requireIncreasing, requireSameLength } from './checks';
import { type Interpolant, type OutOfRange, piecewiseCubic } from './piecewise-cubic';

/** Policy of an interpolant outside its data. */
export interface InterpolationOptions {
  /** Policy outside the data. Default `error`. */
  readonly outOfRange?: OutOfRange;
}

/**
 * Straight lines between the points.
 *
 * @example
 * linearInterpolant([0, 1, 3], [0, 10, 30]).at(2) // => 20
 */
export function linearInterpolant(
  x: ArrayLike<number>,
  y: ArrayLike<number>,
  options: InterpolationOptions = {},
): Interpolant {
  const { knots, values } = checkedData(x, y);
  const chords = chordSlopes(knots, values);
  return piecewiseCubic(knots, values, chords, chords, options.outOfRange ?? 'error');
}

/**
 * Shape-preserving cubic: continuous slope, no overshoot, monotone wherever the data are.
 * With two points it is the straight line.
 *
 * Source: F. N. Fritsch and J. Butland, "A method for constructing local monotone piecewise cubic interpolants",
 * SIAM J. Sci. Stat. Comput. 5 (1984), 300-304, with the three-point end formula used by PCHIP.
 *
 * @example
 * monotoneInterpolant([0, 1, 2, 3], [0, 0, 1, 1]).at(1.5) // => 0.5
 */
export function monotoneInterpolant(
  x: ArrayLike<number>,
  y: ArrayLike<number>,
  options: InterpolationOptions = {},
): Interpolant {
  const { knots, values } = checkedData(x, y);
  const slopes = monotoneSlopes(knots, values);
  return piecewiseCubic(knots, values, slopes, slopes.subarray(1), options.outOfRange ?? 'error');
}

/**
 * Cubic Hermite interpolant: meets the given values and the given slopes at every point.
 *
 * @example
 * hermiteInterpolant([0, 2], [0, 8], [0, 12]).at(1) // => 1
 */
export function hermiteInterpolant(
  x: ArrayLike<number>,
  y: ArrayLike<number>,
  slopes: ArrayLike<number>,
  options: InterpolationOptions = {},
): Interpolant {
  const { knots, values } = checkedData(x, y);
  requireSameLength('x', x, 'slopes', slopes);
  requireFiniteArray('slopes', slopes);
  const own = Float64Array.from(slopes);
  return piecewiseCubic(knots, values, own, own.subarray(1), options.outOfRange ?? 'error');
}

function checkedData(
  x: ArrayLike<number>,
  y: ArrayLike<number>,
): { knots: Float64Array; values: Float64Array } {
  requireSameLength('x', x, 'y', y);
  requireIncreasing('x', x, 2);
  requireFiniteArray('y', y);
  return { knots: Float64Array.from(x), values: Float64Array.from(y) };
}

function chordSlopes(knots: Float64Array, values: Float64Array): Float64Array {
  const chords = new Float64Array(knots.length - 1);
  for (let i = 0; i < chords.length; i++) {
    const rise = values[i + 1] - values[i];
    chords[i] = rise / (knots[i + 1] - knots[i]);
  }
  return chords;
}

function monotoneSlopes(knots: Float64Array, values: Float64Array): Float64Array {
  const chords = chordSlopes(knots, values);
  const count = knots.length;
  const slopes = new Float64Array(count);
  if (count === 2) return slopes.fill(chords[0]);
  const width = (i: number) => knots[i + 1] - knots[i];
  for (let i = 1; i < count - 1; i++) {
    const left = chords[i - 1];
    const right = chords[i];
    if (!(left > 0 && right > 0) && !(left < 0 && right < 0)) continue;
    // Weighted harmonic mean of the two chords; the divisions are ordered so that a tiny chord cannot overflow.
    const leftWeight = 2 * width(i) + width(i - 1);
    const rightWeight = width(i) + 2 * width(i - 1);
    const small = Math.abs(left) < Math.abs(right) ? left : right;
    slopes[i] =
      (small * (leftWeight + rightWeight)) / (leftWeight * (small / left) + rightWeight * (small / right));
  }
  slopes[0] = endSlope(width(0), width(1), chords[0], chords[1]);
  slopes[count - 1] = endSlope(width(count - 2), width(count - 3), chords[count - 2], chords[count - 3]);
  return slopes;
}

/** Slope at the end of the parabola through three points, cut back where it would break monotonicity. */
function endSlope(width: number, nextWidth: number, chord: number, nextChord: number): number {
  const slope = ((2 * width + nextWidth) * chord - width * nextChord) / (width + nextWidth);
  if (Math.sign(slope) !== Math.sign(chord)) return 0;
  if (Math.sign(chord) !== Math.sign(nextChord) && Math.abs(slope) > 3 * Math.abs(chord)) return 3 * chord;
  return slope;
}
