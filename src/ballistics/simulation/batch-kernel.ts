// Many varied firings of one motor on plain numbers: rows of variations and of results.

import type { MotorModel } from './motor-model';
import type { RunResult } from './run-result';

/** Columns of a row of variations: factors, then the number of the grain. */
export const variationColumns = [
  'burnRate',
  'density',
  'characteristicVelocity',
  'throatDiameter',
  'thrust',
  'chamberVolume',
  'grain',
] as const;

/** Columns of a row of results, SI. */
export const outcomeColumns = [
  'peakPressure',
  'peakTime',
  'peakThrust',
  'totalImpulse',
  'pressureIntegral',
  'burnTime',
  'endTime',
  'end',
  'minBurnPressure',
  'maxPressure',
  'peakHeadPressure',
] as const;

/** The results of a batch, column by column. */
export type Outcomes = Readonly<Record<(typeof outcomeColumns)[number], Float64Array>>;

/** The ways a run ends, by the number that stands in a row of results. */
export const runEnds = [
  'burned out',
  'stop pressure',
  'pressure limit',
  'closure held',
  'time limit',
  'throat closed',
  'not converged',
] as const;

/** Columns of variations as rows, of the motors from one number to another (exclusive). */
export function rowsOf(columns: readonly Float64Array[], from: number, to: number): Float64Array {
  const width = variationColumns.length;
  const rows = new Float64Array((to - from) * width);
  columns.forEach((column, j) => {
    for (let i = from; i < to; i++) rows[(i - from) * width + j] = column[i];
  });
  return rows;
}

/** The motor with the factors of a row; one model for each grain is given. */
export function variedModel(models: readonly MotorModel[], rows: Float64Array, row: number): MotorModel {
  const at = row * variationColumns.length;
  const base = models[rows[at + 6]];
  const lnRate = Math.log(rows[at]);
  const speed = rows[at + 2];
  return {
    ...base,
    law: { ...base.law, lnCoefficients: base.law.lnCoefficients.map((ln) => ln + lnRate) },
    density: base.density * rows[at + 1],
    characteristicVelocity: base.characteristicVelocity * speed,
    // c* goes with the root of the gas energy: a varied c* is a varied temperature.
    gasEnergy: base.gasEnergy * speed * speed,
    throatRadius: base.throatRadius * rows[at + 3],
    thrustEfficiency: base.thrustEfficiency * rows[at + 4],
    chamberVolume: base.chamberVolume * rows[at + 5],
  };
}

/** Writes the row of a firing into `out`; `head` is the maximum pressure at the head end, where the run gives it. */
export function outcomeRow(result: RunResult, head: number, out: Float64Array, at: number): void {
  out[at] = result.peakPressure;
  out[at + 1] = result.peakTime;
  out[at + 2] = result.peakThrust;
  out[at + 3] = result.totalImpulse;
  out[at + 4] = result.pressureIntegral;
  // Where propellant is left the run's own end stands in.
  out[at + 5] = Number.isNaN(result.burnoutTime) ? result.endTime : result.burnoutTime;
  out[at + 6] = result.endTime;
  out[at + 7] = runEnds.indexOf(result.end);
  out[at + 8] = result.minBurnPressure;
  out[at + 9] = Math.max(result.maxBurnPressure, result.peakPressure);
  out[at + 10] = head;
}
