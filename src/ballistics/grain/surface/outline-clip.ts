// An outline cut off at the wall, so that no part of a cavity lies outside the grain.
import {
  arc,
  elementPart,
  elementX,
  elementY,
  type Outline,
  type OutlineElement,
  outline,
  outlineReach,
  unfolded,
} from './outline';

const TWO_PI = 2 * Math.PI;

/** Parameters at which an element crosses the circle of this radius about the origin. */
function crossings(e: OutlineElement, radius: number): number[] {
  const found: number[] = [];
  if (e.kind === 'line') {
    const dx = e.x1 - e.x0;
    const dy = e.y1 - e.y0;
    const a = dx * dx + dy * dy;
    const b = e.x0 * dx + e.y0 * dy;
    const c = e.x0 * e.x0 + e.y0 * e.y0 - radius * radius;
    const disc = b * b - a * c;
    if (disc <= 0) return [];
    found.push((-b - Math.sqrt(disc)) / a, (-b + Math.sqrt(disc)) / a);
  } else {
    const d = Math.hypot(e.cx, e.cy);
    const cos = (radius * radius - d * d - e.radius * e.radius) / (2 * d * e.radius);
    if (!(Math.abs(cos) < 1)) return [];
    const out = Math.atan2(e.cy, e.cx);
    for (const at of [out + Math.acos(cos), out - Math.acos(cos)]) {
      const turn = ((at - e.start) * Math.sign(e.sweep)) % TWO_PI;
      found.push((turn < 0 ? turn + TWO_PI : turn) / Math.abs(e.sweep));
    }
  }
  return found.filter((u) => u > 1e-12 && u < 1 - 1e-12).sort((a, b) => a - b);
}

/**
 * The part of the outline inside the circle, closed along the circle where it was cut; undefined if nothing of it is
 * inside. A copy of a fold is cut as a separate loop. A chain that closes only with its neighbours is cut separately
 * if its ends are inside, and otherwise unfolded first.
 */
export function clippedOutline(o: Outline, radius: number): Outline | undefined {
  if (o.sheet || outlineReach(o) <= radius * (1 + 1e-9)) return o;
  const alone = o.elements.length > 0 && (closes(o.elements) || endsInside(o.elements, radius));
  const from = alone ? o : unfolded(o);
  const kept: OutlineElement[] = [];
  const exits: number[] = [];
  const entries: number[] = [];
  for (const e of from.elements) {
    const cuts = [0, ...crossings(e, radius), 1];
    for (let i = 0; i + 1 < cuts.length; i++) {
      const [a, b] = [cuts[i], cuts[i + 1]];
      const inside = (u: number): boolean => Math.hypot(elementX(e, u), elementY(e, u)) < radius;
      if (!inside((a + b) / 2)) continue;
      const part = elementPart(e, a, b);
      kept.push(part);
      if (a > 0) entries.push(Math.atan2(elementY(part, 0), elementX(part, 0)));
      if (b < 1) exits.push(Math.atan2(elementY(part, 1), elementX(part, 1)));
    }
  }
  if (kept.length === 0) return undefined;
  for (const exit of exits) {
    const sweeps = entries.map((entry) => (((entry - exit) % TWO_PI) + TWO_PI) % TWO_PI);
    const sweep = Math.min(...sweeps);
    if (Number.isFinite(sweep) && sweep > 1e-12) kept.push(arc(0, 0, radius, exit, sweep));
  }
  return outline(kept, { fold: from.fold, phase: from.phase });
}

const closes = (elements: readonly OutlineElement[]): boolean => {
  const first = elements[0];
  const last = elements[elements.length - 1];
  return Math.hypot(elementX(first, 0) - elementX(last, 1), elementY(first, 0) - elementY(last, 1)) < 1e-9;
};

const endsInside = (elements: readonly OutlineElement[], radius: number): boolean => {
  const first = elements[0];
  const last = elements[elements.length - 1];
  const reach = (e: OutlineElement, u: number): number => Math.hypot(elementX(e, u), elementY(e, u));
  return reach(first, 0) < radius && reach(last, 1) < radius;
};
