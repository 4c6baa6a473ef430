import { formula, length, optional, temperatureDifference, thermalExpansion } from '../../units';

/**
 * Depth of a groove that a retaining ring still engages once pressure and heat have opened the bore. The ring is assumed not
 * to follow the groove, and to be at room temperature.
 *
 * @example grooveEngagement({ grooveDepth: '1 mm', growth: '50 µm', boreDiameter: '38 mm' }).in('mm') // => 0.95
 */
export const grooveEngagement = /* @__PURE__ */ formula({
  name: 'grooveEngagement',
  title: 'Engaged depth of the groove of a retaining ring',
  equation: 'd_e = d − u − α·ΔT·D / 2',
  source: 'Geometry: growth of the radius of the bore under pressure, and linear expansion of the case',
  inputs: {
    grooveDepth: length('d', 'depth of the groove, radially', { example: '1 mm' }),
    growth: length('u', 'growth of the radius of the bore under pressure', { min: 0, example: '10 µm' }),
    boreDiameter: length('D', 'bore that the groove is cut in', { example: '38 mm' }),
    expansion: optional(
      thermalExpansion('α', 'coefficient of linear expansion of the case', { example: '23.6e-6 1/K' }),
      0,
    ),
    rise: optional(
      temperatureDifference('ΔT', 'rise of temperature of the case', { min: 0, example: '60 delta_K' }),
      0,
    ),
  },
  output: length('d_e', 'engaged depth of the groove', {}),
  si: ({ grooveDepth, growth, boreDiameter, expansion = 0, rise = 0 }) =>
    grooveDepth - growth - (expansion * rise * boreDiameter) / 2,
});
