import { newtonBracketed } from '../numerics';
import { isentropicPressureRatioSi, machFromPressureRatioSi } from '../thermo/isentropic-kernels';
import { formula, ratio } from '../units';

/** A published criterion for the wall pressure at separation of over-expanded flow. */
export type SeparationCriterion = 'summerfield' | 'schmucker' | 'kalt-badal' | 'schilling' | 'stark';

/** All values of {@link SeparationCriterion}, in the order of {@link separationPressure}. */
export const separationCriteria: readonly SeparationCriterion[] = [
  'summerfield',
  'schmucker',
  'kalt-badal',
  'schilling',
  'stark',
];

/**
 * Summerfield's criterion: the flow separates where the wall pressure is 0.4 of ambient. One number for all
 * nozzles; measured values range from about 0.25 to 0.45.
 *
 * @example summerfieldSeparationRatio({}) // => 0.4
 */
export const summerfieldSeparationRatio = /* @__PURE__ */ formula({
  name: 'summerfieldSeparationRatio',
  title: 'Separation/ambient pressure ratio, Summerfield',
  equation: 'p_sep/p_a = 0.4',
  source:
    'Summerfield, Foster & Swan, Jet Propulsion 24 (1954), 319-321 (formula quoted from memory, not verified)',
  inputs: {},
  output: ratio('p_sep/p_a', 'separation/ambient pressure ratio'),
  example: {},
  si: () => 0.4,
});

/**
 * Schmucker's criterion, with the Mach number of the attached flow at the point of separation (not the exit Mach
 * number).
 *
 * @throws MeopError `out-of-domain` for a Mach number of 1 or below
 * @example schmuckerSeparationRatio({ mach: 2.5 }) // => 0.432863
 */
export const schmuckerSeparationRatio = /* @__PURE__ */ formula({
  name: 'schmuckerSeparationRatio',
  title: 'Separation/ambient pressure ratio, Schmucker',
  equation: 'p_sep/p_a = (1.88·M − 1)^(−0.64)',
  source:
    'R. H. Schmucker, flow processes in over-expanded chemical rocket nozzles, NASA TM-77396 (1984 translation of TU Munich 1973) (formula quoted from memory, not verified)',
  inputs: { mach: ratio('M', 'Mach number at separation', { above: 1 }) },
  output: ratio('p_sep/p_a', 'separation/ambient pressure ratio'),
  example: { mach: 2.5 },
  valid: [({ mach }) => mach >= 1.5 || 'below Mach 1.5 the criterion is outside the range of its tests'],
  si: ({ mach }) => (1.88 * mach - 1) ** -0.64,
  solve: { mach: (value) => (1 + value ** (-1 / 0.64)) / 1.88 },
});

/**
 * Kalt and Badal's criterion, as a function of the chamber/ambient pressure ratio.
 *
 * @throws MeopError `out-of-domain` for a chamber pressure not above ambient
 * @example kaltBadalSeparationRatio({ chamberOverAmbient: 20 }) // => 0.366187
 */
export const kaltBadalSeparationRatio = /* @__PURE__ */ formula({
  name: 'kaltBadalSeparationRatio',
  title: 'Separation/ambient pressure ratio, Kalt and Badal',
  equation: 'p_sep/p_a = 2 / 3·(p_c/p_a)^(−0.2)',
  source:
    'S. Kalt & D. Badal, J. Spacecraft and Rockets 2 (1965), 447-449 (formula quoted from memory, not verified)',
  inputs: { chamberOverAmbient: ratio('p_c/p_a', 'chamber/ambient pressure ratio', { above: 1 }) },
  output: ratio('p_sep/p_a', 'separation/ambient pressure ratio'),
  example: { chamberOverAmbient: 20 },
  si: ({ chamberOverAmbient }) => (2 / 3) * chamberOverAmbient ** -0.2,
  solve: { chamberOverAmbient: (value) => (1.5 * value) ** -5 },
});

/**
 * Schilling's criterion for conical nozzles, as a function of the chamber/ambient pressure ratio.
 *
 * @throws MeopError `out-of-domain` for a chamber pressure not above ambient
 * @example schillingSeparationRatio({ chamberOverAmbient: 20 }) // => 0.3599624
 */
export const schillingSeparationRatio = /* @__PURE__ */ formula({
  name: 'schillingSeparationRatio',
  title: 'Separation/ambient pressure ratio, Schilling, cone',
  equation: 'p_sep/p_a = 0.541·(p_c/p_a)^(−0.136)',
  source:
    'M. T. Schilling, Flow separation in a rocket nozzle, thesis, University of Buffalo (1962), conical nozzles (formula quoted from memory, not verified)',
  inputs: { chamberOverAmbient: ratio('p_c/p_a', 'chamber/ambient pressure ratio', { above: 1 }) },
  output: ratio('p_sep/p_a', 'separation/ambient pressure ratio'),
  example: { chamberOverAmbient: 20 },
  si: ({ chamberOverAmbient }) => 0.541 * chamberOverAmbient ** -0.136,
  solve: { chamberOverAmbient: (value) => (value / 0.541) ** (-1 / 0.136) },
});

/**
 * Stark's criterion, with the Mach number of the attached flow at the point of separation (not the exit Mach
 * number).
 *
 * @throws MeopError `out-of-domain` for a Mach number of 1 or below
 * @example starkSeparationRatio({ mach: 2.5 }) // => 0.4188790
 */
export const starkSeparationRatio = /* @__PURE__ */ formula({
  name: 'starkSeparationRatio',
  title: 'Separation/ambient pressure ratio, Stark',
  equation: 'p_sep/p_a = π / (3·M)',
  source:
    'R. Stark, flow separation in rocket nozzles, AIAA 2013-3840 (2013) (formula quoted from memory, not verified)',
  inputs: { mach: ratio('M', 'Mach number at separation', { above: 1 }) },
  output: ratio('p_sep/p_a', 'separation/ambient pressure ratio'),
  example: { mach: 2.5 },
  valid: [({ mach }) => mach >= 1.5 || 'below Mach 1.5 the criterion is outside the range of its tests'],
  si: ({ mach }) => Math.PI / (3 * mach),
  solve: { mach: (value) => Math.PI / (3 * value) },
});

/**
 * Mach number at which attached flow would separate, by a criterion; plain numbers, unchecked. Schmucker's and
 * Stark's criteria give no pressure rise below Mach 1.064 and 1.047; these are then the result.
 *
 * @example separationMachSi(1.2, 0.049, 'summerfield') // => 3.042789
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
  // that decreases from a·M − b = 1, where the criterion gives no pressure rise.
  const stark = criterion === 'stark';
  const a = stark ? 3 / Math.PI : 1.88;
  const b = stark ? 0 : 1;
  const n = stark ? 1 : 0.64;
  const least = (1 + b) / a;
  if (isentropicPressureRatioSi(least, gamma) <= ambientOverChamber) return least;
  const power = gamma / (gamma - 1);
  const t = (gamma - 1) / 2;
  const wanted = Math.log(ambientOverChamber);
  const value = (mach: number): number =>
    -power * Math.log1p(t * mach * mach) + n * Math.log(a * mach - b) - wanted;
  let upper = 4;
  while (value(upper) > 0) upper *= 2;
  return newtonBracketed(
    (mach, out) => {
      out[0] = value(mach);
      out[1] = (-gamma * mach) / (1 + t * mach * mach) + (n * a) / (a * mach - b);
    },
    least,
    upper,
    { trend: 'falling' },
  );
}
