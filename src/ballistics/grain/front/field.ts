// The depth at which the front reaches a point: the minimum over all surfaces of the ignition depth of the surface
// plus the distance to it.
import type { Source } from '../surface';

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
  const foot = new Float64Array(3);
  const trial = new Float64Array(3);
  let source = 0;
  const depth: DepthField['depth'] = (x, y, z) => {
    let best = Number.MAX_VALUE;
    for (let i = 0; i < n; i++) {
      const left = best - litAt[i];
      if (low[i] - z > left || z - high[i] > left) continue;
      const radius = bounds[4 * i + 3];
      if (radius >= 0) {
        const room = left + radius;
        const dx = x - bounds[4 * i];
        const dy = y - bounds[4 * i + 1];
        const dz = z - bounds[4 * i + 2];
        if (room <= 0 || dx * dx + dy * dy + dz * dz > room * room) continue;
      }
      const d = nearest[i](x, y, z, trial) + litAt[i];
      if (d < best - tie) {
        best = d;
        source = i;
        foot[0] = trial[0];
        foot[1] = trial[1];
        foot[2] = trial[2];
      }
    }
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
