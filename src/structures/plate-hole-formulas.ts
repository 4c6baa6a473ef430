import { formula, stress } from '../units';
import { plateInputs } from './plate-inputs';

// A central hole that is plugged: the fitting carries its share of the pressure into the rim of the hole as shear, but no
// bending. Superposing on the solid plate the moment that frees the rim gives these closed forms; with b → 0 they give twice
// the centre stress, the factor of a small hole in equal biaxial bending. A boss or the fitting itself makes it less.

const { pressure, radius, thickness, holeRadius, poissonRatio } = plateInputs;
const inputs = { pressure, radius, thickness, holeRadius, poissonRatio };
const example = {
  pressure: '1000 psi',
  radius: '1.5 in',
  thickness: '0.375 in',
  holeRadius: '0.25 in',
  poissonRatio: 0.33,
} as const;
const source =
  'Plate theory, axisymmetric bending with the rim of the hole free of moment (derived from Timoshenko, Theory of Plates and Shells, circular plates)';
const holed = ({
  radius: a,
  holeRadius: b,
}: {
  readonly radius: number;
  readonly holeRadius: number;
}): true | string => b < a || 'the hole must be smaller than the plate';

/**
 * Hoop bending stress at a plugged central hole of a simply supported circular plate: an upper bound for a tapped port.
 *
 * @example supportedHoleStress({ pressure: '1000 psi', radius: '1.5 in', thickness: '0.375 in', holeRadius: '0.25 in', poissonRatio: 0.33 }).in('psi') // => 40183.33333
 */
export const supportedHoleStress = /* @__PURE__ */ formula({
  name: 'supportedHoleStress',
  title: 'Stress at a plugged central hole, simply supported plate',
  equation: 'σ_t = 3·q·((3 + ν)·a² + (1 − ν)·b²) / (4·t²)',
  source,
  inputs,
  output: stress('σ_t', 'hoop bending stress at the rim of the hole'),
  example,
  requires: [holed],
  si: ({ pressure: q, radius: a, thickness: t, holeRadius: b, poissonRatio: nu }) =>
    (0.75 * q * ((3 + nu) * a * a + (1 - nu) * b * b)) / (t * t),
});

/**
 * Hoop bending stress at a plugged central hole of a clamped circular plate.
 *
 * @example clampedHoleStress({ pressure: '1000 psi', radius: '1.5 in', thickness: '0.375 in', holeRadius: '0.25 in', poissonRatio: 0.33 }).in('psi').toFixed(0) // => '14297'
 */
export const clampedHoleStress = /* @__PURE__ */ formula({
  name: 'clampedHoleStress',
  title: 'Stress at a plugged central hole, clamped plate',
  equation:
    'σ_t = 3·q / (8·t²)·((1 + ν)·a² − (1 + 3·ν)·b² + ((1 + ν)·a² − (3 + ν)·b²)·((1 − ν)·a² − (1 + ν)·b²) / ((1 − ν)·a² + (1 + ν)·b²))',
  source,
  inputs,
  output: stress('σ_t', 'hoop bending stress at the rim of the hole'),
  example,
  requires: [holed],
  si: ({ pressure: q, radius: a, thickness: t, holeRadius: b, poissonRatio: nu }) => {
    const [aa, bb] = [a * a, b * b];
    const freed = (1 + nu) * aa - (3 + nu) * bb;
    const share = ((1 - nu) * aa - (1 + nu) * bb) / ((1 - nu) * aa + (1 + nu) * bb);
    return ((3 * q) / (8 * t * t)) * ((1 + nu) * aa - (1 + 3 * nu) * bb + freed * share);
  },
});

/**
 * Radial bending stress at the edge of a clamped circular plate with a plugged central hole; more than without the hole.
 *
 * @example clampedHoleEdgeStress({ pressure: '1000 psi', radius: '1.5 in', thickness: '0.375 in', holeRadius: '0.25 in', poissonRatio: 0.33 }).in('psi').toFixed(0) // => '12583'
 */
export const clampedHoleEdgeStress = /* @__PURE__ */ formula({
  name: 'clampedHoleEdgeStress',
  title: 'Edge stress of a clamped plate with a plugged central hole',
  equation: 'σ_e = 3·q / (4·t²)·(a² + b²·((1 + ν)·a² − (3 + ν)·b²) / ((1 − ν)·a² + (1 + ν)·b²))',
  source,
  inputs,
  output: stress('σ_e', 'radial bending stress at the edge'),
  example,
  requires: [holed],
  si: ({ pressure: q, radius: a, thickness: t, holeRadius: b, poissonRatio: nu }) => {
    const [aa, bb] = [a * a, b * b];
    const freed = (1 + nu) * aa - (3 + nu) * bb;
    return ((0.75 * q) / (t * t)) * (aa + (bb * freed) / ((1 - nu) * aa + (1 + nu) * bb));
  },
});
