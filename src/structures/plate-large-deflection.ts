import { formula, fromSiValue, MeopError, procedure, type Quantity, ratio, unitOf } from '../units';
import { clampedDeflection } from './plate-formulas';
import { plateInputs } from './plate-inputs';
import { stretchedPlateSi } from './von-karman-plate';

const stretching = 0.488;
const scale = Math.sqrt(3 * stretching);

/**
 * Centre deflection of a clamped plate that stretches as it deflects, over its thickness. The exact solution for a rim that
 * cannot move, {@link clampedLargeDeflection}, is 0.3 % lower at 0.24, 1 % at 0.45 and 2 % at 0.76.
 *
 * @example stretchedPlateDeflection({ linearDeflection: 0.5 }).toFixed(4) // => '0.4543'
 */
export const stretchedPlateDeflection = /* @__PURE__ */ formula({
  name: 'stretchedPlateDeflection',
  title: 'Deflection of a clamped circular plate that stretches',
  equation: 'w_t = 2·sinh(ln(1.5·√(1.464)·w_l + √(1 + 3.294·w_l²)) / 3) / √(1.464)',
  source:
    'Timoshenko, Theory of Plates and Shells, large deflections of circular plates, root of w_l = w_t + 0.488·w_t³ (coefficient from memory)',
  inputs: {
    linearDeflection: ratio('w_l', 'deflection of linear theory over the thickness', {
      min: 0,
      example: 0.5,
    }),
  },
  output: ratio('w_t', 'deflection over the thickness'),
  valid: [
    ({ linearDeflection }) =>
      linearDeflection <= 1 ||
      'The cubic is compared with the exact solution up to a linear deflection of one thickness.',
  ],
  solve: { linearDeflection: (w) => w + stretching * w ** 3 },
  si: ({ linearDeflection }) => (2 / scale) * Math.sinh(Math.asinh(1.5 * scale * linearDeflection) / 3),
});

const { pressure, radius, thickness, elasticModulus, poissonRatio } = plateInputs;

/**
 * Centre deflection of a clamped plate whose rim can neither tilt nor move inward: bending and stretching together.
 *
 * @example clampedLargeDeflection({ pressure: '0.1 MPa', radius: '50 mm', thickness: '1 mm', elasticModulus: '68.9 GPa', poissonRatio: 0.33 }).in('mm').toFixed(3) // => '0.981'
 */
export const clampedLargeDeflection = /* @__PURE__ */ procedure({
  name: 'clampedLargeDeflection',
  title: 'Deflection of a clamped circular plate at any size of it',
  source: 'von Kármán equations of a circular plate, solved as power series in the radius',
  inputs: { pressure, radius, thickness, elasticModulus, poissonRatio },
  gives: 'the deflection at the centre, elastic',
  example: {
    pressure: '0.1 MPa',
    radius: '50 mm',
    thickness: '1 mm',
    elasticModulus: '68.9 GPa',
    poissonRatio: 0.33,
  },
  run: ({
    pressure: q,
    radius: a,
    thickness: t,
    elasticModulus: e,
    poissonRatio: nu,
  }): Quantity<'length'> => {
    const linear = clampedDeflection.si({
      pressure: q.si,
      radius: a.si,
      thickness: t.si,
      elasticModulus: e.si,
      poissonRatio: nu,
    });
    if (linear > 10 * t.si)
      throw new MeopError({
        code: 'out-of-domain',
        procedure: 'clampedLargeDeflection',
        path: 'pressure',
        given: q,
        expected: `low enough for a linear deflection of at most 10 thicknesses (here ${(linear / t.si).toPrecision(3)})`,
        remedy: 'Such a plate is a membrane. Use a thicker plate',
      });
    return fromSiValue<'length'>(t.si * stretchedPlateSi((64 * linear) / t.si, nu), 'length', unitOf('mm'));
  },
});
