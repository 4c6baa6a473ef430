import {
  angle,
  count,
  force,
  formula,
  length,
  optional,
  ratio,
  secondMomentOfArea,
  stress,
} from '../../units';

/**
 * Axial force in one of the members that carry a thrust together, spread like the legs of a tripod.
 *
 * @example strutForce({ load: '3 kN', count: 3, angle: '60 deg' }).in('kN') // => 2
 */
export const strutForce = /* @__PURE__ */ formula({
  name: 'strutForce',
  title: 'Axial force in one of several members or ropes',
  equation: 'N = F / (n·cos(θ))',
  source: 'Statics',
  inputs: {
    load: force('F', 'load along the axis of the stand'),
    count: count('n', 'members that share it equally'),
    angle: optional(angle('θ', 'angle between a member and the axis', { min: 0, below: Math.PI / 2 }), 0),
  },
  output: force('N', 'axial force in a member'),
  example: { load: '3 kN', count: 3, angle: '25 deg' },
  si: ({ load, count: n, angle: theta = 0 }) => load / (n * Math.cos(theta)),
});

/** @example eulerBucklingLoad({ elasticModulus: '200 GPa', secondMoment: '1000 mm^4', length: '1 m' }).in('N') // => 1973.920880 */
export const eulerBucklingLoad = /* @__PURE__ */ formula({
  name: 'eulerBucklingLoad',
  title: 'Buckling load of a slender member',
  equation: 'P_c = π²·E·I / (K·L)²',
  source: "Euler; Shigley's Mechanical Engineering Design, 9th ed., section 4-12",
  inputs: {
    elasticModulus: stress('E', "Young's modulus", { above: 0 }),
    secondMoment: secondMomentOfArea('I', 'minimum second moment of area'),
    length: length('L', 'length between its ends'),
    endFactor: optional(ratio('K', '1 pinned at both ends, 2 free at one end', { min: 0.5 }), 1),
  },
  output: force('P_c', 'buckling load'),
  example: { elasticModulus: '200 GPa', secondMoment: '5000 mm^4', length: '0.6 m' },
  si: ({ elasticModulus, secondMoment, length: l, endFactor = 1 }) =>
    (Math.PI * Math.PI * elasticModulus * secondMoment) / (endFactor * l) ** 2,
});

/**
 * Uplift of each rear anchor of a stand under a horizontal thrust; negative where the weight of the stand exceeds it.
 *
 * @example anchorUplift({ thrust: '2 kN', height: '0.5 m', anchorSpacing: '1 m', weight: '400 N', count: 2 }).in('N') // => 400
 */
export const anchorUplift = /* @__PURE__ */ formula({
  name: 'anchorUplift',
  title: 'Uplift of the rear anchors of a stand',
  equation: 'R = (F·h / b − W / 2) / n',
  source: 'Statics: moments about the front anchors, weight at mid-span',
  inputs: {
    thrust: force('F', 'thrust, level'),
    height: length('h', 'height of the thrust axis above the base'),
    anchorSpacing: length('b', 'distance between front and rear anchors'),
    weight: force('W', 'weight of the stand', { min: 0 }),
    count: count('n', 'anchors at the rear'),
  },
  output: force('R', 'uplift of one anchor'),
  example: { thrust: '2 kN', height: '0.5 m', anchorSpacing: '1 m', weight: '400 N', count: 2 },
  si: ({ thrust, height, anchorSpacing, weight, count: n }) =>
    ((thrust * height) / anchorSpacing - weight / 2) / n,
});
