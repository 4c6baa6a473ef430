import type { Domain } from '../declare/domain';

const perDecade = 8;
const decades = 12; // to each side of a typical value

/**
 * The value in a domain at which a function takes a target value, where the function is monotonic over the domain:
 * searched outward from a typical value, bracketed, then closed in on. `undefined` where there is no such value, or where
 * the function turns back and several values may answer.
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
      // A change within rounding says nothing of the direction.
      const direction = Math.abs(change) <= 1e-12 * (Math.abs(y) + Math.abs(last[1])) ? 0 : Math.sign(change);
      if (direction !== 0 && rises === -direction) return undefined;
      if (direction !== 0) rises = direction;
      if (bracket === undefined && Math.sign(y) !== Math.sign(last[1])) bracket = [last[0], x];
    }
    last = [x, y];
  }
  if (bracket === undefined || rises === 0) return undefined;
  return closedIn((x) => f(x) - target, ...bracket);
}

/** Points of a domain in rising order: by decades around the typical value, and densely within bounds. */
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

/** The root within a bracket, to the last digits: bisection with inverse quadratic steps (Chandrupatla, 1997, from memory). */
function closedIn(f: (x: number) => number, from: number, to: number): number | undefined {
  let [a, b] = [from, to];
  let [fa, fb] = [f(a), f(b)];
  let [c, fc] = [a, fa];
  let t = 0.5;
  for (let i = 0; i < 200; i++) {
    if (fa === 0 || fb === 0) return fa === 0 ? a : b;
    const x = a + t * (b - a);
    const fx = f(x);
    if (!Number.isFinite(fx)) return undefined;
    if (Math.sign(fx) === Math.sign(fa)) [c, fc] = [a, fa];
    else [c, b, fc, fb] = [b, a, fb, fa];
    [a, fa] = [x, fx];
    const best = Math.abs(fa) < Math.abs(fb) ? a : b;
    const limit = (2 * Number.EPSILON * Math.abs(best)) / Math.abs(b - a);
    if (limit > 0.5 || fa === 0) return best;
    const xi = (a - b) / (c - b);
    const phi = (fa - fb) / (fc - fb);
    t =
      phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi
        ? (fa / (fb - fa)) * (fc / (fb - fc)) + ((c - a) / (b - a)) * (fa / (fc - fa)) * (fb / (fc - fb))
        : 0.5;
    t = Math.min(1 - limit, Math.max(limit, t));
  }
  return undefined;
}
