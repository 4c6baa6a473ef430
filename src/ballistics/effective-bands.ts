import type { BurnLaw } from './burn-law';
import { type BurnLawBand, bandAt, bandRateSi } from './burn-law-band';
import { nearOne } from './equilibrium-inputs';

/**
 * The bands of a law for every pressure: a clamped law has a band of exponent zero on each side of its characterised range, any
 * other is extrapolated. Plain SI numbers.
 */
export function effectiveBands(law: BurnLaw): readonly BurnLawBand[] {
  const { bands, outside } = law;
  if (outside !== 'clamp') return bands;
  const { from, to } = law.characterised;
  const level = (pressure: number, ends: Pick<BurnLawBand, 'from' | 'to'>): BurnLawBand => ({
    ...ends,
    referenceRate: bandRateSi(bands[bandAt(bands, pressure)], pressure),
    referencePressure: pressure,
    exponent: 0,
  });
  const inside = bands
    .map((band, i) => ({
      ...band,
      // A range wider than the bands extends the first and the last of them.
      from: i === 0 ? from : Math.max(from, band.from),
      to: i === bands.length - 1 ? to : Math.min(to, band.to),
    }))
    .filter((band) => band.from < band.to);
  return [
    ...(from > 0 ? [level(from, { from: 0, to: from })] : []),
    ...inside,
    ...(Number.isFinite(to) ? [level(to, { from: to, to: Number.POSITIVE_INFINITY })] : []),
  ];
}

/** The caution for an exponent close to 1, as a list. */
export function barelyStable(exponent: number): readonly string[] {
  const caution = nearOne({ exponent });
  return caution === true ? [] : [caution];
}
