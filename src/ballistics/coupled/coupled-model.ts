// What a coupled run needs beyond the motor of the lumped one.
import type { SegmentLayout } from '../grain/inputs';
import type { ErosionLaw } from '../port/erosion-law';
import type { MotorModel } from '../simulation/motor-model';
import { emptyResult, type RunResult } from '../simulation/run-result';

/** A motor whose port is solved along its axis, in plain SI numbers, checked before. */
export interface CoupledModel {
  readonly motor: MotorModel;
  readonly segments: readonly SegmentLayout[];
  readonly erosion: ErosionLaw;
  readonly momentumFactor: number;
  readonly entranceLoss: number;
  /** Stations along the column. */
  readonly stations: number;
  /** Section of the chamber [m²]. */
  readonly chamberArea: number;
  readonly hasPlenum: boolean;
  /** Relative error allowed in each step. */
  readonly tolerance: number;
}

/** Largest share of the mass turned over that a coupled run may gain or lose: it takes its steps at a coarser tolerance. */
export const mostLostInPort = 5e-3;

/** What a coupled run leaves behind: plain SI numbers. Pressures are stagnation pressures at the nozzle. */
export interface CoupledResult extends RunResult {
  /** Maximum static pressure at the head end [Pa], and its time. */
  peakHeadPressure: number;
  peakHeadTime: number;
  /** Last time at which the port, not the throat, limited the flow; NaN where it never did. */
  chokedUntil: number;
  /** Propellant left at the end [m³]. */
  endVolume: number;
}

export const coupledResult = (): CoupledResult => ({
  ...emptyResult(),
  peakHeadPressure: 0,
  peakHeadTime: 0,
  chokedUntil: Number.NaN,
  endVolume: 0,
});
