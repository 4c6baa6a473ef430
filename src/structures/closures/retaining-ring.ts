import { force, formula, length, optional, ratio, stress } from '../../units';

const contactFactor = optional(
  ratio('C_f', 'part of the circumference on which the ring bears', { above: 0, max: 1, example: 1 }),
  1,
);

/**
 * Bearing stress of a retaining ring on the wall of its groove: the thrust on the ring-shaped area of the groove's depth.
 *
 * @example grooveBearingStress({ load: '20 kN', boreDiameter: '60 mm', grooveDepth: '1.5 mm' }).in('MPa') // => 70.73553026
 */
export const grooveBearingStress = /* @__PURE__ */ formula({
  name: 'grooveBearingStress',
  title: 'Bearing stress in the groove of a retaining ring',
  equation: 'σ_g = F / (C_f·π·D·h)',
  source:
    "Machinery's Handbook, 31st ed., retaining rings, equations (2) to (4): thrust = π·D·h·S_y / factor, times the part of the groove in contact",
  inputs: {
    load: force('F', 'thrust on the ring'),
    boreDiameter: length('D', 'bore that the groove is cut in'),
    grooveDepth: length('h', 'depth of the groove, radially'),
    contactFactor,
  },
  output: stress('σ_g', 'bearing stress'),
  example: { load: '20 kN', boreDiameter: '60 mm', grooveDepth: '1.5 mm' },
  si: ({ load, boreDiameter, grooveDepth, contactFactor: contact = 1 }) =>
    load / (contact * Math.PI * boreDiameter * grooveDepth),
});

/** @example ringShearStress({ load: '20 kN', boreDiameter: '60 mm', ringThickness: '2 mm' }).in('MPa') // => 53.05164770 */
export const ringShearStress = /* @__PURE__ */ formula({
  name: 'ringShearStress',
  title: 'Shear stress in a retaining ring',
  equation: 'τ_r = F / (C_f·π·D·s)',
  source:
    "Machinery's Handbook, 31st ed., retaining rings, equations (2) to (4): thrust = π·D·s·S_s / factor, times the part of the groove in contact",
  inputs: {
    load: force('F', 'thrust on the ring'),
    boreDiameter: length('D', 'bore that the ring shears along'),
    ringThickness: length('s', 'thickness of the ring, axially'),
    contactFactor,
  },
  output: stress('τ_r', 'shear stress'),
  example: { load: '20 kN', boreDiameter: '60 mm', ringThickness: '2 mm' },
  si: ({ load, boreDiameter, ringThickness, contactFactor: contact = 1 }) =>
    load / (contact * Math.PI * boreDiameter * ringThickness),
});

/**
 * Shear stress in the land between the groove and the end of the case, which a ring shears off as one piece.
 *
 * @example grooveLandShearStress({ load: '20 kN', grooveDiameter: '63 mm', edgeMargin: '5 mm' }).in('MPa') // => 20.21015150
 */
export const grooveLandShearStress = /* @__PURE__ */ formula({
  name: 'grooveLandShearStress',
  title: 'Shear stress in the land outside a groove',
  equation: 'τ_l = F / (π·D_g·z)',
  source: 'Statics: shear of the land, thrust = π·D·z·τ / factor (from memory)',
  inputs: {
    load: force('F', 'thrust on the ring'),
    grooveDiameter: length('D_g', 'diameter of the bottom of the groove, where the land shears'),
    edgeMargin: length('z', 'from the groove to the end of the case'),
  },
  output: stress('τ_l', 'shear stress'),
  example: { load: '20 kN', grooveDiameter: '63 mm', edgeMargin: '5 mm' },
  valid: [
    ({ grooveDiameter, edgeMargin }) =>
      edgeMargin <= grooveDiameter / 4 ||
      'a long land does not share its shear evenly: the stress is greater at the groove',
  ],
  si: ({ load, grooveDiameter, edgeMargin }) => load / (Math.PI * grooveDiameter * edgeMargin),
});
