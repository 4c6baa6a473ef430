// What the flaws burn before the flawless grain does: the propellant that their fronts take over, by the depth at which
// the front of the flawless grain would have reached it.
import { RAY, type RayPatch } from '../surface';
import type { DepthField } from './field';
import { type FrontTable, firstAtLeast } from './front-tally';

/** Propellant in tetrahedra small enough that the depth of the flawless grain is linear in each. */
export interface Overlap {
  readonly count: number;
  /** Middle of each: x, y, z [m]. */
  readonly at: Float64Array;
  /** [m³], all copies of the wedge. */
  readonly volume: Float64Array;
  /** Depths of the flawless grain at its four corners, ascending [m]. */
  readonly depth: Float64Array;
}

export interface OverlapBuilder {
  /** Adds the rays of one cell of a flaw's surface, from depth 0 to where each ends. */
  readonly addCell: (
    patch: RayPatch,
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
  readonly done: () => Overlap;
}

const MOST_SPLITS = 4;
const MOST_LAYERS = 24;

// The six tetrahedra between opposite corners of a block: corners of the lower face are 0 to 3 counterclockwise, those
// of the upper face 4 to 7. Neighbouring blocks share the diagonals of their faces.
const TETRAHEDRA = Int32Array.of(0, 1, 2, 6, 0, 1, 5, 6, 0, 3, 2, 6, 0, 3, 7, 6, 0, 4, 5, 6, 0, 4, 7, 6);

const grown = (a: Float64Array): Float64Array<ArrayBuffer> => {
  const b = new Float64Array(2 * a.length);
  b.set(a);
  return b;
};

/**
 * `sound` is the depth field of the flawless grain, `size` the side of a block of six tetrahedra [m]. `keep` states whether
 * a point belongs to the region that is summed.
 */
export function overlapBuilder(
  sound: DepthField,
  size: number,
  keep?: (x: number, y: number, z: number) => boolean,
): OverlapBuilder {
  let count = 0;
  let at = new Float64Array(3 * 64);
  let volume = new Float64Array(64);
  let depth = new Float64Array(4 * 64);
  const rays = Array.from({ length: 5 }, () => new Float64Array(RAY.size));
  const ends = new Float64Array(5);
  const corner = new Float64Array(12 * (MOST_LAYERS + 1));
  const reached = new Float64Array(4 * (MOST_LAYERS + 1));
  const four = new Float64Array(4);

  const addTetrahedron = (v: number, p: number, q: number, r: number, s: number): void => {
    if (count === volume.length) {
      at = grown(at);
      volume = grown(volume);
      depth = grown(depth);
    }
    for (let k = 0; k < 3; k++)
      at[3 * count + k] = (corner[3 * p + k] + corner[3 * q + k] + corner[3 * r + k] + corner[3 * s + k]) / 4;
    if (keep !== undefined && !keep(at[3 * count], at[3 * count + 1], at[3 * count + 2])) return;
    volume[count] = v;
    four[0] = reached[p];
    four[1] = reached[q];
    four[2] = reached[r];
    four[3] = reached[s];
    four.sort();
    depth.set(four, 4 * count);
    count++;
  };
  const sixfold = (p: number, q: number, r: number, s: number): number => {
    const [p3, q3, r3, s3] = [3 * p, 3 * q, 3 * r, 3 * s];
    const ax = corner[q3] - corner[p3];
    const ay = corner[q3 + 1] - corner[p3 + 1];
    const az = corner[q3 + 2] - corner[p3 + 2];
    const bx = corner[r3] - corner[p3];
    const by = corner[r3 + 1] - corner[p3 + 1];
    const bz = corner[r3 + 2] - corner[p3 + 2];
    const cx = corner[s3] - corner[p3];
    const cy = corner[s3 + 1] - corner[p3 + 1];
    const cz = corner[s3 + 2] - corner[p3 + 2];
    return Math.abs(ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx));
  };
  const place = (layers: number): void => {
    for (let j = 0; j <= layers; j++)
      for (let k = 0; k < 4; k++) {
        const node = 4 * j + k;
        const ray = rays[k];
        const t = (ends[k] * j) / layers;
        for (let i = 0; i < 3; i++) corner[3 * node + i] = ray[i] + t * ray[3 + i];
      }
  };
  const apart = (p: number, q: number): number => {
    const x = corner[3 * p] - corner[3 * q];
    const y = corner[3 * p + 1] - corner[3 * q + 1];
    const z = corner[3 * p + 2] - corner[3 * q + 2];
    return x * x + y * y + z * z;
  };

  const piece = (
    patch: RayPatch,
    u: number,
    v: number,
    du: number,
    dv: number,
    a: number,
    b: number,
    c: number,
    d: number,
    m: number,
    level: number,
  ): void => {
    const lowest = Math.min(a, b, c, d, m);
    const highest = Math.max(a, b, c, d, m);
    // Inward rays have depths below zero throughout; other depths below zero lie in the open.
    const inward = keep !== undefined;
    if (!inward && highest <= 0) return;
    patch.ray(u, v, rays[0]);
    patch.ray(u + du, v, rays[1]);
    patch.ray(u + du, v + dv, rays[2]);
    patch.ray(u, v + dv, rays[3]);
    patch.ray(u + du / 2, v + dv / 2, rays[4]);
    ends[0] = a;
    ends[1] = b;
    ends[2] = c;
    ends[3] = d;
    ends[4] = m;
    if (!inward) for (let k = 0; k < 5; k++) ends[k] = Math.max(0, ends[k]);
    place(1);
    let side = 0;
    for (const face of [0, 4])
      for (let k = 0; k < 4; k++) side = Math.max(side, apart(face + k, face + ((k + 1) & 3)));
    // What the rays of the cell burn: means of the depth and of its powers over the four triangles about the middle,
    // by the midpoints of their sides.
    let [s1, s2, s3] = [0, 0, 0];
    for (let k = 0; k < 4; k++) {
      const p = ends[k];
      const q = ends[(k + 1) & 3];
      const e = ends[4];
      for (const t of [(p + e) / 2, (q + e) / 2, (p + q) / 2]) {
        s1 += t / 12;
        s2 += (t * t) / 12;
        s3 += (t * t * t) / 12;
      }
    }
    let burned = 0;
    for (let k = 0; k < 5; k++) {
      const ray = rays[k];
      burned += (k < 4 ? 0.25 : 2) * (ray[6] * s1 + (ray[7] * s2) / 2 + (ray[8] * s3) / 3);
    }
    burned *= (patch.copies * du * dv) / 3;
    if (burned === 0) return;
    const blocks = Math.abs(burned) / patch.copies / size ** 3;
    if (
      level < MOST_SPLITS &&
      ((side > 2 * size * size && blocks > 0.25) || (!inward && lowest < 0 && level < 3))
    ) {
      const [hu, hv] = [du / 2, dv / 2];
      const south = (a + b) / 2;
      const east = (b + c) / 2;
      const north = (c + d) / 2;
      const west = (d + a) / 2;
      const quarter = (own: number, p: number, q: number): number => (own + p + q + m) / 4;
      piece(patch, u, v, hu, hv, a, south, m, west, quarter(a, south, west), level + 1);
      piece(patch, u + hu, v, hu, hv, south, b, east, m, quarter(b, south, east), level + 1);
      piece(patch, u + hu, v + hv, hu, hv, m, east, c, north, quarter(c, north, east), level + 1);
      piece(patch, u, v + hv, hu, hv, west, m, north, d, quarter(d, north, west), level + 1);
      return;
    }
    // A small cell holds little: it needs fewer layers.
    const fine = Math.min(1, Math.cbrt(4 * blocks));
    const layers = Math.max(
      1,
      Math.min(MOST_LAYERS, Math.ceil((fine * Math.max(Math.abs(highest), Math.abs(lowest))) / size)),
    );
    place(layers);
    let total = 0;
    for (let j = 0; j < layers; j++)
      for (let t = 0; t < 24; t += 4)
        total += sixfold(
          4 * j + TETRAHEDRA[t],
          4 * j + TETRAHEDRA[t + 1],
          4 * j + TETRAHEDRA[t + 2],
          4 * j + TETRAHEDRA[t + 3],
        );
    if (!(total > 0)) return;
    for (let node = 0; node < 4 * (layers + 1); node++)
      reached[node] = sound.depth(corner[3 * node], corner[3 * node + 1], corner[3 * node + 2]);
    const share = (inward ? -burned : burned) / total;
    for (let j = 0; j < layers; j++)
      for (let t = 0; t < 24; t += 4) {
        const p = 4 * j + TETRAHEDRA[t];
        const q = 4 * j + TETRAHEDRA[t + 1];
        const r = 4 * j + TETRAHEDRA[t + 2];
        const s = 4 * j + TETRAHEDRA[t + 3];
        const six = sixfold(p, q, r, s);
        if (six > 0) addTetrahedron(share * six, p, q, r, s);
      }
  };
  return {
    addCell: (patch, u, v, du, dv, a, b, c, d, m) => piece(patch, u, v, du, dv, a, b, c, d, m, 0),
    done: () => ({
      count,
      at: at.subarray(0, 3 * count),
      volume: volume.subarray(0, count),
      depth: depth.subarray(0, 4 * count),
    }),
  };
}

/**
 * At each depth: the volume of the tetrahedra that the front of the flawless grain has not reached, and the area of that
 * front inside them.
 */
export function tallyOverlap({ count, volume, depth }: Overlap, levels: Float64Array): FrontTable {
  const n = levels.length;
  const left = new Float64Array(n);
  const rate = new Float64Array(n);
  const whole = new Float64Array(n + 1);
  for (let i = 0; i < count; i++) {
    const s1 = depth[4 * i];
    const s2 = depth[4 * i + 1];
    const s3 = depth[4 * i + 2];
    const s4 = depth[4 * i + 3];
    const v = volume[i];
    let k = firstAtLeast(levels, s1);
    whole[k] += v;
    for (; k < n && levels[k] < s4; k++) {
      const w = levels[k];
      if (w < s2) {
        const x = w - s1;
        const under = (v * x * x) / ((s2 - s1) * (s3 - s1) * (s4 - s1));
        rate[k] = rate[k] + 3 * under;
        left[k] = left[k] + v - under * x;
      } else if (w < s3) {
        const x = w - s2;
        const rise = s2 - s1;
        const bend = (s3 - s1 + s4 - s2) / ((s3 - s2) * (s4 - s2));
        const per = v / ((s3 - s1) * (s4 - s1));
        rate[k] = rate[k] + 3 * per * (rise + x * (2 - bend * x));
        left[k] = left[k] + v - per * (rise * rise + x * (3 * rise + x * (3 - bend * x)));
      } else {
        const x = s4 - w;
        const over = (v * x * x) / ((s4 - s1) * (s4 - s2) * (s4 - s3));
        rate[k] = rate[k] + 3 * over;
        left[k] = left[k] + over * x;
      }
    }
  }
  for (let k = n - 1; k >= 0; k--) {
    whole[k] += whole[k + 1];
    left[k] = left[k] + whole[k + 1];
  }
  return { area: rate, volume: left };
}
