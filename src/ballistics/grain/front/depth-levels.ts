// The depths at which a regression is tabulated: equal steps between breaks, and two depths close together at every
// jump.
import type { RayCells } from './ray-cells';

/** A depth at which the burning area jumps: a front of uniform depth burns through, or a buried flaw ignites. */
export interface DepthBreak {
  readonly depth: number;
  /** Change of the burning area there [m²]. */
  readonly jump: number;
}

/** Maximum depth burned by any cell [m]. */
export function deepestCell(cells: readonly RayCells[]): number {
  let most = 0;
  for (const c of cells) for (let i = 0; i < c.depth.length; i++) most = Math.max(most, c.litAt + c.depth[i]);
  return most;
}

/** Finds the depths at which area is lost at once and those at which area appears because a flaw ignites. */
export function findBreaks(cells: readonly RayCells[], burnout: number): DepthBreak[] {
  const even = 1e-8 * burnout;
  const width = 1e-7 * burnout;
  const jumps = new Map<number, { depth: number; jump: number }>();
  const add = (depth: number, jump: number): void => {
    const key = Math.round(depth / width);
    for (const k of [key, key - 1, key + 1]) {
      const found = jumps.get(k);
      if (found === undefined) continue;
      found.jump += jump;
      return;
    }
    jumps.set(key, { depth, jump });
  };
  let scale = 0;
  for (const c of cells) if (c.litAt > 0) add(c.litAt, 0);
  for (const c of cells)
    for (let i = 0; i < c.count; i++) {
      let low = Number.POSITIVE_INFINITY;
      let high = 0;
      for (let k = 0; k < c.nodes; k++) {
        const d = c.depth[c.nodes * i + k];
        low = Math.min(low, d);
        high = Math.max(high, d);
      }
      const w0 = c.weight[3 * i];
      const w1 = c.weight[3 * i + 1];
      const w2 = c.weight[3 * i + 2];
      scale += Math.abs(w0 + high * (w1 + high * w2));
      if (c.litAt > 0 && w0 !== 0) add(c.litAt, w0);
      if (high - low <= even && high > even) add(c.litAt + high, -(w0 + high * (w1 + high * w2)));
    }
  return [...jumps.values()]
    .filter((b) => Math.abs(b.jump) > 2e-4 * scale || cells.some((c) => c.litAt === b.depth))
    .sort((a, b) => a.depth - b.depth);
}

/** Half the width of a jump in the table, as a fraction of the burnout depth. Rays of equal depth agree much more closely. */
const JUMP_WIDTH = 2e-7;

/**
 * Depths from 0 to just beyond burnout, about `steps` of them, with one depth on either side of every break and one at
 * every kink: a depth at which the area has a corner, because a front meets the wall.
 */
export function depthLevels(
  breaks: readonly DepthBreak[],
  burnout: number,
  steps: number,
  kinks: readonly number[] = [],
): Float64Array {
  const eps = JUMP_WIDTH * burnout;
  const jumps = breaks.map((b) => b.depth).filter((d) => d > 4 * eps && d < burnout - 4 * eps);
  const edges = [...jumps, burnout].map((at) => ({ at, half: eps }));
  const near = 1e-4 * burnout;
  for (const at of [...kinks].sort((a, b) => a - b))
    if (at > near && edges.every((e) => Math.abs(e.at - at) > near)) edges.push({ at, half: 0 });
  edges.sort((a, b) => a.at - b.at);
  const levels: number[] = [0];
  let from = 0;
  // With many breaks the steps between them are few.
  const least = edges.length > 20 ? 2 : 6;
  for (const { at, half } of edges) {
    const to = at - half;
    const parts = Math.max(least, Math.round((steps * (to - from)) / burnout));
    for (let k = 1; k <= parts; k++) levels.push(k === parts ? to : from + ((to - from) * k) / parts);
    from = at + half;
    if (half > 0) levels.push(from);
  }
  return Float64Array.from(levels);
}
