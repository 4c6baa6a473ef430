// The depth at which the front reaches a point: the minimum over all surfaces of the ignition depth of the surface
// plus the distance to it.
import type { Source } from '../surface';
import { flawTree } from './flaw-tree';

export interface LitSource {
  readonly source: Source;
  /** Depth burned when the surface ignites [m]; 0 when it is open to the bore. */
  readonly litAt: number;
}

/** The union of the surfaces. `foot`, `footLitAt` and `footSource` refer to the last point evaluated. */
export interface DepthField {
  readonly sources: readonly LitSource[];
  readonly foot: Float64Array;
  readonly depth: (x: number, y: number, z: number) => number;
  /** The same depth, but inside a buried cavity not less than the depth at which the cavity ignites. */
  readonly opensAt: (x: number, y: number, z: number) => number;
  readonly footLitAt: () => number;
  readonly footSource: () => number;
}

/** Fewer enclosed surfaces than this are tried one by one. */
const MANY = 12;

/** Of surfaces whose depths differ by less than `tie` [m], the first in the list is used. */
export function depthField(lit: readonly LitSource[], tie = 0): DepthField {
  const n = lit.length;
  const litAt = Float64Array.from(lit, (s) => s.litAt);
  const nearest = lit.map((s) => s.source.nearest);
  const low = Float64Array.from(lit, (s) => s.source.span?.[0] ?? Number.NEGATIVE_INFINITY);
  const high = Float64Array.from(lit, (s) => s.source.span?.[1] ?? Number.POSITIVE_INFINITY);
  const bounds = new Float64Array(4 * n);
  lit.forEach((s, i) => {
    bounds.set(s.source.bound ?? [0, 0, 0, -1], 4 * i);
  });
  const enclosed = Int32Array.from(lit.keys()).filter((i) => bounds[4 * i + 3] >= 0);
  const tree =
    enclosed.length < MANY
      ? undefined
      : flawTree(
          Float64Array.from(
            Array.from(enclosed).flatMap((i) => Array.from(bounds.subarray(4 * i, 4 * i + 4))),
          ),
          Float64Array.from(enclosed, (i) => litAt[i]),
          enclosed,
        );
  const single = Int32Array.from(lit.keys()).filter((i) => tree === undefined || bounds[4 * i + 3] < 0);
  const foot = new Float64Array(3);
  const trial = new Float64Array(3);
  let source = 0;
  let best = Number.MAX_VALUE;
  let [px, py, pz] = [0, 0, 0];
  const attempt = (i: number): void => {
    const d = nearest[i](px, py, pz, trial) + litAt[i];
    if (!(d < best - tie || (d < best + tie && i < source))) return;
    best = d;
    source = i;
    foot[0] = trial[0];
    foot[1] = trial[1];
    foot[2] = trial[2];
  };
  const attemptInTree = (i: number): number => {
    attempt(i);
    return best + tie;
  };
  const depth: DepthField['depth'] = (x, y, z) => {
    best = Number.MAX_VALUE;
    source = n;
    px = x;
    py = y;
    pz = z;
    for (let k = 0; k < single.length; k++) {
      const i = single[k];
      const left = best + tie - litAt[i];
      if (low[i] - z > left || z - high[i] > left) continue;
      const radius = bounds[4 * i + 3];
      if (radius >= 0) {
        const room = left + radius;
        const dx = x - bounds[4 * i];
        const dy = y - bounds[4 * i + 1];
        const dz = z - bounds[4 * i + 2];
        if (room <= 0 || dx * dx + dy * dy + dz * dz > room * room) continue;
      }
      attempt(i);
    }
    tree?.visit(x, y, z, best + tie, attemptInTree);
    return best;
  };
  return {
    sources: lit,
    foot,
    footLitAt: () => litAt[source],
    footSource: () => source,
    depth,
    opensAt: (x, y, z) => {
      const found = depth(x, y, z);
      return litAt[source] > 0 ? Math.max(found, litAt[source]) : found;
    },
  };
}
