// Mass, centre of mass and moments of inertia of the remaining propellant, with units.
import { fromSiArray } from '../../../units';
import type { Grain } from '../shapes';
import { overlapMoments, volumeMoments } from './mass-moments';
import type { ShapeRegression } from './regress-shape';
import type { GrainMassProperties } from './regression';

/** `volume` is the tabulated volume. The moments are scaled to it, so that mass and inertia are consistent. */
export function massProperties(
  grain: Grain,
  found: ShapeRegression,
  volume: Float64Array,
  density: number,
): GrainMassProperties {
  const n = found.depth.length;
  const moments = momentsOf(grain, found, found.depth);
  const make = (): Float64Array => new Float64Array(n);
  const [mass, cz, cx, cy, axial, ix, iy] = [make(), make(), make(), make(), make(), make(), make()];
  for (let k = 0; k < n; k++) {
    const m = moments.subarray(10 * k, 10 * k + 10);
    mass[k] = density * volume[k];
    if (!(volume[k] > 1e-9 * volume[0]) || !(m[0] > 0)) {
      // No propellant remains; the last centre of mass is kept.
      [cx[k], cy[k], cz[k]] = k > 0 ? [cx[k - 1], cy[k - 1], cz[k - 1]] : [0, 0, 0];
      continue;
    }
    const scale = mass[k] / m[0];
    [cx[k], cy[k], cz[k]] = [m[1] / m[0], m[2] / m[0], m[3] / m[0]];
    axial[k] = scale * (m[4] + m[5]);
    ix[k] = Math.max(0, scale * (m[5] + m[6]) - mass[k] * (cy[k] * cy[k] + cz[k] * cz[k]));
    iy[k] = Math.max(0, scale * (m[4] + m[6]) - mass[k] * (cx[k] * cx[k] + cz[k] * cz[k]));
  }
  return {
    mass: fromSiArray('mass', mass),
    centreAxial: fromSiArray('length', cz),
    centreX: fromSiArray('length', cx),
    centreY: fromSiArray('length', cy),
    axialInertia: fromSiArray('moment of inertia', axial),
    inertiaX: fromSiArray('moment of inertia', ix),
    inertiaY: fromSiArray('moment of inertia', iy),
  };
}

/** Ten moments of the propellant left at each depth, the volume first. */
function momentsOf(grain: Grain, found: ShapeRegression, depth: Float64Array): Float64Array {
  const { pieces } = found;
  if (pieces === undefined) {
    // The last depth of a sum over rays lies beyond all of them.
    const beyond = 1.001 * Math.max(found.burnout, depth[depth.length - 1]);
    const { moments } = volumeMoments(found.rays, found.wedge, Float64Array.of(...depth, beyond));
    if (found.section !== undefined)
      for (let k = 0; k < depth.length; k++)
        shorten(moments.subarray(10 * k, 10 * k + 10), grain, depth[k], found.section.perLength);
    return moments.subarray(0, 10 * depth.length);
  }
  const total = momentsOf(grain, pieces.sound, depth);
  const exact = pieces.sound.tableAt(depth);
  for (let k = 0; k < depth.length; k++) {
    const scale = total[10 * k] > 0 ? exact.volume[k] / total[10 * k] : 0;
    for (let i = 10 * k; i < 10 * k + 10; i++) total[i] = total[i] * scale;
  }
  const own = volumeMoments(pieces.cells, found.wedge, depth).moments;
  const sampled = pieces.overlaps.reduce((sum, o) => o.volume.reduce((a, v) => a + v, sum), 0);
  const share = sampled > 0 ? own[0] / sampled : 0;
  const taken = overlapMoments(
    [
      ...pieces.overlaps.map((overlap) => ({ overlap, share })),
      ...(pieces.cavity === undefined ? [] : [{ overlap: pieces.cavity, share: 1 }]),
    ],
    found.wedge,
    depth,
  );
  return total.map((m, i) => m + own[i] - taken[i]);
}

/**
 * The moments of a section are those of its whole length, in the mid-plane. Distributes them over the length that
 * remains between the ends.
 */
function shorten(m: Float64Array, grain: Grain, depth: number, length: number): void {
  const from = Math.min(length, grain.shape.headBurns ? depth : 0);
  const to = Math.max(from, grain.shape.aftBurns ? length - depth : length);
  const share = (to - from) / length;
  const middle = (from + to) / 2;
  for (let k = 0; k < 10; k++) m[k] *= share;
  const square = (to * to + to * from + from * from) / 3;
  m[3] = m[0] * middle;
  m[6] = m[0] * square;
  m[8] = m[1] * middle;
  m[9] = m[2] * middle;
}
