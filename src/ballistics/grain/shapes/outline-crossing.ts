// Finds where an outline crosses or retraces itself. Such an outline has no defined inside.
import { elementLength, elementX, elementY, type OutlineElement } from '../surface';

interface Chord {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

/** A point where two runs of the loops cross or coincide; undefined when they meet at corners only. */
export function crossingOf(
  loops: readonly (readonly OutlineElement[])[],
): readonly [number, number] | undefined {
  const chords = loops.flatMap((loop) => loop.flatMap(chordsOf));
  const size = Math.max(...chords.map((c) => Math.max(Math.abs(c.x0), Math.abs(c.y0))), 1e-300);
  const slack = 1e-9 * size;
  // Sorted by their left ends, so that only chords that overlap along x are compared.
  const sorted = [...chords].sort((a, b) => left(a) - left(b));
  for (let i = 0; i < sorted.length; i++)
    for (let j = i + 1; j < sorted.length && left(sorted[j]) <= right(sorted[i]) + slack; j++) {
      const at = meeting(sorted[i], sorted[j], slack);
      if (at !== undefined) return at;
    }
  return undefined;
}

const left = (c: Chord): number => Math.min(c.x0, c.x1);
const right = (c: Chord): number => Math.max(c.x0, c.x1);

/** A line unchanged; an arc as chords of at most three degrees, which deviate from it by 3e-4 of its radius. */
function chordsOf(e: OutlineElement): Chord[] {
  if (elementLength(e) === 0) return [];
  const parts = e.kind === 'line' ? 1 : Math.max(2, Math.ceil(Math.abs(e.sweep) / 0.052));
  return Array.from({ length: parts }, (_, k) => ({
    x0: elementX(e, k / parts),
    y0: elementY(e, k / parts),
    x1: elementX(e, (k + 1) / parts),
    y1: elementY(e, (k + 1) / parts),
  }));
}

function meeting(a: Chord, b: Chord, slack: number): readonly [number, number] | undefined {
  const [ax, ay, bx, by] = [a.x1 - a.x0, a.y1 - a.y0, b.x1 - b.x0, b.y1 - b.y0];
  const [lengthA, lengthB] = [Math.hypot(ax, ay), Math.hypot(bx, by)];
  if (lengthA <= slack || lengthB <= slack) return undefined;
  const [dx, dy] = [b.x0 - a.x0, b.y0 - a.y0];
  const cross = ax * by - ay * bx;
  if (Math.abs(cross) <= 1e-9 * lengthA * lengthB) {
    // Parallel chords coincide if they lie on one line and overlap by more than a corner.
    if (Math.abs(dx * ay - dy * ax) > slack * lengthA) return undefined;
    const along = (x: number, y: number): number => (x * ax + y * ay) / lengthA;
    const [p, q] = [along(dx, dy), along(dx + bx, dy + by)];
    const from = Math.max(0, Math.min(p, q));
    const to = Math.min(lengthA, Math.max(p, q));
    return to - from > 10 * slack
      ? [a.x0 + (ax * (from + to)) / (2 * lengthA), a.y0 + (ay * (from + to)) / (2 * lengthA)]
      : undefined;
  }
  const s = (dx * by - dy * bx) / cross;
  const t = (dx * ay - dy * ax) / cross;
  const inside = (u: number, length: number): boolean => u * length > slack && (1 - u) * length > slack;
  return inside(s, lengthA) && inside(t, lengthB) ? [a.x0 + s * ax, a.y0 + s * ay] : undefined;
}
