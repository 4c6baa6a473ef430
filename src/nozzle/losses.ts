import { gamma } from '../thermo/gas-inputs';
import { angle, formula, length, ratio } from '../units';

const quarterTurn = { min: 0, max: Math.PI / 2 };

/**
 * Share of the exit momentum of a conical nozzle that is parallel to its axis. It applies to the momentum term only: applied to
 * the pressure term as well, its error changes sign between over- and under-expansion.
 *
 * @example conicalDivergenceFactor({ halfAngle: '15 deg' }) // => 0.982962913
 */
export const conicalDivergenceFactor = /* @__PURE__ */ formula({
  name: 'conicalDivergenceFactor',
  title: 'Divergence factor of a cone',
  equation: 'λ = (1 + cos(α)) / 2',
  source:
    'Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001), ch. 3 (quoted from memory, not verified)',
  inputs: { halfAngle: angle('α', 'half angle of the cone', quarterTurn) },
  output: ratio('λ', 'divergence factor'),
  example: { halfAngle: '15 deg' },
  valid: [
    ({ halfAngle }) => halfAngle <= Math.PI / 6 || 'Above 30° half angle the flow separates from the wall.',
  ],
  si: ({ halfAngle }) => (1 + Math.cos(halfAngle)) / 2,
});

/**
 * Share of the exit momentum of a bell nozzle that is parallel to its axis: the factor of a cone at the mean of the angle of the
 * equal cone and the wall angle at the exit lip.
 *
 * @example bellDivergenceFactor({ coneHalfAngle: '15 deg', exitAngle: '8 deg' }) // => 0.9899624
 */
export const bellDivergenceFactor = /* @__PURE__ */ formula({
  name: 'bellDivergenceFactor',
  title: 'Divergence factor of a bell',
  equation: 'λ = (1 + cos((α + θ_e) / 2)) / 2',
  source:
    'Engineering practice for bells of thrust-optimised shape (quoted from memory, not verified; no published source)',
  inputs: {
    coneHalfAngle: angle('α', 'half angle of the cone of equal length and expansion', quarterTurn),
    exitAngle: angle('θ_e', 'wall angle at the exit lip', quarterTurn),
  },
  output: ratio('λ', 'divergence factor'),
  example: { coneHalfAngle: '15 deg', exitAngle: '8 deg' },
  si: ({ coneHalfAngle, exitAngle }) => (1 + Math.cos((coneHalfAngle + exitAngle) / 2)) / 2,
});

/**
 * Discharge coefficient due to the curvature of the throat, without friction: the sonic surface is curved, so that the mass flow
 * is slightly less than that of one-dimensional theory. First two terms of the expansion in 1/(R + 1).
 *
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
    gamma,
  },
  output: ratio('C_d', 'discharge coefficient'),
  example: { throatCurvatureRadius: '12 mm', throatRadius: '6 mm', gamma: 1.2 },
  valid: [
    ({ throatCurvatureRadius, throatRadius }) =>
      throatCurvatureRadius >= 0.5 * throatRadius ||
      'The radius of curvature is below half the throat radius, outside the validity of the expansion.',
  ],
  si: ({ throatCurvatureRadius, throatRadius, gamma }) => {
    const s = throatCurvatureRadius / throatRadius + 1;
    return 1 - ((gamma + 1) / (s * s)) * (1 / 96 - (8 * gamma - 27) / (2304 * s));
  },
});

/**
 * Discharge coefficient due to the boundary layer of the convergent section, in a smooth throat with a rounded inlet.
 *
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
      'The fit covers Reynolds numbers from 2.1e4 to 1.4e6, a radius of curvature of twice the throat diameter, and a smooth wall.',
  ],
  si: ({ throatReynolds }) => 1 - 3.412 / Math.sqrt(throatReynolds),
});
