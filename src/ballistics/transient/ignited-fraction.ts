// How far the flame has spread over the surface, in plain numbers: shared by the lumped and the coupled chamber.

/** Flame spread for the kernels. */
export interface SpreadKernel {
  /** Time at which the first surface ignites [s]. */
  readonly ignitionDelay: number;
  /** Time in which the flame then covers the surface evenly [s]; 0: at once. */
  readonly flameSpreadTime: number;
  /** Fraction of the surface that ignites before the pressure reaches `fullIgnitionPressure`; 1: all of it. */
  readonly partialFraction: number;
  /** Pressure at which the remaining surface ignites [Pa]. */
  readonly fullIgnitionPressure: number;
}

/** Fraction of the surface that the flame has reached at a time, from 0 to 1, if nothing holds it back. */
export function spreadFraction({ ignitionDelay, flameSpreadTime }: SpreadKernel, t: number): number {
  if (t < ignitionDelay) return 0;
  const since = t - ignitionDelay;
  return since < flameSpreadTime ? since / flameSpreadTime : 1;
}

/** Change of {@link spreadFraction} with time [1/s]. */
export const spreadSlope = ({ ignitionDelay, flameSpreadTime }: SpreadKernel, t: number): number =>
  t >= ignitionDelay && t - ignitionDelay < flameSpreadTime ? 1 / flameSpreadTime : 0;

/**
 * Ignited fraction of the surface at a time. `held` is true as long as the pressure has not reached
 * `fullIgnitionPressure` since the start; the caller lands on that pressure.
 */
export const ignitedFractionAt = (m: SpreadKernel, t: number, held: boolean): number =>
  (held ? m.partialFraction : 1) * spreadFraction(m, t);

/**
 * Whether a place at a distance from the first ignition is ignited [m], where the flame runs along the port: 1 or 0.
 * `speed` is distance of the farthest place/spread time.
 */
export const isReached = (m: SpreadKernel, distance: number, farthest: number, t: number): boolean =>
  t >= m.ignitionDelay && distance <= farthest * spreadFraction(m, t);
