import type { Quantity } from '../../units';
import type { CyclicConstants } from './cyclic-constants';
import type { Datum, Origin, StressDatum } from './datum';

/** What a material is, which decides what may be asked of it. */
export type MaterialClass = 'metal' | 'brittle' | 'elastomer' | 'liner';

/** Bearing strength by edge distance; handbooks give it at e/D = 1.5 and 2.0 only. */
export interface BearingData {
  /** At an edge distance of 1.5 hole diameters. */
  readonly at1_5?: StressDatum;
  /** At an edge distance of 2.0 hole diameters. */
  readonly at2_0?: StressDatum;
}

/** Fractions of the room-temperature strength against temperature, for one time of exposure. */
export interface RetentionCurve {
  /** Time at temperature, seconds. */
  readonly exposure: number;
  /** Rows of temperature in K and fraction of the room-temperature value, temperature rising. */
  readonly points: readonly (readonly [temperature: number, fraction: number])[];
}

/** Strength against temperature, as fractions of the room-temperature strength. */
export interface Retention {
  readonly ultimate: readonly RetentionCurve[];
  readonly yield: readonly RetentionCurve[];
  readonly origin: Origin;
}

/** Values that describe the average piece; for estimates of what will happen, never for what is allowed. */
export interface TypicalStrength {
  readonly ultimateStrength?: StressDatum;
  readonly yieldStrength?: StressDatum;
  readonly shearUltimate?: StressDatum;
  readonly bearingUltimate?: BearingData;
  readonly bearingYield?: BearingData;
  readonly tensileStrength?: StressRange;
  readonly flexuralStrength?: StressRange;
  readonly compressiveStrength?: StressRange;
  readonly atTemperature?: Datum<readonly HotStrength[]>;
  /** Brinell hardness. */
  readonly hardness?: Datum<number>;
}

/** The minimum and the maximum stated by suppliers for a kind of material. */
export interface StressRange {
  readonly min: StressDatum;
  readonly max: StressDatum;
}

/** Typical strength at temperature. */
export interface HotStrength {
  readonly temperature: Quantity<'temperature'>;
  readonly ultimateStrength: Quantity<'stress'>;
  readonly yieldStrength: Quantity<'stress'>;
}

/**
 * A material with the origin of every value. A user's material has the same type: only `name`, `form` and `class` are
 * required, and what is left out is an error at the moment it is needed, never a guess.
 */
export interface Material {
  readonly name: string;
  /** Product form and sizes that the values hold for. */
  readonly form: string;
  readonly class: MaterialClass;
  /** Along the grain (L). */
  readonly ultimateStrength?: StressDatum;
  readonly yieldStrength?: StressDatum;
  /** Across the grain (LT), the hoop direction of an extruded tube. */
  readonly transverse?: { readonly ultimateStrength?: StressDatum; readonly yieldStrength?: StressDatum };
  readonly compressiveYield?: StressDatum;
  readonly shearUltimate?: StressDatum;
  readonly bearingUltimate?: BearingData;
  readonly bearingYield?: BearingData;
  /** Fraction, not per cent. */
  readonly elongation?: Datum<number>;
  /** Constants of strain-controlled tests of this metal, in SI, for the life at a notch; no material of the library has them. */
  readonly cyclic?: CyclicConstants & { readonly source: string };
  readonly typical?: TypicalStrength;
  readonly elasticModulus?: StressDatum;
  readonly poissonRatio?: Datum<number>;
  readonly density?: Datum<Quantity<'density'>>;
  readonly thermalExpansion?: Datum<Quantity<'thermal expansion'>>;
  readonly thermalConductivity?: Datum<Quantity<'thermal conductivity'>>;
  readonly specificHeat?: Datum<Quantity<'specific heat'>>;
  /** Strength at temperature. */
  readonly atTemperature?: Retention;
  /** Strength at room temperature after having been hot. */
  readonly afterExposure?: Retention;
  /** Times at temperature after which tests found the cold yield strength below the minimum. */
  readonly reheatingTests?: Datum<
    readonly { readonly temperature: Quantity<'temperature'>; readonly time: Quantity<'time'> }[]
  >;
  /** Fraction of the room-temperature elastic modulus against temperature. */
  readonly modulusAtTemperature?: Datum<readonly (readonly [temperature: number, fraction: number])[]>;
  /** The temperatures between which an elastomer or liner serves. */
  readonly serviceTemperature?: {
    readonly min: Datum<Quantity<'temperature'>>;
    readonly max: Datum<Quantity<'temperature'>>;
  };
  readonly notes?: readonly string[];
  /** Said by every review that rests on its strengths. */
  readonly cautions?: readonly string[];
}
