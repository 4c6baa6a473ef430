// A spherical cavity at any position: a void, or a chip out of an edge.
import type { Source } from './source';
import { ROUND } from './symmetry';

export interface BallShape {
  readonly name: string;
  readonly x: number;
  readonly y: number;
  readonly z: number;
  readonly radius: number;
}

export function ball({ name, x: cx, y: cy, z: cz, radius }: BallShape): Source {
  const onAxis = Math.hypot(cx, cy) <= 1e-12 * radius;
  return {
    name,
    symmetry: onAxis ? ROUND : { order: 1, mirror: Math.atan2(cy, cx) },
    sheet: false,
    bound: [cx, cy, cz, radius],
    round: true,
    nearest: (x, y, z, foot) => {
      const dx = x - cx;
      const dy = y - cy;
      const dz = z - cz;
      const r = Math.sqrt(dx * dx + dy * dy + dz * dz);
      const k = r > 0 ? radius / r : 0;
      foot[0] = cx + dx * k;
      foot[1] = cy + dy * k;
      foot[2] = r > 0 ? cz + dz * k : cz + radius;
      return r - radius;
    },
    // The front at depth t is a sphere of radius + t. Off the axis the whole ball is sampled and counted once.
    patches: (wedge) => {
      const angle = onAxis ? wedge.angle : 2 * Math.PI;
      const from = onAxis ? wedge.from : 0;
      return [
        {
          sizeU: onAxis && wedge.axisymmetric ? 0 : angle * radius,
          sizeV: Math.PI * radius,
          copies: onAxis ? wedge.copies : 1,
          ray: (u, v, out) => {
            const turn = from + u * angle;
            const tilt = (v - 0.5) * Math.PI;
            const c = Math.cos(tilt);
            const weight = angle * Math.PI * c;
            out[3] = c * Math.cos(turn);
            out[4] = c * Math.sin(turn);
            out[5] = Math.sin(tilt);
            out[0] = cx + radius * out[3];
            out[1] = cy + radius * out[4];
            out[2] = cz + radius * out[5];
            out[6] = weight * radius * radius;
            out[7] = 2 * weight * radius;
            out[8] = weight;
          },
        },
      ];
    },
    samples: () => Float64Array.of(cx, cy, cz),
  };
}
