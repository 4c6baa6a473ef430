/** Search for the interval of a sorted array that contains a value, fast when it is near the previous one. */

/**
 * Index i of the interval with knots[i] <= x < knots[i + 1]; 0 below the first knot, the last interval from the last
 * knot on. `hint` is a guess, best the previous answer: the search widens from there by doubling, so a lookup that
 * moves a little costs a comparison or two and any other costs a bisection. Needs two or more ascending knots.
 *
 * Source: the "hunt" of a bracket by doubling, then bisection (engineering practice, no published source).
 *
 * @example
 * findInterval(new Float64Array([0, 1, 4, 9]), 5, 0) // => 2
 */
export function findInterval(knots: Float64Array, x: number, hint: number): number {
  const last = knots.length - 2;
  let low = hint < 0 ? 0 : Math.min(hint, last);
  if (x >= knots[low]) {
    if (low === last || x < knots[low + 1]) return low;
    let step = 1;
    let high = low + 1;
    while (high <= last && x >= knots[high]) {
      low = high;
      step *= 2;
      high = low + step;
    }
    if (high > last + 1) high = last + 1;
    return bisect(knots, x, low, high);
  }
  if (low === 0) return 0;
  let step = 1;
  let high = low;
  low = high - 1;
  while (low > 0 && x < knots[low]) {
    high = low;
    step *= 2;
    low = high - step;
  }
  return bisect(knots, x, Math.max(low, 0), high);
}

function bisect(knots: Float64Array, x: number, from: number, to: number): number {
  let low = from;
  let high = to;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (x >= knots[middle]) low = middle;
    else high = middle;
  }
  return low;
}
