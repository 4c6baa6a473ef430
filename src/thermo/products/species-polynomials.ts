import type { Species } from './species-table';

/** Specific heat/R, enthalpy/(R·T) and entropy/R at the standard pressure of 1 bar. */
export interface ReducedProperties {
  readonly specificHeat: number;
  readonly enthalpy: number;
  readonly entropy: number;
}

/**
 * The polynomials of a species at a temperature; plain numbers. Outside all ranges the nearest one is used: the
 * caller checks.
 *
 * Source: NASA TM-4513 (1993), the form with 7 coefficients; NASA TP-2002-211556 (2002), with 9.
 */
export function reducedProperties({ ranges, form }: Species, t: number): ReducedProperties {
  const range = ranges.find(({ to }) => t <= to) ?? ranges[ranges.length - 1];
  const c = range.coefficients;
  if (form === 'nasa7') {
    const [a0, a1, a2, a3, a4, b0, b1] = c;
    return {
      specificHeat: a0 + t * (a1 + t * (a2 + t * (a3 + t * a4))),
      enthalpy: a0 + t * (a1 / 2 + t * (a2 / 3 + t * (a3 / 4 + (t * a4) / 5))) + b0 / t,
      entropy: a0 * Math.log(t) + t * (a1 + t * (a2 / 2 + t * (a3 / 3 + (t * a4) / 4))) + b1,
    };
  }
  const [a0, a1, a2, a3, a4, a5, a6, b0, b1] = c;
  const log = Math.log(t);
  return {
    specificHeat: (a0 / t + a1) / t + a2 + t * (a3 + t * (a4 + t * (a5 + t * a6))),
    enthalpy:
      -a0 / (t * t) + (a1 * log + b0) / t + a2 + t * (a3 / 2 + t * (a4 / 3 + t * (a5 / 4 + (t * a6) / 5))),
    entropy:
      -a0 / (2 * t * t) - a1 / t + a2 * log + t * (a3 + t * (a4 / 2 + t * (a5 / 3 + (t * a6) / 4))) + b1,
  };
}
