// A fin whose height or thickness changes along the grain: a convex body of six plane faces, repeated about the axis.
import type { RayPatch, Source } from './source';
import type { Wedge } from './symmetry';

export interface TaperedFinShape {
  readonly name: string;
  readonly count: number;
  /** Direction of the first fin [rad]. */
  readonly phase: number;
  readonly from: number;
  readonly to: number;
  /** Distance of the flat tip from the axis, and half the thickness, at both ends [m]. */
  readonly tip: readonly [number, number];
  readonly halfWidth: readonly [number, number];
  /** Axial ends of the grain [m]; a fan that would leave the grain there is cut. */
  readonly low: number;
  readonly high: number;
}

type Vec = readonly [number, number, number];
const sub = (a: Vec, b: Vec): Vec => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const dot = (a: Vec, b: Vec): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: Vec, b: Vec): Vec => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
const unit = (a: Vec): Vec => {
  const n = Math.sqrt(dot(a, a));
  return [a[0] / n, a[1] / n, a[2] / n];
};
const mix = (a: Vec, b: Vec, t: number): Vec => [
  a[0] + t * (b[0] - a[0]),
  a[1] + t * (b[1] - a[1]),
  a[2] + t * (b[2] - a[2]),
];

interface Face {
  readonly corners: readonly number[];
  readonly normal: Vec;
  /** True for a face in an end of the grain, where the fin is open. */
  readonly mouth: boolean;
}

// Corners 0..3 around the near end, 4..7 around the far end, each from the axis at -h outwards and back at +h.
const QUADS = [
  [0, 3, 2, 1],
  [4, 5, 6, 7],
  [0, 1, 5, 4],
  [1, 2, 6, 5],
  [2, 3, 7, 6],
  [3, 0, 4, 7],
] as const;

function bodyOf(fin: TaperedFinShape): { readonly points: readonly Vec[]; readonly faces: readonly Face[] } {
  const points: Vec[] = [];
  for (const [k, z] of [
    [0, fin.from],
    [1, fin.to],
  ] as const) {
    const h = fin.halfWidth[k];
    points.push([0, -h, z], [fin.tip[k], -h, z], [fin.tip[k], h, z], [0, h, z]);
  }
  const faces = QUADS.map((corners, k): Face => {
    const [a, b, c] = corners.map((i) => points[i]) as [Vec, Vec, Vec];
    const slack = 1e-9 * (fin.high - fin.low);
    const mouth = k === 0 ? fin.from <= fin.low + slack : k === 1 && fin.to >= fin.high - slack;
    return { corners, normal: unit(cross(sub(b, a), sub(c, a))), mouth };
  });
  return { points, faces };
}

export function taperedFin(fin: TaperedFinShape): Source {
  const { points, faces } = bodyOf(fin);
  const step = (2 * Math.PI) / fin.count;
  const place = (angle: number, p: Float64Array, at: number): void => {
    const [c, s] = [Math.cos(angle), Math.sin(angle)];
    const [x, y] = [p[at], p[at + 1]];
    p[at] = c * x - s * y;
    p[at + 1] = s * x + c * y;
  };
  const distance = (p: Vec, foot: Float64Array): number => {
    let inside = Number.NEGATIVE_INFINITY;
    let innermost: Vec | undefined;
    let best = Number.POSITIVE_INFINITY;
    for (const face of faces) {
      if (face.mouth) continue;
      const away = dot(sub(p, points[face.corners[0]]), face.normal);
      if (away <= 0) {
        if (away > inside) {
          inside = away;
          innermost = face.normal;
        }
        continue;
      }
      const drop = mixAlong(p, face.normal, -away);
      let within = true;
      for (let k = 0; k < 4; k++) {
        const a = points[face.corners[k]];
        const edge = sub(points[face.corners[(k + 1) % 4]], a);
        if (dot(cross(edge, sub(drop, a)), face.normal) >= 0) continue;
        within = false;
        const length2 = dot(edge, edge);
        if (length2 === 0) continue;
        const t = Math.min(1, Math.max(0, dot(sub(p, a), edge) / length2));
        const q = mixAlong(a, edge, t);
        const gap = sub(p, q);
        const d = Math.sqrt(dot(gap, gap));
        if (d < best) {
          best = d;
          foot.set(q);
        }
      }
      if (within && away < best) {
        best = away;
        foot.set(drop);
      }
    }
    if (best < Number.POSITIVE_INFINITY) return best;
    if (innermost !== undefined) foot.set(mixAlong(p, innermost, -inside));
    return inside;
  };
  return {
    name: fin.name,
    symmetry: { order: fin.count, mirror: fin.phase },
    sheet: false,
    span: [
      faces[0].mouth ? Number.NEGATIVE_INFINITY : fin.from,
      faces[1].mouth ? Number.POSITIVE_INFINITY : fin.to,
    ],
    nearest: (x, y, z, foot) => {
      const angle = fin.phase + step * Math.round((Math.atan2(y, x) - fin.phase) / step);
      const [c, s] = [Math.cos(angle), Math.sin(angle)];
      const d = distance([c * x + s * y, c * y - s * x, z], foot);
      place(angle, foot, 0);
      return d;
    },
    patches: (wedge, reach) => {
      const one = finPatches(fin, points, faces, reach);
      const shared = wedge.axisymmetric ? false : orderOf(wedge) % fin.count === 0;
      const angles = Array.from({ length: shared ? 1 : fin.count }, (_, k) => fin.phase + k * step);
      return angles.flatMap((angle) =>
        one.map((p) => ({
          ...p,
          copies: shared ? fin.count : 1,
          ray: (u: number, v: number, out: Float64Array) => {
            p.ray(u, v, out);
            place(angle, out, 0);
            place(angle, out, 3);
          },
        })),
      );
    },
    samples: () => {
      const found: number[] = [];
      const p = new Float64Array(3);
      for (let k = 0; k < fin.count; k++)
        for (const face of faces)
          for (let i = 0; i <= 6; i++)
            for (let j = 0; j <= 6; j++) {
              const [a, b, c, d] = face.corners.map((n) => points[n]) as [Vec, Vec, Vec, Vec];
              p.set(mix(mix(a, b, i / 6), mix(d, c, i / 6), j / 6));
              place(fin.phase + k * step, p, 0);
              found.push(p[0], p[1], p[2]);
            }
      return Float64Array.from(found);
    },
  };
}

const orderOf = (wedge: Wedge): number => (wedge.mirrored ? wedge.copies / 2 : wedge.copies);

const mixAlong = (p: Vec, d: Vec, t: number): Vec => [p[0] + t * d[0], p[1] + t * d[1], p[2] + t * d[2]];

const emit = (out: Float64Array, s: Vec, n: Vec, w0: number, w1: number, w2: number): void => {
  out.set(s, 0);
  out.set(n, 3);
  out[6] = w0;
  out[7] = w1;
  out[8] = w2;
};

function finPatches(
  fin: TaperedFinShape,
  points: readonly Vec[],
  faces: readonly Face[],
  reach: number,
): RayPatch[] {
  const patches: RayPatch[] = [];
  const put = (sizeU: number, sizeV: number, ray: RayPatch['ray']): void => {
    patches.push({ sizeU, sizeV, copies: 1, ray });
  };
  for (const { corners, normal, mouth } of faces) {
    if (mouth) continue;
    const [a, b, c, d] = corners.map((n) => points[n]) as [Vec, Vec, Vec, Vec];
    const [ab, ad] = [sub(b, a), sub(d, a)];
    put(Math.max(Math.hypot(...ab), 1e-12), Math.max(Math.hypot(...ad), 1e-12), (u, v, out) => {
      const du = mix(ab, sub(c, d), v);
      const dv = mix(ad, sub(c, b), u);
      emit(out, mix(mix(a, b, u), mix(d, c, u), v), normal, Math.hypot(...cross(du, dv)), 0, 0);
    });
  }
  const seen = new Set<string>();
  for (const face of faces)
    face.corners.forEach((i, k) => {
      const j = face.corners[(k + 1) % 4];
      const key = i < j ? `${i}-${j}` : `${j}-${i}`;
      const other = faces.find((f) => f !== face && f.corners.includes(i) && f.corners.includes(j));
      if (seen.has(key) || other === undefined) return;
      seen.add(key);
      addEdge(fin, points[i], points[j], face.normal, other.normal, reach, put);
    });
  points.forEach((p, i) => {
    const [a, b, c] = faces.filter((f) => f.corners.includes(i)).map((f) => f.normal) as [Vec, Vec, Vec];
    const volume = Math.abs(dot(a, cross(b, c)));
    // The directions between three normals, as a spherical triangle.
    put(1.5 * reach, 1.5 * reach, (u, v, out) => {
      const m = mix(a, mix(b, c, v), u);
      const length = Math.sqrt(dot(m, m));
      emit(out, p, [m[0] / length, m[1] / length, m[2] / length], 0, 0, (u * volume) / length ** 3);
    });
  });
  return patches;
}

/** The fan between two faces; along a grain end only the part that stays inside. */
function addEdge(
  fin: TaperedFinShape,
  p: Vec,
  q: Vec,
  first: Vec,
  second: Vec,
  reach: number,
  put: (sizeU: number, sizeV: number, ray: RayPatch['ray']) => void,
): void {
  const slack = 1e-9 * (fin.high - fin.low);
  const side = unit(sub(second, mixAlong([0, 0, 0], first, dot(first, second))));
  const angle = Math.acos(Math.max(-1, Math.min(1, dot(first, second))));
  let [from, to] = [0, angle];
  const end =
    p[2] >= fin.high - slack && q[2] >= fin.high - slack
      ? 1
      : p[2] <= fin.low + slack && q[2] <= fin.low + slack
        ? -1
        : 0;
  if (end !== 0) {
    // z component of cos φ first + sin φ side changes sign where tan φ = -first/side.
    const zero = Math.atan2(-end * first[2], end * side[2]);
    const leaves = (phi: number): boolean => end * (Math.cos(phi) * first[2] + Math.sin(phi) * side[2]) > 0;
    const cut = zero < 0 ? zero + Math.PI : zero;
    if (leaves(from + 1e-9)) from = Math.min(cut, to);
    if (leaves(to - 1e-9)) to = Math.max(Math.min(cut, to), from);
    if (to - from < 1e-9) return;
  }
  const length = Math.hypot(...sub(q, p));
  if (length === 0) return;
  put(length, (to - from) * reach, (u, v, out) => {
    const phi = from + v * (to - from);
    const [c, s] = [Math.cos(phi), Math.sin(phi)];
    const n: Vec = [c * first[0] + s * side[0], c * first[1] + s * side[1], c * first[2] + s * side[2]];
    emit(out, mix(p, q, u), n, 0, length * (to - from), 0);
  });
}
