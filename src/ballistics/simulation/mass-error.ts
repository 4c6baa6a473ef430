// Whether a run has kept its mass.
import { igniterGasRatio, igniterMassUntil } from '../transient/igniter-flow';
import { lookUp, lookUpArray, Surface } from './burn-table';
import type { MotorModel } from './motor-model';
import type { RunResult } from './run-result';

/** Largest share of the mass turned over that a run may gain or lose. */
export const mostMassLost = 1e-4;

/** Masses of a finished run [kg]; igniter gas as the mass of propellant gas that would give the same pressure. */
export interface RunMass {
  readonly burned: number;
  readonly igniter: number;
  readonly atStart: number;
  readonly atEnd: number;
}

/** Masses of a run by the propellant left at its end [m³]. */
export function runMass(m: MotorModel, result: RunResult, left: number): RunMass {
  return {
    burned: m.density * (m.table.volume[0] - left),
    igniter: igniterMassUntil(m, result.endTime) * igniterGasRatio(m, m.gasEnergy),
    atStart: (m.initialPressure * (m.chamberVolume - m.table.volume[0])) / m.gasEnergy,
    atEnd: (result.endHeadPressure * (m.chamberVolume - left)) / result.endGasEnergy,
  };
}

/** Mass not accounted for/mass turned over, of a run that ended in a piece of the table. */
export function massErrorOf(m: MotorModel, result: RunResult, piece: number): number {
  const surface = lookUpArray();
  if (Number.isNaN(result.burnoutTime))
    lookUp(m.table, piece, Math.min(result.endDepth, m.table.pieceEnds[piece]), 0, surface);
  const { burned, igniter, atStart, atEnd } = runMass(m, result, surface[Surface.volume]);
  return (burned + igniter + atStart - atEnd - result.massThroughNozzle) / (burned + igniter + atStart);
}
