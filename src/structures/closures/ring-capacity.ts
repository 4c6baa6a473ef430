import { force, formula, length, optional, ratio, stress } from '../../units';

const contact = optional(
  ratio('C_f', 'contact factor of the ring in its groove, stated by its manufacturer', {
    above: 0,
    example: 1,
  }),
  1,
);
const boreDiameter = length('D', 'bore that the groove is cut in', { example: '50 mm' });
const grooveDepth = length('d', 'depth of the groove, radially', { example: '0.86 mm' });

/**
 * Thrust at which the wall of a groove yields under a retaining ring, divided by the factor of the ring tables.
 *
 * @example grooveYieldCapacity({ boreDiameter: '50 mm', grooveDepth: '0.86 mm', yieldStrength: '310 MPa' }).in('kN') // => 20.93871504
 */
export const grooveYieldCapacity = /* @__PURE__ */ formula({
  name: 'grooveYieldCapacity',
  title: 'Thrust capacity of the groove of a retaining ring, ring tables',
  equation: 'P_g = C_f·π·D·d·S_y / K',
  source:
    "Machinery's Handbook, 31st ed., retaining rings, equations (2) to (4); contact factor as on manufacturers' data sheets",
  inputs: {
    boreDiameter,
    grooveDepth,
    yieldStrength: stress('S_y', 'yield strength of the metal of the groove', {
      above: 0,
      example: '310 MPa',
    }),
    contactFactor: contact,
    factor: optional(
      ratio('K', 'factor of safety of the ring tables on groove yield', { min: 1, example: 2 }),
      2,
    ),
  },
  output: force('P_g', 'allowable thrust of the groove'),
  si: ({ boreDiameter: bore, grooveDepth: depth, yieldStrength, contactFactor = 1, factor = 2 }) =>
    (contactFactor * Math.PI * bore * depth * yieldStrength) / factor,
});

/**
 * Thrust at which a retaining ring shears, divided by the factor of the ring tables.
 *
 * @example ringShearCapacity({ boreDiameter: '50 mm', ringThickness: '1.25 mm', shearStrength: '870 MPa' }).in('kN') // => 56.94136685
 */
export const ringShearCapacity = /* @__PURE__ */ formula({
  name: 'ringShearCapacity',
  title: 'Thrust capacity of a retaining ring in shear, ring tables',
  equation: 'P_r = C_f·π·D·s·S_s / K',
  source:
    "Machinery's Handbook, 31st ed., retaining rings, equations (2) to (4); contact factor as on manufacturers' data sheets",
  inputs: {
    boreDiameter,
    ringThickness: length('s', 'thickness of the ring, axially', { example: '1.25 mm' }),
    shearStrength: stress('S_s', 'shear strength of the ring', { above: 0, example: '870 MPa' }),
    contactFactor: contact,
    factor: optional(ratio('K', 'factor of safety on ring shear, 3 or 4', { min: 1, example: 3 }), 3),
  },
  output: force('P_r', 'allowable thrust of the ring'),
  si: ({ boreDiameter: bore, ringThickness, shearStrength, contactFactor = 1, factor = 3 }) =>
    (contactFactor * Math.PI * bore * ringThickness * shearStrength) / factor,
});

/**
 * Thrust capacity of a groove as the tables of DIN 472 state it for a yield strength of 200 MPa: proportional to the yield
 * strength, for a land of at least the edge margin.
 *
 * @example din472GrooveCapacity({ boreDiameter: '18 mm', grooveDiameter: '19 mm' }).in('kN') // => 4.843288674
 */
export const din472GrooveCapacity = /* @__PURE__ */ formula({
  name: 'din472GrooveCapacity',
  title: 'Thrust capacity of the groove of a DIN 472 ring',
  equation: 'F_N = R_eL·π / 4·(d_2² − d_1²) / 1.2',
  source:
    'Rebuilt from eleven rows of a DIN 472 table of a circlip manufacturer, each within its rounding (DIN 472 not opened)',
  inputs: {
    boreDiameter: length('d_1', 'bore that the groove is cut in', { example: '18 mm' }),
    grooveDiameter: length('d_2', 'diameter of the groove', { example: '19 mm' }),
    yieldStrength: optional(
      stress('R_eL', 'yield strength of the metal of the groove', { above: 0, example: '200 MPa' }),
      200e6,
    ),
  },
  output: force('F_N', 'thrust capacity of the groove'),
  requires: [
    ({ boreDiameter: bore, grooveDiameter }) =>
      grooveDiameter > bore || 'the diameter of the groove does not exceed the bore',
  ],
  si: ({ boreDiameter: bore, grooveDiameter, yieldStrength = 200e6 }) =>
    (yieldStrength * (Math.PI / 4) * (grooveDiameter ** 2 - bore ** 2)) / 1.2,
});
