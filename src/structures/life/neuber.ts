import { formula, ratio, stress } from '../../units';
import { tensileTest } from './life-inputs';

/** The stress-strain curve of a metal: stress at a plastic strain of 1, and the exponent. */
export const stressStrainCurve = {
  elasticModulus: tensileTest.elasticModulus,
  strengthCoefficient: /* @__PURE__ */ stress(
    'K',
    'strength coefficient: the stress at a plastic strain of 1',
    {
      above: 0,
      example: '450 MPa',
      worse: 'low',
    },
  ),
  hardeningExponent: /* @__PURE__ */ ratio('n', 'strain-hardening exponent', {
    above: 0,
    max: 1,
    example: 0.08,
    worse: 'neither',
  }),
};

const localStress = /* @__PURE__ */ stress('σ', 'stress at the root of the notch', {
  above: 0,
  example: '300 MPa',
});

/** @example rambergOsgoodStrain({ stress: '450 MPa', elasticModulus: '45 GPa', strengthCoefficient: '450 MPa', hardeningExponent: 0.1 }) // => 1.01 */
export const rambergOsgoodStrain = /* @__PURE__ */ formula({
  name: 'rambergOsgoodStrain',
  title: 'Strain of a metal that hardens, Ramberg-Osgood',
  equation: 'ε = σ / E + (σ / K)^(1 / n)',
  source:
    'Ramberg and Osgood, NACA TN 902 (1943), in the form with the strength coefficient (quadco.engineering, local strain approach)',
  inputs: { stress: { ...localStress, meaning: 'stress' }, ...stressStrainCurve },
  output: ratio('ε', 'total strain'),
  si: ({ stress: sigma, elasticModulus, strengthCoefficient, hardeningExponent }) =>
    sigma / elasticModulus + (sigma / strengthCoefficient) ** (1 / hardeningExponent),
});

/**
 * Nominal elastic stress that gives a stress at the root of a notch: stress times strain there is (K_t·S)²/E.
 * `neuberNominalStress.solveFor('localStress', …)` gives the stress at the root for a nominal stress.
 *
 * @example neuberNominalStress({ localStress: '300 MPa', concentration: 3, elasticModulus: '70 GPa', strengthCoefficient: '100 GPa', hardeningExponent: 0.1 }).in('MPa') // => 100
 */
export const neuberNominalStress = /* @__PURE__ */ formula({
  name: 'neuberNominalStress',
  title: "Nominal stress for a stress at a notch, Neuber's rule",
  equation: 'S = √(σ² + E·σ·(σ / K)^(1 / n)) / K_t',
  source:
    'Neuber, Journal of Applied Mechanics 28 (1961), with the curve of Ramberg and Osgood; valid only while the nominal stress is elastic (quadco.engineering, local strain approach)',
  inputs: {
    localStress,
    concentration: ratio('K_t', 'elastic stress concentration', { min: 1, example: 3 }),
    ...stressStrainCurve,
  },
  output: stress('S', 'nominal stress, elastic'),
  si: ({ localStress: sigma, concentration, elasticModulus, strengthCoefficient, hardeningExponent }) =>
    Math.sqrt(
      sigma * sigma + elasticModulus * sigma * (sigma / strengthCoefficient) ** (1 / hardeningExponent),
    ) / concentration,
});
