import { formula, gaugePressure, length, optional, ratio, stress } from '../../units';

const source = (paragraph: string): string =>
  `ASME Boiler and Pressure Vessel Code VIII-1, ${paragraph}, as tabulated in Moss, Pressure Vessel Design Manual`;
const allowable = stress('S', 'allowable stress, the factor of safety already taken off', { above: 0 });
const efficiency = optional(ratio('E', 'joint efficiency; 1 for seamless tube', { above: 0, max: 1 }), 1);
const pressure = gaugePressure('P', 'design pressure', { above: 0 });
const wall = length('t', 'minimum wall');

/** The code's own limits: t ≤ R/2 and P ≤ 0.385 S E. */
const thick = ({
  pressure: p,
  allowable: s,
  efficiency: e,
}: {
  readonly pressure: number;
  readonly allowable: number;
  readonly efficiency: number;
}): true | string =>
  p <= 0.385 * s * e || 'the pressure exceeds 0.385·S·E, the limit of the code formula: use thickWallStress';

/**
 * Minimum wall for the hoop stress, from the inside radius.
 *
 * @example wallForPressure({ pressure: '1000 psi', insideRadius: '1.5 in', allowable: '10900 psi' }).in('in') // => 0.1456310680
 */
export const wallForPressure = /* @__PURE__ */ formula({
  name: 'wallForPressure',
  title: 'Wall for a pressure, hoop stress',
  equation: 't = P·R / (S·E − 0.6·P)',
  source: source('UG-27(c)(1)'),
  inputs: { pressure, insideRadius: length('R', 'inside radius'), allowable, efficiency },
  output: wall,
  example: { pressure: '1000 psi', insideRadius: '1.5 in', allowable: '10900 psi', efficiency: 1 },
  valid: [thick],
  requires: [
    ({ pressure: p, allowable: s, efficiency: e }) =>
      s * e > 0.6 * p || 'no wall is enough: S·E must exceed 0.6·P',
  ],
  si: ({ pressure: p, insideRadius, allowable: s, efficiency: e = 1 }) =>
    (p * insideRadius) / (s * e - 0.6 * p),
  solve: {
    pressure: (t, { insideRadius, allowable: s, efficiency: e }) => (s * e * t) / (insideRadius + 0.6 * t),
    insideRadius: (t, { pressure: p, allowable: s, efficiency: e }) => (t * (s * e - 0.6 * p)) / p,
    allowable: (t, { pressure: p, insideRadius, efficiency: e }) => (p * (insideRadius + 0.6 * t)) / (e * t),
  },
});

/**
 * Minimum wall for the hoop stress, from the outside radius; the same wall as {@link wallForPressure}.
 *
 * @example wallFromOutsideRadius({ pressure: '1000 psi', outsideRadius: '1.75 in', allowable: '10900 psi' }).in('in') // => 0.1548672566
 */
export const wallFromOutsideRadius = /* @__PURE__ */ formula({
  name: 'wallFromOutsideRadius',
  title: 'Wall for a pressure, hoop stress, from the outside radius',
  equation: 't = P·R_o / (S·E + 0.4·P)',
  source: source('Appendix 1-1'),
  inputs: { pressure, outsideRadius: length('R_o', 'outside radius'), allowable, efficiency },
  output: wall,
  example: { pressure: '1000 psi', outsideRadius: '1.75 in', allowable: '10900 psi', efficiency: 1 },
  valid: [thick],
  si: ({ pressure: p, outsideRadius, allowable: s, efficiency: e = 1 }) =>
    (p * outsideRadius) / (s * e + 0.4 * p),
});

/**
 * Minimum wall for the longitudinal stress, from the inside radius; less than half that for the hoop stress.
 *
 * @example wallForEndForce({ pressure: '1000 psi', insideRadius: '1.5 in', allowable: '10900 psi' }).in('in') // => 0.06756756757
 */
export const wallForEndForce = /* @__PURE__ */ formula({
  name: 'wallForEndForce',
  title: 'Wall for a pressure, longitudinal stress',
  equation: 't = P·R / (2·S·E + 0.4·P)',
  source: source('UG-27(c)(2)'),
  inputs: { pressure, insideRadius: length('R', 'inside radius'), allowable, efficiency },
  output: wall,
  example: { pressure: '1000 psi', insideRadius: '1.5 in', allowable: '10900 psi', efficiency: 1 },
  si: ({ pressure: p, insideRadius, allowable: s, efficiency: e = 1 }) =>
    (p * insideRadius) / (2 * s * e + 0.4 * p),
});

/**
 * Minimum wall for the longitudinal stress, from the outside radius; the same wall as {@link wallForEndForce}.
 *
 * @example wallForEndForceFromOutsideRadius({ pressure: '1000 psi', outsideRadius: '1.75 in', allowable: '10900 psi' }).in('in') // => 0.07543103448
 */
export const wallForEndForceFromOutsideRadius = /* @__PURE__ */ formula({
  name: 'wallForEndForceFromOutsideRadius',
  title: 'Wall for a pressure, longitudinal stress, from the outside radius',
  equation: 't = P·R_o / (2·S·E + 1.4·P)',
  source:
    'ASME Boiler and Pressure Vessel Code VIII-1, outside-radius form of UG-27(c)(2), as tabulated in Moss, Pressure Vessel Design Manual',
  inputs: { pressure, outsideRadius: length('R_o', 'outside radius'), allowable, efficiency },
  output: wall,
  example: { pressure: '1000 psi', outsideRadius: '1.75 in', allowable: '10900 psi', efficiency: 1 },
  si: ({ pressure: p, outsideRadius, allowable: s, efficiency: e = 1 }) =>
    (p * outsideRadius) / (2 * s * e + 1.4 * p),
});

/**
 * Wall stress of a seamless 6061-T6 cylinder as US law computes it: E times the maximum strain at the bore, ν = 0.3.
 *
 * @example dot3alWallStress({ pressure: '1666.667 psi', outsideDiameter: '3.5 in', insideDiameter: '3.0 in' }).in('psi').toFixed(1) // => '10012.8'
 */
export const dot3alWallStress = /* @__PURE__ */ formula({
  name: 'dot3alWallStress',
  title: 'Wall stress of a seamless aluminium cylinder',
  equation: 'S = P·(1.3·D² + 0.4·d²) / (D² − d²)',
  source: '49 CFR 178.46, specification 3AL, wall stress formula',
  inputs: {
    pressure: gaugePressure('P', 'test pressure'),
    outsideDiameter: length('D', 'outside diameter'),
    insideDiameter: length('d', 'inside diameter'),
  },
  output: stress('S', 'wall stress'),
  example: { pressure: '1700 psi', outsideDiameter: '3.5 in', insideDiameter: '3.0 in' },
  requires: [
    ({ outsideDiameter, insideDiameter }) =>
      outsideDiameter > insideDiameter || 'the outside diameter must be more than the inside diameter',
  ],
  si: ({ pressure: p, outsideDiameter: d, insideDiameter: b }) =>
    (p * (1.3 * d * d + 0.4 * b * b)) / ((d - b) * (d + b)),
});
