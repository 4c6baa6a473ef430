import { area, count, force, formula, stress } from '../../units';

/** @example screwTensionStress({ load: '4 kN', count: 8, stressArea: '8.78 mm^2' }).in('MPa').toFixed(3) // => '56.948' */
export const screwTensionStress = /* @__PURE__ */ formula({
  name: 'screwTensionStress',
  title: 'Tensile stress in screws that share a force along their axes',
  equation: 'σ_b = F / (n·A_t)',
  source: 'Definition of stress: equal shares on the tensile stress area (ISO 898-1)',
  inputs: {
    load: force('F', 'total force along the axes'),
    count: count('n', 'number of screws', { min: 1, whole: true }),
    stressArea: area('A_t', 'tensile stress area of a screw', { above: 0 }),
  },
  output: stress('σ_b', 'tensile stress'),
  example: { load: '4 kN', count: 8, stressArea: '8.78 mm^2' },
  si: ({ load, count: n, stressArea }) => load / (n * stressArea),
});

/** @example loadOfScrew({ load: '4 kN', count: 8 }).in('N') // => 500 */
export const loadOfScrew = /* @__PURE__ */ formula({
  name: 'loadOfScrew',
  title: 'Share of a screw in a force along the axis',
  equation: 'P = F / n',
  source: 'Statics: equal shares',
  inputs: {
    load: force('F', 'total force along the axes'),
    count: count('n', 'number of screws', { min: 1, whole: true }),
  },
  output: force('P', 'load of one screw'),
  example: { load: '4 kN', count: 8 },
  si: ({ load, count: n }) => load / n,
});
