import { formula, ratio } from '../units';

/** Published criteria of flow separation, in the order in which {@link separationPressure} reports them. */
export const separationCriteria = ['summerfield', 'schmucker', 'kalt-badal', 'schilling', 'stark'] as const;

/** A published criterion for the wall pressure at which the flow in an over-expanded nozzle separates from the wall. */
export type SeparationCriterion = (typeof separationCriteria)[number];

const machAtSeparation = /* @__PURE__ */ ratio(
  'M',
  'Mach number of the attached flow at the separation point',
  {
    above: 1,
    example: 2.5,
  },
);
const chamberOverAmbient = /* @__PURE__ */ ratio('p_c/p_a', 'chamber/ambient pressure', {
  above: 1,
  example: 20,
});
const output = /* @__PURE__ */ ratio('p_sep/p_a', 'separation pressure/ambient pressure');
const nearSonic = ({ mach }: { readonly mach: number }): true | string =>
  mach >= 1.5 || 'Below Mach 1.5 the criterion is outside the tests to which it was fitted.';

/**
 * Summerfield's rule: the flow separates where the wall pressure has fallen to 0.4 of ambient. One number for all
 * nozzles; measured values range from about 0.25 to 0.45.
 *
 * @example summerfieldSeparationRatio({}) // => 0.4
 */
export const summerfieldSeparationRatio = /* @__PURE__ */ formula({
  name: 'summerfieldSeparationRatio',
  title: 'Separation/ambient pressure, Summerfield',
  equation: 'p_sep/p_a = 0.4',
  source:
    'Summerfield, Foster & Swan, Jet Propulsion 24 (1954), 319-321 (formula quoted from memory, not verified)',
  inputs: {},
  output,
  example: {},
  si: () => 0.4,
});

/**
 * Schmucker's criterion, with the Mach number at the point of separation (not the exit Mach number).
 *
 * @example schmuckerSeparationRatio({ mach: 2.5 }) // => 0.432863
 */
export const schmuckerSeparationRatio = /* @__PURE__ */ formula({
  name: 'schmuckerSeparationRatio',
  title: 'Separation/ambient pressure, Schmucker',
  equation: 'p_sep/p_a = (1.88·M − 1)^(−0.64)',
  source:
    'R. H. Schmucker, flow processes in over-expanded chemical rocket nozzles, NASA TM-77396 (1984 translation of TU Munich 1973) (formula quoted from memory, not verified)',
  inputs: { mach: machAtSeparation },
  output,
  valid: [nearSonic],
  si: ({ mach }) => (1.88 * mach - 1) ** -0.64,
});

/**
 * Kalt and Badal's criterion, a function of chamber/ambient pressure.
 *
 * @example kaltBadalSeparationRatio({ chamberOverAmbient: 20 }) // => 0.366187
 */
export const kaltBadalSeparationRatio = /* @__PURE__ */ formula({
  name: 'kaltBadalSeparationRatio',
  title: 'Separation/ambient pressure, Kalt and Badal',
  equation: 'p_sep/p_a = 2 / 3·(p_c/p_a)^(−0.2)',
  source:
    'S. Kalt & D. Badal, J. Spacecraft and Rockets 2 (1965), 447-449 (formula quoted from memory, not verified)',
  inputs: { chamberOverAmbient },
  output,
  si: ({ chamberOverAmbient }) => (2 / 3) * chamberOverAmbient ** -0.2,
});

/**
 * Schilling's criterion for conical nozzles, a function of chamber/ambient pressure.
 *
 * @example schillingSeparationRatio({ chamberOverAmbient: 20 }) // => 0.3599624
 */
export const schillingSeparationRatio = /* @__PURE__ */ formula({
  name: 'schillingSeparationRatio',
  title: 'Separation/ambient pressure, Schilling, cone',
  equation: 'p_sep/p_a = 0.541·(p_c/p_a)^(−0.136)',
  source:
    'M. T. Schilling, Flow separation in a rocket nozzle, thesis, University of Buffalo (1962), conical nozzles (formula quoted from memory, not verified)',
  inputs: { chamberOverAmbient },
  output,
  si: ({ chamberOverAmbient }) => 0.541 * chamberOverAmbient ** -0.136,
});

/**
 * Stark's criterion, with the Mach number at the point of separation (not the exit Mach number).
 *
 * @example starkSeparationRatio({ mach: 2.5 }) // => 0.4188790
 */
export const starkSeparationRatio = /* @__PURE__ */ formula({
  name: 'starkSeparationRatio',
  title: 'Separation/ambient pressure, Stark',
  equation: 'p_sep/p_a = π / (3·M)',
  source:
    'R. Stark, flow separation in rocket nozzles, AIAA 2013-3840 (2013) (formula quoted from memory, not verified)',
  inputs: { mach: machAtSeparation },
  output,
  valid: [nearSonic],
  si: ({ mach }) => Math.PI / (3 * mach),
});
