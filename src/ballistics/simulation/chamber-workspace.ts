// What one run works on: arrays and switches, made once and used for any number of runs.
import { type IdealNozzle, idealNozzleSi } from '../../nozzle/ideal-nozzle-kernels';
import { lookUpArray } from './burn-table';

/** Arrays and switches of one run, reused from run to run. */
export interface ChamberWorkspace {
  /** Point of the slopes: t, p, y and throat radius. Numbers in arrays are not boxed, arguments are. */
  readonly point: Float64Array;
  /** The step: t, h, then p, y, throat radius and their slopes at its start. */
  readonly start: Float64Array;
  /** Slopes of p, y and throat radius. */
  readonly slope: Float64Array;
  /** ∂p'/∂p, ∂p'/∂y, ∂p'/∂r_t, ∂y'/∂p, ∂y'/∂y, ∂y'/∂r_t, ∂r_t'/∂p, ∂p'/∂t, ∂y'/∂t. */
  readonly jacobian: Float64Array;
  /** Area, its slope, volume: see `lookUp`. */
  readonly surface: Float64Array;
  /** Burning rate and its derivative by ln p. */
  readonly rate: Float64Array;
  /** Numbers of the model that every slope needs: an array is quicker to read than an object. */
  readonly constants: Float64Array;
  /** The last full evaluation of the burn law. */
  readonly anchor: Float64Array;
  readonly nozzleFlow: Float64Array;
  /** Derivatives of the mass flow by p and throat radius. */
  readonly flowSlopes: Float64Array;
  /** The step: k of eight stages by three components, next state, error, three rows of dense output. */
  readonly next: Float64Array;
  readonly error: Float64Array;
  readonly dense: Float64Array;
  nozzle: IdealNozzle;
  piece: number;
  interval: number;
  burning: boolean;
  flowing: boolean;
  eroding: boolean;
  igniting: boolean;
  /** The igniter's flow is falling to zero. */
  igniterFalling: boolean;
  /** The first surface has ignited. */
  lit: boolean;
  /** Part of the surface has yet to ignite, at a pressure not reached so far. */
  held: boolean;
  spreading: boolean;
  /** Free fraction of the throat area. */
  opening: number;
  /** Square root of the gas energy of the mixture in the chamber/that of the propellant gas, at the last point. */
  outflowRatio: number;
  /** Nothing but a burning surface and an open throat that stays as it is. */
  plain: boolean;
}

/** Places among the constants: an enum, whose numbers bundlers write out where they are used. */
export enum Constant {
  density,
  gasEnergy,
  perGasEnergy,
  chamberVolume,
  flowFactor,
  minChokedPressure,
  fullAbove,
  thrustFactor,
  vacuumCoefficient,
  ambientLoss,
  /**
   * Excess over ambient pressure [Pa] below which the flow, there the root of the excess, goes over into a parabola that
   * meets it with value and slope; 0 for none.
   */
  nearAmbient,
}

/** Arrays for a run; one of them serves any number of runs, one after another. */
export function chamberWorkspace(): ChamberWorkspace {
  return {
    point: new Float64Array(4),
    start: new Float64Array(8),
    slope: new Float64Array(3),
    jacobian: new Float64Array(9),
    surface: lookUpArray(),
    constants: new Float64Array(11),
    rate: new Float64Array(2),
    anchor: new Float64Array(13),
    nozzleFlow: new Float64Array(5),
    flowSlopes: new Float64Array(2),
    next: new Float64Array(3),
    error: new Float64Array(3),
    dense: new Float64Array(9),
    nozzle: idealNozzleSi(1.2, 1),
    piece: 0,
    interval: 0,
    burning: true,
    flowing: true,
    eroding: false,
    igniting: false,
    igniterFalling: false,
    lit: true,
    held: false,
    spreading: false,
    opening: 1,
    outflowRatio: 1,
    plain: true,
  };
}
