// A right-handed set of axes at any position in the grain.

/** Origin (x, y, z) and the three unit axes a, b, c [m]. */
export interface Frame {
  readonly x: number;
  readonly y: number;
  readonly z: number;
  readonly a: readonly [number, number, number];
  readonly b: readonly [number, number, number];
  readonly c: readonly [number, number, number];
}

/** Coordinates of a point in the frame. */
export function toLocal(f: Frame, x: number, y: number, z: number, out: Float64Array): void {
  const dx = x - f.x;
  const dy = y - f.y;
  const dz = z - f.z;
  out[0] = dx * f.a[0] + dy * f.a[1] + dz * f.a[2];
  out[1] = dx * f.b[0] + dy * f.b[1] + dz * f.b[2];
  out[2] = dx * f.c[0] + dy * f.c[1] + dz * f.c[2];
}

/** Transforms p[0..2] from the coordinates of the frame to those of the grain. */
export function toWorld(f: Frame, p: Float64Array): void {
  toWorldDirection(f, p, 0);
  p[0] = p[0] + f.x;
  p[1] = p[1] + f.y;
  p[2] = p[2] + f.z;
}

/** Turns the direction p[at..at+2] from the axes of the frame to those of the grain. */
export function toWorldDirection(f: Frame, p: Float64Array, at: number): void {
  const u = p[at];
  const v = p[at + 1];
  const w = p[at + 2];
  p[at] = u * f.a[0] + v * f.b[0] + w * f.c[0];
  p[at + 1] = u * f.a[1] + v * f.b[1] + w * f.c[1];
  p[at + 2] = u * f.a[2] + v * f.b[2] + w * f.c[2];
}

/** A frame whose third axis is `normal` and whose first axis is as close to `along` as possible. */
export function frameAt(
  origin: readonly [number, number, number],
  normal: readonly [number, number, number],
  along: readonly [number, number, number],
): Frame {
  const n = Math.hypot(...normal);
  const c = [normal[0] / n, normal[1] / n, normal[2] / n] as const;
  const dot = along[0] * c[0] + along[1] * c[1] + along[2] * c[2];
  const raw = [along[0] - dot * c[0], along[1] - dot * c[1], along[2] - dot * c[2]] as const;
  const r = Math.hypot(...raw);
  const a = [raw[0] / r, raw[1] / r, raw[2] / r] as const;
  const b = [c[1] * a[2] - c[2] * a[1], c[2] * a[0] - c[0] * a[2], c[0] * a[1] - c[1] * a[0]] as const;
  return { x: origin[0], y: origin[1], z: origin[2], a, b, c };
}
