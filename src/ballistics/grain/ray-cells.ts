// Rays sampled over a patch of surface, cell by cell: how deep each corner burns and how much area the cell carries.
import type { RayCutter } from './cut';
import { RAY, type RayPatch } from './source';

/** Cells of one patch. `depth` holds `nodes` burned depths a cell; `weight` and `middle` three and six numbers a cell. */
export interface RayCells {
  readonly litAt: number;
  /** 5: a cell of a surface, four corners around and its middle last; 2: a stretch of a curve. */
  readonly nodes: 2 | 5;
  readonly count: number;
  readonly depth: Float64Array;
  /** Integrals of the three area weights over the cell, all copies counted. */
  readonly weight: Float64Array;
  /** Start and direction of the ray in the middle of the cell. */
  readonly middle: Float64Array;
}

export interface Sampling {
  /** Side of an undivided cell [m]. */
  readonly spacing: number;
  /** A cell is quartered while its middle is off the mean of its corners by more than this [m]; small cells may be further off. */
  readonly surfaceTolerance: number;
  /** A curve is halved until the area between the depth and its chord is less than this [m²]. */
  readonly curveTolerance: number;
  /** Length of an undivided stretch of a curve [m]. */
  readonly curveSpacing: number;
}

/** Sample one patch. */
export const sampleRays = (
  patch: RayPatch,
  litAt: number,
  owner: number,
  cutter: RayCutter,
  how: Sampling,
): RayCells =>
  patch.sizeU === 0 || patch.sizeV === 0
    ? sampleCurve(patch, litAt, owner, cutter, how)
    : sampleSurface(patch, litAt, owner, cutter, how);

const MOST_QUARTERINGS = 7;
// A crease of the depth cannot be sampled away: what it spoils shrinks with the cell, so it is chased less the smaller the cell.
const CREASE = Float64Array.from({ length: MOST_QUARTERINGS + 1 }, (_, level) => 2 ** (-level / 2));
const MOST_HALVINGS = 18;

const grown = (a: Float64Array): Float64Array => {
  const b = new Float64Array(2 * a.length);
  b.set(a);
  return b;
};

function sampleSurface(
  patch: RayPatch,
  litAt: number,
  owner: number,
  cutter: RayCutter,
  how: Sampling,
): RayCells {
  const nu = Math.max(4, Math.ceil(patch.sizeU / how.spacing));
  const nv = Math.max(4, Math.ceil(patch.sizeV / how.spacing));
  const ray = new Float64Array(RAY.size);
  const depthAt = (u: number, v: number): number => {
    patch.ray(u, v, ray);
    return cutter.cut(ray, litAt, owner);
  };
  let room = 2 * nu * nv;
  let depth: Float64Array = new Float64Array(5 * room);
  let weight: Float64Array = new Float64Array(3 * room);
  let middle: Float64Array = new Float64Array(6 * room);
  let count = 0;

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
    if (count === room) {
      room *= 2;
      depth = grown(depth);
      weight = grown(weight);
      middle = grown(middle);
    }
    const [w0, w1, w2] = [3 * count, 3 * count + 1, 3 * count + 2];
    weight[w0] = 0;
    weight[w1] = 0;
    weight[w2] = 0;
    // Corners and middle together integrate the weight to fourth order.
    for (let k = 0; k < 5; k++) {
      if (k < 4) patch.ray(u + (k === 1 || k === 2 ? du : 0), v + (k > 1 ? dv : 0), ray);
      else patch.ray(u + du / 2, v + dv / 2, ray);
      const share = (patch.copies * du * dv * (k < 4 ? 0.25 : 2)) / 3;
      weight[w0] = weight[w0] + share * ray[6];
      weight[w1] = weight[w1] + share * ray[7];
      weight[w2] = weight[w2] + share * ray[8];
    }
    for (let k = 0; k < 6; k++) middle[6 * count + k] = ray[k];
    const at = 5 * count;
    depth[at] = a;
    depth[at + 1] = b;
    depth[at + 2] = c;
    depth[at + 3] = d;
    depth[at + 4] = m;
    count++;
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
  return {
    litAt,
    nodes: 5,
    count,
    depth: depth.subarray(0, 5 * count),
    weight: weight.subarray(0, 3 * count),
    middle: middle.subarray(0, 6 * count),
  };
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
  const at = (s: number): void => (alongU ? patch.ray(s, 0.5, ray) : patch.ray(0.5, s, ray));
  const depth: number[] = [];
  const weight: number[] = [];
  const middle: number[] = [];
  let count = 0;
  const node = (s: number): readonly [number, number, number, number] => {
    at(s);
    return [cutter.cut(ray, litAt, owner), ray[6], ray[7], ray[8]];
  };
  const straight = how.curveTolerance / Math.max(patch.sizeU, patch.sizeV);
  type Node = ReturnType<typeof node>;
  const stretch = (s0: number, a: Node, s1: number, b: Node, level: number): void => {
    const s = (s0 + s1) / 2;
    const m = node(s);
    if (m[0] <= 0 && a[0] <= 0 && b[0] <= 0) return;
    if (Math.abs(m[0] - (a[0] + b[0]) / 2) * (s1 - s0) > straight && level < MOST_HALVINGS) {
      stretch(s0, a, s, m, level + 1);
      stretch(s, m, s1, b, level + 1);
      return;
    }
    const run = (patch.copies * (s1 - s0)) / 24;
    for (const [p, q, half] of [
      [a, m, 0],
      [m, b, 1],
    ] as const) {
      if (p[0] <= 0 && q[0] <= 0) continue;
      depth.push(p[0], q[0]);
      for (let k = 1; k <= 3; k++) {
        const [w0, wm, w1] = [a[k], m[k], b[k]];
        // Half of the parabola through the three weights.
        weight.push(run * (half === 0 ? 5 * w0 + 8 * wm - w1 : -w0 + 8 * wm + 5 * w1));
      }
      at((half === 0 ? s0 + s : s + s1) / 2);
      for (let k = 0; k < 6; k++) middle.push(ray[k]);
      count++;
    }
  };
  const parts = Math.max(2, Math.ceil(Math.max(patch.sizeU, patch.sizeV) / how.curveSpacing));
  let last = node(0);
  for (let i = 0; i < parts; i++) {
    const next = node((i + 1) / parts);
    stretch(i / parts, last, (i + 1) / parts, next, 0);
    last = next;
  }
  return {
    litAt,
    nodes: 2,
    count,
    depth: Float64Array.from(depth),
    weight: Float64Array.from(weight),
    middle: Float64Array.from(middle),
  };
}
