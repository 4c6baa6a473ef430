// A cavity of revolution about the grain's axis: cones, steps, domes, spherical bores.
import {
  elementLength,
  elementNormal,
  elementX,
  elementY,
  type Outline,
  type OutlineElement,
  outlineCorners,
} from './outline';
import { planeDistance } from './outline-distance';
import type { RayPatch, Source } from './source';
import { ROUND, type Wedge } from './symmetry';

export interface RevolvedShape {
  readonly name: string;
  /** The profile in the (r, z) half plane, run with the cavity on the left: upwards along an ordinary bore. */
  readonly profile: Outline;
  /** The grain's ends: a profile that stops there has no surface beyond [m]. */
  readonly low: number;
  readonly high: number;
}

interface Fan {
  readonly r: number;
  readonly z: number;
  readonly from: number;
  readonly sweep: number;
}

/** Bring an angle near zero, so that fans at the grain's ends can be cut where they would leave it. */
const wrapped = (a: number): number => Math.atan2(Math.sin(a), Math.cos(a));

function fansOf({ profile, low, high }: RevolvedShape): Fan[] {
  const slack = 1e-9 * Math.max(high - low, 1e-12);
  const fans: Fan[] = [];
  for (const corner of outlineCorners(profile)) {
    const { x: r, y: z } = corner;
    if (!corner.open) {
      if (corner.sweep > 0) fans.push({ r, z, from: corner.from, sweep: corner.sweep });
      continue;
    }
    const starts = corner.before === undefined;
    const normal = wrapped(starts ? corner.from + corner.sweep : corner.from);
    // At the axis the fan closes on the axis. At the end of the grain it is cut by the end plane. Elsewhere it is a
    // free edge.
    let [from, to] = starts ? [normal - Math.PI / 2, normal] : [normal, normal + Math.PI / 2];
    if (r < slack) [from, to] = starts ? [-Math.PI / 2, normal] : [normal, Math.PI / 2];
    else if (z >= high - slack) [from, to] = [normal, Math.min(to, 0)];
    else if (z <= low + slack) [from, to] = [Math.max(from, 0), normal];
    if (to - from > 1e-9) fans.push({ r, z, from, sweep: to - from });
  }
  return fans;
}

export function revolve(shape: RevolvedShape): Source {
  const inPlane = planeDistance(shape.profile);
  return {
    name: shape.name,
    symmetry: ROUND,
    sheet: shape.profile.sheet,
    nearest: (x, y, z, foot) => {
      const r = Math.sqrt(x * x + y * y);
      const d = inPlane(r, z, foot);
      const fr = foot[0];
      foot[2] = foot[1];
      foot[0] = r > 0 ? (fr * x) / r : fr;
      foot[1] = r > 0 ? (fr * y) / r : 0;
      return d;
    },
    patches: (wedge, reach) => [
      ...shape.profile.elements.map((e) => bandPatch(e, wedge)),
      ...fansOf(shape).map((fan) => fanPatch(fan, wedge, reach)),
    ],
    samples: () => {
      const points: number[] = [];
      for (const e of shape.profile.elements)
        for (let i = 0; i <= 16; i++)
          for (let k = 0; k < 24; k++) {
            const r = elementX(e, i / 16);
            points.push(
              r * Math.cos((k * Math.PI) / 12),
              r * Math.sin((k * Math.PI) / 12),
              elementY(e, i / 16),
            );
          }
      return Float64Array.from(points);
    },
  };
}

/** The band swept by one profile element. The radius at depth t is r + t cos n; its run along the profile grows with an arc. */
function bandPatch(e: OutlineElement, wedge: Wedge): RayPatch {
  const length = elementLength(e);
  const grow = e.kind === 'arc' ? e.sweep : 0;
  const widest = Math.max(elementX(e, 0), elementX(e, 0.5), elementX(e, 1));
  return {
    sizeU: wedge.axisymmetric ? 0 : widest * wedge.angle,
    sizeV: length,
    copies: wedge.copies,
    ray: (u, v, out) => {
      const turn = wedge.from + u * wedge.angle;
      const r = elementX(e, v);
      const normal = elementNormal(e, v);
      const c = Math.cos(normal);
      out[0] = r * Math.cos(turn);
      out[1] = r * Math.sin(turn);
      out[2] = elementY(e, v);
      out[3] = c * Math.cos(turn);
      out[4] = c * Math.sin(turn);
      out[5] = Math.sin(normal);
      out[6] = wedge.angle * r * length;
      out[7] = wedge.angle * (r * grow + c * length);
      out[8] = wedge.angle * c * grow;
    },
  };
}

function fanPatch({ r, z, from, sweep }: Fan, wedge: Wedge, reach: number): RayPatch {
  return {
    sizeU: wedge.axisymmetric ? 0 : Math.max(r, reach) * wedge.angle,
    sizeV: sweep * reach,
    copies: wedge.copies,
    ray: (u, v, out) => {
      const turn = wedge.from + u * wedge.angle;
      const normal = from + v * sweep;
      const c = Math.cos(normal);
      out[0] = r * Math.cos(turn);
      out[1] = r * Math.sin(turn);
      out[2] = z;
      out[3] = c * Math.cos(turn);
      out[4] = c * Math.sin(turn);
      out[5] = Math.sin(normal);
      out[6] = 0;
      out[7] = wedge.angle * sweep * r;
      out[8] = wedge.angle * sweep * c;
    },
  };
}
