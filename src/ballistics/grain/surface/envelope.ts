// The grain's outer form: where a ray leaves it, how far outside it a point is, and the radius of its wall.

/** The grain's outer form: a cylinder on 0 <= z <= length about the z axis, or a ball about (0, 0, radius). */
export interface Envelope {
  readonly form: 'cylinder' | 'ball';
  readonly radius: number;
  readonly length: number;
}

/** Distance along a ray from a point inside the envelope to where it leaves it [m]; 0 when the point is outside. */
export function exitDistance(e: Envelope, ray: Float64Array): number {
  const x = ray[0];
  const y = ray[1];
  const z = ray[2];
  const nx = ray[3];
  const ny = ray[4];
  const nz = ray[5];
  const slack = 1e-9 * e.radius;
  if (e.form === 'ball') {
    const zc = z - e.radius;
    const b = x * nx + y * ny + zc * nz;
    const c = x * x + y * y + zc * zc - e.radius * e.radius;
    const disc = b * b - c;
    if (c > slack * e.radius || disc <= 0) return 0;
    const t = -b + Math.sqrt(disc);
    return Math.max(t, 0);
  }
  if (z < -slack || z > e.length + slack) return 0;
  const c = x * x + y * y - e.radius * e.radius;
  if (c > 2 * slack * e.radius) return 0;
  let t = Number.POSITIVE_INFINITY;
  const a = nx * nx + ny * ny;
  if (a > 1e-24) {
    const b = x * nx + y * ny;
    const disc = b * b - a * c;
    t = disc > 0 ? (-b + Math.sqrt(disc)) / a : 0;
  }
  if (nz > 1e-12) t = Math.min(t, (e.length - z) / nz);
  else if (nz < -1e-12) t = Math.min(t, -z / nz);
  return Math.max(t, 0);
}

/** How far a point is outside the envelope [m]; negative inside. */
export function outsideBy(e: Envelope, x: number, y: number, z: number): number {
  const r2 = x * x + y * y;
  if (e.form === 'ball') return Math.sqrt(r2 + (z - e.radius) * (z - e.radius)) - e.radius;
  return Math.max(Math.sqrt(r2) - e.radius, -z, z - e.length);
}

/** Radius of the wall at an axial position [m]. */
export function wallRadius(e: Envelope, z: number): number {
  if (e.form === 'cylinder') return e.radius;
  const h = z - e.radius;
  return Math.sqrt(Math.max(0, e.radius * e.radius - h * h));
}
