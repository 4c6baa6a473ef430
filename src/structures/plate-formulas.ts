import { formula, length, stress } from '../units';
import { plateInputs } from './plate-inputs';

const { pressure, radius, thickness, poissonRatio, elasticModulus } = plateInputs;
const example = { pressure: '1000 psi', radius: '1.5 in', thickness: '0.375 in' } as const;
const source = (which: string): string =>
  `Roark's Formulas for Stress and Strain, circular plates of constant thickness, uniform load, ${which}`;

interface Plate {
  readonly pressure: number;
  readonly radius: number;
  readonly thickness: number;
}
const thin = ({ radius: a, thickness: t }: Plate): true | string =>
  a / t >= 4 ||
  'The plate is thick (a/t < 4). The thin-plate deflection is too low, by 28 % (clamped) or 7 % (supported) at a/t = 4.';
const load = ({ pressure: q, radius: a, thickness: t }: Plate): number => q * (a / t) ** 2;

/**
 * Radial bending stress at the clamped edge of a circular plate, where it is maximum.
 *
 * @example clampedEdgeStress({ pressure: '1000 psi', radius: '1.5 in', thickness: '0.375 in' }).in('psi') // => 12000
 */
export const clampedEdgeStress = /* @__PURE__ */ formula({
  name: 'clampedEdgeStress',
  title: 'Edge stress of a clamped circular plate',
  equation: 'σ_e = 3·q·a² / (4·t²)',
  source: source('clamped edge'),
  inputs: { pressure, radius, thickness },
  output: stress('σ_e', 'radial bending stress at the edge'),
  example,
  si: (plate) => 0.75 * load(plate),
});

/** @example clampedCentreStress({ pressure: '1000 psi', radius: '1.5 in', thickness: '0.375 in', poissonRatio: 0.33 }).in('psi') // => 7980 */
export const clampedCentreStress = /* @__PURE__ */ formula({
  name: 'clampedCentreStress',
  title: 'Centre stress of a clamped circular plate',
  equation: 'σ_c = 3·(1 + ν)·q·a² / (8·t²)',
  source: source('clamped edge'),
  inputs: { pressure, radius, thickness, poissonRatio },
  output: stress('σ_c', 'bending stress at the centre'),
  example: { ...example, poissonRatio: 0.33 },
  si: ({ poissonRatio: nu, ...plate }) => (3 / 8) * (1 + nu) * load(plate),
});

/** @example clampedDeflection({ pressure: '1000 psi', radius: '1.5 in', thickness: '0.375 in', elasticModulus: '10 Msi', poissonRatio: 0.33 }).in('in') // => 0.00160398 */
export const clampedDeflection = /* @__PURE__ */ formula({
  name: 'clampedDeflection',
  title: 'Centre deflection of a clamped circular plate',
  equation: 'w = 3·q·a⁴·(1 − ν²) / (16·E·t³)',
  source: source('clamped edge'),
  inputs: { pressure, radius, thickness, elasticModulus, poissonRatio },
  output: length('w', 'deflection at the centre', {}),
  example: { ...example, elasticModulus: '10 Msi', poissonRatio: 0.33 },
  valid: [thin],
  si: ({ elasticModulus: e, poissonRatio: nu, ...plate }) =>
    ((3 / 16) * load(plate) * plate.radius ** 2 * (1 - nu * nu)) / (e * plate.thickness),
});

/** @example supportedCentreStress({ pressure: '1000 psi', radius: '1.5 in', thickness: '0.375 in', poissonRatio: 0.33 }).in('psi') // => 19980 */
export const supportedCentreStress = /* @__PURE__ */ formula({
  name: 'supportedCentreStress',
  title: 'Centre stress of a simply supported circular plate',
  equation: 'σ_c = 3·(3 + ν)·q·a² / (8·t²)',
  source: source('simply supported edge'),
  inputs: { pressure, radius, thickness, poissonRatio },
  output: stress('σ_c', 'bending stress at the centre'),
  example: { ...example, poissonRatio: 0.33 },
  si: ({ poissonRatio: nu, ...plate }) => (3 / 8) * (3 + nu) * load(plate),
});

/** @example supportedDeflection({ pressure: '1000 psi', radius: '1.5 in', thickness: '0.375 in', elasticModulus: '10 Msi', poissonRatio: 0.33 }).in('in').toFixed(7) // => '0.0064280' */
export const supportedDeflection = /* @__PURE__ */ formula({
  name: 'supportedDeflection',
  title: 'Centre deflection of a simply supported circular plate',
  equation: 'w = 3·q·a⁴·(1 − ν)·(5 + ν) / (16·E·t³)',
  source: source('simply supported edge'),
  inputs: { pressure, radius, thickness, elasticModulus, poissonRatio },
  output: length('w', 'deflection at the centre', {}),
  example: { ...example, elasticModulus: '10 Msi', poissonRatio: 0.33 },
  valid: [thin],
  si: ({ elasticModulus: e, poissonRatio: nu, ...plate }) =>
    ((3 / 16) * load(plate) * plate.radius ** 2 * (1 - nu) * (5 + nu)) / (e * plate.thickness),
});

/**
 * Shear stress where a closure would punch through its support: the pressure's force over the cylinder cut.
 *
 * @example plugShearStress({ pressure: '1000 psi', diameter: '3 in', thickness: '0.375 in' }).in('psi') // => 2000
 */
export const plugShearStress = /* @__PURE__ */ formula({
  name: 'plugShearStress',
  title: 'Shear of a closure through its support',
  equation: 'τ = q·D / (4·t)',
  source: 'Statics: force q·π·D²/4 on the cylinder π·D·t (engineering practice, no published source)',
  inputs: {
    pressure,
    diameter: length('D', 'diameter of the cylinder that would shear'),
    thickness: length('t', 'thickness there'),
  },
  output: stress('τ', 'mean shear stress'),
  example: { pressure: '1000 psi', diameter: '3 in', thickness: '0.375 in' },
  si: ({ pressure: q, diameter, thickness: t }) => (q * diameter) / (4 * t),
});
