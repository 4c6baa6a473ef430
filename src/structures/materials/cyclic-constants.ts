/** The constants of strain-controlled tests in SI. */
export interface CyclicConstants {
  readonly strengthCoefficient: number;
  readonly hardeningExponent: number;
  readonly fatigueStrength: number;
  readonly fatigueExponent: number;
  readonly fatigueDuctility: number;
  readonly ductilityExponent: number;
}
