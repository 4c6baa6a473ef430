import { newtonBracketed } from '../numerics';
import { isentropicPressureRatioSi, machFromPressureRatioSi } from '../thermo';
import { formula, ratio } from '../units';

/** A published rule for the wall pressure at which the stream leaves the wall of an over-expanded nozzle. */
export type SeparationCriterion = 'summerfield' | 'schmucker' | 'kalt-badal';

/**
 * Summerfield's rule: the stream separates where the wall pressure has fallen to 0.4 of ambient. One number for all
 * nozzles; measured values spread from about 0.25 to 0.45.
 *
 * @example summerfieldSeparationRatio({}) // => 0.4
 */
export const summerfieldSeparationRatio = /* @__PURE__ */ formula({
  name: 'summerfieldSeparationRatio',
  title: 'Separation pressure over ambient, Summerfield',
  equation: 'p_sep/p_a = 0.4',
  source: 'Summerfield, Foster & Swan, Jet Propulsion 24 (1954), 319-321 (formula from memory)',
  inputs: {},
  output: ratio('p_sep/p_a', 'separation over ambient pressure'),
  example: {},
  si: () => 0.4,
});

/**
 * Schmucker's criterion, with the Mach number of the attached stream at the point of separation (not the exit Mach number).
 *
 * @throws MeopError `out-of-domain` for a Mach number of 1 or below
 * @example schmuckerSeparationRatio({ mach: 2.5 }) // => 0.432863
 */
export const schmuckerSeparationRatio = /* @__PURE__ */ formula({
  name: 'schmuckerSeparationRatio',
  title: 'Separation pressure over ambient, Schmucker',
  equation: 'p_sep/p_a = (1.88·M − 1)^(−0.64)',
  source:
    'R. H. Schmucker, flow processes in over-expanded chemical rocket nozzles, NASA TM-77396 (1984 translation of TU Munich 1973) (formula from memory)',
  inputs: { mach: ratio('M', 'Mach number at separation', { above: 1 }) },
  output: ratio('p_sep/p_a', 'separation over ambient pressure'),
  example: { mach: 2.5 },
  valid: [({ mach }) => mach >= 1.5 || 'below Mach 1.5 the criterion is outside the tests it was fitted to'],
  si: ({ mach }) => (1.88 * mach - 1) ** -0.64,
  solve: { mach: (value) => (1 + value ** (-1 / 0.64)) / 1.88 },
});

/**
 * Kalt and Badal's criterion, in chamber over ambient pressure.
 *
 * @throws MeopError `out-of-domain` for a chamber pressure not above ambient
 * @example kaltBadalSeparationRatio({ chamberOverAmbient: 20 }) // => 0.366187
 */
export const kaltBadalSeparationRatio = /* @__PURE__ */ formula({
  name: 'kaltBadalSeparationRatio',
  title: 'Separation pressure over ambient, Kalt and Badal',
  equation: 'p_sep/p_a = 2 / 3·(p_c/p_a)^(−0.2)',
  source: 'S. Kalt & D. Badal, J. Spacecraft and Rockets 2 (1965), 447-449 (formula from memory)',
  inputs: { chamberOverAmbient: ratio('p_c/p_a', 'chamber over ambient pressure', { above: 1 }) },
  output: ratio('p_sep/p_a', 'separation over ambient pressure'),
  example: { chamberOverAmbient: 20 },
  si: ({ chamberOverAmbient }) => (2 / 3) * chamberOverAmbient ** -0.2,
  solve: { chamberOverAmbient: (value) => (1.5 * value) ** -5 },
});

/**
 * Mach number at which an attached stream would separate, by a criterion; plain numbers, unchecked. Schmucker's criterion
 * allows no pressure rise below Mach 1.064: where it would put separation there, that is the answer.
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
  // Schmucker: p(M)/p_c = (p_a/p_c)·(1.88·M − 1)^(−0.64); the logarithms differ by a function that falls from Mach 1.064,
  // where the criterion gives no pressure rise at all.
  const least = 2 / 1.88;
  if (isentropicPressureRatioSi(least, gamma) <= ambientOverChamber) return least;
  const power = gamma / (gamma - 1);
  const t = (gamma - 1) / 2;
  const wanted = Math.log(ambientOverChamber);
  let upper = 4;
  while (-power * Math.log1p(t * upper * upper) + 0.64 * Math.log(1.88 * upper - 1) > wanted) upper *= 2;
  return newtonBracketed(
    (mach, out) => {
      const b = 1 + t * mach * mach;
      out[0] = -power * Math.log1p(t * mach * mach) + 0.64 * Math.log(1.88 * mach - 1) - wanted;
      out[1] = (-gamma * mach) / b + (0.64 * 1.88) / (1.88 * mach - 1);
    },
    least,
    upper,
    { trend: 'falling' },
  );
}
