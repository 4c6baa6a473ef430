import { angle, formula, length, ratio } from '../units';

/**
 * Fraction of the exit momentum of a conical nozzle that acts along its axis. It applies to the momentum term
 * only: applied to the pressure term as well, its error changes sign between over- and under-expansion.
 *
 * @throws MeopError `out-of-domain` for a half angle outside 0 to 90°
 * @example conicalDivergenceFactor({ halfAngle: '15 deg' }) // => 0.982962913
 */
export const conicalDivergenceFactor = /* @__PURE__ */ formula({
  name: 'conicalDivergenceFactor',
  title: 'Divergence factor of a cone',
  equation: 'λ = (1 + cos(α)) / 2',
  source:
    'Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001), ch. 3 (quoted from memory, not verified)',
  inputs: { halfAngle: angle('α', 'half angle of the cone', { min: 0, max: Math.PI / 2 }) },
  output: ratio('λ', 'divergence factor'),
  example: { halfAngle: '15 deg' },
  valid: [
    ({ halfAngle }) => halfAngle <= Math.PI / 6 || 'above 30° half angle the flow does not follow the wall',
  ],
  si: ({ halfAngle }) => (1 + Math.cos(halfAngle)) / 2,
  solve: { halfAngle: (value) => Math.acos(2 * value - 1) },
});

/**
 * Fraction of the exit momentum of a bell nozzle that acts along its axis: the factor of a cone at the mean of the
 * angle of the equal cone and the angle at the exit lip.
 *
 * @throws MeopError `out-of-domain` for angles outside 0 to 90°
 * @example bellDivergenceFactor({ coneHalfAngle: '15 deg', exitAngle: '8 deg' }) // => 0.9899624
 */
export const bellDivergenceFactor = /* @__PURE__ */ formula({
  name: 'bellDivergenceFactor',
  title: 'Divergence factor of a bell',
  equation: 'λ = (1 + cos((α + θ_e) / 2)) / 2',
  source:
    'Engineering practice for bells of thrust-optimised shape (quoted from memory, not verified; no published source)',
  inputs: {
    coneHalfAngle: angle('α', 'half angle of the cone of equal length and expansion', {
      min: 0,
      max: Math.PI / 2,
    }),
    exitAngle: angle('θ_e', 'wall angle at the exit lip', { min: 0, max: Math.PI / 2 }),
  },
  output: ratio('λ', 'divergence factor'),
  example: { coneHalfAngle: '15 deg', exitAngle: '8 deg' },
  si: ({ coneHalfAngle, exitAngle }) => (1 + Math.cos((coneHalfAngle + exitAngle) / 2)) / 2,
});

/**
 * Discharge coefficient from the curvature of the throat, without friction: the sonic surface is curved, so that
 * the mass flow is less than that of one-dimensional theory. First two terms of the expansion in 1/(R + 1).
 *
 * @throws MeopError `out-of-domain` for radii not above 0
 * @example curvatureDischargeCoefficient({ throatCurvatureRadius: '12 mm', throatRadius: '6 mm', gamma: 1.2 }) // => 0.9968383
 */
export const curvatureDischargeCoefficient = /* @__PURE__ */ formula({
  name: 'curvatureDischargeCoefficient',
  title: 'Discharge coefficient from throat curvature',
  equation: 'C_d = 1 − (γ + 1) / (r_c / r_t + 1)²·(1 / 96 − (8·γ − 27) / (2304·(r_c / r_t + 1)))',
  source:
    'Kliegel & Levine, AIAA Journal 7 (1969), 1375-1378, first two terms (quoted from memory, not verified)',
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
      'the throat is sharper than the range of the expansion (radius of curvature below half the throat radius)',
  ],
  si: ({ throatCurvatureRadius, throatRadius, gamma }) => {
    const s = throatCurvatureRadius / throatRadius + 1;
    return 1 - ((gamma + 1) / (s * s)) * (1 / 96 - (8 * gamma - 27) / (2304 * s));
  },
});

/**
 * Discharge coefficient from the boundary layer of the convergent section in a smooth, round-entry throat.
 *
 * @throws MeopError `out-of-domain` for a Reynolds number not above 0
 * @example boundaryLayerDischargeCoefficient({ throatReynolds: 1e6 }) // => 0.996588
 */
export const boundaryLayerDischargeCoefficient = /* @__PURE__ */ formula({
  name: 'boundaryLayerDischargeCoefficient',
  title: 'Discharge coefficient from the boundary layer',
  equation: 'C_d = 1 − 3.412 / √(Re)',
  source:
    'ISO 9300:2005, toroidal critical-flow nozzle, accurately machined, Reynolds term only (quoted from memory, not verified)',
  inputs: {
    throatReynolds: ratio('Re', 'Reynolds number 4·ṁ/(π·D_t·μ) at the stagnation viscosity', { above: 0 }),
  },
  output: ratio('C_d', 'discharge coefficient'),
  example: { throatReynolds: 1e6 },
  requires: [
    ({ throatReynolds }) =>
      throatReynolds > 3.412 ** 2 || 'the Reynolds number is too low for a boundary layer',
  ],
  valid: [
    ({ throatReynolds }) =>
      (throatReynolds >= 2.1e4 && throatReynolds <= 1.4e6) ||
      'the fit is valid for Reynolds numbers from 2.1e4 to 1.4e6, a radius of curvature of twice the throat diameter, and a smooth wall',
  ],
  si: ({ throatReynolds }) => 1 - 3.412 / Math.sqrt(throatReynolds),
  solve: { throatReynolds: (value) => (3.412 / (1 - value)) ** 2 },
});
