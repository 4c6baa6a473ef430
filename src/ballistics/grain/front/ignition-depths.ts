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

/**
 * Computes the depth at which each flaw ignites. A flaw that touches an open surface burns from the start. Any other
 * flaw starts when the front reaches its nearest point, and may then ignite the next.
 */
export function ignitionDepths(
  open: readonly Source[],
  flaws: readonly PlacedFlaw[],
  touch: number,
): LitSource[] {
  const depth = flaws.map((flaw) => {
    if (flaw.open === true) return 0;
    const gap = open.reduce(
      (least, s) => Math.min(least, surfaceGap(flaw.source, s)),
      Number.POSITIVE_INFINITY,
    );
    return gap <= touch ? 0 : gap;
  });
  const settled = new Set<number>();
  while (settled.size < flaws.length) {
    let next = -1;
    for (let i = 0; i < flaws.length; i++)
      if (!settled.has(i) && (next < 0 || depth[i] < depth[next])) next = i;
    settled.add(next);
    const from = flaws[next];
    if (from === undefined || !Number.isFinite(depth[next])) break;
    flaws.forEach((flaw, i) => {
      if (settled.has(i)) return;
      const gap = surfaceGap(from.source, flaw.source);
      const via = depth[next] + (gap <= touch ? 0 : gap);
      if (via < depth[i]) depth[i] = via;
    });
  }
  return flaws.map((flaw, i) => ({ source: flaw.source, litAt: depth[i] }));
}
