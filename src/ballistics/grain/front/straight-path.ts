// The distance method uses straight paths. Where an inhibited cavity lies in the path, the front would have to burn
// around it, so such a grain is rejected.
import { MeopError } from '../../../units';
import type { GrainShape } from '../shapes';
import { outsideBy, type Source } from '../surface';
import type { DepthField } from './field';
import type { RayCells } from './ray-cells';

/** Cavities with surfaces that do not burn: a front may neither start inside them nor pass through them. */
export const blockersOf = (shape: GrainShape): readonly NonNullable<Source['cavity']>[] => [
  ...shape.inert.map((s) => {
    const foot = new Float64Array(3);
    return s.cavity ?? ((x: number, y: number, z: number) => s.nearest(x, y, z, foot));
  }),
  ...[...shape.ports, ...shape.flaws.map((f) => f.source)].flatMap((s) =>
    s.cavity === undefined ? [] : [s.cavity],
  ),
];

/** Throws `grain-path-blocked` when the straight path of a front passes through a cavity with inhibited surfaces. */
export function refuseBlockedRays(shape: GrainShape, cells: readonly RayCells[], field: DepthField): void {
  const blockers = blockersOf(shape);
  if (blockers.length === 0) return;
  const slack = 1e-6 * shape.envelope.radius;
  const walk = (x: number, y: number, z: number, nx: number, ny: number, nz: number, depth: number): void => {
    for (const cavity of blockers) {
      let t = 0;
      while (t < depth - slack) {
        const d = cavity(x + t * nx, y + t * ny, z + t * nz);
        if (d < -10 * slack)
          throw new MeopError({
            code: 'grain-path-blocked',
            procedure: 'regress',
            problem:
              'propellant lies behind an inhibited cavity. The front would have to burn around it, and the straight distance is too short',
            remedy: 'Let the cavity burn, or make the inhibited surface part of an end or of the wall',
          });
        t += Math.max(d, 0.01 * shape.envelope.radius);
      }
    }
  };
  for (const c of cells)
    for (let i = 0; i < c.count; i++) {
      let depth = Number.POSITIVE_INFINITY;
      for (let k = 0; k < c.nodes; k++) depth = Math.min(depth, c.depth[c.nodes * i + k]);
      const at = (k: number): number => c.middle[6 * i + k];
      walk(at(0), at(1), at(2), at(3), at(4), at(5), depth);
    }
  // Propellant hidden by a cavity lies at its far side: check the path from there back to the surface found nearest.
  for (const s of [...shape.inert, ...shape.ports].filter(
    (p) => shape.inert.includes(p) || p.cavity !== undefined,
  )) {
    const points = s.samples();
    for (let i = 0; i + 2 < points.length; i += 3) {
      const [x, y, z] = [points[i], points[i + 1], points[i + 2]];
      if (outsideBy(shape.envelope, x, y, z) > -slack) continue;
      const depth = field.depth(x, y, z) - field.footLitAt();
      if (depth <= 20 * slack) continue;
      const [fx, fy, fz] = [field.foot[0], field.foot[1], field.foot[2]];
      walk(x, y, z, (fx - x) / depth, (fy - y) / depth, (fz - z) / depth, depth);
    }
  }
}
