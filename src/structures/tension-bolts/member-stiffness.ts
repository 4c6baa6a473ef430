import { angle, formula, length, optional, ratio, stiffness, stress } from '../../units';

const halfAngle = optional(
  angle('α', 'half angle of the cone of pressure; 30° in general', { above: 0, below: Math.PI / 2 }),
  Math.PI / 6,
);
const modulus = stress('E', "Young's modulus of the clamped parts", { above: 0 });
const hole = length('d', 'diameter of the bolt');
const faceOverHole = ({ faceDiameter, diameter }: { faceDiameter: number; diameter: number }) =>
  faceDiameter > diameter || 'the face must be wider than the bolt';

/** ln of the ratio of the two ends of a hollow cone of compression; the spread is 2·t·tan α. */
const cone = (spread: number, face: number, d: number): number =>
  Math.log(((spread + face - d) * (face + d)) / ((spread + face + d) * (face - d)));

/**
 * Stiffness of one layer of clamped material, as the hollow cone in which the compression spreads from its smaller face.
 *
 * @example frustumStiffness({ elasticModulus: '207 GPa', thickness: '19.05 mm', faceDiameter: '23.8125 mm', diameter: '15.875 mm' }).in('kN/mm').toFixed(0) // => '6724'
 */
export const frustumStiffness = /* @__PURE__ */ formula({
  name: 'frustumStiffness',
  title: 'Stiffness of a cone of clamped material',
  equation: 'k = π·E·d·tan(α) / ln((2·t·tan(α) + D − d)·(D + d) / ((2·t·tan(α) + D + d)·(D − d)))',
  source: "Shigley's Mechanical Engineering Design, 9th ed., equation 8-19",
  inputs: {
    elasticModulus: modulus,
    thickness: length('t', 'thickness of the layer', { above: 0 }),
    faceDiameter: length('D', 'diameter of the smaller face of the cone'),
    diameter: hole,
    halfAngle,
  },
  output: stiffness('k', 'load per compression of the layer'),
  example: { elasticModulus: '68.9 GPa', thickness: '6 mm', faceDiameter: '9 mm', diameter: '6 mm' },
  requires: [faceOverHole],
  si: ({ elasticModulus, thickness, faceDiameter, diameter, halfAngle: alpha = Math.PI / 6 }) =>
    (Math.PI * elasticModulus * diameter * Math.tan(alpha)) /
    cone(2 * thickness * Math.tan(alpha), faceDiameter, diameter),
});

/**
 * Stiffness of clamped parts of one modulus: two equal cones, back to back, in series.
 *
 * @example memberStiffness({ elasticModulus: '14e6 psi', grip: '1.5 in', faceDiameter: '0.9375 in', diameter: '0.625 in' }).in('lbf/in').toExponential(2) // => '8.95e+6'
 */
export const memberStiffness = /* @__PURE__ */ formula({
  name: 'memberStiffness',
  title: 'Stiffness of clamped parts of one material',
  equation: 'k_m = π·E·d·tan(α) / (2·ln((l·tan(α) + D − d)·(D + d) / ((l·tan(α) + D + d)·(D − d))))',
  source: "Shigley's Mechanical Engineering Design, 9th ed., equation 8-21",
  inputs: {
    elasticModulus: modulus,
    grip: length('l', 'clamped length', { above: 0 }),
    faceDiameter: length('D', 'diameter under the head or washer; 1.5 bolt diameters in general'),
    diameter: hole,
    halfAngle,
  },
  output: stiffness('k_m', 'load per compression of the clamped parts'),
  example: { elasticModulus: '68.9 GPa', grip: '12 mm', faceDiameter: '9 mm', diameter: '6 mm' },
  requires: [faceOverHole],
  si: ({ elasticModulus, grip, faceDiameter, diameter, halfAngle: alpha = Math.PI / 6 }) =>
    (Math.PI * elasticModulus * diameter * Math.tan(alpha)) /
    (2 * cone(grip * Math.tan(alpha), faceDiameter, diameter)),
});

/**
 * Stiffness of clamped parts of one material by a fit to finite elements: A and B are 0.77871 and 0.61616 for grey cast iron
 * (published); 0.78715 and 0.62873 for steel, 0.79670 and 0.63816 for aluminium (from memory).
 *
 * @example memberStiffnessFit({ elasticModulus: '14e6 psi', diameter: '0.625 in', grip: '1.5 in', a: 0.77871, b: 0.61616 }).in('lbf/in').toExponential(2) // => '8.81e+6'
 */
export const memberStiffnessFit = /* @__PURE__ */ formula({
  name: 'memberStiffnessFit',
  title: 'Stiffness of clamped parts of one material, fitted to finite elements',
  equation: 'k_m = E·d·A·exp(B·d / l)',
  source:
    "Shigley's Mechanical Engineering Design, 9th ed., equation 8-23 and table 8-8 (steel and aluminium from memory)",
  inputs: {
    elasticModulus: modulus,
    diameter: hole,
    grip: length('l', 'clamped length', { above: 0 }),
    a: ratio('A', 'constant of the material', { above: 0 }),
    b: ratio('B', 'constant of the material', { above: 0 }),
  },
  output: stiffness('k_m', 'load per compression of the clamped parts'),
  example: { elasticModulus: '71 GPa', diameter: '6 mm', grip: '12 mm', a: 0.7967, b: 0.63816 },
  si: ({ elasticModulus, diameter, grip, a, b }) =>
    elasticModulus * diameter * a * Math.exp((b * diameter) / grip),
});

/**
 * Stiffness of a layer that is too narrow for the cone: the hollow cylinder that there is.
 *
 * @example cylinderStiffness({ elasticModulus: '70 GPa', thickness: '10 mm', outsideDiameter: '10 mm', diameter: '6 mm' }).in('kN/mm').toFixed(1) // => '351.9'
 */
export const cylinderStiffness = /* @__PURE__ */ formula({
  name: 'cylinderStiffness',
  title: 'Stiffness of a cylinder of clamped material',
  equation: 'k = π·E·(D² − d²) / (4·t)',
  source: 'Elastic compression of a hollow cylinder',
  inputs: {
    elasticModulus: modulus,
    thickness: length('t', 'thickness of the layer', { above: 0 }),
    outsideDiameter: length('D', 'outside diameter of the compressed cylinder'),
    diameter: hole,
  },
  output: stiffness('k', 'load per compression of the layer'),
  example: { elasticModulus: '68.9 GPa', thickness: '10 mm', outsideDiameter: '10 mm', diameter: '6 mm' },
  requires: [
    ({ outsideDiameter, diameter }) =>
      outsideDiameter > diameter || 'the cylinder must be wider than the bolt',
  ],
  si: ({ elasticModulus, thickness, outsideDiameter, diameter }) =>
    (Math.PI * elasticModulus * (outsideDiameter ** 2 - diameter ** 2)) / (4 * thickness),
});

/** @example springsInSeries({ first: '200 kN/mm', second: '300 kN/mm' }).in('kN/mm') // => 120 */
export const springsInSeries = /* @__PURE__ */ formula({
  name: 'springsInSeries',
  title: 'Stiffness of two springs in series',
  equation: 'k = 1 / (1 / k_1 + 1 / k_2)',
  source: "Shigley's Mechanical Engineering Design, 9th ed., equation 8-18",
  inputs: {
    first: stiffness('k_1', 'stiffness of the first spring', { above: 0 }),
    second: stiffness('k_2', 'stiffness of the second spring', { above: 0 }),
  },
  output: stiffness('k', 'stiffness of both'),
  example: { first: '900 kN/mm', second: '300 kN/mm' },
  si: ({ first, second }) => 1 / (1 / first + 1 / second),
});
