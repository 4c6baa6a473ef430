// A chamber whose burning area and free volume do not change: the first tens of milliseconds, or a pulse.
import { integrateOde, type OdeResult } from '../numerics';
import { rateOfLaw } from './simulation/chamber-rate';
import type { LawKernel } from './simulation/motor-model';
import { type SpreadKernel, spreadFraction } from './transient/ignited-fraction';
import { type IgniterKernel, igniterFlow, igniterGasRatio, mixtureRatio } from './transient/igniter-flow';
import { type BlockageKernel, throatOpening } from './transient/throat-opening';

/** The chamber in SI numbers. */
export interface FrozenChamber extends IgniterKernel, SpreadKernel, BlockageKernel {
  readonly law: LawKernel;
  readonly density: number;
  readonly gasEnergy: number;
  readonly characteristicVelocity: number;
  readonly burningArea: number;
  readonly freeVolume: number;
  readonly throatArea: number;
}

/** A chamber without igniter gas whose whole surface burns. */
export const quietChamber = {
  igniterMass: 0,
  igniterDuration: 0,
  igniterFallTime: 0,
  igniterGasEnergy: undefined,
  ignitionDelay: 0,
  flameSpreadTime: 0,
  partialFraction: 1,
  fullIgnitionPressure: 0,
  blockedFraction: 0,
  blockedFrom: 0,
  blockedUntil: 0,
} as const;

/** Pressure from a start to an end in time, as the first component; the throat is choked throughout. */
export function runFrozenChamber(m: FrozenChamber, startPressure: number, end: number): OdeResult {
  const rate = new Float64Array(2);
  const ratio = igniterGasRatio(m, m.gasEnergy);
  return integrateOde({
    start: 0,
    end,
    initial: [startPressure],
    relativeTolerance: 1e-9,
    absoluteTolerance: 1e-3,
    breakpoints: [
      m.igniterDuration,
      m.igniterDuration + m.igniterFallTime,
      m.ignitionDelay,
      m.ignitionDelay + m.flameSpreadTime,
      m.blockedFrom,
      m.blockedUntil,
    ],
    derivative: (t, [p], out) => {
      rateOfLaw(m.law, Math.log(p), rate);
      const burned = m.burningArea * rate[0] * spreadFraction(m, t);
      const igniter = igniterFlow(m, t);
      const outflow = (p * m.throatArea * throatOpening(m, t)) / m.characteristicVelocity;
      const mixture = igniter > 0 ? mixtureRatio(igniter, m.density * burned, ratio) : 1;
      const made = igniter * ratio + (m.density - p / m.gasEnergy) * burned - outflow * Math.sqrt(mixture);
      out[0] = (m.gasEnergy * made) / m.freeVolume;
    },
  });
}
