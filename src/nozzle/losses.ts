import { angle, formula, length, ratio } from '../units';

/**
 * Share of the exit momentum that a conical nozzle keeps along its axis. It belongs on the momentum term only: put on the
 * pressure term as well, its error changes sign between over- and under-expansion.
 *
 * @throws MeopError `out-of-domain` for a half angle not from 0 to 90°
 * @example conicalDivergenceFactor({ halfAngle: '15 deg' }) // => 0.982962913
 */
export const conicalDivergenceFactor = /* @__PURE__ */ formula({
  name: 'conicalDivergenceFactor',
  title: 'Divergence factor of a cone',
  equation: 'λ = (1 + cos(α)) / 2',
  source: 'Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001), ch. 3 (from memory)',
  inputs: { halfAngle: angle('α', 'half angle of the cone', { min: 0, max: Math.PI / 2 }) },
  output: ratio('λ', 'divergence factor'),
  example: { halfAngle: '15 deg' },
  valid: [
    ({ halfAngle }) => halfAngle <= Math.PI / 6 || 'above 30° half angle the stream hardly follows the wall',
  ],
  si: ({ halfAngle }) => (1 + Math.cos(halfAngle)) / 2,
  solve: { halfAngle: (value) => Math.acos(2 * value - 1) },
});

/**
 * Share of the exit momentum that a bell keeps along its axis: the cone's factor at the mean of the angle of the equal cone
 * and the angle at the lip.
 *
 * @throws MeopError `out-of-domain` for angles not from 0 to 90°
 * @example bellDivergenceFactor({ coneHalfAngle: '15 deg', exitAngle: '8 deg' }) // => 0.9899624
 */
export const bellDivergenceFactor = /* @__PURE__ */ formula({
  name: 'bellDivergenceFactor',
  title: 'Divergence factor of a bell',
  equation: 'λ = (1 + cos((α + θ_e) / 2)) / 2',
  source: 'Common practice for bells of thrust-optimised shape (from memory; no published source seen)',
  inputs: {
    coneHalfAngle: angle('α', 'half angle of the cone of equal length and expansion', {
      min: 0,
      max: Math.PI / 2,
    }),
    exitAngle: angle('θ_e', 'wall angle at the lip', { min: 0, max: Math.PI / 2 }),
  },
  output: ratio('λ', 'divergence factor'),
  example: { coneHalfAngle: '15 deg', exitAngle: '8 deg' },
  si: ({ coneHalfAngle, exitAngle }) => (1 + Math.cos((coneHalfAngle + exitAngle) / 2)) / 2,
});

/**
 * Discharge coefficient that the curvature of the throat causes, without friction: the sonic surface is bent, so that a little
 * less flows than one-dimensional theory says. First two terms of the expansion in 1/(R + 1).
 *
 * @throws MeopError `out-of-domain` for radii not above 0
 * @example curvatureDischargeCoefficient({ throatCurvatureRadius: '12 mm', throatRadius: '6 mm', gamma: 1.2 }) // => 0.9968383
 */
export const curvatureDischargeCoefficient = /* @__PURE__ */ formula({
  name: 'curvatureDischargeCoefficient',
  title: 'Discharge coefficient from throat curvature',
  equation: 'C_d = 1 − (γ + 1) / (r_c / r_t + 1)²·(1 / 96 − (8·γ − 27) / (2304·(r_c / r_t + 1)))',
  source: 'Kliegel & Levine, AIAA Journal 7 (1969), 1375-1378, first two terms (from memory)',
  inputs: {
    throatCurvatureRadius: length('r_c', 'radius of curvature of the wall upstream of the throat'),
    throatRadius: length('r_t', 'throat radius'),
    gamma: ratio('γ', 'ratio of specific heats', { above: 1 }),
  },
  output: ratio('C_d', 'discharge coefficient'),
  example: { throatCurvatureRadius: '12 mm', throatRadius: '6 mm', gamma: 1.2 },
  valid: [
    ({ throatCurvatureRadius, throatRadius }) =>
      throatCurvatureRadius >= 0.5 * throatRadius ||
      'the throat is sharper than the expansion reaches (curvature below half the throat radius)',
  ],
  si: ({ throatCurvatureRadius, throatRadius, gamma }) => {
    const s = throatCurvatureRadius / throatRadius + 1;
    return 1 - ((gamma + 1) / (s * s)) * (1 / 96 - (8 * gamma - 27) / (2304 * s));
  },
});

/**
 * Discharge coefficient that the boundary layer of the convergent part causes in a smooth, round-entry throat.
 *
 * @throws MeopError `out-of-domain` for a Reynolds number not above 0
 * @example boundaryLayerDischargeCoefficient({ throatReynolds: 1e6 }) // => 0.996588
 */
export const boundaryLayerDischargeCoefficient = /* @__PURE__ */ formula({
  name: 'boundaryLayerDischargeCoefficient',
  title: 'Discharge coefficient from the boundary layer',
  equation: 'C_d = 1 − 3.412 / √(Re)',
  source:
    'ISO 9300:2005, toroidal critical-flow nozzle, accurately machined, Reynolds term only (from memory)',
  inputs: {
    throatReynolds: ratio('Re', 'Reynolds number 4·ṁ/(π·D_t·μ) at the stagnation viscosity', { above: 0 }),
  },
  output: ratio('C_d', 'discharge coefficient'),
  example: { throatReynolds: 1e6 },
  requires: [
    ({ throatReynolds }) =>
      throatReynolds > 3.412 ** 2 || 'the Reynolds number is so low that no boundary layer exists as such',
  ],
  valid: [
    ({ throatReynolds }) =>
      (throatReynolds >= 2.1e4 && throatReynolds <= 1.4e6) ||
      'the fit covers Reynolds numbers from 2.1e4 to 1.4e6, curvature of twice the throat diameter, and a smooth wall',
  ],
  si: ({ throatReynolds }) => 1 - 3.412 / Math.sqrt(throatReynolds),
  solve: { throatReynolds: (value) => (3.412 / (1 - value)) ** 2 },
});
