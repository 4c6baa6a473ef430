// Centre and second moments of the remaining propellant, from the sampled rays of the burning area.

import type { Wedge } from '../surface';
import { firstAtLeast } from './front-tally';
import type { Overlap } from './overlap';
import type { RayCells } from './ray-cells';

/**
 * Volume integrals of the remaining propellant at each depth, about the origin of the grain: 1, x, y, z, xx, yy, zz,
 * xy, xz, yz.
 */
export interface VolumeMoments {
  readonly depth: Float64Array;
  /** Ten numbers per depth [m³, m⁴, m⁵]. */
  readonly moments: Float64Array;
}

const TEN = 10;
const DEGREE = 5;

/**
 * Depths at which equal parts of a cell burn out: three in each of its four triangles, two of a stretch (Gauss points
 * of degree 2 and 3).
 */
function partDepths(c: RayCells, i: number, parts: Float64Array): number {
  const at = c.nodes * i;
  if (c.nodes === 2) {
    const [p, q] = [c.depth[at], c.depth[at + 1]];
    const near = 0.5 - Math.sqrt(3) / 6;
    parts[0] = p + near * (q - p);
    parts[1] = q - near * (q - p);
    return 2;
  }
  const m = c.depth[at + 4];
  for (let k = 0; k < 4; k++) {
    const p = c.depth[at + k];
    const q = c.depth[at + ((k + 1) & 3)];
    const third = (m + p + q) / 6;
    parts[3 * k] = third + m / 2;
    parts[3 * k + 1] = third + p / 2;
    parts[3 * k + 2] = third + q / 2;
  }
  return 12;
}

/**
 * Computes the polynomials in t of the ten integrands along one ray: weight times position products; returned in
 * `poly[10 × 5]`.
 */
function integrands(c: RayCells, i: number, poly: Float64Array): void {
  const w = [c.weight[3 * i], c.weight[3 * i + 1], c.weight[3 * i + 2]];
  const s = [0, 1, 2].map((k) => c.middle[6 * i + k]);
  const d = [3, 4, 5].map((k) => c.middle[6 * i + k]);
  poly.fill(0);
  const put = (row: number, p0: number, p1: number, p2: number): void => {
    for (let k = 0; k < 3; k++) {
      const at = DEGREE * row + k;
      const wk = w[k];
      poly[at] = poly[at] + wk * p0;
      poly[at + 1] = poly[at + 1] + wk * p1;
      if (p2 !== 0) poly[at + 2] = poly[at + 2] + wk * p2;
    }
  };
  put(0, 1, 0, 0);
  for (let a = 0; a < 3; a++) put(1 + a, s[a], d[a], 0);
  const pairs = [
    [0, 0],
    [1, 1],
    [2, 2],
    [0, 1],
    [0, 2],
    [1, 2],
  ] as const;
  pairs.forEach(([a, b], k) => {
    const [sa, sb, da, db] = [s[a], s[b], d[a], d[b]];
    put(4 + k, sa * sb, sa * db + sb * da, da * db);
  });
}

const integral = (poly: Float64Array, row: number, t: number): number => {
  let sum = 0;
  for (let k = DEGREE - 1; k >= 0; k--) sum = (sum + poly[DEGREE * row + k] / (k + 1)) * t;
  return sum;
};

/** Sums the moments at the given depths. Cells in a wedge are turned and mirrored into the whole grain. */
export function volumeMoments(cells: readonly RayCells[], wedge: Wedge, levels: Float64Array): VolumeMoments {
  const n = levels.length;
  const moments = new Float64Array(TEN * n);
  const poly = new Float64Array(TEN * DEGREE);
  const parts = new Float64Array(12);
  const groups = new Map<number, RayCells[]>();
  for (const c of cells) groups.set(c.litAt, [...(groups.get(c.litAt) ?? []), c]);
  for (const [litAt, members] of groups) {
    const unburned = new Float64Array(TEN * DEGREE * (n + 1));
    const whole = new Float64Array(TEN * (n + 1));
    for (const c of members)
      for (let i = 0; i < c.count; i++) {
        integrands(c, i, poly);
        const count = partDepths(c, i, parts);
        for (let part = 0; part < count; part++) {
          const depth = parts[part];
          if (depth <= 0) continue;
          const k = firstAtLeast(levels, depth + litAt);
          for (let p = 0; p < TEN * DEGREE; p++) {
            const at = TEN * DEGREE * k + p;
            unburned[at] = unburned[at] + poly[p] / count;
          }
          for (let m = 0; m < TEN; m++)
            whole[TEN * k + m] = whole[TEN * k + m] + integral(poly, m, depth) / count;
        }
      }
    // A ray that burns at level k has its whole volume minus what it has burned: sum from the deepest level.
    const sum = new Float64Array(TEN * DEGREE);
    const left = new Float64Array(TEN);
    for (let k = n - 1; k >= 0; k--) {
      for (let p = 0; p < sum.length; p++) sum[p] = sum[p] + unburned[TEN * DEGREE * (k + 1) + p];
      const t = Math.max(0, levels[k] - litAt);
      for (let m = 0; m < TEN; m++) {
        left[m] = left[m] + whole[TEN * (k + 1) + m];
        const at = TEN * k + m;
        moments[at] = moments[at] + left[m] - integral(sum, m, t);
      }
    }
  }
  for (let k = 0; k < n; k++) spreadOverWedge(moments.subarray(TEN * k, TEN * k + TEN), wedge);
  return { depth: levels, moments };
}

/** The same moments of propellant taken as points, each until the front of the flawless grain reaches it. */
export function overlapMoments(
  parts: readonly { readonly overlap: Overlap; readonly share: number }[],
  wedge: Wedge,
  levels: Float64Array,
): Float64Array {
  const n = levels.length;
  const moments = new Float64Array(TEN * (n + 1));
  for (const { overlap, share } of parts)
    for (let i = 0; i < overlap.count; i++) {
      const [x, y, z] = overlap.at.subarray(3 * i, 3 * i + 3);
      const [a, b, c, d] = overlap.depth.subarray(4 * i, 4 * i + 4);
      const v = share * overlap.volume[i];
      const at = TEN * firstAtLeast(levels, (a + b + c + d) / 4);
      [1, x, y, z, x * x, y * y, z * z, x * y, x * z, y * z].forEach((m, k) => {
        moments[at + k] = moments[at + k] + v * m;
      });
    }
  // What is first reached at a depth counts at all smaller ones.
  const left = moments.subarray(TEN, TEN * (n + 1));
  for (let k = n - 2; k >= 0; k--)
    for (let i = 0; i < TEN; i++) left[TEN * k + i] = left[TEN * k + i] + left[TEN * (k + 1) + i];
  for (let k = 0; k < n; k++) spreadOverWedge(left.subarray(TEN * k, TEN * k + TEN), wedge);
  return left;
}

/** Averages the moments over the turns and the mirror of the wedge. */
function spreadOverWedge(m: Float64Array, wedge: Wedge): void {
  const [, x, y, , xx, yy, , xy, xz, yz] = Array.from(m);
  const round = wedge.axisymmetric;
  const turns = round ? 4 : wedge.mirrored ? wedge.copies / 2 : wedge.copies;
  const images: (readonly [number, number])[] = [];
  for (let k = 0; k < turns; k++) {
    const turn = (2 * Math.PI * k) / turns;
    images.push([turn, 1]);
    if (wedge.mirrored && !round) images.push([turn + 2 * wedge.from, -1]);
  }
  const mean = new Float64Array(7);
  for (const [turn, hand] of images) {
    // (x, y) -> (c x - h s y, s x + h c y): a turn, or a mirror about the wedge's edge followed by one.
    const c = Math.cos(turn) / images.length;
    const s = Math.sin(turn) / images.length;
    const [C, S] = [Math.cos(turn), Math.sin(turn)];
    const add = (k: number, value: number): void => {
      mean[k] = mean[k] + value;
    };
    add(0, c * x - hand * s * y);
    add(1, s * x + hand * c * y);
    add(2, C * c * xx - 2 * hand * C * s * xy + S * s * yy);
    add(3, S * s * xx + 2 * hand * C * s * xy + C * c * yy);
    add(4, C * s * xx + hand * (C * c - S * s) * xy - C * s * yy);
    add(5, c * xz - hand * s * yz);
    add(6, s * xz + hand * c * yz);
  }
  const [mx, my, mxx, myy, mxy, mxz, myz] = Array.from(mean);
  m.set([mx, my], 1);
  m.set([mxx, myy], 4);
  m.set([mxy, mxz, myz], 7);
}
