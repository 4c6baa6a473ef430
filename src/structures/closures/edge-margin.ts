import { force, formula, length, optional, ratio, stress } from '../../units';

const source =
  "Manufacturer's edge-margin formulas for retaining rings, on a page that cites Machinery's Handbook; the shear form assumes a shear strength of a third of the yield strength";

const inputs = {
  load: force('F', 'thrust on the ring', { example: '13.3 kN' }),
  grooveDiameter: length('D_g', 'diameter of the groove', { example: '53.9 mm' }),
  yieldStrength: stress('S_y', 'yield strength of the metal of the land', { above: 0, example: '241 MPa' }),
  factor: optional(ratio('K', 'factor of safety', { min: 1, example: 2 }), 2),
};
const grooveDepth = length('d', 'depth of the groove, radially', { example: '1.55 mm' });

/**
 * Minimum length of the land outside the groove of a retaining ring, by shear.
 *
 * @example shearEdgeMargin({ load: '3000 lbf', grooveDiameter: '2.122 in', yieldStrength: '35000 psi' }).in('in') // => 0.07714525315
 */
export const shearEdgeMargin = /* @__PURE__ */ formula({
  name: 'shearEdgeMargin',
  title: 'Minimum edge margin of a retaining-ring groove, by shear of the land',
  equation: 'z = 3·K·F / (π·D_g·S_y)',
  source,
  inputs,
  output: length('z', 'minimum length of the land'),
  si: ({ load, grooveDiameter, yieldStrength, factor = 2 }) =>
    (3 * factor * load) / (Math.PI * grooveDiameter * yieldStrength),
});

/**
 * Minimum length of the land outside the groove of a retaining ring, by bending.
 *
 * @example bendingEdgeMargin({ load: '3000 lbf', grooveDiameter: '2.122 in', grooveDepth: '0.061 in', yieldStrength: '35000 psi' }).in('in') // => 0.09701398
 */
export const bendingEdgeMargin = /* @__PURE__ */ formula({
  name: 'bendingEdgeMargin',
  title: 'Minimum edge margin of a retaining-ring groove, by bending of the land',
  equation: 'z = √(6·K·d·F / (π·D_g·S_y))',
  source,
  inputs: { ...inputs, grooveDepth },
  output: length('z', 'minimum length of the land'),
  si: ({ load, grooveDiameter, grooveDepth: depth, yieldStrength, factor = 2 }) =>
    Math.sqrt((6 * factor * depth * load) / (Math.PI * grooveDiameter * yieldStrength)),
});

/** @example tabulatedEdgeMargin({ grooveDepth: '0.061 in' }).in('in') // => 0.183 */
export const tabulatedEdgeMargin = /* @__PURE__ */ formula({
  name: 'tabulatedEdgeMargin',
  title: 'Edge margin of the retaining-ring tables',
  equation: 'z = 3·d',
  source: "Machinery's Handbook, 31st ed., page 1916, table 12: within 0.0035 in of every row but one",
  inputs: { grooveDepth },
  output: length('z', 'edge margin'),
  si: ({ grooveDepth: depth }) => 3 * depth,
});

/**
 * Bending stress in the land outside the groove of a retaining ring, as a cantilever with the thrust at the full depth of the
 * groove.
 *
 * @example landBendingStress({ load: '20 kN', grooveDiameter: '63 mm', grooveDepth: '1.5 mm', edgeMargin: '5 mm' }).in('MPa') // => 36.37827270
 */
export const landBendingStress = /* @__PURE__ */ formula({
  name: 'landBendingStress',
  title: 'Bending stress in the land outside a groove',
  equation: 'σ_l = 6·F·d / (π·D_g·z²)',
  source: `${source}; as a stress`,
  inputs: {
    load: inputs.load,
    grooveDiameter: inputs.grooveDiameter,
    grooveDepth,
    edgeMargin: length('z', 'length of the land from the groove to the end of the case', { example: '6 mm' }),
  },
  output: stress('σ_l', 'bending stress in the land'),
  si: ({ load, grooveDiameter, grooveDepth: depth, edgeMargin }) =>
    (6 * load * depth) / (Math.PI * grooveDiameter * edgeMargin ** 2),
});
