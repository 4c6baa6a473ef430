import { area, force, formula, stress } from '../../units';

/**
 * Shear stress in the threads of a screw or of a tapped hole under a load along the axis.
 *
 * @example threadShearStress({ load: '2 kN', area: '100 mm^2' }).in('MPa') // => 20
 */
export const threadShearStress = /* @__PURE__ */ formula({
  name: 'threadShearStress',
  title: 'Shear stress in a thread',
  equation: 'τ = F / A',
  source: 'FED-STD-H28/2: load over the shear area of the thread',
  inputs: {
    load: force('F', 'load along the axis of the thread'),
    area: area('A', 'shear area of the thread'),
  },
  output: stress('τ', 'shear stress'),
  example: { load: '2.6 kN', area: '150 mm^2' },
  si: ({ load, area: a }) => load / a,
});
