import { formula, ratio, stress } from '../../units';
import { cyclesToCrack, fractureStrain, tensileTest } from './life-inputs';

const inputs = { ...tensileTest, ductility: fractureStrain, cycles: cyclesToCrack };

/**
 * Strain range for a number of cycles to failure, from a tensile test alone; fully reversed.
 *
 * @example universalSlopes({ ultimateStrength: '345 MPa', elasticModulus: '69 GPa', ductility: 1, cycles: 1 }) // => 1.0175
 */
export const universalSlopes = /* @__PURE__ */ formula({
  name: 'universalSlopes',
  title: 'Strain range for a life, method of universal slopes',
  equation: 'Δε = 3.5·S_u / E·N^(−0.12) + D^0.6·N^(−0.6)',
  source: 'S. S. Manson, Fatigue: a complex subject, Experimental Mechanics 5 (1965) (from memory)',
  inputs,
  output: ratio('Δε', 'total strain range'),
  si: ({ ultimateStrength, elasticModulus, ductility, cycles }) =>
    ((3.5 * ultimateStrength) / elasticModulus) * cycles ** -0.12 + ductility ** 0.6 * cycles ** -0.6,
});

/**
 * Maximum stress times strain amplitude for a number of cycles: the universal slopes with the mean stress by Smith,
 * Watson and Topper. Pressure that cycles from zero has a mean stress, and half of its range as amplitude.
 *
 * @example meanStressSlopes({ ultimateStrength: '200 MPa', elasticModulus: '70 GPa', ductility: 1, cycles: 1 }).in('MPa') // => 176.75
 */
export const meanStressSlopes = /* @__PURE__ */ formula({
  name: 'meanStressSlopes',
  title: 'Maximum stress times strain amplitude for a life, universal slopes with mean stress',
  equation: 'P = (1.75·S_u)² / E·N^(−0.24) + 0.875·S_u·D^0.6·N^(−0.72)',
  source: `Smith, Watson and Topper, A stress-strain function for the fatigue of metals, Journal of Materials 5 (1970) (from memory), on half of the strain range of ${universalSlopes.source}`,
  inputs,
  output: stress('P', 'maximum stress times strain amplitude'),
  si: ({ ultimateStrength: su, elasticModulus, ductility, cycles }) =>
    ((1.75 * su) ** 2 / elasticModulus) * cycles ** -0.24 + 0.875 * su * ductility ** 0.6 * cycles ** -0.72,
});
