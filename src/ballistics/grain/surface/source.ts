// A burning surface as used by the distance method: an exact distance, and the rays that leave it along its normals.
import type { Symmetry, Wedge } from './symmetry';

/** Offsets of the numbers that {@link RayPatch.ray} writes: start (3), direction (3), and the three weights below. */
export const RAY = { start: 0, direction: 3, weight: 6, size: 9 } as const;

/**
 * A family of straight rays over the unit square, each leaving the surface along its normal. The area that
 * the front has at depth t along the rays of du dv is (w0 + w1 t + w2 t²) du dv: a face has w0, an edge w1, a corner w2.
 */
export interface RayPatch {
  /** Sizes of the patch along u and v [m]; a size of zero means that nothing varies in that direction. */
  readonly sizeU: number;
  readonly sizeV: number;
  /** Number of copies of the wedge that the patch represents. */
  readonly copies: number;
  readonly ray: (u: number, v: number, out: Float64Array) => void;
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
  /** Ball that encloses the surface: x, y, z, radius. The union skips the surface where another one is nearer. */
  readonly bound?: readonly [number, number, number, number];
  /** True if the surface is the whole of the ball `bound`. */
  readonly round?: true;
  /** Minimum and maximum z of the surface [m]; infinite towards an end of the grain through which it runs. */
  readonly span?: readonly [number, number];
  /** The rays. `reach` is a typical depth burned [m], which sets how finely fans are divided. */
  readonly patches: (wedge: Wedge, reach: number) => RayPatch[];
  /** Points spread over the surface, used to find the nearest points of two surfaces. */
  readonly samples: () => Float64Array;
  /** True if the surface runs through the whole grain with an unchanged section. */
  readonly through?: boolean;
}
