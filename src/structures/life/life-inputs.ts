import { ratio, stress } from '../../units';

/** Strengths of a metal that its tensile test gives, as the estimates of life take them. */
export const tensileTest = {
  ultimateStrength: /* @__PURE__ */ stress('S_u', 'ultimate tensile strength', {
    above: 0,
    example: '290 MPa',
  }),
  elasticModulus: /* @__PURE__ */ stress('E', 'elastic modulus', { above: 0, example: '68.9 GPa' }),
};

/** The strain at which a metal parts. */
export const fractureStrain = /* @__PURE__ */ ratio('D', 'true strain at fracture', {
  above: 0,
  example: 0.1,
});

/** Cycles until a crack. */
export const cyclesToCrack = /* @__PURE__ */ ratio('N', 'cycles to failure', { min: 1, example: 100 });
