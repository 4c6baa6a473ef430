import { length, pressureDifference, ratio, stress } from '../units';

/** The inputs of a flat circular plate under pressure. */
export const plateInputs = {
  pressure: pressureDifference('q', 'pressure difference across the plate', { example: '1000 psi' }),
  radius: length('a', 'radius of the supported edge: bolt circle, step or seal, whichever is outermost', {
    example: '1.5 in',
  }),
  thickness: length('t', 'thickness of the plate', { example: '0.375 in' }),
  poissonRatio: ratio('ν', "Poisson's ratio", { min: 0, max: 0.5, example: 0.33 }),
  elasticModulus: stress('E', 'elastic modulus', { above: 0, example: '68.9 GPa' }),
  holeRadius: length('b', 'radius of a plugged central hole, such as the major radius of a tapped port', {
    example: '0.25 in',
  }),
};
