import type { Quantity, QuantityInput, Series } from '../../units';
import type { Method } from './regress-shape';

/** How a regression is worked out. */
export interface RegressOptions {
  /** Wanted relative error of the burning area, root mean square over depth [dimensionless, 1e-6 to 0.1]. Default 1e-3. */
  readonly accuracy?: number;
  /** Depths in the table [whole, 20 to 5000]. Default 300. */
  readonly steps?: number;
  /** Stations along the axis for port area and perimeter [whole, at least 1]. Default 9. */
  readonly stations?: number;
  /** Stops the work: the reason given to the controller is thrown. */
  readonly signal?: AbortSignal;
  /** Told how far the work is, from 0 to 1. */
  readonly onProgress?: (fraction: number) => void;
}

/** A depth at which the burning area changes at once. */
export interface RegressionBreak {
  readonly depth: Quantity<'length'>;
  /** Area gained (a flaw lights) or, negative, lost (a front of even depth burns through). */
  readonly change: Quantity<'area'>;
}

/** The port at one station along the axis, in step with the regression's depths. */
export interface PortAtStation {
  readonly position: Quantity<'length'>;
  readonly area: Series<'area'>;
  /** Edge of the port that the flow washes. */
  readonly perimeter: Series<'length'>;
}

/** When each patch of the case wall is first exposed, by burned depth: independent of time and pressure. */
export interface WallExposureMap {
  readonly angle: Series<'angle'>;
  readonly position: Series<'length'>;
  /** Depth at angle i and position j stands at `i * position.length + j`. */
  readonly depth: Series<'length'>;
}

/** Mass, centre and moments of inertia of the propellant left, in step with the regression's depths. */
export interface GrainMassProperties {
  readonly mass: Series<'mass'>;
  /** Centre of mass: along the axis from the head end, and across it. */
  readonly centreAxial: Series<'length'>;
  readonly centreX: Series<'length'>;
  readonly centreY: Series<'length'>;
  /** About the axis of the grain. */
  readonly axialInertia: Series<'moment of inertia'>;
  /** About lines through the centre of mass, parallel to x and y. */
  readonly inertiaX: Series<'moment of inertia'>;
  readonly inertiaY: Series<'moment of inertia'>;
}

/** The same table on plain SI numbers, for a simulation's inner loop. */
export interface RegressionKernel {
  readonly depth: Float64Array;
  readonly area: Float64Array;
  readonly volume: Float64Array;
  /** Depths at which an integration must be split: jumps of the area, first contact with the wall, and burnout, ascending. */
  readonly breaks: Float64Array;
  readonly burnout: number;
  /** Propellant left [m³]: a cubic between depths. */
  readonly volumeAt: (depth: number) => number;
  /** Burning area [m²]: exactly minus the derivative of `volumeAt`, so what burns is what goes missing. */
  readonly areaAt: (depth: number) => number;
}

/** What {@link regress} finds out. Series are in step with `depth`. */
export interface Regression {
  readonly grain: string;
  /** How it was found; a closed form is exact. */
  readonly method: Method | 'closed form' | 'column';
  /** Burned depth: the distance that the front has gone normal to itself. */
  readonly depth: Series<'length'>;
  readonly burningArea: Series<'area'>;
  readonly propellantVolume: Series<'volume'>;
  /** Volume of the propellant at the start. */
  readonly castVolume: Quantity<'volume'>;
  /** Share of the grain's outer form that is propellant at the start. */
  readonly volumetricLoading: number;
  readonly breaks: readonly RegressionBreak[];
  /** Depth at which the last propellant burns. */
  readonly burnout: Quantity<'length'>;
  /** Depth at which a front other than that of an end or a debond first reaches the wall; burnout if none does before. */
  readonly web: Quantity<'length'>;
  /** Share of the cast volume left at `web`. */
  readonly sliverFraction: number;
  /** Greatest burning area over mean burning area. */
  readonly neutrality: number;
  readonly meanBurningArea: Quantity<'area'>;
  readonly portArea: readonly PortAtStation[];
  readonly wallExposure: WallExposureMap;
  /** Lighting depth of each flaw, in the order they were given; zero for one that burns from the start. */
  readonly flawLighting: readonly { readonly label: string; readonly depth: Quantity<'length'> }[];
  readonly accuracy: {
    readonly requested: number;
    /** Estimated from two resolutions. */
    readonly achieved: number;
    readonly cells: number;
    /** Copies of the symmetric wedge that was worked out; Infinity for a body of revolution. */
    readonly symmetry: number;
  };
  readonly cautions: readonly string[];
  readonly si: RegressionKernel;
  burningAreaAt(depth: QuantityInput<'length'>): Quantity<'area'>;
  propellantVolumeAt(depth: QuantityInput<'length'>): Quantity<'volume'>;
  /** Mass, centre of mass and inertia for a density as cast. */
  massProperties(density: QuantityInput<'density'>): GrainMassProperties;
  toString(): string;
}
