// What the regression of a shape takes and gives, in SI numbers.
import type { Wedge } from '../surface';
import type { DepthBreak } from './depth-levels';
import type { DepthField, LitSource } from './field';
import type { FrontTable } from './front-tally';
import type { Overlap } from './overlap';
import type { RayCells } from './ray-cells';

export interface ShapeOptions {
  /** Required relative error of the burning area. */
  readonly accuracy: number;
  /** Number of depths in the table. */
  readonly steps: number;
  readonly onProgress?: ((fraction: number) => void) | undefined;
  readonly signal?: AbortSignal | undefined;
  /** Use the whole grain instead of its symmetric wedge. */
  readonly ignoreSymmetry?: boolean | undefined;
  /** Fixed cell size [m] instead of the accuracy target. */
  readonly spacing?: number | undefined;
}

export type Method = 'section' | 'body of revolution' | 'three-dimensional';

export interface ShapeRegression {
  readonly method: Method;
  readonly depth: Float64Array;
  readonly area: Float64Array;
  readonly volume: Float64Array;
  readonly breaks: readonly DepthBreak[];
  /** Depths at which the area may have a corner, each in the table. */
  readonly kinks: readonly number[];
  /** Estimated relative error of area (root mean square over depth) and volume: from two spacings, and from the exact cast volume. */
  readonly achieved: number;
  readonly burnout: number;
  readonly cells: number;
  /** All burning surfaces: ports, then ends, then flaws. */
  readonly lit: readonly LitSource[];
  readonly field: DepthField;
  readonly wedge: Wedge;
  /** Rays of all fronts; of those of the flaws only where there are `pieces`. */
  readonly rays: readonly RayCells[];
  /** Area and volume at any ascending depths; the last two hold what is left there, not zero. */
  readonly tableAt: (levels: Float64Array) => FrontTable;
  /** Parts of a regression as a difference to that of the flawless grain. */
  readonly pieces?: FlawPieces;
  /** For a constant section: the table of a length of `perLength` [m] with both ends inhibited. */
  readonly section?: {
    readonly perLength: number;
    readonly depth: Float64Array;
    readonly area: Float64Array;
    readonly volume: Float64Array;
  };
}

/** What the flaws change: V(w) = V of the flawless grain + `cells` unburned at w - `overlap` that the sound front has not reached at w. */
export interface FlawPieces {
  readonly sound: ShapeRegression;
  /** Rays of the fronts of the flaws. */
  readonly cells: readonly RayCells[];
  /** The propellant that these rays burn, by the depth of the flawless grain, for each patch of surface. */
  readonly overlaps: readonly Overlap[];
  /** The cavities of the flaws, by the depth of the flawless grain. */
  readonly cavity: Overlap | undefined;
}
