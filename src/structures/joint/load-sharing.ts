import { count, force, formula, length, ratio, stiffness, stress } from '../../units';

/**
 * Stiffness of a bolt in single shear together with the holes it bears on.
 *
 * @example boltStiffness({ diameter: '6 mm', boltModulus: '200 GPa', wall: '3 mm', wallModulus: '70 GPa', engagement: '10 mm', closureModulus: '70 GPa' }).in('kN/mm') // => 109.6605744
 */
export const boltStiffness = /* @__PURE__ */ formula({
  name: 'boltStiffness',
  title: 'Stiffness of a bolt in single shear',
  equation: 'k = 1 / (5 / (d·E_b) + 0.8 / (t·E_w) + 0.8 / (L·E_c))',
  source:
    'Swift, Development of the fail-safe design features of the DC-10, ASTM STP 486 (1971), fastener flexibility (from memory)',
  inputs: {
    diameter: length('d', 'diameter of the bolt'),
    boltModulus: stress('E_b', "Young's modulus of the bolt", { above: 0 }),
    wall: length('t', 'thickness of the case wall'),
    wallModulus: stress('E_w', "Young's modulus of the case", { above: 0 }),
    engagement: length('L', 'length of the bolt in the closure'),
    closureModulus: stress('E_c', "Young's modulus of the closure", { above: 0 }),
  },
  output: stiffness('k', 'load per displacement of one bolt'),
  example: {
    diameter: '6 mm',
    boltModulus: '200 GPa',
    wall: '3 mm',
    wallModulus: '68.9 GPa',
    engagement: '10 mm',
    closureModulus: '68.9 GPa',
  },
  si: ({ diameter, boltModulus, wall, wallModulus, engagement, closureModulus }) =>
    1 / (5 / (diameter * boltModulus) + 0.8 / (wall * wallModulus) + 0.8 / (engagement * closureModulus)),
});

/**
 * How much more than its equal share the worst bolt carries when one hole lies out of place: that bolt bears first and
 * the others only after it has given way by the positionTolerance. Elastic, so an upper bound: a ductile wall yields in
 * bearing and levels the loads. Holes drilled through both parts together have no positionTolerance: the factor is 1.
 *
 * @example boltShareFactor({ load: '30 kN', count: 12, stiffness: '100 kN/mm', positionTolerance: '0.03 mm' }) // => 2.1
 */
export const boltShareFactor = /* @__PURE__ */ formula({
  name: 'boltShareFactor',
  title: 'Share of the worst bolt over the equal share',
  equation: 'κ = min(n, 1 + (n − 1)·k·Δ / F)',
  source:
    'Statics of n equal springs of which one bears before the others (engineering practice, no published source)',
  inputs: {
    load: force('F', 'load across the joint', { above: 0 }),
    count: count('n', 'bolts'),
    stiffness: stiffness('k', 'stiffness of one bolt'),
    positionTolerance: length('Δ', 'displacement by which one bolt bears before the others', { min: 0 }),
  },
  output: ratio('κ', 'load of the worst bolt over F/n', { min: 1 }),
  example: { load: '31.4 kN', count: 12, stiffness: '100 kN/mm', positionTolerance: '0.02 mm' },
  si: ({ load, count: n, stiffness: k, positionTolerance }) =>
    Math.min(n, 1 + ((n - 1) * k * positionTolerance) / load),
});
