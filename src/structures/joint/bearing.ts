import { count, force, formula, length, optional, stress } from '../../units';

/**
 * Bearing stress of bolts on the sides of their holes, on the projected area: diameter times thickness.
 * The diameter is the bolt's, not the hole's.
 *
 * @example bearingStress({ load: '2500 lbf', diameter: '1/4 in', thickness: '0.1 in' }).in('ksi') // => 100
 */
export const bearingStress = /* @__PURE__ */ formula({
  name: 'bearingStress',
  title: 'Bearing stress of the bolts on the wall',
  equation: 'σ_b = F / (n·d·t)',
  source: "Shigley's Mechanical Engineering Design, 9th ed., section 8-12, bearing on the projected area",
  inputs: {
    load: force('F', 'load across the joint'),
    count: optional(count('n', 'bolts that share it'), 1),
    diameter: length('d', 'diameter of a bolt'),
    thickness: length('t', 'thickness that a bolt bears on'),
  },
  output: stress('σ_b', 'bearing stress'),
  example: { load: '31.4 kN', count: 12, diameter: '1/4 in', thickness: '6 mm' },
  si: ({ load, count: n = 1, diameter, thickness }) => load / (n * diameter * thickness),
});
