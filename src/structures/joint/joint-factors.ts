import { refusal } from '../../units/refusal';

/** Factors of safety of a review; those of `designFactors` go in as they are. */
export interface JointFactors {
  /** On yield; 1.5 where left out (common practice). */
  readonly yieldFactor?: number;
  /** On rupture; 2.0 where left out (common practice). */
  readonly ultimateFactor?: number;
  /** What to know of their source. */
  readonly cautions?: readonly string[];
}

/** Both factors, each 1 or more. */
export function readFactors(
  procedure: string,
  { yieldFactor = 1.5, ultimateFactor = 2 }: JointFactors = {},
): { readonly yield: number; readonly ultimate: number } {
  for (const [field, value] of Object.entries({ yieldFactor, ultimateFactor }))
    if (!(value >= 1 && Number.isFinite(value)))
      throw refusal(procedure, `factors.${field}`, value, 'a factor of safety of 1 or more');
  return { yield: yieldFactor, ultimate: ultimateFactor };
}
