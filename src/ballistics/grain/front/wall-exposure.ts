// The depth burned at which each patch of the case wall is first exposed to the flame.

import { type Envelope, wallRadius } from '../surface';
import { type DepthField, depthField, type LitSource } from './field';

/** Depths over the wall: `depth[i * position.length + j]` at angle i and axial position j. */
export interface WallExposure {
  readonly angle: Float64Array;
  readonly position: Float64Array;
  readonly depth: Float64Array;
}

export function wallExposure(
  field: DepthField,
  e: Envelope,
  angles: number,
  positions: number,
): WallExposure {
  const angle = Float64Array.from({ length: angles }, (_, i) => (2 * Math.PI * i) / angles);
  const position = Float64Array.from({ length: positions }, (_, j) => (e.length * j) / (positions - 1));
  const depth = new Float64Array(angles * positions);
  for (let i = 0; i < angles; i++)
    for (let j = 0; j < positions; j++) depth[i * positions + j] = wallDepth(field, e, angle[i], position[j]);
  return { angle, position, depth };
}

function wallDepth(field: DepthField, e: Envelope, angle: number, z: number): number {
  const r = wallRadius(e, z);
  return Math.max(0, field.opensAt(r * Math.cos(angle), r * Math.sin(angle), z));
}

/** Depths at which the fronts of these surfaces, each by itself, first meet the wall: the area has a corner there. */
export const wallContacts = (lit: readonly LitSource[], e: Envelope): readonly number[] =>
  lit.map((one) => firstWallContact(depthField([one]), e)).filter((d) => d > 0);

/** Finds the minimum depth on the wall: the best points of a grid, then a shrinking search around each. */
export function firstWallContact(field: DepthField, e: Envelope): number {
  const grid = wallExposure(field, e, 96, 41);
  const order = Array.from(grid.depth.keys()).sort((a, b) => grid.depth[a] - grid.depth[b]);
  let best = Number.POSITIVE_INFINITY;
  for (const start of order.slice(0, 6)) {
    let a = grid.angle[Math.floor(start / 41)];
    let z = grid.position[start % 41];
    let d = grid.depth[start];
    let stepA = (2 * Math.PI) / 96;
    let stepZ = e.length / 40;
    for (let n = 0; n < 60; n++) {
      let moved = false;
      for (const [ka, kz] of [
        [1, 0],
        [-1, 0],
        [0, 1],
        [0, -1],
      ] as const) {
        const za = Math.min(e.length, Math.max(0, z + kz * stepZ));
        const trial = wallDepth(field, e, a + ka * stepA, za);
        if (trial >= d - 1e-15) continue;
        d = trial;
        a += ka * stepA;
        z = za;
        moved = true;
      }
      if (!moved) {
        stepA /= 2;
        stepZ /= 2;
      }
    }
    best = Math.min(best, d);
  }
  return best;
}
