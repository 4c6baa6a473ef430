import { idealNozzleSi } from '../nozzle/ideal-nozzle-kernels';
import type { MotorModel } from './simulation/motor-model';
import type { RunResult } from './simulation/run-result';

// Exit/ambient pressure at which the flow separates by Summerfield's criterion (Summerfield, Foster & Swan,
// Jet Propulsion 24 (1954); value quoted from memory, not verified).
const separates = 0.4;

/** Cautions of a predicted firing about its nozzle. */
export function nozzleCautions(m: MotorModel, result: RunResult): readonly string[] {
  const nozzle = idealNozzleSi(m.gamma, Math.max(1, m.exitArea / (Math.PI * m.throatRadius ** 2)));
  const chokes = m.ambientPressure / nozzle.criticalPressureRatio;
  const max = result.maxBurnPressure;
  if (max === 0) return [];
  const mpa = (pressure: number): string => `${(pressure / 1e6).toPrecision(3)} MPa`;
  if (max < chokes)
    return [
      `from 5 to 95 % of the burned depth the maximum pressure is ${mpa(max)}, below the ${mpa(chokes)} required to choke the throat; the motor burns near ambient pressure and gives almost no thrust`,
    ];
  const exit = nozzle.exitPressureRatio * result.peakPressure;
  return m.separation === 'none' && exit < separates * m.ambientPressure
    ? [
        `full flow was specified for the nozzle, but even at peak pressure the exit pressure is ${(exit / m.ambientPressure).toPrecision(2)} of ambient, below the ${separates} at which the flow separates; the computed thrust is too low, and zero where it would be negative`,
      ]
    : [];
}
