import type { SeparationCriterion } from '../nozzle';
import type { QuantityInput } from '../units';
import type { ErosiveInput } from './erosive-burning';
import type { ColumnRegression, Grain, GrainColumn, Regression } from './grain';
import type { Propellant } from './propellant';

/** The nozzle of a simulated motor. */
export interface SimulatedNozzle {
  readonly throatDiameter: QuantityInput<'length'>;
  /** Exit over throat area. Give this or `exitDiameter`. */
  readonly expansionRatio?: number;
  readonly exitDiameter?: QuantityInput<'length'>;
  /** Mass flow over that of the ideal throat, about 0.95 to 1. Default 1. */
  readonly dischargeCoefficient?: number;
  /** Thrust over ideal thrust: divergence, friction, two-phase lag together. Default 1. */
  readonly efficiency?: number;
  /** Where the stream leaves the wall of an over-expanded nozzle. Default `'summerfield'`; `'none'`: full flowing always. */
  readonly separation?: SeparationCriterion | 'none';
  /** How the throat changes while gas flows. */
  readonly throatErosion?: ThroatErosion;
}

/** Change of the throat radius: r_t' = rate·(p / referencePressure)^exponent. */
export interface ThroatErosion {
  /** Of the radius; below zero where slag or carbon builds up. */
  readonly referenceRate: QuantityInput<'speed'>;
  /** Pressure at which `rate` holds; needed with an exponent. */
  readonly referencePressure?: QuantityInput<'absolute pressure'>;
  /** Default 0: a constant rate. */
  readonly exponent?: number;
  /** Time before the wall is hot enough to change. Default 0. */
  readonly delay?: QuantityInput<'time'>;
}

/** How the motor is lit. */
export interface Ignition {
  /** Pressure at the start, absolute. Default: ambient. */
  readonly initialPressure?: QuantityInput<'absolute pressure'>;
  /** Gas that the igniter adds; taken to have the properties of the chamber gas. */
  readonly igniterMass?: QuantityInput<'mass'>;
  /** Time in which that gas comes, evenly. */
  readonly duration?: QuantityInput<'time'>;
  /** Time in which the flame covers the surface, evenly. Default 0: all of it burns from the start. */
  readonly flameSpreadTime?: QuantityInput<'time'>;
  /** Pressure above ambient at which the nozzle closure (tape, disc) opens. Default: no closure. */
  readonly nozzleClosureBurstPressure?: QuantityInput<'gauge pressure'>;
}

/** The empty chamber. */
export type SimulatedChamber = (
  | { readonly volume: QuantityInput<'volume'> }
  | { readonly innerDiameter: QuantityInput<'length'>; readonly length: QuantityInput<'length'> }
) & {
  /** Pressure above ambient at which the chamber lets go: the run ends there. */
  readonly burstPressure?: QuantityInput<'gauge pressure'>;
};

/** Everything that {@link simulate} needs to know. */
export interface SimulateInput {
  readonly propellant: Propellant;
  /** A grain or a column of them, regressed at default accuracy; or a regression made before. */
  readonly grain: Grain | GrainColumn | Regression | ColumnRegression;
  readonly nozzle: SimulatedNozzle;
  readonly chamber: SimulatedChamber;
  /** Absolute pressure around the motor. */
  readonly ambient: QuantityInput<'absolute pressure'>;
  readonly ignition?: Ignition;
  /** That of the burn law's characterisation where left out. */
  readonly grainTemperature?: QuantityInput<'temperature'>;
  /** Default: none. */
  readonly erosiveBurning?: ErosiveInput;
  /**
   * The run ends when the pressure has fallen back to this, slivers left or not. Default: after burnout, at 0.2 % above
   * ambient and at least 1 kPa.
   */
  readonly stopPressure?: QuantityInput<'absolute pressure'>;
  /** The run ends here whatever happens. Default: three times the burn at ambient pressure. */
  readonly timeLimit?: QuantityInput<'time'>;
  /** Relative error allowed at each step, from 1e-12 to 1e-3. Default 1e-6. */
  readonly tolerance?: number;
  readonly title?: string;
}
