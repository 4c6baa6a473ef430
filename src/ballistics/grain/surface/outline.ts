// A closed two-dimensional outline of straight lines and circular arcs, the cavity on its left hand.

/** A straight run of an outline, from (x0, y0) to (x1, y1) [m]. */
export interface OutlineLine {
  readonly kind: 'line';
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

/** A circular run of an outline [m, rad]. A positive sweep bulges into the propellant, a negative one into the cavity. */
export interface OutlineArc {
  readonly kind: 'arc';
  readonly cx: number;
  readonly cy: number;
  readonly radius: number;
  readonly start: number;
  readonly sweep: number;
}

export type OutlineElement = OutlineLine | OutlineArc;

/**
 * The edge of a cavity in a plane. Elements run with the cavity on the left, so the normal into the propellant is on
 * the right. `fold` copies are arranged around the origin, the first turned by `phase`; only one copy is stored. A
 * `sheet` has no inside: it is a burning surface such as a debonded stretch of wall.
 */
export interface Outline {
  readonly elements: readonly OutlineElement[];
  readonly fold: number;
  readonly phase: number;
  readonly sheet: boolean;
}

/** Where two elements meet, or where an open chain ends. `sweep` is the fan of normals that leaves a corner. */
export interface OutlineCorner {
  readonly x: number;
  readonly y: number;
  /** Direction of the first normal of the fan [rad]. */
  readonly from: number;
  /** Angle of the fan [rad]; zero where the corner points into the cavity and no normal leaves it. */
  readonly sweep: number;
  /** +1: the cavity is convex here, -1: the propellant is, 0: smooth, or the free end of a chain. */
  readonly turn: -1 | 0 | 1;
  readonly open: boolean;
  /** The elements that end and start here. */
  readonly before: number | undefined;
  readonly after: number | undefined;
}

const TWO_PI = 2 * Math.PI;

/** An outline from its elements. */
export const outline = (
  elements: readonly OutlineElement[],
  options: { readonly fold?: number; readonly phase?: number; readonly sheet?: boolean } = {},
): Outline => ({
  elements,
  fold: options.fold ?? 1,
  phase: options.phase ?? 0,
  sheet: options.sheet ?? false,
});

export const line = (x0: number, y0: number, x1: number, y1: number): OutlineLine => ({
  kind: 'line',
  x0,
  y0,
  x1,
  y1,
});

export const arc = (cx: number, cy: number, radius: number, start: number, sweep: number): OutlineArc => ({
  kind: 'arc',
  cx,
  cy,
  radius,
  start,
  sweep,
});

export const elementX = (e: OutlineElement, u: number): number =>
  e.kind === 'line' ? e.x0 + u * (e.x1 - e.x0) : e.cx + e.radius * Math.cos(e.start + u * e.sweep);

export const elementY = (e: OutlineElement, u: number): number =>
  e.kind === 'line' ? e.y0 + u * (e.y1 - e.y0) : e.cy + e.radius * Math.sin(e.start + u * e.sweep);

export const elementLength = (e: OutlineElement): number =>
  e.kind === 'line' ? Math.hypot(e.x1 - e.x0, e.y1 - e.y0) : e.radius * Math.abs(e.sweep);

/** Direction of the normal into the propellant [rad]. */
export function elementNormal(e: OutlineElement, u: number): number {
  if (e.kind === 'line') return Math.atan2(-(e.x1 - e.x0), e.y1 - e.y0);
  const radial = e.start + u * e.sweep;
  return e.sweep > 0 ? radial : radial + Math.PI;
}

/** The part of an element between two of its parameters. */
export function elementPart(e: OutlineElement, from: number, to: number): OutlineElement {
  if (e.kind === 'line') return line(elementX(e, from), elementY(e, from), elementX(e, to), elementY(e, to));
  return arc(e.cx, e.cy, e.radius, e.start + from * e.sweep, (to - from) * e.sweep);
}

/** The element turned about the origin by an angle [rad]. */
export function elementTurned(e: OutlineElement, angle: number): OutlineElement {
  if (angle === 0) return e;
  const c = Math.cos(angle);
  const s = Math.sin(angle);
  if (e.kind === 'line')
    return line(c * e.x0 - s * e.y0, s * e.x0 + c * e.y0, c * e.x1 - s * e.y1, s * e.x1 + c * e.y1);
  return arc(c * e.cx - s * e.cy, s * e.cx + c * e.cy, e.radius, e.start + angle, e.sweep);
}

/** All copies of a folded outline, as one outline without a fold. */
export function unfolded(o: Outline): Outline {
  if (o.fold === 1 && o.phase === 0) return o;
  const elements: OutlineElement[] = [];
  for (let k = 0; k < o.fold; k++)
    for (const e of o.elements) elements.push(elementTurned(e, o.phase + (TWO_PI * k) / o.fold));
  return outline(elements, { sheet: o.sheet });
}

/** Maximum distance of the outline from the origin [m]. */
export function outlineReach(o: Outline): number {
  let reach = 0;
  for (const e of o.elements) {
    if (e.kind === 'line') {
      reach = Math.max(reach, Math.hypot(e.x0, e.y0), Math.hypot(e.x1, e.y1));
      continue;
    }
    const out = Math.atan2(e.cy, e.cx);
    const turn = ((((out - e.start) * Math.sign(e.sweep)) % TWO_PI) + TWO_PI) % TWO_PI;
    if (turn <= Math.abs(e.sweep)) reach = Math.max(reach, Math.hypot(e.cx, e.cy) + e.radius);
    for (const u of [0, 1]) reach = Math.max(reach, Math.hypot(elementX(e, u), elementY(e, u)));
  }
  return reach;
}

const turnBetween = (from: number, to: number): number => {
  const d = (to - from) % TWO_PI;
  return d > Math.PI ? d - TWO_PI : d <= -Math.PI ? d + TWO_PI : d;
};

/** The corners of the stored copy: every joint once, and both ends of every open chain. */
export function outlineCorners(o: Outline): OutlineCorner[] {
  const n = o.elements.length;
  const close = 1e-7 * Math.max(outlineReach(o), 1e-300);
  const step = TWO_PI / o.fold;
  const started = new Set<number>();
  const corners: OutlineCorner[] = [];
  o.elements.forEach((e, i) => {
    if (e.kind === 'arc' && Math.abs(e.sweep) >= TWO_PI - 1e-12) {
      started.add(i);
      return;
    }
    const x = elementX(e, 1);
    const y = elementY(e, 1);
    const normalIn = elementNormal(e, 1);
    for (let k = 0; k < n; k++) {
      const j = (i + 1 + k) % n;
      const f = o.elements[j];
      if (f === undefined || started.has(j)) continue;
      for (const angle of o.fold > 1 ? [0, step, -step] : [0]) {
        const turned = elementTurned(f, angle);
        if (Math.hypot(elementX(turned, 0) - x, elementY(turned, 0) - y) > close) continue;
        started.add(j);
        const turn = turnBetween(normalIn, elementNormal(turned, 0));
        const smooth = Math.abs(turn) < 1e-7;
        corners.push({
          x,
          y,
          from: normalIn,
          sweep: !smooth && turn > 0 ? turn : 0,
          turn: smooth ? 0 : turn > 0 ? 1 : -1,
          open: false,
          before: i,
          after: j,
        });
        return;
      }
    }
    corners.push({
      x,
      y,
      from: normalIn,
      sweep: Math.PI / 2,
      turn: 0,
      open: true,
      before: i,
      after: undefined,
    });
  });
  o.elements.forEach((e, i) => {
    if (started.has(i)) return;
    const from = elementNormal(e, 0) - Math.PI / 2;
    corners.push({
      x: elementX(e, 0),
      y: elementY(e, 0),
      from,
      sweep: Math.PI / 2,
      turn: 0,
      open: true,
      before: undefined,
      after: i,
    });
  });
  return corners;
}
