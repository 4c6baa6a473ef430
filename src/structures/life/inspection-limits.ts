import { formula, length, ratio, stress } from '../../units';

/** @example holeElongationLimit({ holeDiameter: '5 mm' }).in('mm') // => 0.1 */
export const holeElongationLimit = /* @__PURE__ */ formula({
  name: 'holeElongationLimit',
  title: 'Maximum permanent elongation of a bolt hole',
  equation: 'Δd = 0.02·d',
  source:
    'bearing yield is an offset of 2 % of the hole diameter, as in MIL-HDBK-5 (from memory); a longer hole has reached it',
  inputs: { holeDiameter: length('d', 'diameter of the hole as drilled', { example: '5.3 mm' }) },
  output: length('Δd', 'maximum elongation'),
  si: ({ holeDiameter }) => 0.02 * holeDiameter,
});

/** @example boreGrowthLimit({ bore: '50 mm' }).in('mm') // => 0.05 */
export const boreGrowthLimit = /* @__PURE__ */ formula({
  name: 'boreGrowthLimit',
  title: 'Maximum permanent growth of the bore',
  equation: 'ΔD = 0.001·D',
  source: 'engineering practice, no published source: half of the 0.2 % set that defines yield',
  inputs: { bore: length('D', 'bore of the case as made', { example: '51 mm' }) },
  output: length('ΔD', 'maximum growth of the diameter'),
  si: ({ bore }) => 0.001 * bore,
});

/** @example ovalityLimit({ bore: '50 mm' }).in('mm') // => 0.05 */
export const ovalityLimit = /* @__PURE__ */ formula({
  name: 'ovalityLimit',
  title: 'Maximum change of the ovality of the bore',
  equation: 'ΔD = 0.001·D',
  source: 'engineering practice, no published source; the gap of a seal can allow less',
  inputs: { bore: boreGrowthLimit.inputs.bore },
  output: length('ΔD', 'maximum change of the difference between the largest and the smallest diameter'),
  si: ({ bore }) => 0.001 * bore,
});

/**
 * Minimum hardness: strength falls as hardness does, so that metal of typical hardness has its minimum strength here.
 *
 * @example minimumHardness({ hardness: 100, typicalStrength: '300 MPa', minimumStrength: '270 MPa' }) // => 90
 */
export const minimumHardness = /* @__PURE__ */ formula({
  name: 'minimumHardness',
  title: 'Minimum Brinell hardness of a metal that has been hot',
  equation: 'H = H_0·S_min / S_typ',
  source:
    'engineering practice, no published source: a drop of 10 % of the hardness is a drop of about 10 % of the strength',
  inputs: {
    hardness: ratio('H_0', 'Brinell hardness as new', { above: 0, example: 95 }),
    minimumStrength: stress('S_min', 'minimum strength that the review uses', {
      above: 0,
      example: '290 MPa',
    }),
    typicalStrength: stress('S_typ', 'typical strength of the metal as new', {
      above: 0,
      example: '310 MPa',
    }),
  },
  output: ratio('H', 'minimum Brinell hardness'),
  si: ({ hardness, minimumStrength, typicalStrength }) => (hardness * minimumStrength) / typicalStrength,
});

/** @example grooveBurrLimit({ grooveDepth: '1 mm' }).in('mm') // => 0.05 */
export const grooveBurrLimit = /* @__PURE__ */ formula({
  name: 'grooveBurrLimit',
  title: 'Maximum burr or roll-over of the lip of a ring groove',
  equation: 'b = 0.05·d',
  source: 'engineering practice, no published source',
  inputs: { grooveDepth: length('d', 'depth of the groove', { example: '1.2 mm' }) },
  output: length('b', 'maximum height of the burr'),
  si: ({ grooveDepth }) => 0.05 * grooveDepth,
});

/** @example screwStretchLimit({ grip: '10 mm' }).in('mm') // => 0.02 */
export const screwStretchLimit = /* @__PURE__ */ formula({
  name: 'screwStretchLimit',
  title: 'Maximum permanent lengthening of a screw',
  equation: 'ΔL = 0.002·L',
  source: 'engineering practice, no published source: the 0.2 % set that defines yield',
  inputs: {
    grip: length('L', 'grip: length of the screw between head and thread in use', { example: '10 mm' }),
  },
  output: length('ΔL', 'maximum lengthening'),
  si: ({ grip }) => 0.002 * grip,
});
