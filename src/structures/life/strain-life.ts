import { formula, optional, ratio, stress } from '../../units';
import { tensileTest } from './life-inputs';

/** The constants of a metal from strain-controlled tests, which scatter from heat to heat. */
export const strainLifeConstants = {
  elasticModulus: tensileTest.elasticModulus,
  fatigueStrength: /* @__PURE__ */ stress('σ_f', 'fatigue strength coefficient', {
    above: 0,
    example: '650 MPa',
    worse: 'low',
  }),
  fatigueExponent: /* @__PURE__ */ ratio('b', 'fatigue strength exponent', {
    above: -1,
    below: 0,
    example: -0.1,
    worse: 'low',
  }),
  fatigueDuctility: /* @__PURE__ */ ratio('ε_f', 'fatigue ductility coefficient', {
    above: 0,
    example: 0.3,
    worse: 'low',
  }),
  ductilityExponent: /* @__PURE__ */ ratio('c', 'fatigue ductility exponent', {
    above: -2,
    below: 0,
    example: -0.65,
    worse: 'low',
  }),
};

const { elasticModulus, ...constants } = strainLifeConstants;
const cycles = /* @__PURE__ */ ratio('N', 'cycles to failure; half a cycle is one pull', {
  above: 0,
  example: 1000,
});
const source =
  'Coffin-Manson-Basquin relation, in the form of quadco.engineering, local strain approach; mean stress by Morrow (from memory)';

/**
 * Strain amplitude for a number of cycles: half of the strain range. `solveFor('cycles', …)` gives the life at an amplitude.
 *
 * @example strainLifeAmplitude({ cycles: 0.5, elasticModulus: '65 GPa', fatigueStrength: '650 MPa', fatigueExponent: -0.1, fatigueDuctility: 0.3, ductilityExponent: -0.65 }) // => 0.31
 */
export const strainLifeAmplitude = /* @__PURE__ */ formula({
  name: 'strainLifeAmplitude',
  title: 'Strain amplitude for a life',
  equation: 'ε_a = (σ_f − σ_m) / E·(2·N)^b + ε_f·(2·N)^c',
  source,
  inputs: {
    cycles,
    elasticModulus,
    ...constants,
    meanStress: optional(stress('σ_m', 'mean stress of the cycle', { min: 0, example: '50 MPa' }), 0),
  },
  output: ratio('ε_a', 'strain amplitude, half of the strain range'),
  requires: [
    ({ meanStress = 0, fatigueStrength }) =>
      meanStress < fatigueStrength || 'the mean stress is not below the fatigue strength coefficient',
  ],
  si: ({
    cycles: n,
    elasticModulus: e,
    fatigueStrength,
    fatigueExponent,
    fatigueDuctility,
    ductilityExponent,
    meanStress = 0,
  }) =>
    ((fatigueStrength - meanStress) / e) * (2 * n) ** fatigueExponent +
    fatigueDuctility * (2 * n) ** ductilityExponent,
});

/**
 * Maximum stress times strain amplitude for a number of cycles, with the mean stress by Smith, Watson and Topper.
 *
 * @example smithWatsonTopper({ cycles: 0.5, elasticModulus: '50 GPa', fatigueStrength: '500 MPa', fatigueExponent: -0.1, fatigueDuctility: 0.3, ductilityExponent: -0.65 }).in('MPa') // => 155
 */
export const smithWatsonTopper = /* @__PURE__ */ formula({
  name: 'smithWatsonTopper',
  title: 'Maximum stress times strain amplitude for a life',
  equation: 'P = σ_f² / E·(2·N)^(2·b) + σ_f·ε_f·(2·N)^(b + c)',
  source:
    'Smith, Watson and Topper, A stress-strain function for the fatigue of metals, Journal of Materials 5 (1970) (from memory)',
  inputs: { cycles, elasticModulus, ...constants },
  output: stress('P', 'maximum stress times strain amplitude'),
  si: ({
    cycles: n,
    elasticModulus: e,
    fatigueStrength,
    fatigueExponent,
    fatigueDuctility,
    ductilityExponent,
  }) =>
    (fatigueStrength ** 2 / e) * (2 * n) ** (2 * fatigueExponent) +
    fatigueStrength * fatigueDuctility * (2 * n) ** (fatigueExponent + ductilityExponent),
});
