import type { Domain } from '../declare/domain';

const perDecade = 8;
const decades = 12; // to each side of a typical value

/**
 * Finds the value in a domain at which a monotonic function has a target value: searched outward from a typical
 * value, bracketed, then bisected. Returns `undefined` where there is no such value, or where the function is not
 * monotonic and several values are possible.
 */
export function monotonicRoot(
  f: (x: number) => number,
  target: number,
  domain: Domain,
  typical: number,
): number | undefined {
  let bracket: readonly [number, number] | undefined;
  let last: readonly [x: number, y: number] | undefined;
  let rises = 0;
  for (const x of searchPoints(domain, typical)) {
    const y = f(x) - target;
    if (!Number.isFinite(y)) continue;
    if (y === 0 && rises === 0) bracket ??= [x, x];
    if (last !== undefined) {
      const change = y - last[1];
      // A change within rounding does not indicate a direction.
      const direction = Math.abs(change) <= 1e-12 * (Math.abs(y) + Math.abs(last[1])) ? 0 : Math.sign(change);
      if (direction !== 0 && rises === -direction) return undefined;
      if (direction !== 0) rises = direction;
      if (bracket === undefined && Math.sign(y) !== Math.sign(last[1])) bracket = [last[0], x];
    }
    last = [x, y];
  }
  if (bracket === undefined || rises === 0) return undefined;
  return bisected((x) => f(x) - target, ...bracket);
}

/** Points of a domain in ascending order: by decades around the typical value, and closely spaced within bounds. */
function searchPoints(
  { above, below, min = above, max = below }: Domain,
  typical: number,
): readonly number[] {
  const scale = typical === 0 ? 1 : Math.abs(typical);
  const sizes = Array.from(
    { length: 2 * decades * perDecade + 1 },
    (_, i) => scale * 10 ** (i / perDecade - decades),
  );
  const points = new Set<number>([typical]);
  for (const size of sizes) {
    for (const x of min === undefined && max === undefined ? [size, -size] : []) points.add(x);
    if (min !== undefined) points.add(min + size);
    if (max !== undefined) points.add(max - size);
  }
  if (min !== undefined && max !== undefined)
    for (let i = 0; i <= 64; i++) points.add(min + ((max - min) * i) / 64);
  const inside = (x: number): boolean =>
    !(x < (min ?? -Infinity) || x > (max ?? Infinity) || x === above || x === below);
  return [...points].filter(inside).sort((a, b) => a - b);
}

/** The root within a bracket, to the last digits, by bisection. */
function bisected(f: (x: number) => number, low: number, high: number): number {
  const sign = Math.sign(f(high)) || -Math.sign(f(low));
  for (;;) {
    // Geometric mean while the ends differ by a factor, so that a root near zero has the same relative accuracy.
    const middle = low > 0 && high > 4 * low ? Math.sqrt(low * high) : low + (high - low) / 2;
    if (middle <= low || middle >= high) return Math.abs(f(low)) < Math.abs(f(high)) ? low : high;
    if (Math.sign(f(middle)) === sign) high = middle;
    else low = middle;
  }
}
