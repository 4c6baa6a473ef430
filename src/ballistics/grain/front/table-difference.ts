// How far two tables of one grain differ.
import type { FrontTable } from './front-tally';

/**
 * Root mean square difference, over depth, of the areas relative to the mean area, or the maximum difference of the
 * volumes relative to the cast volume if that is larger. The area of a step is the volume burned in it divided by its
 * width, so that the instant of a jump has no weight.
 */
export function tableDifference(a: FrontTable, b: FrontTable, depth: Float64Array): number {
  const last = depth.length - 1;
  const cast = a.volume[0];
  let square = 0;
  let worst = 0;
  for (let k = 1; k <= last; k++) {
    const run = depth[k] - depth[k - 1];
    worst = Math.max(worst, Math.abs(a.volume[k - 1] - b.volume[k - 1]) / cast);
    if (run < 1e-5 * depth[last]) continue;
    const burned = a.volume[k - 1] - a.volume[k] - (b.volume[k - 1] - b.volume[k]);
    square += (burned * burned) / run;
  }
  return Math.max(Math.sqrt(square * depth[last]) / cast, worst);
}
