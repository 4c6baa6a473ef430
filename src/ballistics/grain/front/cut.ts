// Depth burned along a ray from a burning surface, to where another front meets it or the propellant ends.

import { MeopError } from '../../../units';
import { type Envelope, exitDistance, outsideBy } from '../surface';
import type { DepthField } from './field';

export interface RayCutter {
  /**
   * Depth burned along the ray in `ray` (start, direction) [m]: the radius of the largest ball that touches the start
   * and contains no other surface. It is shrunk from the far end to the nearest surface inside it until there is none
   * (Ma, Bae & Choi, 3D medial axis point approximation, The Visual Computer 28, 2012).
   */
  readonly cut: (ray: Float64Array, litAt: number, owner: number) => number;
  /** Number of rays cut by a surface outside the grain. Above zero, the grain is not the union of the surfaces inside it. */
  readonly exteriorHits: () => number;
}

export function rayCutter(
  field: DepthField,
  envelope: Envelope,
  blockers: readonly ((x: number, y: number, z: number) => number)[] = [],
): RayCutter {
  const tolerance = 1e-9 * envelope.radius;
  const foot = field.foot;
  let exteriorHits = 0;
  let guess = 0;
  const cut = (ray: Float64Array, litAt: number, owner: number): number => {
    const exit = exitDistance(envelope, ray);
    if (exit <= tolerance) return 0;
    const sx = ray[0];
    const sy = ray[1];
    const sz = ray[2];
    // Inside another cavity the depth is negative, so that its zero lies on the edge between the two.
    const start = field.depth(sx, sy, sz) - litAt;
    if (start < -tolerance) return start;
    for (const cavity of blockers) {
      const d = cavity(sx, sy, sz);
      if (d < -tolerance) return d;
    }
    const nx = ray[3];
    const ny = ray[4];
    const nz = ray[5];
    // Rays come in order, so the depth of the last one is a good first guess. If the ray burns deeper, start
    // from the far end.
    let t = guess > 0 && 1.1 * guess < exit ? 1.1 * guess : exit;
    let trial = t < exit;
    let touched = false;
    let touchX = 0;
    let touchY = 0;
    let touchZ = 0;
    for (let step = 0; step < 100; step++) {
      const depth = field.depth(sx + t * nx, sy + t * ny, sz + t * nz);
      if (depth >= litAt + t - tolerance) {
        if (trial) {
          trial = false;
          t = exit;
          continue;
        }
        if (touched && outsideBy(envelope, touchX, touchY, touchZ) > 1e-6 * envelope.radius) exteriorHits++;
        guess = t;
        // At half the depth, another surface can be equally near only where it coincides with the owner's surface.
        // Its area counts once, for the first of them.
        if (field.footSource() !== owner) {
          field.depth(sx + 0.5 * t * nx, sy + 0.5 * t * ny, sz + 0.5 * t * nz);
          if (field.footSource() !== owner) return 0;
        }
        return t;
      }
      trial = false;
      const lag = litAt - field.footLitAt();
      const ex = foot[0] - sx;
      const ey = foot[1] - sy;
      const ez = foot[2] - sz;
      const along = ex * nx + ey * ny + ez * nz + lag;
      const shorter = along > 0 ? (ex * ex + ey * ey + ez * ez - lag * lag) / (2 * along) : t / 2;
      touchX = foot[0];
      touchY = foot[1];
      touchZ = foot[2];
      touched = true;
      t = shorter < t ? shorter : t / 2;
      // A ray of zero depth starts in the open. A trace of depth would add its whole area at the start.
      if (t <= tolerance) return 0;
    }
    return t;
  };
  return { cut, exteriorHits: () => exteriorHits };
}

/** Throws when a surface outside the grain would have burned propellant inside it. */
export function refuseExterior(cutter: RayCutter): void {
  if (cutter.exteriorHits() > 0)
    throw new MeopError({
      code: 'grain-surface-outside',
      procedure: 'regress',
      problem: 'part of a burning surface outside the grain is the nearest one to propellant inside it',
      remedy: 'Keep cores and flaws within the wall and the ends',
    });
}
