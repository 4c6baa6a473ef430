// Rays sampled over a patch of surface in cells: the depth burned at each corner and the area that each cell carries.

import { RAY, type RayPatch } from '../surface';
import type { RayCutter } from './cut';

/**
 * Cells of one patch. `depth` holds `nodes` depths burned per cell; `weight` and `middle` hold three and six numbers
 * per cell.
 */
export interface RayCells {
  readonly litAt: number;
  /** 5: a cell of a surface, four corners around and its middle last; 2: a stretch of a curve. */
  readonly nodes: 2 | 5;
  readonly count: number;
  readonly depth: Float64Array;
  /** Integrals of the three area weights over the cell, for all copies. */
  readonly weight: Float64Array;
  /** Start and direction of the ray in the middle of the cell. */
  readonly middle: Float64Array;
}

export interface Sampling {
  /** Side of an undivided cell [m]. */
  readonly spacing: number;
  /**
   * A cell is quartered while the depth at its middle differs from the mean of its corners by more than this [m]; a
   * larger difference is allowed in small cells.
   */
  readonly surfaceTolerance: number;
  /** A curve is halved until the area between the depth and its chord is less than this [m²]. */
  readonly curveTolerance: number;
  /** Length of an undivided stretch of a curve [m]. */
  readonly curveSpacing: number;
}

/** A cell of a surface: its corner in (u, v), its sides, and the depths at its corners, counterclockwise, and middle. */
export type EachCell = (
  u: number,
  v: number,
  du: number,
  dv: number,
  a: number,
  b: number,
  c: number,
  d: number,
  m: number,
) => void;

/** Samples one patch; `each` is called with every cell kept of a surface. */
export const sampleRays = (
  patch: RayPatch,
  litAt: number,
  owner: number,
  cutter: RayCutter,
  how: Sampling,
  each?: EachCell,
): RayCells =>
  patch.sizeU === 0 || patch.sizeV === 0
    ? sampleCurve(patch, litAt, owner, cutter, how)
    : sampleSurface(patch, litAt, owner, cutter, how, each);

const MOST_QUARTERINGS = 7;
// A crease in the depth cannot be resolved by sampling. Its error shrinks with the cell, so the tolerance grows as
// cells get smaller.
const CREASE = Float64Array.from({ length: MOST_QUARTERINGS + 1 }, (_, level) => 2 ** (-level / 2));
const MOST_HALVINGS = 18;

/** Cells found so far. The arrays are replaced by longer ones when they are full. */
interface Found {
  readonly nodes: RayCells['nodes'];
  count: number;
  depth: Float64Array;
  weight: Float64Array;
  middle: Float64Array;
}

const found = (nodes: RayCells['nodes'], room: number): Found => ({
  nodes,
  count: 0,
  depth: new Float64Array(nodes * room),
  weight: new Float64Array(3 * room),
  middle: new Float64Array(6 * room),
});

const grown = (a: Float64Array): Float64Array => {
  const b = new Float64Array(2 * a.length);
  b.set(a);
  return b;
};

/** Adds a cell whose middle is on the ray; returns its index. */
function addCell(cells: Found, ray: Float64Array): number {
  const cell = cells.count++;
  if (3 * cell === cells.weight.length) {
    cells.depth = grown(cells.depth);
    cells.weight = grown(cells.weight);
    cells.middle = grown(cells.middle);
  }
  for (let k = 0; k < 6; k++) cells.middle[6 * cell + k] = ray[k];
  return cell;
}

const trimmed = ({ nodes, count, depth, weight, middle }: Found, litAt: number): RayCells => ({
  litAt,
  nodes,
  count,
  depth: depth.subarray(0, nodes * count),
  weight: weight.subarray(0, 3 * count),
  middle: middle.subarray(0, 6 * count),
});

function sampleSurface(
  patch: RayPatch,
  litAt: number,
  owner: number,
  cutter: RayCutter,
  how: Sampling,
  each: EachCell | undefined,
): RayCells {
  const nu = Math.max(4, Math.ceil(patch.sizeU / how.spacing));
  const nv = Math.max(4, Math.ceil(patch.sizeV / how.spacing));
  const ray = new Float64Array(RAY.size);
  const depthAt = (u: number, v: number): number => {
    patch.ray(u, v, ray);
    return cutter.cut(ray, litAt, owner);
  };
  const cells = found(5, 2 * nu * nv);

  const leaf = (
    u: number,
    v: number,
    du: number,
    dv: number,
    a: number,
    b: number,
    c: number,
    d: number,
    m: number,
  ): void => {
    let [w0, w1, w2] = [0, 0, 0];
    // Corners and middle together integrate the weight to fourth order; the middle comes last and remains in `ray`.
    for (let k = 0; k < 5; k++) {
      if (k < 4) patch.ray(u + (k === 1 || k === 2 ? du : 0), v + (k > 1 ? dv : 0), ray);
      else patch.ray(u + du / 2, v + dv / 2, ray);
      const share = (patch.copies * du * dv * (k < 4 ? 0.25 : 2)) / 3;
      w0 += share * ray[6];
      w1 += share * ray[7];
      w2 += share * ray[8];
    }
    const cell = addCell(cells, ray);
    const { weight, depth } = cells;
    weight[3 * cell] = w0;
    weight[3 * cell + 1] = w1;
    weight[3 * cell + 2] = w2;
    const at = 5 * cell;
    depth[at] = a;
    depth[at + 1] = b;
    depth[at + 2] = c;
    depth[at + 3] = d;
    depth[at + 4] = m;
  };
  const divide = (
    u: number,
    v: number,
    du: number,
    dv: number,
    a: number,
    b: number,
    c: number,
    d: number,
    level: number,
  ): void => {
    const m = depthAt(u + du / 2, v + dv / 2);
    if (m <= 0 && a <= 0 && b <= 0 && c <= 0 && d <= 0) return;
    if (
      level === MOST_QUARTERINGS ||
      Math.abs(m - (a + b + c + d) / 4) * CREASE[level] <= how.surfaceTolerance
    ) {
      leaf(u, v, du, dv, a, b, c, d, m);
      each?.(u, v, du, dv, a, b, c, d, m);
      return;
    }
    const [hu, hv] = [du / 2, dv / 2];
    const south = depthAt(u + hu, v);
    const east = depthAt(u + du, v + hv);
    const north = depthAt(u + hu, v + dv);
    const west = depthAt(u, v + hv);
    divide(u, v, hu, hv, a, south, m, west, level + 1);
    divide(u + hu, v, hu, hv, south, b, east, m, level + 1);
    divide(u + hu, v + hv, hu, hv, m, east, c, north, level + 1);
    divide(u, v + hv, hu, hv, west, m, north, d, level + 1);
  };

  let last = new Float64Array(nv + 1);
  let next = new Float64Array(nv + 1);
  for (let j = 0; j <= nv; j++) last[j] = depthAt(0, j / nv);
  for (let i = 0; i < nu; i++) {
    for (let j = 0; j <= nv; j++) next[j] = depthAt((i + 1) / nu, j / nv);
    for (let j = 0; j < nv; j++)
      divide(i / nu, j / nv, 1 / nu, 1 / nv, last[j], next[j], next[j + 1], last[j + 1], 0);
    [last, next] = [next, last];
  }
  return trimmed(cells, litAt);
}

function sampleCurve(
  patch: RayPatch,
  litAt: number,
  owner: number,
  cutter: RayCutter,
  how: Sampling,
): RayCells {
  const alongU = patch.sizeV === 0;
  const ray = new Float64Array(RAY.size);
  const size = Math.max(patch.sizeU, patch.sizeV);
  const parts = Math.max(2, Math.ceil(size / how.curveSpacing));
  const straight = how.curveTolerance / size;
  const cells = found(2, 8 * parts);
  const at = (s: number): void => (alongU ? patch.ray(s, 0.5, ray) : patch.ray(0.5, s, ray));
  /** Depth at s; the ray and its weights remain in `ray`. */
  const depthAt = (s: number): number => {
    at(s);
    return cutter.cut(ray, litAt, owner);
  };
  const half = (p: number, q: number, w0: number, w1: number, w2: number, s: number): void => {
    if (p <= 0 && q <= 0) return;
    at(s);
    const cell = addCell(cells, ray);
    const { weight, depth } = cells;
    depth[2 * cell] = p;
    depth[2 * cell + 1] = q;
    weight[3 * cell] = w0;
    weight[3 * cell + 1] = w1;
    weight[3 * cell + 2] = w2;
  };
  // Depth p and weights a0, a1, a2 at s0; depth q and weights b0, b1, b2 at s1.
  const stretch = (
    s0: number,
    p: number,
    a0: number,
    a1: number,
    a2: number,
    s1: number,
    q: number,
    b0: number,
    b1: number,
    b2: number,
    level: number,
  ): void => {
    const s = (s0 + s1) / 2;
    const m = depthAt(s);
    if (m <= 0 && p <= 0 && q <= 0) return;
    const m0 = ray[6];
    const m1 = ray[7];
    const m2 = ray[8];
    if (Math.abs(m - (p + q) / 2) * (s1 - s0) > straight && level < MOST_HALVINGS) {
      stretch(s0, p, a0, a1, a2, s, m, m0, m1, m2, level + 1);
      stretch(s, m, m0, m1, m2, s1, q, b0, b1, b2, level + 1);
      return;
    }
    // Each half takes its part of the parabola through the three weights.
    const run = (patch.copies * (s1 - s0)) / 24;
    const [c0, c1, c2] = [8 * m0, 8 * m1, 8 * m2];
    half(p, m, run * (5 * a0 + c0 - b0), run * (5 * a1 + c1 - b1), run * (5 * a2 + c2 - b2), (s0 + s) / 2);
    half(m, q, run * (5 * b0 + c0 - a0), run * (5 * b1 + c1 - a1), run * (5 * b2 + c2 - a2), (s + s1) / 2);
  };
  let p = depthAt(0);
  let a0 = ray[6];
  let a1 = ray[7];
  let a2 = ray[8];
  for (let i = 1; i <= parts; i++) {
    const q = depthAt(i / parts);
    const b0 = ray[6];
    const b1 = ray[7];
    const b2 = ray[8];
    stretch((i - 1) / parts, p, a0, a1, a2, i / parts, q, b0, b1, b2, 0);
    p = q;
    a0 = b0;
    a1 = b1;
    a2 = b2;
  }
  return trimmed(cells, litAt);
}
