// A cavity of constant section between two planes: cores, fins, slots, stars, any outline. A flat one is a crack.
import { toLocal, toWorld, toWorldDirection } from './frame';
import { elementX, elementY, type Outline, outlineReach } from './outline';
import { planeDistance } from './outline-distance';
import { prismPatches } from './prism-patches';
import type { PrismShape } from './prism-shape';
import { RAY, type Source } from './source';
import { NO_SYMMETRY, ROUND, type Symmetry, type Wedge } from './symmetry';

/** A circle about the axis makes a prism round. */
const isRound = (o: Outline): boolean =>
  o.elements.every(
    (e) =>
      e.kind === 'arc' &&
      Math.hypot(e.cx, e.cy) < 1e-12 * e.radius &&
      Math.abs(e.sweep) > 2 * Math.PI - 1e-12,
  );

const symmetryOf = (shape: PrismShape): Symmetry => {
  if (shape.frame !== undefined)
    return shape.mirror === undefined ? NO_SYMMETRY : { order: 1, mirror: shape.mirror };
  if (isRound(shape.outline)) return ROUND;
  if (shape.outline.fold > 1) return { order: shape.outline.fold, mirror: shape.outline.phase };
  return { order: 1, mirror: shape.mirror };
};

const WHOLE: Wedge = { axisymmetric: false, from: 0, angle: 2 * Math.PI, mirrored: false, copies: 1 };

export function prism(shape: PrismShape): Source {
  const { outline, from, to, faces, frame } = shape;
  const inPlane = planeDistance(outline);
  const flat = to <= from;
  const sheet = flat || outline.sheet;
  const local = new Float64Array(3);
  const low = faces.start === 'through' ? Number.NEGATIVE_INFINITY : from;
  const high = faces.end === 'through' ? Number.POSITIVE_INFINITY : to;
  const complete =
    faces.side !== undefined &&
    faces.side[0] <= from &&
    faces.side[1] >= to &&
    faces.start !== 'inhibited' &&
    faces.end !== 'inhibited';

  const whole = (x: number, y: number, z: number, foot: Float64Array): number => {
    const a = inPlane(x, y, foot);
    const beyond = z < low ? low - z : z > high ? z - high : 0;
    if (outline.sheet) {
      foot[2] = z < from ? from : Math.min(z, to);
      const off = z < from ? from - z : z > to ? z - to : 0;
      return Math.sqrt(a * a + off * off);
    }
    if (beyond > 0 || flat) {
      const cap = z < low ? low : z > high ? high : from;
      const off = flat ? Math.abs(z - from) : beyond;
      foot[2] = cap;
      if (a <= 0) {
        foot[0] = x;
        foot[1] = y;
        return off;
      }
      return Math.sqrt(a * a + off * off);
    }
    const inside = Math.max(low - z, z - high);
    if (a > inside) {
      foot[2] = z;
      return a;
    }
    foot[0] = x;
    foot[1] = y;
    foot[2] = z - low < high - z ? low : high;
    return inside;
  };

  const capFoot = new Float64Array(3);
  const partial = (x: number, y: number, z: number, foot: Float64Array): number => {
    const a = inPlane(x, y, foot);
    let best = Number.POSITIVE_INFINITY;
    if (faces.side !== undefined) {
      const [s0, s1] = faces.side;
      const zs = z < s0 ? s0 : Math.min(z, s1);
      best = Math.sqrt(a * a + (z - zs) * (z - zs));
      foot[2] = zs;
    }
    const out = Math.max(a, 0);
    for (const cap of [
      faces.start === 'burning' ? from : undefined,
      faces.end === 'burning' ? to : undefined,
    ]) {
      if (cap === undefined) continue;
      const d = Math.sqrt(out * out + (z - cap) * (z - cap));
      if (d >= best) continue;
      best = d;
      if (a <= 0) {
        foot[0] = x;
        foot[1] = y;
      } else if (faces.side !== undefined) {
        inPlane(x, y, capFoot);
        foot[0] = capFoot[0];
        foot[1] = capFoot[1];
      }
      foot[2] = cap;
    }
    return best;
  };

  const inner = complete ? whole : partial;
  const nearest: Source['nearest'] =
    frame === undefined
      ? inner
      : (x, y, z, foot) => {
          toLocal(frame, x, y, z, local);
          const d = inner(local[0], local[1], local[2], foot);
          toWorld(frame, foot);
          return d;
        };
  const cavityFoot = new Float64Array(3);
  const cavity = (x: number, y: number, z: number): number => {
    let [px, py, pz] = [x, y, z];
    if (frame !== undefined) {
      toLocal(frame, x, y, z, local);
      [px, py, pz] = [local[0], local[1], local[2]];
    }
    return Math.max(inPlane(px, py, cavityFoot), low - pz, pz - high);
  };

  const reachOut = outlineReach(outline);
  const bounded: Pick<Source, 'bound' | 'span'> =
    frame === undefined
      ? { span: [low, high] }
      : { bound: [frame.x, frame.y, frame.z, Math.hypot(reachOut, Math.max(Math.abs(from), Math.abs(to)))] };
  return {
    name: shape.name,
    symmetry: symmetryOf(shape),
    sheet,
    nearest,
    ...(complete ? {} : { cavity }),
    ...bounded,
    through: faces.start === 'through' && faces.end === 'through' && frame === undefined && complete,
    patches: (wedge, reach) => {
      const patches = prismPatches(shape, frame === undefined ? wedge : WHOLE, reach, isRound(outline));
      if (frame === undefined) return patches;
      return patches.map((p) => ({
        ...p,
        ray: (u: number, v: number, out: Float64Array) => {
          p.ray(u, v, out);
          toWorld(frame, out);
          toWorldDirection(frame, out, RAY.direction);
        },
      }));
    },
    samples: () => prismSamples(shape),
  };
}

function prismSamples(shape: PrismShape): Float64Array {
  const { outline: o, from, to, frame } = shape;
  const points: number[] = [];
  const p = new Float64Array(3);
  for (const v of [0, 0.25, 0.5, 0.75, 1])
    for (const e of o.elements)
      for (let i = 0; i <= 12; i++)
        for (const k of v === 0 || v === 1 ? [0, 0.35, 0.7, 0.95, 1] : [1])
          for (let f = 0; f < o.fold; f++) {
            const turn = o.phase + (2 * Math.PI * f) / o.fold;
            const x = k * elementX(e, i / 12);
            const y = k * elementY(e, i / 12);
            p[0] = Math.cos(turn) * x - Math.sin(turn) * y;
            p[1] = Math.sin(turn) * x + Math.cos(turn) * y;
            p[2] = from + v * (to - from);
            if (frame !== undefined) toWorld(frame, p);
            points.push(p[0], p[1], p[2]);
          }
  return Float64Array.from(points);
}
