import { formula, length, stress } from '../../units';
import { plateInputs } from '../plate-inputs';

// A thick hub in a thin ring. The shear at a radius r is q·r/2 as in the uniform plate, whatever the thickness. The slope at the
// hub is taken as zero: a hub that bends relieves the ring, so that these are upper bounds.

const { pressure, radius, poissonRatio } = plateInputs;
const hubRadius = length('b', 'radius of the thick hub, where the thin ring begins', { example: '0.9 in' });
const ringThickness = length('t', 'thickness of the thin ring, groove depth removed', { example: '0.25 in' });
const hubThickness = length('h', 'thickness of the hub', { example: '0.5 in' });
const holeRadius = length('b_h', 'radius of a plugged central hole of the hub', { example: '0.25 in' });
const example = { pressure: '1000 psi', radius: '1.5 in', hubRadius: '0.9 in' } as const;
const source =
  'Plate theory, axisymmetric bending of a ring on a rigid hub (derived from Timoshenko, Theory of Plates and Shells, circular plates)';
const hubInPlate = ({
  radius: a,
  hubRadius: b,
}: {
  readonly radius: number;
  readonly hubRadius: number;
}): true | string => b < a || 'the hub must be smaller than the plate';
const holeInHub = ({
  hubRadius: b,
  holeRadius: c,
}: {
  readonly hubRadius: number;
  readonly holeRadius: number;
}): true | string => c < b || 'the hole must be smaller than the hub';

/** 16·M/q where the ring meets the hub, for a supported edge. */
const supportedMoment = (a: number, b: number, nu: number): number =>
  (2 * ((3 + nu) * a ** 4 + (1 - nu) * b ** 4)) / ((1 + nu) * a * a + (1 - nu) * b * b) - 4 * b * b;

/** @example supportedRingStress({ pressure: '1000 psi', radius: '1.5 in', hubRadius: '0.9 in', ringThickness: '0.25 in', poissonRatio: 0.33 }).in('psi').toFixed(0) // => '39276' */
export const supportedRingStress = /* @__PURE__ */ formula({
  name: 'supportedRingStress',
  title: 'Stress of the thin ring of a stepped closure, simply supported edge',
  equation: 'σ = 3·q / (4·t²)·(((3 + ν)·a⁴ + (1 − ν)·b⁴) / ((1 + ν)·a² + (1 − ν)·b²) − 2·b²)',
  source,
  inputs: { pressure, radius, hubRadius, ringThickness, poissonRatio },
  output: stress('σ', 'radial bending stress where the ring meets the hub, at most'),
  example: { ...example, ringThickness: '0.25 in', poissonRatio: 0.33 },
  requires: [hubInPlate],
  si: ({ pressure: q, radius: a, hubRadius: b, ringThickness: t, poissonRatio: nu }) =>
    (3 * q * supportedMoment(a, b, nu)) / (8 * t * t),
});

/** @example clampedRingStress({ pressure: '1000 psi', radius: '1.5 in', hubRadius: '0.9 in', ringThickness: '0.25 in' }).in('psi').toFixed(0) // => '17280' */
export const clampedRingStress = /* @__PURE__ */ formula({
  name: 'clampedRingStress',
  title: 'Stress of the thin ring of a stepped closure, clamped edge',
  equation: 'σ = 3·q·(a² − b²) / (4·t²)',
  source,
  inputs: { pressure, radius, hubRadius, ringThickness },
  output: stress('σ', 'radial bending stress at the edge and at the hub'),
  example: { ...example, ringThickness: '0.25 in' },
  requires: [hubInPlate],
  si: ({ pressure: q, radius: a, hubRadius: b, ringThickness: t }) => (0.75 * q * (a * a - b * b)) / (t * t),
});

/** @example supportedHubStress({ pressure: '1000 psi', radius: '1.5 in', hubRadius: '0.9 in', hubThickness: '0.5 in', poissonRatio: 0.33 }).in('psi').toFixed(0) // => '13865' */
export const supportedHubStress = /* @__PURE__ */ formula({
  name: 'supportedHubStress',
  title: 'Centre stress of the hub of a stepped closure',
  equation: 'σ = 3·q / (8·h²)·(2·((3 + ν)·a⁴ + (1 − ν)·b⁴) / ((1 + ν)·a² + (1 − ν)·b²) − (1 − ν)·b²)',
  source,
  inputs: { pressure, radius, hubRadius, hubThickness, poissonRatio },
  output: stress('σ', 'bending stress at the centre of the hub, at most'),
  example: { ...example, hubThickness: '0.5 in', poissonRatio: 0.33 },
  requires: [hubInPlate],
  si: ({ pressure: q, radius: a, hubRadius: b, hubThickness: h, poissonRatio: nu }) =>
    (3 * q * (supportedMoment(a, b, nu) + (3 + nu) * b * b)) / (8 * h * h),
});

/** @example supportedHubHoleStress({ pressure: '1000 psi', radius: '1.5 in', hubRadius: '0.9 in', hubThickness: '0.5 in', holeRadius: '0.25 in', poissonRatio: 0.33 }).in('psi').toFixed(0) // => '29497' */
export const supportedHubHoleStress = /* @__PURE__ */ formula({
  name: 'supportedHubHoleStress',
  title: 'Stress at a plugged central hole of the hub of a stepped closure',
  equation:
    'σ = 3·q / (4·h²)·((2·((3 + ν)·a⁴ + (1 − ν)·b⁴) / ((1 + ν)·a² + (1 − ν)·b²) − 4·b²)·b² / (b² − b_h²) + (3 + ν)·b² + (1 − ν)·b_h²)',
  source,
  inputs: { pressure, radius, hubRadius, hubThickness, holeRadius, poissonRatio },
  output: stress('σ', 'hoop bending stress at the rim of the hole, at most'),
  example: { ...example, hubThickness: '0.5 in', holeRadius: '0.25 in', poissonRatio: 0.33 },
  requires: [hubInPlate, holeInHub],
  si: ({ pressure: q, radius: a, hubRadius: b, hubThickness: h, holeRadius: c, poissonRatio: nu }) => {
    const m = supportedMoment(a, b, nu);
    const [bb, cc] = [b * b, c * c];
    return (0.75 * q * ((m * bb) / (bb - cc) + (3 + nu) * bb + (1 - nu) * cc)) / (h * h);
  },
});
