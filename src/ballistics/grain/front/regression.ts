import type { Quantity, QuantityInput, Series } from '../../../units';
import type { Method } from './regress-shape';
import type { SegmentLayout } from './segment-layout';

/** A depth at which the burning area jumps. */
export interface RegressionBreak {
  readonly depth: Quantity<'length'>;
  /** Area gained (a flaw ignites) or, if negative, lost (a front of uniform depth burns through). */
  readonly change: Quantity<'area'>;
}

/** Port at one station along the axis, tabulated at the depths of the regression. */
export interface PortAtStation {
  readonly position: Quantity<'length'>;
  readonly area: Series<'area'>;
  /** Length of the edge of the port in contact with the flow. */
  readonly perimeter: Series<'length'>;
}

/** Depth burned at which each patch of the case wall is first exposed; independent of time and pressure. */
export interface WallExposureMap {
  readonly angle: Series<'angle'>;
  readonly position: Series<'length'>;
  /** Depth burned at exposure: the value at angle i and position j is element `i * position.length + j`. */
  readonly depth: Series<'length'>;
}

/** Mass, centre of mass and moments of inertia of the remaining propellant, tabulated at the depths of the regression. */
export interface GrainMassProperties {
  readonly mass: Series<'mass'>;
  /** Distance of the centre of mass from the head end, along the axis. */
  readonly centreAxial: Series<'length'>;
  /** Distance of the centre of mass from the axis, along x. */
  readonly centreX: Series<'length'>;
  /** Distance of the centre of mass from the axis, along y. */
  readonly centreY: Series<'length'>;
  /** Moment of inertia about the axis of the grain. */
  readonly axialInertia: Series<'moment of inertia'>;
  /** Moment of inertia about a line through the centre of mass, parallel to x. */
  readonly inertiaX: Series<'moment of inertia'>;
  /** Moment of inertia about a line through the centre of mass, parallel to y. */
  readonly inertiaY: Series<'moment of inertia'>;
}

/** The regression table in plain SI numbers, for the inner loop of a simulation. */
export interface RegressionKernel {
  readonly depth: Float64Array;
  readonly area: Float64Array;
  readonly volume: Float64Array;
  /** Depths at which an integration must be split, ascending: jumps of the area, first contact with the wall, and burnout. */
  readonly breaks: Float64Array;
  readonly burnout: number;
  /** Volume of the remaining propellant [m³]: a cubic between depths. */
  readonly volumeAt: (depth: number) => number;
  /** Burning area [m²]: exactly minus the derivative of `volumeAt`, so that propellant is conserved. */
  readonly areaAt: (depth: number) => number;
}

/** Result of {@link regress}. Series are tabulated at `depth`. */
export interface Regression {
  readonly grain: string;
  /** Method of calculation; a closed form is exact. */
  readonly method: Method | 'closed form' | 'column';
  /** Depth burned: distance of the front from the initial surface, normal to it. */
  readonly depth: Series<'length'>;
  readonly burningArea: Series<'area'>;
  readonly propellantVolume: Series<'volume'>;
  /** Initial volume of the propellant. */
  readonly castVolume: Quantity<'volume'>;
  /** Initial propellant volume divided by the volume of the outer form. */
  readonly volumetricLoading: number;
  readonly breaks: readonly RegressionBreak[];
  /** Depth at which the last propellant burns. */
  readonly burnout: Quantity<'length'>;
  /**
   * Depth at which a front, other than that of an end or a debond, first reaches the wall; equal to burnout if none
   * does earlier.
   */
  readonly web: Quantity<'length'>;
  /** Fraction of the cast volume that remains at `web`. */
  readonly sliverFraction: number;
  /** Maximum/mean burning area. */
  readonly neutrality: number;
  readonly meanBurningArea: Quantity<'area'>;
  readonly portArea: readonly PortAtStation[];
  readonly wallExposure: WallExposureMap;
  /** Depth at which each flaw ignites, in the order given; zero for a flaw that burns from the start. */
  readonly flawLighting: readonly { readonly label: string; readonly depth: Quantity<'length'> }[];
  readonly accuracy: {
    /** Required relative error. */
    readonly requested: number;
    /** Relative error estimated from two resolutions. */
    readonly achieved: number;
    readonly cells: number;
    /** Number of copies of the computed wedge; Infinity for a body of revolution. */
    readonly symmetry: number;
  };
  readonly cautions: readonly string[];
  readonly si: RegressionKernel;
  /** Segments as the flow along the port needs them: plain SI numbers, computed on the first call. */
  readonly layout: () => readonly SegmentLayout[];
  burningAreaAt(depth: QuantityInput<'length'>): Quantity<'area'>;
  propellantVolumeAt(depth: QuantityInput<'length'>): Quantity<'volume'>;
  /** Computes mass, centre of mass and moments of inertia for a density as cast. */
  massProperties(density: QuantityInput<'density'>): GrainMassProperties;
  toString(): string;
}

/** Whether a value is a regression of a grain or of a column. */
export const isRegression = (value: unknown): value is Regression =>
  typeof value === 'object' && value !== null && 'burningArea' in value && 'massProperties' in value;
