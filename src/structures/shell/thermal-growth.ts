import { formula, length, stress, temperatureDifference, thermalExpansion } from '../../units';
import { elasticModulus, poissonRatio } from './elastic-inputs';

/**
 * Growth of a diameter, or of any length, with temperature; in a hot tube it can exceed the growth under pressure.
 *
 * @example thermalGrowth({ dimension: '76.2 mm', expansion: '23.6e-6 1/K', rise: '80 delta_K' }).in('mm') // => 0.1438656
 */
export const thermalGrowth = /* @__PURE__ */ formula({
  name: 'thermalGrowth',
  title: 'Thermal growth',
  equation: 'ΔD = α·D·ΔT',
  source: 'Definition of the coefficient of linear expansion',
  inputs: {
    dimension: length('D', 'diameter or length at the cold temperature'),
    expansion: thermalExpansion('α', 'mean coefficient of linear expansion'),
    rise: temperatureDifference('ΔT', 'rise of temperature'),
  },
  output: length('ΔD', 'growth', {}),
  example: { dimension: '76.2 mm', expansion: '23.6e-6 1/K', rise: '80 delta_K' },
  si: ({ dimension, expansion, rise }) => expansion * dimension * rise,
});

/**
 * Bound on the thermal stress of a wall hot on one face: the whole difference of temperature held flat, in both directions.
 *
 * @example thermalWallStress({ elasticModulus: '70 GPa', expansion: '24e-6 1/K', rise: '50 delta_K', poissonRatio: 0.3 }).in('MPa') // => 60
 */
export const thermalWallStress = /* @__PURE__ */ formula({
  name: 'thermalWallStress',
  title: 'Thermal stress across a wall',
  equation: 'σ = E·α·ΔT / (2·(1 − ν))',
  source:
    "Roark's Formulas for Stress and Strain, chapter on temperature stresses: plate with a linear gradient held from bending (from memory)",
  inputs: {
    elasticModulus,
    expansion: thermalExpansion('α', 'coefficient of linear expansion'),
    rise: temperatureDifference('ΔT', 'difference of temperature between the two faces'),
    poissonRatio,
  },
  output: stress('σ', 'stress at the faces: compression at the hot one'),
  example: { elasticModulus: '70 GPa', expansion: '23.6e-6 1/K', rise: '50 delta_K', poissonRatio: 0.33 },
  si: ({ elasticModulus, expansion, rise, poissonRatio }) =>
    (elasticModulus * expansion * rise) / (2 * (1 - poissonRatio)),
});
