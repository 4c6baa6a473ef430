import { force, formula, length, optional, ratio, stress } from '../../units';

/**
 * Squeeze of an O-ring in its gland, as a fraction of the cross section. The depth includes half of the diametral
 * clearance. Static radial seals require 15 % to 30 %.
 *
 * @example glandSqueeze({ crossSection: '0.139 in', glandDepth: '0.112 in' }) // => 0.1942446043
 */
export const glandSqueeze = /* @__PURE__ */ formula({
  name: 'glandSqueeze',
  title: 'Squeeze of an O-ring',
  equation: 'C = (d − h) / d',
  source: 'Apple Rubber, Seal Design Guide, static gland table',
  inputs: {
    crossSection: length('d', 'cross section of the ring as it lies in the groove'),
    glandDepth: length('h', 'depth of the gland: groove plus half of the diametral clearance'),
  },
  output: ratio('C', 'squeeze'),
  example: { crossSection: '0.139 in', glandDepth: '0.112 in' },
  valid: [
    ({ crossSection, glandDepth }) => glandDepth < crossSection || 'The ring is not squeezed and will leak.',
  ],
  si: ({ crossSection, glandDepth }) => (crossSection - glandDepth) / crossSection,
});

/**
 * Gland fill: volume of the ring/volume of the gland. About 75 % nominal, at most 85 % in the worst case.
 *
 * @example glandFill({ crossSection: '0.139 in', glandDepth: '0.112 in', grooveWidth: '0.19 in' }) // => 0.7130957667
 */
export const glandFill = /* @__PURE__ */ formula({
  name: 'glandFill',
  title: 'Fill of an O-ring gland',
  equation: 'V = (π / 4)·d² / (h·w)',
  source:
    'Definition; limits 75 % nominal and 85 % in the worst case (engineering practice, no published source)',
  inputs: {
    crossSection: length('d', 'cross section of the ring as it lies in the groove'),
    glandDepth: length('h', 'depth of the gland: groove plus half of the diametral clearance'),
    grooveWidth: length('w', 'width of the groove available to the ring, without backup rings'),
  },
  output: ratio('V', 'ring volume/gland volume'),
  example: { crossSection: '0.139 in', glandDepth: '0.112 in', grooveWidth: '0.190 in' },
  si: ({ crossSection, glandDepth, grooveWidth }) =>
    (Math.PI * crossSection * crossSection) / (4 * glandDepth * grooveWidth),
});

/**
 * Stretch of an O-ring over the bottom of its groove; 1 % to 5 % keeps it seated without thinning it much.
 *
 * @example oRingStretch({ insideDiameter: '2.234 in', grooveDiameter: '2.278 in' }) // => 0.01969561325
 */
export const oRingStretch = /* @__PURE__ */ formula({
  name: 'oRingStretch',
  title: 'Stretch of an O-ring over its groove',
  equation: 'S = (D − D_i) / D_i',
  source: 'Definition; 5 % limit for grooves on a closure: Parker Hannifin, O-ring stretch article',
  inputs: {
    insideDiameter: length('D_i', 'inside diameter of the free ring'),
    grooveDiameter: length('D', 'diameter of the bottom of the groove'),
  },
  output: ratio('S', 'stretch; negative where the ring has clearance'),
  example: { insideDiameter: '2.234 in', grooveDiameter: '2.278 in' },
  valid: [
    ({ insideDiameter, grooveDiameter }) =>
      grooveDiameter / insideDiameter >= 0.95 ||
      'The ring is more than 5 % larger than the groove and does not lie in it. Select a smaller ring.',
  ],
  si: ({ insideDiameter, grooveDiameter }) => (grooveDiameter - insideDiameter) / insideDiameter,
});

/**
 * Cross section of an O-ring once stretched: rubber keeps its volume, so that the section thins.
 *
 * @example stretchedCrossSection({ crossSection: '0.139 in', insideDiameter: '2.234 in', grooveDiameter: '2.278 in' }).in('in') // => 0.1376510488
 */
export const stretchedCrossSection = /* @__PURE__ */ formula({
  name: 'stretchedCrossSection',
  title: 'Cross section of a stretched O-ring',
  equation: 'd_s = d·√(D_i / D)',
  source: 'Constant volume of the ring: Apple Rubber, Seal Design Guide',
  inputs: {
    crossSection: length('d', 'cross section of the free ring'),
    insideDiameter: length('D_i', 'inside diameter of the free ring'),
    grooveDiameter: length('D', 'diameter of the bottom of the groove'),
  },
  output: length('d_s', 'cross section in the groove'),
  example: { crossSection: '0.139 in', insideDiameter: '2.234 in', grooveDiameter: '2.278 in' },
  valid: [
    ({ insideDiameter, grooveDiameter }) =>
      grooveDiameter >= insideDiameter ||
      'A ring with clearance on its groove keeps its free cross section. Use that instead.',
  ],
  si: ({ crossSection, insideDiameter, grooveDiameter }) =>
    crossSection * Math.sqrt(insideDiameter / grooveDiameter),
});

/**
 * Young's modulus of a rubber from its Shore A hardness; within some 20 % (an estimate).
 *
 * @example rubberModulus({ hardness: 70 }).in('MPa') // => 5.520506782
 */
export const rubberModulus = /* @__PURE__ */ formula({
  name: 'rubberModulus',
  title: "Young's modulus of a rubber from its hardness",
  equation: 'E = E_1·0.0981·(56 + 7.62336·H) / (0.137505·(254 − 2.54·H))',
  source:
    'Gent, On the relation between indentation hardness and Young’s modulus, Rubber Chem. Technol. 31 (1958) 896 (from memory)',
  inputs: {
    hardness: ratio('H', 'hardness, Shore A', { above: 0, below: 100 }),
    scale: optional(stress('E_1', 'one megapascal, in which the fit is written', { above: 0 }), 1e6),
  },
  output: stress('E', "Young's modulus"),
  example: { hardness: 70 },
  valid: [
    ({ hardness }) => (hardness >= 20 && hardness <= 80) || 'The relation is fitted from 20 to 80 Shore A.',
  ],
  si: ({ hardness, scale = 1e6 }) =>
    (scale * 0.0981 * (56 + 7.62336 * hardness)) / (0.137505 * (254 - 2.54 * hardness)),
});

/**
 * Estimated force that squeezes a whole O-ring, a measure of the force to insert the closure.
 *
 * @example oRingCompressionForce({ ringDiameter: '60 mm', crossSection: '3.5 mm', modulus: '5 MPa', squeeze: 0.2 }).in('N') // => 379.3585247
 */
export const oRingCompressionForce = /* @__PURE__ */ formula({
  name: 'oRingCompressionForce',
  title: 'Force that squeezes an O-ring',
  equation: 'F = π·D·d·E·(1.25·C·√C + 50·C⁶)',
  source:
    'Lindley, Compression characteristics of laterally unrestrained rubber O-rings, J. IRI 1 (1967) 209 (from memory)',
  inputs: {
    ringDiameter: length('D', 'mean diameter of the ring'),
    crossSection: length('d', 'cross section of the ring'),
    modulus: stress('E', "Young's modulus of the rubber", { above: 0 }),
    squeeze: ratio('C', 'squeeze', { min: 0, below: 1 }),
  },
  output: force('F', 'force, summed round the ring'),
  example: { ringDiameter: '60 mm', crossSection: '3.53 mm', modulus: '5.5 MPa', squeeze: 0.2 },
  valid: [({ squeeze }) => squeeze <= 0.4 || 'The squeeze exceeds the 40 % of the tests.'],
  si: ({ ringDiameter, crossSection, modulus, squeeze }) =>
    Math.PI *
    ringDiameter *
    crossSection *
    modulus *
    (1.25 * squeeze * Math.sqrt(squeeze) + 50 * squeeze ** 6),
});
