// The turns and mirrors about the axis of the grain that leave a set of surfaces unchanged, and the wedge that
// represents them.
import {
  elementNormal,
  elementPart,
  elementTurned,
  elementX,
  elementY,
  type Outline,
  type OutlineElement,
  outlineCorners,
} from './outline';

/** Symmetry about the axis: `order` turns (Infinity: a body of revolution) and one mirror line, if any [rad]. */
export interface Symmetry {
  readonly order: number;
  readonly mirror: number | undefined;
}

/** The part of the grain that is computed, and the number of its copies. */
export interface Wedge {
  readonly axisymmetric: boolean;
  readonly from: number;
  readonly angle: number;
  readonly mirrored: boolean;
  readonly copies: number;
}

export const ROUND: Symmetry = { order: Number.POSITIVE_INFINITY, mirror: 0 };
export const NO_SYMMETRY: Symmetry = { order: 1, mirror: undefined };

const gcd = (a: number, b: number): number => (b === 0 ? a : gcd(b, a % b));

/** True when `angle` is a whole multiple of `step`, within rounding. */
const isMultiple = (angle: number, step: number): boolean => {
  const k = angle / step;
  return Math.abs(k - Math.round(k)) * step < 1e-9;
};

/** The wedge that represents surfaces with these symmetries. */
export function commonWedge(symmetries: readonly Symmetry[]): Wedge {
  const finite = symmetries.filter((s) => Number.isFinite(s.order));
  const [first] = finite;
  if (first === undefined)
    return { axisymmetric: true, from: 0, angle: 2 * Math.PI, mirrored: false, copies: 1 };
  const order = finite.reduce((g, s) => gcd(g, s.order), 0);
  if (finite.every((s) => s.mirror !== undefined)) {
    for (let k = 0; k < first.order; k++) {
      const at = (first.mirror ?? 0) + (k * Math.PI) / first.order;
      if (finite.every((s) => isMultiple(at - (s.mirror ?? 0), Math.PI / s.order)))
        return { axisymmetric: false, from: at, angle: Math.PI / order, mirrored: true, copies: 2 * order };
    }
  }
  return { axisymmetric: false, from: 0, angle: (2 * Math.PI) / order, mirrored: false, copies: order };
}

/** The angle of a direction after the wedge's first edge, in [0, 2π). */
export function angleInWedge(wedge: Wedge, angle: number): number {
  const a = (angle - wedge.from) % (2 * Math.PI);
  return a < 0 ? a + 2 * Math.PI : a;
}

const wholeTurn = (wedge: Wedge): boolean => wedge.angle > 2 * Math.PI - 1e-12;

/** True when the point is in the wedge; its far edge belongs to it only if it is a mirror. */
export function inWedge(wedge: Wedge, x: number, y: number): boolean {
  if (wholeTurn(wedge)) return true;
  const slack = 1e-9;
  const a = angleInWedge(wedge, Math.atan2(y, x));
  if (a > 2 * Math.PI - slack) return true;
  return wedge.mirrored ? a <= wedge.angle + slack : a < wedge.angle - slack;
}

/** Parameters at which an element crosses the ray at `angle` (or its backward extension). */
function crossings(e: OutlineElement, angle: number): number[] {
  const nx = -Math.sin(angle);
  const ny = Math.cos(angle);
  if (e.kind === 'line') {
    const a = e.x0 * nx + e.y0 * ny;
    const b = e.x1 * nx + e.y1 * ny;
    return a * b < 0 ? [a / (a - b)] : [];
  }
  const offset = (e.cx * nx + e.cy * ny) / e.radius;
  if (Math.abs(offset) >= 1) return [];
  const normal = angle + Math.PI / 2;
  const half = Math.acos(-offset);
  const found: number[] = [];
  for (const at of [normal + half, normal - half]) {
    const turn = (((at - e.start) / e.sweep) * Math.abs(e.sweep)) % (2 * Math.PI);
    const u = (turn < 0 ? turn + 2 * Math.PI : turn) / Math.abs(e.sweep);
    if (u > 0 && u < 1) found.push(u);
  }
  return found;
}

/** The stretches of an element, in all its copies, that lie in the wedge. */
export function elementsInWedge(
  e: OutlineElement,
  fold: number,
  phase: number,
  wedge: Wedge,
): OutlineElement[] {
  const kept: OutlineElement[] = [];
  const slack = 1e-9;
  for (let k = 0; k < fold; k++) {
    const turned = elementTurned(e, phase + (2 * Math.PI * k) / fold);
    if (wholeTurn(wedge)) {
      kept.push(turned);
      continue;
    }
    const cuts = [0, ...crossings(turned, wedge.from), ...crossings(turned, wedge.from + wedge.angle), 1];
    cuts.sort((a, b) => a - b);
    for (let i = 0; i + 1 < cuts.length; i++) {
      const a = cuts[i];
      const b = cuts[i + 1];
      if (b - a < 1e-12) continue;
      const mid = (a + b) / 2;
      const x = elementX(turned, mid);
      const y = elementY(turned, mid);
      const at = angleInWedge(wedge, Math.atan2(y, x));
      const onEdge = at < slack || at > 2 * Math.PI - slack || Math.abs(at - wedge.angle) < slack;
      if (onEdge ? ownsEdge(turned, mid, at < slack || at > Math.PI, wedge) : at < wedge.angle)
        kept.push(elementPart(turned, a, b));
    }
  }
  return kept;
}

/** An element along an edge of the wedge belongs to it when its normal points inwards; the mirror image covers the other one. */
function ownsEdge(e: OutlineElement, u: number, nearEdge: boolean, wedge: Wedge): boolean {
  if (!wedge.mirrored) return nearEdge;
  const edge = nearEdge ? wedge.from : wedge.from + wedge.angle;
  const inward = nearEdge ? edge + Math.PI / 2 : edge - Math.PI / 2;
  return Math.cos(elementNormal(e, u) - inward) > 0;
}

/** The corners of an outline, in all its copies, whose fan of normals is open, as far as they lie in the wedge. */
export function fansInWedge(o: Outline, wedge: Wedge): readonly CornerFan[] {
  const fans: CornerFan[] = [];
  const corners = outlineCorners(o).filter(({ sweep }) => sweep > 0);
  for (let k = 0; k < o.fold; k++) {
    const turn = o.phase + (2 * Math.PI * k) / o.fold;
    const [c, s] = [Math.cos(turn), Math.sin(turn)];
    for (const corner of corners) {
      const x = c * corner.x - s * corner.y;
      const y = s * corner.x + c * corner.y;
      const fan = fanInWedge(x, y, corner.from + turn, corner.sweep, wedge);
      if (fan !== undefined) fans.push({ x, y, from: fan[0], sweep: fan[1] });
    }
  }
  return fans;
}

/** Position of a corner, and its normals from one direction through an angle. */
export interface CornerFan {
  readonly x: number;
  readonly y: number;
  readonly from: number;
  readonly sweep: number;
}

/** The part of a fan of normals at (x, y) that stays in the wedge: all of it inside, half on a mirror line. */
function fanInWedge(
  x: number,
  y: number,
  from: number,
  sweep: number,
  wedge: Wedge,
): readonly [number, number] | undefined {
  if (!inWedge(wedge, x, y)) return undefined;
  if (!wedge.mirrored) return [from, sweep];
  const a = angleInWedge(wedge, Math.atan2(y, x));
  const slack = 1e-9;
  const near = a < slack || a > 2 * Math.PI - slack;
  if (!near && Math.abs(a - wedge.angle) > slack) return [from, sweep];
  const edge = near ? wedge.from : wedge.from + wedge.angle;
  const inward = near ? edge + Math.PI / 2 : edge - Math.PI / 2;
  // The mirror line divides the fan into equal halves; a fan that does not straddle it is inside or outside as a
  // whole.
  const middle = from + sweep / 2;
  if (Math.abs(Math.sin(middle - edge)) > 1e-9)
    return Math.cos(middle - inward) > 0 ? [from, sweep] : undefined;
  return Math.cos(from - inward) > 0 ? [from, sweep / 2] : [middle, sweep / 2];
}
