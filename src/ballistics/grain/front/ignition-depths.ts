// Depths at which buried flaws ignite: the shortest path of the front from surface to surface, by Dijkstra's
// algorithm.

import type { PlacedFlaw } from '../flaws';
import type { Source } from '../surface';
import type { LitSource } from './field';

/** Minimum distance between two surfaces [m]; 0 where they meet. */
export function surfaceGap(a: Source, b: Source): number {
  const [seed, other] = a.bound !== undefined || b.bound === undefined ? [a, b] : [b, a];
  const points = seed.samples();
  const foot = new Float64Array(3);
  const count = points.length / 3;
  const distance = new Float64Array(count);
  // Samples may lie off the surface (inside a ring, for example): project them onto it first.
  for (let i = 0; i < count; i++) {
    seed.nearest(points[3 * i], points[3 * i + 1], points[3 * i + 2], foot);
    points.set(foot, 3 * i);
    distance[i] = other.nearest(foot[0], foot[1], foot[2], foot);
  }
  const order = Array.from({ length: count }, (_, i) => i).sort((i, j) => distance[i] - distance[j]);
  let best = Number.POSITIVE_INFINITY;
  // Projecting back and forth between two surfaces never increases the distance; from several starts it finds the
  // minimum.
  for (const start of order.slice(0, 12)) {
    const p = points.slice(3 * start, 3 * start + 3);
    let last = Number.POSITIVE_INFINITY;
    for (let step = 0; step < 400; step++) {
      if (other.nearest(p[0], p[1], p[2], foot) <= 0) return 0;
      p.set(foot);
      const gap = seed.nearest(p[0], p[1], p[2], foot);
      if (gap <= 0) return 0;
      p.set(foot);
      best = Math.min(best, gap);
      if (last - gap < 1e-14 * last) break;
      last = gap;
    }
  }
  return best;
}

/** No two points of the surfaces are nearer than this [m]; minus infinity where the surfaces have no bounds. */
function leastGap(a: Source, b: Source): number {
  if (a.bound === undefined || b.bound === undefined) return Number.NEGATIVE_INFINITY;
  const apart = Math.hypot(a.bound[0] - b.bound[0], a.bound[1] - b.bound[1], a.bound[2] - b.bound[2]);
  return apart - a.bound[3] - b.bound[3];
}

/** Distance from the centre of a ball to a surface, minus its radius: the gap, where the centre is outside. */
function gapOf(a: Source, b: Source): number {
  const [ball, other] = a.round === true ? [a, b] : [b, a];
  if (ball.round !== true || ball.bound === undefined || other.cavity !== undefined) return surfaceGap(a, b);
  const [x, y, z, radius] = ball.bound;
  const distance = other.nearest(x, y, z, new Float64Array(3));
  return distance > radius ? distance - radius : surfaceGap(a, b);
}

/**
 * Computes the depth at which each flaw ignites. A flaw that touches an open surface burns from the start. Any other
 * flaw starts when the front reaches its nearest point, and may then ignite the next. Gaps are only computed between
 * surfaces whose bounds are near enough to matter.
 */
export function ignitionDepths(
  open: readonly Source[],
  flaws: readonly PlacedFlaw[],
  touch: number,
): LitSource[] {
  const depth = Float64Array.from(flaws, (flaw) => {
    if (flaw.open === true) return 0;
    let least = Number.POSITIVE_INFINITY;
    for (const s of open)
      if (leastGap(flaw.source, s) < least) least = Math.min(least, gapOf(flaw.source, s));
    return least <= touch ? 0 : least;
  });
  const waiting = new Set(flaws.keys());
  while (waiting.size > 0) {
    let next = -1;
    for (const i of waiting) if (next < 0 || depth[i] < depth[next]) next = i;
    waiting.delete(next);
    const from = flaws[next];
    if (from === undefined || !Number.isFinite(depth[next])) break;
    for (const i of waiting) {
      const room = depth[i] - depth[next];
      const flaw = flaws[i];
      if (room <= 0 || leastGap(from.source, flaw.source) >= room) continue;
      const gap = gapOf(from.source, flaw.source);
      depth[i] = Math.min(depth[i], depth[next] + (gap <= touch ? 0 : gap));
    }
  }
  return flaws.map((flaw, i) => ({ source: flaw.source, litAt: depth[i] }));
}
