// Port area and perimeter of cross-sections against burned depth.

import { type Envelope, type Wedge, wallRadius } from '../surface';
import type { DepthField } from './field';
import { firstAtLeast } from './front-tally';

/** One cross-section at each depth: the open area, and the length of its edge in contact with the flow. */
export interface PortStation {
  readonly position: number;
  readonly area: Float64Array;
  readonly perimeter: Float64Array;
}

/**
 * Computes the section at z on a polar grid of `rings` × `spokes` cells over the wedge, each divided into triangles
 * of linear depth.
 */
export function portStation(
  field: DepthField,
  e: Envelope,
  wedge: Wedge,
  z: number,
  levels: Float64Array,
  rings: number,
  spokes: number,
): PortStation {
  const n = levels.length;
  const propellant = new Float64Array(n);
  const perimeter = new Float64Array(n);
  const radius = wallRadius(e, z);
  const columns = wedge.axisymmetric ? 1 : spokes;
  const turn = wedge.angle / columns;
  const row = (i: number): Ring => {
    const depth = new Float64Array(columns + 1);
    const floor = new Float64Array(columns + 1);
    const r = (radius * i) / rings;
    for (let j = 0; j <= columns; j++) {
      const a = wedge.from + j * turn;
      depth[j] = field.depth(r * Math.cos(a), r * Math.sin(a), z);
      if (depth[j] < field.footLitAt()) floor[j] = field.footLitAt();
    }
    return { depth, floor };
  };
  let inner = row(0);
  for (let i = 1; i <= rings; i++) {
    const outer = row(i);
    const r0 = (radius * (i - 1)) / rings;
    const r1 = (radius * i) / rings;
    for (let j = 0; j < columns; j++) {
      const area = (wedge.copies * turn * (r1 * r1 - r0 * r0)) / 2;
      // Below its minimum depth a cell lies in a buried cavity that has not ignited: the inside opens at that depth,
      // not by its distance.
      const floor = Math.max(
        inner.floor[j],
        outer.floor[j],
        inner.floor[j + 1] ?? 0,
        outer.floor[j + 1] ?? 0,
      );
      const split = floor > 0 ? firstAtLeast(levels, floor) : 0;
      for (const [from, to, least] of [
        [0, split, floor],
        [split, n, Number.NEGATIVE_INFINITY],
      ] as const) {
        if (from === to) continue;
        const some = levels.subarray(from, to);
        const left = propellant.subarray(from, to);
        const edge = perimeter.subarray(from, to);
        const at = ({ depth, floor: own }: Ring, k: number): number =>
          own[k] > 0 ? Math.max(depth[k], least) : depth[k];
        if (wedge.axisymmetric) ring(at(inner, j), at(outer, j), r0, r1, wedge.angle, some, left, edge);
        else
          cell(
            [at(inner, j), at(outer, j), at(outer, j + 1), at(inner, j + 1)],
            area,
            r0,
            r1,
            turn,
            wedge.copies,
            some,
            left,
            edge,
          );
      }
    }
    inner = outer;
  }
  const whole = Math.PI * radius * radius;
  return { position: z, area: propellant.map((p) => Math.max(0, whole - p)), perimeter };
}

/** Computes the depths around one ring, and the ignition depth of the buried cavity around each point (0 where there is none). */
interface Ring {
  readonly depth: Float64Array;
  readonly floor: Float64Array;
}

/** The depth is linear from d0 at r0 to d1 at r1 at all angles: the front is a circle. */
function ring(
  d0: number,
  d1: number,
  r0: number,
  r1: number,
  turn: number,
  levels: Float64Array,
  propellant: Float64Array,
  perimeter: Float64Array,
): void {
  for (let k = 0; k < levels.length; k++) {
    const w = levels[k];
    if (d0 > w && d1 > w) propellant[k] = propellant[k] + (turn * (r1 * r1 - r0 * r0)) / 2;
    else if (d0 > w || d1 > w) {
      const r = r0 + ((r1 - r0) * (w - d0)) / (d1 - d0);
      const left = d1 > w ? r1 * r1 - r * r : r * r - r0 * r0;
      propellant[k] = propellant[k] + (turn * left) / 2;
      perimeter[k] = perimeter[k] + turn * r;
    }
  }
}

/** A polar cell as two triangles, the outer one larger, so that their areas make up the cell's own exactly. */
function cell(
  d: readonly [number, number, number, number],
  area: number,
  r0: number,
  r1: number,
  turn: number,
  copies: number,
  levels: Float64Array,
  propellant: Float64Array,
  perimeter: Float64Array,
): void {
  const run = r1 - r0;
  const outside = r1 / (r0 + r1);
  triangle(d[0], d[1], d[2], area * outside, run, r1 * turn, copies, levels, propellant, perimeter);
  triangle(d[2], d[3], d[0], area * (1 - outside), run, r0 * turn, copies, levels, propellant, perimeter);
}

/** Right angle at the second corner, legs `run` (first to second) and `across` (second to third). */
function triangle(
  d0: number,
  d1: number,
  d2: number,
  area: number,
  run: number,
  across: number,
  copies: number,
  levels: Float64Array,
  propellant: Float64Array,
  perimeter: Float64Array,
): void {
  const least = Math.min(d0, d1, d2);
  const most = Math.max(d0, d1, d2);
  const middle = d0 + d1 + d2 - least - most;
  // Length of a level line = rate at which area passes the level times the slope of the depth in the plane.
  const slope = across > 0 ? Math.hypot((d1 - d0) / run, (d2 - d1) / across) : 0;
  for (let k = 0; k < levels.length; k++) {
    const w = levels[k];
    if (w >= most) break;
    if (w <= least) {
      propellant[k] = propellant[k] + area;
      continue;
    }
    let left: number;
    let rate: number;
    if (w < middle) {
      const span = (middle - least) * (most - least);
      left = 1 - ((w - least) * (w - least)) / span;
      rate = (2 * (w - least)) / span;
    } else {
      const span = (most - least) * (most - middle);
      left = ((most - w) * (most - w)) / span;
      rate = (2 * (most - w)) / span;
    }
    propellant[k] = propellant[k] + area * left;
    perimeter[k] = perimeter[k] + ((copies * run * across) / 2) * rate * slope;
  }
}
