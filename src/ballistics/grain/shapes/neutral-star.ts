import { findRoot } from '../../../numerics';
import { procedure, q } from '../../../units';
import { starPoints } from './star';

/**
 * The perimeter is constant while the straight sides burn: π/2 + π/N − θ/2 − cot(θ/2) = 0.
 *
 * @example neutralStarAngle({ points: 5 }).in('deg') // => 62.258508
 */
export const neutralStarAngle = /* @__PURE__ */ procedure({
  name: 'neutralStarAngle',
  title: 'Opening angle of the points of a neutral star',
  source:
    'Barrere et al., Rocket Propulsion (1960); NASA SP-8076 (1972); quoted from memory, not verified; derived again',
  inputs: { points: starPoints },
  gives: 'the full angle between the sides of a point',
  example: { points: 5 },
  run: ({ points }) => {
    const slope = (half: number): number => Math.PI / 2 + Math.PI / points - half - 1 / Math.tan(half);
    const { root } = findRoot(slope, { lower: 0.05, upper: Math.PI / 2 });
    return q(2 * root, 'rad').to('deg');
  },
});
