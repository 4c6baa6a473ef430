import type { BurnLaw } from './burn-law';
import { type BurnLawBand, bandAt, bandRateSi } from './burn-law-band';

/**
 * The bands of a law as they hold at every pressure: one that is told to clamp has a band of exponent zero at each end
 * of its characterised range, any other goes on as it is. Plain SI numbers.
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
      // The first and the last band go on to the ends of a range that is wider than they.
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

/** Said of pressures where one per cent of anything is more than three of pressure. */
export function barelyStable(exponent: number): readonly string[] {
  return exponent > 0.7
    ? [
        `the pressure exponent is ${Number(exponent.toPrecision(3))} there: every change is multiplied by ${(1 / (1 - exponent)).toPrecision(3)}, and the pressure is barely stable`,
      ]
    : [];
}
