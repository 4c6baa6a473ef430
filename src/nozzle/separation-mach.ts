import { newtonBracketed } from '../numerics';
import { isentropicPressureRatioSi, machFromPressureRatioSi } from '../thermo/isentropic-kernels';
import type { SeparationCriterion } from './separation';

/**
 * Mach number at which an attached flow would separate, by a criterion; plain numbers, unchecked. Schmucker's and Stark's
 * criteria allow no pressure rise below Mach 1.064 and 1.047: where they would put separation there, the result is that limit.
 */
export function separationMachSi(
  gamma: number,
  ambientOverChamber: number,
  criterion: SeparationCriterion,
): number {
  if (criterion === 'summerfield') return machFromPressureRatioSi(0.4 * ambientOverChamber, gamma);
  if (criterion === 'kalt-badal') return machFromPressureRatioSi((2 / 3) * ambientOverChamber ** 1.2, gamma);
  if (criterion === 'schilling') return machFromPressureRatioSi(0.541 * ambientOverChamber ** 1.136, gamma);
  // p(M)/p_c = (p_a/p_c)·(a·M − b)^(−n), Schmucker (1.88, 1, 0.64) or Stark (3/π, 0, 1). The logarithms differ by a function
  // that falls from a·M − b = 1 on, where the criterion gives no pressure rise at all.
  const stark = criterion === 'stark';
  const a = stark ? 3 / Math.PI : 1.88;
  const b = stark ? 0 : 1;
  const n = stark ? 1 : 0.64;
  const lowest = (1 + b) / a;
  if (isentropicPressureRatioSi(lowest, gamma) <= ambientOverChamber) return lowest;
  const power = gamma / (gamma - 1);
  const t = (gamma - 1) / 2;
  const target = Math.log(ambientOverChamber);
  const value = (mach: number): number =>
    -power * Math.log1p(t * mach * mach) + n * Math.log(a * mach - b) - target;
  let upper = 4;
  while (value(upper) > 0) upper *= 2;
  return newtonBracketed(
    (mach, out) => {
      out[0] = value(mach);
      out[1] = (-gamma * mach) / (1 + t * mach * mach) + (n * a) / (a * mach - b);
    },
    lowest,
    upper,
    { trend: 'falling' },
  );
}
