import { integralBetween } from '../analysis/trace-values';
import type { Clipping } from './clipping';

/**
 * Kernel: peak of a clipped pressure from the mass balance. The integral of absolute pressure equals the mass times
 * c* divided by A_t, and the part of it that the record lacks is above the clipping level. A rectangle above the level gives the
 * lowest peak, a triangle the highest, a parabola the nominal one.
 *
 * Source: Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001), definition of c*, integrated over the burn.
 */
export function peakFromMassBalance(
  time: Float64Array,
  pressure: Float64Array,
  clipping: Clipping,
  given: {
    readonly ambient: number;
    /** Mass of propellant, kg. */
    readonly propellantMass: number;
    /** Characteristic velocity, m/s. */
    readonly characteristicVelocity: number;
    /** Relative standard deviation of mass times c* divided by A_t. */
    readonly uncertainty: number;
    /** Throat area, m². */
    readonly throatArea: number;
    /** Start and end of the burn, s. */
    readonly from: number;
    readonly to: number;
  },
):
  | { readonly value: number; readonly low: number; readonly high: number; readonly missingShare: number }
  | undefined {
  const { propellantMass, characteristicVelocity, throatArea, uncertainty, from, to } = given;
  const needed = (propellantMass * characteristicVelocity) / throatArea;
  const seen = integralBetween(time, pressure, from, to);
  const clipped = clipping.spans.reduce((sum, span) => sum + span.to - span.from, 0);
  if (!(clipped > 0)) return undefined;
  const missing = needed - seen;
  const error = 2 * uncertainty * needed;
  const { level } = clipping;
  return {
    value: level + (1.5 * Math.max(0, missing)) / clipped,
    low: level + Math.max(0, missing - error) / clipped,
    high: level + (2 * Math.max(0, missing + error)) / clipped,
    missingShare: missing / needed,
  };
}
