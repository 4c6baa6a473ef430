import { area, count, force, formula, length, optional, stress } from '../../units';

/**
 * Shear stress in the bolts of a row that share a load equally. Give the area in the shear plane: the tensile
 * stress area (or the root) where threads reach the plane, the shank only where they surely do not.
 *
 * @example boltShearStress({ load: '7200 lbf', count: 12, area: '0.05 in^2' }).in('psi') // => 12000
 */
export const boltShearStress = /* @__PURE__ */ formula({
  name: 'boltShearStress',
  title: 'Shear stress in the bolts',
  equation: 'τ = F / (n·A)',
  source:
    "Shigley's Mechanical Engineering Design, 9th ed., section 8-12, shear of a bolt group (example 8-6)",
  inputs: {
    load: force('F', 'load across the joint'),
    count: optional(count('n', 'shear planes that share it: bolts, times planes per bolt'), 1),
    area: area('A', 'area of one bolt in the shear plane'),
  },
  output: stress('τ', 'shear stress'),
  example: { load: '31.4 kN', count: 12, area: '28.9 mm^2' },
  si: ({ load, count: n = 1, area: a }) => load / (n * a),
});

/** @example shankArea({ diameter: '1/4 in' }).in('in^2') // => 0.04908738521 */
export const shankArea = /* @__PURE__ */ formula({
  name: 'shankArea',
  title: 'Area of an unthreaded shank',
  equation: 'A = π·d² / 4',
  source: 'Area of a circle',
  inputs: { diameter: length('d', 'diameter of the shank') },
  output: area('A', 'area of the shank'),
  example: { diameter: '6 mm' },
  si: ({ diameter }) => (Math.PI * diameter * diameter) / 4,
});
