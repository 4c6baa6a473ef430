// What a burning surface is to the distance method: an exact distance, and the rays that leave it along its normals.
import type { Symmetry, Wedge } from './symmetry';

/** Places of the numbers that {@link RayPatch.ray} writes: start (3), direction (3), and the three weights below. */
export const RAY = { start: 0, direction: 3, weight: 6, size: 9 } as const;

/**
 * A family of straight rays over the unit square, each leaving the surface along its normal. The area that
 * the front has at depth t along the rays of du dv is (w0 + w1 t + w2 t²) du dv: a face has w0, an edge w1, a corner w2.
 */
export interface RayPatch {
  /** Sizes of the patch along u and v [m]; a size of zero says that nothing varies in that direction. */
  readonly sizeU: number;
  readonly sizeV: number;
  /** How often the patch counts: the copies of the wedge it stands for. */
  readonly copies: number;
  readonly ray: (u: number, v: number, out: Float64Array) => void;
}

/** The grain's outer form: a cylinder on 0 <= z <= length about the z axis, or a ball about (0, 0, radius). */
export interface Envelope {
  readonly form: 'cylinder' | 'ball';
  readonly radius: number;
  readonly length: number;
}

export interface Source {
  readonly name: string;
  readonly symmetry: Symmetry;
  /** True for a surface without an inside: a crack or a debond. */
  readonly sheet: boolean;
  /** Signed distance to the surface that burns [m]; the nearest point goes into foot[0..2]. */
  readonly nearest: (x: number, y: number, z: number, foot: Float64Array) => number;
  /** Signed distance to the cavity, where part of its surface is inhibited. */
  readonly cavity?: (x: number, y: number, z: number) => number;
  /** A ball that holds the surface: x, y, z, radius. Lets the union skip it where another surface is nearer. */
  readonly bound?: readonly [number, number, number, number];
  /** Least and greatest z of the surface [m], where it does not run through the grain: to the same end. */
  readonly span?: readonly [number, number];
  /** The rays. `reach` is a typical burned depth [m]: it sets how finely fans are divided. */
  readonly patches: (wedge: Wedge, reach: number) => RayPatch[];
  /** Points spread over the surface, for finding where two surfaces come nearest. */
  readonly samples: () => Float64Array;
  /** A section outline when the surface runs through the whole grain unchanged. */
  readonly through?: boolean;
}

/** Distance along a ray from a point inside the envelope to where it leaves it [m]; 0 when the point is outside. */
export function exitDistance(e: Envelope, ray: Float64Array): number {
  const x = ray[0];
  const y = ray[1];
  const z = ray[2];
  const nx = ray[3];
  const ny = ray[4];
  const nz = ray[5];
  const slack = 1e-9 * e.radius;
  if (e.form === 'ball') {
    const zc = z - e.radius;
    const b = x * nx + y * ny + zc * nz;
    const c = x * x + y * y + zc * zc - e.radius * e.radius;
    const disc = b * b - c;
    if (c > slack * e.radius || disc <= 0) return 0;
    const t = -b + Math.sqrt(disc);
    return Math.max(t, 0);
  }
  if (z < -slack || z > e.length + slack) return 0;
  const c = x * x + y * y - e.radius * e.radius;
  if (c > 2 * slack * e.radius) return 0;
  let t = Number.POSITIVE_INFINITY;
  const a = nx * nx + ny * ny;
  if (a > 1e-24) {
    const b = x * nx + y * ny;
    const disc = b * b - a * c;
    t = disc > 0 ? (-b + Math.sqrt(disc)) / a : 0;
  }
  if (nz > 1e-12) t = Math.min(t, (e.length - z) / nz);
  else if (nz < -1e-12) t = Math.min(t, -z / nz);
  return Math.max(t, 0);
}

/** How far a point is outside the envelope [m]; negative inside. */
export function outsideBy(e: Envelope, x: number, y: number, z: number): number {
  const r2 = x * x + y * y;
  if (e.form === 'ball') return Math.sqrt(r2 + (z - e.radius) * (z - e.radius)) - e.radius;
  return Math.max(Math.sqrt(r2) - e.radius, -z, z - e.length);
}
