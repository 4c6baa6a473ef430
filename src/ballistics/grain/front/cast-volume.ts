// Volume of the propellant as cast, by integration over sections or about the middle of a void: independent of the
// rays of the burning area.
import type { GrainShape } from '../shapes';
import { commonWedge, outsideBy, type Source, type Wedge, wallRadius } from '../surface';
import { type DepthField, depthField, type LitSource } from './field';

/** Adaptive Simpson rule; `tolerance` is absolute. Starts with `panels` equal panels. */
function simpson(
  f: (x: number) => number,
  from: number,
  to: number,
  tolerance: number,
  panels: number,
  deepest: number,
): number {
  const step = (
    a: number,
    fa: number,
    b: number,
    fb: number,
    m: number,
    fm: number,
    rough: number,
    tol: number,
    level: number,
  ): number => {
    const l = (a + m) / 2;
    const r = (m + b) / 2;
    const fl = f(l);
    const fr = f(r);
    const left = ((m - a) / 6) * (fa + 4 * fl + fm);
    const right = ((b - m) / 6) * (fm + 4 * fr + fb);
    const off = left + right - rough;
    if (level <= 0 || Math.abs(off) <= 15 * tol) return left + right + off / 15;
    return (
      step(a, fa, m, fm, l, fl, left, tol / 2, level - 1) +
      step(m, fm, b, fb, r, fr, right, tol / 2, level - 1)
    );
  };
  let sum = 0;
  let a = from;
  let fa = f(a);
  for (let i = 1; i <= panels; i++) {
    const b = from + ((to - from) * i) / panels;
    const fb = f(b);
    const m = (a + b) / 2;
    const fm = f(m);
    sum += step(a, fa, b, fb, m, fm, ((b - a) / 6) * (fa + 4 * fm + fb), tolerance / panels, deepest);
    a = b;
    fa = fb;
  }
  return sum;
}

/**
 * Integral of r^power over the part of 0 <= r <= reach where `inside` is above zero; `inside` changes at most `pace`
 * times as fast as r.
 */
function along(inside: (r: number) => number, reach: number, power: 1 | 2, pace: number): number {
  const whole = (r: number): number => (power === 1 ? (r * r) / 2 : (r * r * r) / 3);
  const shortest = reach / 400;
  let sum = 0;
  let r = 0;
  let h = inside(0);
  while (r < reach) {
    // No change of sign is nearer than this.
    const next = Math.min(reach, r + Math.max(Math.abs(h) / pace, shortest));
    const value = inside(next);
    if (h > 0 === value > 0) {
      if (h > 0) sum += whole(next) - whole(r);
    } else {
      let [low, high] = [r, next];
      let [fl, fh] = [h, value];
      for (let k = 0; k < 60 && high - low > 1e-13 * reach; k++) {
        let m = low - (fl * (high - low)) / (fh - fl);
        if (k % 3 === 2 || !(m > low && m < high)) m = (low + high) / 2;
        const fm = inside(m);
        if (fm > 0 === fl > 0) [low, fl] = [m, fm];
        else [high, fh] = [m, fm];
        if (Math.abs(fm) < 1e-14 * reach) [low, high] = [m, m];
      }
      const edge = (low + high) / 2;
      if (h > 0) sum += whole(edge) - whole(r);
      else sum += whole(next) - whole(edge);
    }
    r = next;
    h = value;
  }
  return sum;
}

const cavityOf = (s: Source): ((x: number, y: number, z: number) => number) => {
  const foot = new Float64Array(3);
  return s.cavity ?? ((x, y, z) => s.nearest(x, y, z, foot));
};

/** Volume of the grain without its flaws as cast [m³]. */
export function soundVolume(shape: GrainShape): number {
  const { envelope, ports, inert } = shape;
  const { radius, length } = envelope;
  const cavities = [...ports.filter((s) => !s.sheet), ...inert];
  const whole = envelope.form === 'ball' ? (4 / 3) * Math.PI * radius ** 3 : Math.PI * radius ** 2 * length;
  if (cavities.length === 0) return whole;
  const wedge: Wedge = commonWedge(cavities.map((s) => s.symmetry));
  const inside = cavities.map(cavityOf);
  const openTo = (x: number, y: number, z: number): number => {
    let least = Number.POSITIVE_INFINITY;
    for (const cavity of inside) least = Math.min(least, cavity(x, y, z));
    return -least;
  };
  // The open area of a section.
  const open = (z: number): number => {
    const wall = wallRadius(envelope, z);
    if (wall <= 0) return 0;
    const ray = (turn: number): number => {
      const c = Math.cos(turn);
      const s = Math.sin(turn);
      return along((r) => openTo(r * c, r * s, z), wall, 1, 1);
    };
    if (wedge.axisymmetric) return 2 * Math.PI * ray(0.1);
    const panels = Math.max(2, Math.ceil((24 * wedge.angle) / Math.PI));
    const to = wedge.from + wedge.angle;
    return (
      wedge.copies * simpson(ray, wedge.from, to, 1e-7 * radius * radius * (wedge.angle / 6.3), panels, 16)
    );
  };
  if (cavities.every((s) => s.through === true)) return whole - length * open(length / 2);
  const edges = [0, length];
  for (const s of cavities)
    for (const z of [
      ...(s.span ?? []),
      ...(s.bound === undefined ? [] : [s.bound[2] - s.bound[3], s.bound[2] + s.bound[3]]),
    ])
      if (z > 1e-9 * length && z < length * (1 - 1e-9)) edges.push(z);
  edges.sort((a, b) => a - b);
  let sum = 0;
  for (let i = 0; i + 1 < edges.length; i++) {
    const inset = 1e-9 * (edges[i + 1] - edges[i]);
    if (inset < 1e-18 * length) continue;
    const tolerance = 3e-7 * whole * ((edges[i + 1] - edges[i]) / length);
    sum += simpson(open, edges[i] + inset, edges[i + 1] - inset, tolerance, 2, 14);
  }
  return whole - sum;
}

/**
 * Volume of propellant that the cavities of the flaws take from the flawless grain [m³], within `tolerance`. `sound` is
 * the depth field of the open surfaces; undefined where there are none.
 */
export function flawCavities(shape: GrainShape, sound: DepthField | undefined, tolerance: number): number {
  const { envelope } = shape;
  const bodies = shape.flaws.map(({ source }) => source).filter((s) => !s.sheet);
  const inert = shape.inert.map(cavityOf);
  const room = (x: number, y: number, z: number): number => {
    let least = Math.min(sound?.depth(x, y, z) ?? Number.POSITIVE_INFINITY, -outsideBy(envelope, x, y, z));
    for (const cavity of inert) least = Math.min(least, cavity(x, y, z));
    return least;
  };
  const inside = bodies.map(cavityOf);
  const [reachX, reachY, reachZ, reachR] = [0, 1, 2, 3].map((k) =>
    Float64Array.from(bodies, (s) => s.bound?.[k] ?? Number.NaN),
  );
  let sum = 0;
  bodies.forEach((body, i) => {
    const [x, y, z, r] = [reachX[i], reachY[i], reachZ[i], reachR[i]];
    if (!(r > 0)) return;
    const near: number[] = [];
    for (let j = 0; j < bodies.length; j++) {
      if (j === i) continue;
      const apart = (reachX[j] - x) ** 2 + (reachY[j] - y) ** 2 + (reachZ[j] - z) ** 2;
      if (apart < (r + reachR[j]) ** 2) near.push(j);
    }
    if (body.round === true && near.length === 0 && room(x, y, z) >= r) {
      sum += (4 / 3) * Math.PI * r ** 3;
      return;
    }
    const own = inside[i];
    // Where two overlap, each keeps the part that lies deeper in it than in the other.
    const kept = (px: number, py: number, pz: number): number => {
      const d = own(px, py, pz);
      let least = Math.min(-d, room(px, py, pz));
      for (const j of near) least = Math.min(least, inside[j](px, py, pz) - d);
      return least;
    };
    const share = Math.max(tolerance / Math.sqrt(bodies.length), 1e-7 * r ** 3);
    const over = (c: number): number => {
      const s = Math.sqrt(Math.max(0, 1 - c * c));
      return simpson(
        (turn) => {
          const [nx, ny] = [s * Math.cos(turn), s * Math.sin(turn)];
          return along((t) => kept(x + t * nx, y + t * ny, z + t * c), r, 2, 2);
        },
        0,
        2 * Math.PI,
        share / 2,
        4,
        9,
      );
    };
    sum += simpson(over, -1, 1, share, 2, 10);
  });
  return sum;
}

/** Volume of the propellant as cast [m³]; `lit` lists the ports, then the burning ends, then the flaws. */
export function castVolume(shape: GrainShape, lit: readonly LitSource[]): number {
  const whole = soundVolume(shape);
  const open = lit.slice(0, lit.length - shape.flaws.length);
  const sound = open.length > 0 ? depthField(open) : undefined;
  return whole - flawCavities(shape, sound, 4e-7 * whole);
}
