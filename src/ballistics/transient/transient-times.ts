import type { SpreadKernel } from './ignited-fraction';
import type { IgniterKernel } from './igniter-flow';
import type { BlockageKernel } from './throat-opening';

/** First time after t, and at or before `limit`, at which the equations of igniter, flame or blockage change [s]. */
export function nextTransientTime(
  m: IgniterKernel & SpreadKernel & BlockageKernel,
  t: number,
  limit: number,
): number {
  let next = limit;
  if (m.igniterDuration > t && m.igniterDuration < next) next = m.igniterDuration;
  const igniterEnd = m.igniterDuration + m.igniterFallTime;
  if (igniterEnd > t && igniterEnd < next) next = igniterEnd;
  if (m.ignitionDelay > t && m.ignitionDelay < next) next = m.ignitionDelay;
  const spread = m.ignitionDelay + m.flameSpreadTime;
  if (spread > t && spread < next) next = spread;
  if (m.blockedFraction > 0) {
    if (m.blockedFrom > t && m.blockedFrom < next) next = m.blockedFrom;
    if (m.blockedUntil > t && m.blockedUntil < next) next = m.blockedUntil;
  }
  return next;
}
