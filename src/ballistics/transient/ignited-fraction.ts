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

/**
 * Ignited fraction of the surface at a time. `held` is true as long as the pressure has not reached
 * `fullIgnitionPressure` since the start; the caller lands on that pressure.
 */
export const ignitedFractionAt = (m: SpreadKernel, t: number, held: boolean): number =>
  (held ? m.partialFraction : 1) * spreadFraction(m, t);
