// Closed form of the wagon wheel with parallel-sided spokes.

/** Ring inner radius, half spoke thickness and inner end of the spokes [m]. */
export interface WheelMeasures {
  readonly spokes: number;
  readonly ringRadius: number;
  readonly halfThickness: number;
  readonly spokeRadius: number;
}

/**
 * Burning perimeter until the ring's front reaches the wall [m]. Derived from the geometry: the ring's arcs, the
 * fans at the spokes' feet, and the spokes until their sides meet at half their thickness.
 */
export function wheelPerimeter(wheel: WheelMeasures, depth: number): number {
  const { spokes: n, ringRadius: rw, halfThickness: t, spokeRadius: ri } = wheel;
  const alpha = Math.asin(t / rw);
  const ring = (rw + depth) * (Math.PI / n - alpha);
  if (depth < t) {
    const sides = Math.sqrt(rw * rw - t * t) - ri - depth;
    return 2 * n * (ring + depth * (Math.PI / 2 + alpha) + sides + (t - depth));
  }
  return 2 * n * (ring + depth * (alpha + Math.asin(t / depth)));
}
