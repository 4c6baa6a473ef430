import { idealNozzle } from '../nozzle';
import type { MotorModel } from './simulation/motor-model';
import type { RunResult } from './simulation/run-result';

// Exit pressure over ambient at which a stream leaves the wall by Summerfield's criterion (Summerfield, Foster & Swan,
// Jet Propulsion 24 (1954); the value from memory).
const separates = 0.4;

/** What a predicted firing must not keep quiet about its nozzle. */
export function nozzleCautions(m: MotorModel, result: RunResult): readonly string[] {
  const nozzle = idealNozzle(m.gamma, Math.max(1, m.exitArea / (Math.PI * m.throatRadius ** 2)));
  const chokes = m.ambientPressure / nozzle.criticalPressureRatio;
  const most = result.maxBurnPressure;
  if (most === 0) return [];
  const mpa = (pressure: number): string => `${(pressure / 1e6).toPrecision(3)} MPa`;
  if (most < chokes)
    return [
      `from 5 to 95 % of the burned depth the pressure is ${mpa(most)} at most, less than the ${mpa(chokes)} that choke a throat: the motor smoulders`,
    ];
  const exit = nozzle.exitPressureRatio * result.peakPressure;
  return m.separation === 'none' && exit < separates * m.ambientPressure
    ? [
        `the nozzle is told to flow full, but even at the peak its exit has ${(exit / m.ambientPressure).toPrecision(2)} of ambient pressure, and below ${separates} the stream leaves the wall: the thrust is too low, zero where it would be below`,
      ]
    : [];
}
