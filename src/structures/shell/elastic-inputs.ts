import { ratio, stress } from '../../units';

// What every elastic calculation of a wall takes of its material.

export const elasticModulus = /* @__PURE__ */ stress('E', 'elastic modulus', { above: 0, example: '69 GPa' });

export const poissonRatio = /* @__PURE__ */ ratio('ν', "Poisson's ratio", {
  min: 0,
  max: 0.5,
  example: 0.33,
});
