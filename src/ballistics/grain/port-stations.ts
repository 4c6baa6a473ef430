// Port area and perimeter of cross-sections against burned depth.
import type { DepthField } from './field';
import type { Envelope } from './source';
import type { Wedge } from './symmetry';
import { wallRadius } from './wall-exposure';

/** One cross-section: what the front has opened in it, and how long the edge is that the flow washes, at each depth. */
export interface PortStation {
  readonly position: number;
  readonly area: Float64Array;
  readonly perimeter: Float64Array;
}

/** The section at z on a polar grid of `rings` × `spokes` cells over the wedge, each cut into triangles of linear depth. */
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
  const at = (i: number, j: number): number => {
    const r = (radius * i) / rings;
    const a = wedge.from + j * turn;
    return field.depth(r * Math.cos(a), r * Math.sin(a), z);
  };
  let inner = Float64Array.from({ length: columns + 1 }, (_, j) => at(0, j));
  for (let i = 1; i <= rings; i++) {
    const outer = Float64Array.from({ length: columns + 1 }, (_, j) => at(i, j));
    const r0 = (radius * (i - 1)) / rings;
    const r1 = (radius * i) / rings;
    for (let j = 0; j < columns; j++) {
      const area = (wedge.copies * turn * (r1 * r1 - r0 * r0)) / 2;
      if (wedge.axisymmetric) {
        ring(inner[j], outer[j], r0, r1, wedge.angle, levels, propellant, perimeter);
        continue;
      }
      const corners = [inner[j], outer[j], outer[j + 1], inner[j + 1]] as [number, number, number, number];
      cell(corners, area, r0, r1, turn, wedge.copies, levels, propellant, perimeter);
    }
    inner = outer;
  }
  const whole = Math.PI * radius * radius;
  return { position: z, area: propellant.map((p) => Math.max(0, whole - p)), perimeter };
}

/** Depth runs from d0 at r0 to d1 at r1 all around: the front is a circle. */
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
