// Exact signed distance and nearest point of an outline, compiled once into a flat loop over its elements.
import { elementNormal, elementX, elementY, type Outline, outlineCorners } from './outline';

/**
 * Signed distance from (x, y) to the outline [m]: negative inside the cavity. The nearest point goes into
 * `foot[0]`, `foot[1]`. A sheet has no inside: its distance is never negative.
 */
export type PlaneDistance = (x: number, y: number, foot: Float64Array) => number;

function circleDistance(cx: number, cy: number, radius: number, side: 1 | -1): PlaneDistance {
  return (x, y, foot) => {
    const dx = x - cx;
    const dy = y - cy;
    const r = Math.sqrt(dx * dx + dy * dy);
    const k = r > 0 ? radius / r : 0;
    foot[0] = r > 0 ? cx + dx * k : cx + radius;
    foot[1] = cy + dy * k;
    return side * (r - radius);
  };
}

function boxDistance(x0: number, x1: number, y0: number, y1: number): PlaneDistance {
  return (x, y, foot) => {
    const fx = x < x0 ? x0 : Math.min(x, x1);
    const fy = y < y0 ? y0 : Math.min(y, y1);
    if (fx !== x || fy !== y) {
      foot[0] = fx;
      foot[1] = fy;
      return Math.sqrt((x - fx) * (x - fx) + (y - fy) * (y - fy));
    }
    const toX = Math.min(x - x0, x1 - x);
    const toY = Math.min(y - y0, y1 - y);
    foot[0] = toX <= toY ? (x - x0 < x1 - x ? x0 : x1) : x;
    foot[1] = toX <= toY ? y : y - y0 < y1 - y ? y0 : y1;
    return -Math.min(toX, toY);
  };
}

/** The box of an outline of four axis-parallel lines around its inside; undefined for any other outline. */
function axisBox(o: Outline): readonly [number, number, number, number] | undefined {
  const [a, b, c, d] = o.elements;
  if (o.elements.length !== 4 || o.sheet) return undefined;
  if (a?.kind !== 'line' || b?.kind !== 'line' || c?.kind !== 'line' || d?.kind !== 'line') return undefined;
  const level = a.y0 === a.y1 && b.x0 === b.x1 && c.y0 === c.y1 && d.x0 === d.x1;
  if (!level || a.x1 <= a.x0 || c.y0 <= a.y0) return undefined;
  return [a.x0, a.x1, a.y0, c.y0];
}

/**
 * Distance to a square fin whose sides begin at `root`, where they meet those of its neighbours, for points in the
 * sector of the fin. Of the neighbours only the corner at the root matters there.
 */
function finDistance(root: number, tip: number, half: number): PlaneDistance {
  return (x, y, foot) => {
    const side = y < 0 ? -half : half;
    const aside = Math.abs(y) - half;
    if (aside > 0 || x > tip) {
      const fx = Math.min(x, tip);
      const fy = aside > 0 ? side : y;
      foot[0] = fx;
      foot[1] = fy;
      return Math.sqrt((x - fx) * (x - fx) + (y - fy) * (y - fy));
    }
    const fx = Math.max(x, root);
    const toSide = Math.sqrt((fx - x) * (fx - x) + aside * aside);
    if (toSide <= tip - x) {
      foot[0] = fx;
      foot[1] = side;
      return -toSide;
    }
    foot[0] = tip;
    foot[1] = y;
    return x - tip;
  };
}

/** Root, tip and half width of an outline that is one of several square fins; undefined for any other outline. */
function squareFin(o: Outline): readonly [number, number, number] | undefined {
  const [a, b, c] = o.elements;
  if (o.elements.length !== 3 || o.sheet || o.fold < 2) return undefined;
  if (a?.kind !== 'line' || b?.kind !== 'line' || c?.kind !== 'line') return undefined;
  const level = a.y0 === a.y1 && b.x0 === b.x1 && c.y0 === c.y1 && a.y0 === -c.y0;
  return level && a.x1 > a.x0 && c.y0 > 0 ? [a.x0, a.x1, c.y0] : undefined;
}

// Numbers stored per element: kind, then line (x0 y0 dx dy 1/len2) or arc (cx cy radius midX midY cosHalf side),
// then the ends (xa ya turnA normalAx normalAy, xb yb turnB normalBx normalBy).
const STRIDE = 20;
const LINE = 0;
const ENDS = 9;

function compileElements(o: Outline): Float64Array {
  const table = new Float64Array(o.elements.length * STRIDE);
  o.elements.forEach((e, i) => {
    const at = i * STRIDE;
    if (e.kind === 'line') {
      const dx = e.x1 - e.x0;
      const dy = e.y1 - e.y0;
      const length2 = dx * dx + dy * dy;
      table.set([LINE, e.x0, e.y0, dx, dy, length2 > 0 ? 1 / length2 : 0], at);
    } else {
      const mid = e.start + e.sweep / 2;
      const half = Math.min(Math.abs(e.sweep) / 2, Math.PI);
      table.set(
        [1, e.cx, e.cy, e.radius, Math.cos(mid), Math.sin(mid), Math.cos(half), Math.sign(e.sweep)],
        at,
      );
    }
    for (const u of [0, 1]) {
      const normal = elementNormal(e, u);
      table.set([elementX(e, u), elementY(e, u), 0, Math.cos(normal), Math.sin(normal)], at + ENDS + 5 * u);
    }
  });
  for (const corner of outlineCorners(o)) {
    if (corner.before !== undefined) table[corner.before * STRIDE + ENDS + 7] = corner.turn;
    if (corner.after !== undefined) table[corner.after * STRIDE + ENDS + 2] = corner.turn;
  }
  return table;
}

function elementsDistance(o: Outline): PlaneDistance {
  const t = compileElements(o);
  const n = o.elements.length;
  const sheet = o.sheet;
  return (x, y, foot) => {
    let best = Number.POSITIVE_INFINITY;
    let sign = 1;
    for (let i = 0, at = 0; i < n; i++, at += STRIDE) {
      let end = -1;
      if (t[at] === LINE) {
        const dx = t[at + 3];
        const dy = t[at + 4];
        const px = x - t[at + 1];
        const py = y - t[at + 2];
        const u = (px * dx + py * dy) * t[at + 5];
        if (u <= 0) end = 0;
        else if (u >= 1) end = 5;
        else {
          const ex = px - u * dx;
          const ey = py - u * dy;
          const d2 = ex * ex + ey * ey;
          if (d2 < best) {
            best = d2;
            foot[0] = x - ex;
            foot[1] = y - ey;
            sign = ex * dy - ey * dx >= 0 ? 1 : -1;
          }
        }
      } else {
        const px = x - t[at + 1];
        const py = y - t[at + 2];
        const radius = t[at + 3];
        const r = Math.sqrt(px * px + py * py);
        const along = px * t[at + 4] + py * t[at + 5];
        if (along >= t[at + 6] * r) {
          const d = r - radius;
          if (d * d < best) {
            best = d * d;
            const k = r > 0 ? radius / r : 0;
            foot[0] = t[at + 1] + (r > 0 ? px * k : radius * t[at + 4]);
            foot[1] = t[at + 2] + (r > 0 ? py * k : radius * t[at + 5]);
            sign = d * t[at + 7] >= 0 ? 1 : -1;
          }
        } else {
          const cross = px * t[at + 5] - py * t[at + 4];
          // The nearer end of the arc is the one on the same side of its middle as the point.
          end = cross > 0 === t[at + 7] > 0 ? 0 : 5;
        }
      }
      if (end >= 0) {
        const b = at + ENDS + end;
        const ex = x - t[b];
        const ey = y - t[b + 1];
        const d2 = ex * ex + ey * ey;
        if (d2 < best) {
          best = d2;
          foot[0] = t[b];
          foot[1] = t[b + 1];
          const turn = t[b + 2];
          sign = turn !== 0 ? turn : ex * t[b + 3] + ey * t[b + 4] >= 0 ? 1 : -1;
        }
      }
    }
    const d = Math.sqrt(best);
    return sheet ? d : sign * d;
  };
}

const MOST_COMPARED = 12;

/** Distance to the nearest of `fold` copies about the origin, each symmetric about its own radius. */
function foldedDistance(base: PlaneDistance, fold: number, phase: number): PlaneDistance {
  const step = (2 * Math.PI) / fold;
  const cos = new Float64Array(fold);
  const sin = new Float64Array(fold);
  for (let k = 0; k < fold; k++) {
    cos[k] = Math.cos(phase + k * step);
    sin[k] = Math.sin(phase + k * step);
  }
  return (x, y, foot) => {
    let k = 0;
    if (fold > MOST_COMPARED) {
      k = Math.round((Math.atan2(y, x) - phase) / step) % fold;
      if (k < 0) k += fold;
    } else {
      // The nearest copy is the one with the largest projection of the point: a few products cost less than an arc
      // tangent.
      let furthest = cos[0] * x + sin[0] * y;
      for (let i = 1; i < fold; i++) {
        const along = cos[i] * x + sin[i] * y;
        if (along <= furthest) continue;
        furthest = along;
        k = i;
      }
    }
    const c = cos[k];
    const s = sin[k];
    const d = base(c * x + s * y, c * y - s * x, foot);
    const fx = foot[0];
    const fy = foot[1];
    foot[0] = c * fx - s * fy;
    foot[1] = s * fx + c * fy;
    return d;
  };
}

/** Compiles the exact distance function of an outline. */
export function planeDistance(o: Outline): PlaneDistance {
  const [only] = o.elements;
  let base: PlaneDistance;
  const box = axisBox(o);
  const fin = squareFin(o);
  if (o.elements.length === 1 && only?.kind === 'arc' && Math.abs(only.sweep) >= 2 * Math.PI - 1e-12) {
    base = circleDistance(only.cx, only.cy, only.radius, only.sweep > 0 ? 1 : -1);
  } else if (box !== undefined) {
    base = boxDistance(...box);
  } else if (fin !== undefined) {
    base = finDistance(...fin);
  } else base = elementsDistance(o);
  return o.fold === 1 && o.phase === 0 ? base : foldedDistance(base, o.fold, o.phase);
}
