import { angle, area, count, force, formula, length, optional, ratio, stiffness } from '../../units';

/**
 * Area of the wires of a 7x19 rope.
 *
 * @example ropeMetallicArea({ diameter: '10 mm' }).in('mm^2') // => 47.2
 */
export const ropeMetallicArea = /* @__PURE__ */ formula({
  name: 'ropeMetallicArea',
  title: 'Metallic area of a wire rope',
  equation: 'A = 0.472·d²',
  source: 'Wires of 7x19 rope (engineering practice, no published source)',
  inputs: { diameter: length('d', 'diameter of the rope') },
  output: area('A', 'area of the wires'),
  example: { diameter: '8 mm' },
  si: ({ diameter }) => 0.472 * diameter ** 2,
});

/**
 * Stiffness along the thrust of ropes that share it, spread by an angle.
 *
 * @example restraintStiffness({ stiffness: '1000 N/mm', count: 2, angle: '60 deg' }).in('N/mm') // => 500
 */
export const restraintStiffness = /* @__PURE__ */ formula({
  name: 'restraintStiffness',
  title: 'Stiffness of ropes that share a load',
  equation: 'k_n = n·cos(α)²·k',
  source: 'Statics: each rope stretches by the cosine of its angle and pulls back by it',
  inputs: {
    stiffness: stiffness('k', 'stiffness of one rope'),
    count: count('n', 'ropes that share the load'),
    angle: optional(angle('α', 'between a rope and the load', { min: 0, below: Math.PI / 2 }), 0),
  },
  output: stiffness('k_n', 'stiffness along the load'),
  example: { stiffness: '1300 N/mm', count: 2, angle: '20 deg' },
  si: ({ stiffness: k, count: n, angle: alpha = 0 }) => n * Math.cos(alpha) * Math.cos(alpha) * k,
});

/** @example terminatedRopeStrength({ breakingForce: '40 kN', efficiency: 0.8 }).in('kN') // => 32 */
export const terminatedRopeStrength = /* @__PURE__ */ formula({
  name: 'terminatedRopeStrength',
  title: 'Breaking force of a rope with terminations',
  equation: 'B_e = η·B',
  source: 'Definition of the efficiency of a rope end',
  inputs: {
    breakingForce: force('B', 'minimum breaking force of the rope', { above: 0 }),
    efficiency: ratio('η', 'fraction of it that the ends keep', { above: 0, max: 1 }),
  },
  output: force('B_e', 'breaking force with the ends'),
  example: { breakingForce: '44.9 kN', efficiency: 0.8 },
  si: ({ breakingForce, efficiency }) => breakingForce * efficiency,
});
