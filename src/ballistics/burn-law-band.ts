/** One pressure band of a burn law, in SI: r = referenceRate·(p / referencePressure)^exponent from `from` up to `to`. */
export interface BurnLawBand {
  /** Lower end [Pa], inclusive. */
  readonly from: number;
  /** Upper end [Pa], exclusive. */
  readonly to: number;
  /** Burning rate at the reference pressure [m/s]. */
  readonly referenceRate: number;
  /** [Pa] */
  readonly referencePressure: number;
  readonly exponent: number;
}

/** Index of the band that holds at a pressure in Pa; the first below all, the last above all. */
export function bandAt(bands: readonly BurnLawBand[], pressure: number): number {
  let i = 0;
  while (i + 1 < bands.length && pressure >= bands[i].to) i++;
  return i;
}

/** Burning rate [m/s] of a band at a pressure [Pa], at the reference temperature. */
export function bandRateSi(band: BurnLawBand, pressure: number): number {
  return band.referenceRate * (pressure / band.referencePressure) ** band.exponent;
}
