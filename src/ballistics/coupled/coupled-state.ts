// The state of a coupled run, and the run in progress.
import type { PortDrive, PortGas, PortMarch } from '../port/port-march';
import type { ChamberWorkspace } from '../simulation/chamber-workspace';
import type { ColumnPath } from './column-cells';
import type { CoupledModel } from './coupled-model';

/** State of a run at one instant. */
export interface CoupledState {
  time: number;
  headPressure: number;
  headSlope: number;
  throatRadius: number;
  throatSlope: number;
  /** Burned depths and their rates: stations, then both ends of each segment. */
  readonly depth: Float64Array;
  readonly rate: Float64Array;
  /** Stagnation pressure at the nozzle [Pa] and flow through it [kg/s]. */
  stagnation: number;
  flow: number;
  burned: number;
  /** Propellant left [m³], burning area [m²]. */
  volume: number;
  area: number;
}

/** Receives every state of a run. */
export type CoupledRecorder = (run: CoupledRun) => void;

/** A run in progress. */
export interface CoupledRun {
  readonly model: CoupledModel;
  readonly path: ColumnPath;
  readonly gas: PortGas;
  readonly drive: PortDrive;
  readonly march: PortMarch;
  readonly workspace: ChamberWorkspace;
  readonly state: CoupledState;
  /** Whether part of the surface waits for the pressure of full ignition. */
  held: boolean;
  /** Second derivative of the head pressure over the last step [Pa/s²]. */
  curve: number;
}

export const stateOf = (n: number): CoupledState => ({
  time: 0,
  headPressure: 0,
  headSlope: 0,
  throatRadius: 0,
  throatSlope: 0,
  depth: new Float64Array(n),
  rate: new Float64Array(n),
  stagnation: 0,
  flow: 0,
  burned: 0,
  volume: 0,
  area: 0,
});

export function copyInto(from: CoupledState, to: CoupledState): void {
  to.time = from.time;
  to.headPressure = from.headPressure;
  to.headSlope = from.headSlope;
  to.throatRadius = from.throatRadius;
  to.throatSlope = from.throatSlope;
  to.depth.set(from.depth);
  to.rate.set(from.rate);
  to.stagnation = from.stagnation;
  to.flow = from.flow;
  to.burned = from.burned;
  to.volume = from.volume;
  to.area = from.area;
}
