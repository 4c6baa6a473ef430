// A burning flat end of the grain.
import type { Source } from './source';
import { ROUND } from './symmetry';

/** The plane z = `z`; `inward` is +1 at the head (propellant above it) and -1 at the aft end. */
export function endPlane(name: string, z: number, inward: 1 | -1, radius: number): Source {
  return {
    name,
    symmetry: ROUND,
    sheet: false,
    nearest: (x, y, pz, foot) => {
      foot[0] = x;
      foot[1] = y;
      foot[2] = z;
      return inward * (pz - z);
    },
    patches: (wedge) => [
      {
        sizeU: wedge.axisymmetric ? 0 : radius * wedge.angle,
        sizeV: radius,
        copies: wedge.copies,
        ray: (u, v, out) => {
          const turn = wedge.from + u * wedge.angle;
          out[0] = v * radius * Math.cos(turn);
          out[1] = v * radius * Math.sin(turn);
          out[2] = z;
          out[3] = 0;
          out[4] = 0;
          out[5] = inward;
          out[6] = v * radius * radius * wedge.angle;
          out[7] = 0;
          out[8] = 0;
        },
      },
    ],
    samples: () => {
      const points: number[] = [];
      for (let i = 0; i <= 12; i++)
        for (let k = 0; k < 24; k++) {
          const r = (radius * i) / 12;
          points.push(r * Math.cos((k * Math.PI) / 12), r * Math.sin((k * Math.PI) / 12), z);
        }
      return Float64Array.from(points);
    },
  };
}
