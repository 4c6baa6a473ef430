// Burning area and remaining volume at every depth, summed over sampled rays.
import type { RayCells } from './ray-cells';

export interface FrontTable {
  /** Area of the front at each depth [m²]. */
  readonly area: Float64Array;
  /** Propellant remaining at each depth [m³]. */
  readonly volume: Float64Array;
}

/** Share of a triangle whose corners burn to a <= b <= c (linear between) that is still burning at depth w. */
function burningShare(a: number, b: number, c: number, w: number): number {
  if (w < b) return w <= a ? 1 : 1 - ((w - a) * (w - a)) / ((b - a) * (c - a));
  return w >= c ? 0 : ((c - w) * (c - w)) / ((c - a) * (c - b));
}

/** Integral over depth of that share, from a to w <= c. */
function burningSpan(a: number, b: number, c: number, w: number): number {
  const past = w - a;
  if (w <= b) return past > 0 ? past - (past * past * past) / (3 * (b - a) * (c - a)) : past;
  const rise = b - a;
  const fall = c - b;
  const left = c - w;
  return (
    rise - (rise * rise) / (3 * (c - a)) + (fall * fall * fall - left * left * left) / (3 * (c - a) * fall)
  );
}

/** First index with levels[i] >= depth. */
export function firstAtLeast(levels: Float64Array, depth: number): number {
  let low = 0;
  let high = levels.length;
  while (low < high) {
    const mid = (low + high) >> 1;
    if (levels[mid] < depth) low = mid + 1;
    else high = mid;
  }
  return low;
}

/**
 * Sums the cells at the given depths (increasing; the last one beyond the deepest ray). A cell has the area w0 + w1 t
 * + w2 t² at its own depth t = w - litAt. Its volume is the integral of that to the depth at which it burns out, so
 * that burned and unburned volume add up to the cast volume exactly.
 */
export function tallyFront(cells: readonly RayCells[], levels: Float64Array): FrontTable {
  const n = levels.length;
  const area = new Float64Array(n);
  const volume = new Float64Array(n);
  const groups = new Map<number, RayCells[]>();
  for (const c of cells) groups.set(c.litAt, [...(groups.get(c.litAt) ?? []), c]);
  let total = 0;
  for (const [litAt, members] of groups) {
    const alive = [new Float64Array(n + 1), new Float64Array(n + 1), new Float64Array(n + 1)] as const;
    const part = [new Float64Array(n), new Float64Array(n), new Float64Array(n)] as const;
    const dead = new Float64Array(n + 1);
    const local = levels.map((w) => w - litAt);
    for (const c of members) for (let i = 0; i < c.count; i++) addCell(c, i, local, alive, part, dead);
    const [a0, a1, a2] = alive;
    // `alive` holds, at each level, the weight of the cells that are whole just below it: sum from the deepest level.
    for (let k = n - 1; k >= 0; k--) {
      a0[k] = a0[k] + a0[k + 1];
      a1[k] = a1[k] + a1[k + 1];
      a2[k] = a2[k] + a2[k + 1];
    }
    let gone = 0;
    for (let k = 0; k < n; k++) {
      gone += dead[k];
      const t = local[k];
      if (t < 0) continue;
      const w0 = a0[k + 1] + part[0][k];
      const w1 = a1[k + 1] + part[1][k];
      const w2 = a2[k + 1] + part[2][k];
      area[k] = area[k] + w0 + t * (w1 + t * w2);
      volume[k] = volume[k] - gone - t * (w0 + t * (w1 / 2 + (t * w2) / 3));
    }
    total += gone;
  }
  for (let k = 0; k < n; k++) volume[k] = total + volume[k];
  // The remainder at the end is rounding error: the last depth lies beyond every ray.
  volume[n - 1] = 0;
  area[n - 1] = 0;
  return { area, volume };
}

type Three = readonly [Float64Array, Float64Array, Float64Array];

function addCell(
  c: RayCells,
  i: number,
  local: Float64Array,
  alive: Three,
  part: Three,
  dead: Float64Array,
): void {
  const w0 = c.weight[3 * i];
  const w1 = c.weight[3 * i + 1];
  const w2 = c.weight[3 * i + 2];
  if (c.nodes === 2) {
    const p = c.depth[2 * i];
    const q = c.depth[2 * i + 1];
    addPiece(Math.min(p, q), Number.NaN, Math.max(p, q), w0, w1, w2, local, alive, part, dead);
    return;
  }
  const at = 5 * i;
  const m = c.depth[at + 4];
  for (let k = 0; k < 4; k++) {
    const p = c.depth[at + k];
    const q = c.depth[at + ((k + 1) & 3)];
    const low = Math.min(p, q);
    const high = Math.max(p, q);
    const a = Math.min(m, low);
    const b = m < low ? low : Math.min(m, high);
    addPiece(a, b, Math.max(m, high), w0 / 4, w1 / 4, w2 / 4, local, alive, part, dead);
  }
}

/**
 * Adds a triangle with corner depths a <= b <= c, or a stretch from a to c when b is not a number. A negative depth
 * lies inside another cavity: only the part above zero burns.
 */
function addPiece(
  a: number,
  b: number,
  c: number,
  w0: number,
  w1: number,
  w2: number,
  local: Float64Array,
  alive: Three,
  part: Three,
  dead: Float64Array,
): void {
  if (c <= 0) return;
  const n = local.length;
  const curve = Number.isNaN(b);
  let k = firstAtLeast(local, Math.max(a, 0));
  let share = 1;
  let from = a;
  let span = 0;
  if (a < 0) {
    share = curve ? c / (c - a) : burningShare(a, b, c, 0);
    from = 0;
    if (!curve) span = burningSpan(a, b, c, 0);
  }
  alive[0][k] += share * w0;
  alive[1][k] += share * w1;
  alive[2][k] += share * w2;
  if (a >= 0 && k < n && local[k] >= c) {
    // All of it burns out within one step: use its mean depth.
    const t = curve ? (a + c) / 2 : (a + b + c) / 3;
    dead[k] += t * (w0 + t * (w1 / 2 + (t * w2) / 3));
    return;
  }
  for (; k < n; k++) {
    const level = local[k];
    const to = Math.min(level, c);
    const left = to >= c ? 0 : curve ? (c - to) / (c - a) : burningShare(a, b, c, to);
    // Mean depth at which this part burns out: the midpoint of a stretch; for a triangle by parts from the share that
    // still burns.
    let t = (from + to) / 2;
    if (!curve && c > a) {
      const next = burningSpan(a, b, c, to);
      if (share - left > 1e-9)
        t = Math.min(to, Math.max(from, (from * share - to * left + next - span) / (share - left)));
      span = next;
    }
    dead[k] += (share - left) * t * (w0 + t * (w1 / 2 + (t * w2) / 3));
    if (level >= c) break;
    part[0][k] += left * w0;
    part[1][k] += left * w1;
    part[2][k] += left * w2;
    share = left;
    from = to;
  }
}
