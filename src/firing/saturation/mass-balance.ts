import { integralBetween } from '../analysis/trace-values';
import type { Clipping } from './clipping';

/**
 * Kernel: peak of a clipped pressure from what must have flowed through the throat: the integral of absolute pressure is
 * the mass times c* over A_t, and what the record lacks of it is above the clipped level. A rectangle above the level gives the least
 * peak, a triangle the greatest, a parabola the middle one.
 *
 * Source: Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001), definition of c*, integrated over the burn.
 */
export function peakFromMassBalance(
  time: Float64Array,
  pressure: Float64Array,
  clipping: Clipping,
  given: {
    readonly ambient: number;
    /** kg. */
    readonly propellantMass: number;
    /** m/s. */
    readonly characteristicVelocity: number;
    /** Standard deviation of the mass times c* over A_t as a share. */
    readonly uncertainty: number;
    /** m². */
    readonly throatArea: number;
    /** Burn, s. */
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
