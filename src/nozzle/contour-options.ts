import type { QuantityInput } from '../units';
import type { FieldsOf } from '../units/known-fields';

/** Options of `nozzleContour`. */
export interface NozzleContourOptions {
  readonly throatDiameter: QuantityInput<'length'>;
  readonly exitDiameter: QuantityInput<'length'>;
  /** Diameter at which the profile starts. */
  readonly inletDiameter: QuantityInput<'length'>;
  /** Half angle of the convergent cone; default 45°. */
  readonly convergentHalfAngle?: QuantityInput<'angle'>;
  /** Radius between inlet and convergent cone; default none. */
  readonly entranceRadius?: QuantityInput<'length'>;
  /** Radius of the wall upstream of the throat; default the throat diameter. */
  readonly throatRadius?: QuantityInput<'length'>;
  /** Radius of the wall downstream of the throat; default 0.4 of the throat radius (half of 0.4 throat diameters). */
  readonly downstreamRadius?: QuantityInput<'length'>;
  /** Length of the cylindrical throat; default none. A long throat erodes evenly but adds friction. */
  readonly throatLength?: QuantityInput<'length'>;
  /** A straight cone, or a parabolic bell. */
  readonly divergent:
    | { readonly shape: 'cone'; readonly halfAngle: QuantityInput<'angle'> }
    | {
        readonly shape: 'bell';
        /** Wall angle just downstream of the throat, where the parabola begins. */
        readonly initialAngle: QuantityInput<'angle'>;
        /** Wall angle at the exit lip. */
        readonly exitAngle: QuantityInput<'angle'>;
        /** Length as a fraction of a 15° cone of the same diameters; default 0.8. */
        readonly lengthShare?: number;
      };
  /** Maximum distance between the points and the true curve; default 1 µm. */
  readonly tolerance?: QuantityInput<'length'>;
}

/** The fields of the options. */
export const nozzleContourFields: FieldsOf<NozzleContourOptions> = {
  throatDiameter: 'required',
  exitDiameter: 'required',
  inletDiameter: 'required',
  convergentHalfAngle: 'optional',
  entranceRadius: 'optional',
  throatRadius: 'optional',
  downstreamRadius: 'optional',
  throatLength: 'optional',
  divergent: 'required',
  tolerance: 'optional',
};
