import { findRoot } from '../../../numerics';
import { type Quantity, q } from '../../../units';
import { readCount } from '../measure';

/**
 * Opening angle of the points of a star that keeps the perimeter constant while the straight sides burn: π/2 + π/N -
 * θ/2 - cot(θ/2) = 0. Barrere et al., Rocket Propulsion (1960); NASA SP-8076 (1972). Quoted from memory, not
 * verified; derived again.
 *
 * @throws MeopError `grain-measure` unless `points` is whole and at least 3
 * @example neutralStarAngle(5).in('deg') // => 62.258508
 */
export function neutralStarAngle(points: number): Quantity<'angle'> {
  const n = readCount('neutralStarAngle', 'points', points, 3);
  const slope = (half: number): number => Math.PI / 2 + Math.PI / n - half - 1 / Math.tan(half);
  const { root } = findRoot(slope, { lower: 0.05, upper: Math.PI / 2 });
  return q(2 * root, 'rad').to('deg');
}
