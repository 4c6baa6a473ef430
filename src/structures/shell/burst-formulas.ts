import { formula, gaugePressure, length, ratio, stress } from '../../units';

const isTube = ({
  outsideDiameter,
  wall,
}: {
  readonly outsideDiameter: number;
  readonly wall: number;
}): true | string => outsideDiameter > 2 * wall || 'the outside diameter must be more than twice the wall';
const outsideDiameter = length('D_o', 'outside diameter');
const wall = length('t', 'wall thickness');
const ultimateStrength = stress('S_u', 'ultimate tensile strength', { above: 0 });
const output = gaugePressure('p_b', 'burst pressure');
const tube = { outsideDiameter: '3.5 in', wall: '0.25 in', ultimateStrength: '42000 psi' } as const;

/** ln(D_o/D_i), with all figures in a thin wall. */
const logRatio = (d: number, t: number): number => Math.log1p((2 * t) / (d - 2 * t));

/**
 * Burst by Barlow with the outside diameter: the cautious one for thin tubes.
 *
 * @example barlowBurst({ outsideDiameter: '3.5 in', wall: '0.25 in', ultimateStrength: '42000 psi' }).in('psi') // => 6000
 */
export const barlowBurst = /* @__PURE__ */ formula({
  name: 'barlowBurst',
  title: 'Burst pressure by Barlow',
  equation: 'p_b = 2·S_u·t / D_o',
  source: "Barlow's formula, as in ASME J. Pressure Vessel Technol. 145 (2023) 041303 (abstract)",
  inputs: { outsideDiameter, wall, ultimateStrength },
  output,
  example: tube,
  requires: [isTube],
  si: ({ outsideDiameter: d, wall: t, ultimateStrength: s }) => (2 * s * t) / d,
});

/** @example meanDiameterBurst({ outsideDiameter: '3.5 in', wall: '0.25 in', ultimateStrength: '42000 psi' }).in('psi') // => 6461.538462 */
export const meanDiameterBurst = /* @__PURE__ */ formula({
  name: 'meanDiameterBurst',
  title: 'Burst pressure by the mean diameter',
  equation: 'p_b = 2·S_u·t / (D_o − t)',
  source: 'Thin cylinder on the mean diameter at the ultimate strength (textbook form)',
  inputs: { outsideDiameter, wall, ultimateStrength },
  output,
  example: tube,
  requires: [isTube],
  si: ({ outsideDiameter: d, wall: t, ultimateStrength: s }) => (2 * s * t) / (d - t),
  solve: {
    wall: (p, { outsideDiameter: d, ultimateStrength: s }) => (p * d) / (2 * s + p),
    ultimateStrength: (p, { outsideDiameter: d, wall: t }) => (p * (d - t)) / (2 * t),
  },
});

/**
 * Burst by Turner: the whole wall flows at the ultimate strength, maximum shear criterion.
 *
 * @example turnerBurst({ outsideDiameter: '3.5 in', wall: '0.25 in', ultimateStrength: '42000 psi' }).in('psi') // => 6474.328553
 */
export const turnerBurst = /* @__PURE__ */ formula({
  name: 'turnerBurst',
  title: 'Burst pressure by Turner',
  equation: 'p_b = S_u·ln(D_o / (D_o − 2·t))',
  source: 'Turner, 1910, fully plastic cylinder by maximum shear (from memory)',
  inputs: { outsideDiameter, wall, ultimateStrength },
  output,
  example: tube,
  requires: [isTube],
  si: ({ outsideDiameter: d, wall: t, ultimateStrength: s }) => s * logRatio(d, t),
});

/**
 * Burst by Faupel, between full yield and full flow by the ratio of yield to ultimate.
 *
 * @example faupelBurst({ outsideDiameter: '3.5 in', wall: '0.25 in', yieldStrength: '42000 psi', ultimateStrength: '42000 psi' }).in('psi') // => 7475.910665
 */
export const faupelBurst = /* @__PURE__ */ formula({
  name: 'faupelBurst',
  title: 'Burst pressure by Faupel',
  equation: 'p_b = 2 / √3·S_y·ln(D_o / (D_o − 2·t))·(2 − S_y / S_u)',
  source:
    'J. H. Faupel, Yield and bursting characteristics of heavy-wall cylinders, Trans. ASME 78 (1956) (from memory)',
  inputs: {
    outsideDiameter,
    wall,
    yieldStrength: stress('S_y', 'yield strength', { above: 0 }),
    ultimateStrength,
  },
  output,
  example: { ...tube, yieldStrength: '35000 psi' },
  requires: [
    isTube,
    ({ yieldStrength, ultimateStrength: s }) =>
      yieldStrength <= s || 'the yield strength cannot be more than the ultimate',
  ],
  si: ({ outsideDiameter: d, wall: t, yieldStrength: y, ultimateStrength: s }) =>
    (2 / Math.sqrt(3)) * y * logRatio(d, t) * (2 - y / s),
});

/**
 * Burst by Svensson, with the strain-hardening exponent n of σ = K ε^n.
 *
 * @example svenssonBurst({ outsideDiameter: '3.5 in', wall: '0.25 in', ultimateStrength: '42000 psi', strainHardening: 0.05 }).in('psi') // => 7135.447223
 */
export const svenssonBurst = /* @__PURE__ */ formula({
  name: 'svenssonBurst',
  title: 'Burst pressure by Svensson',
  equation: 'p_b = S_u·0.25 / (n + 0.227)·(e / n)^n·ln(D_o / (D_o − 2·t))',
  source:
    'N. L. Svensson, The bursting pressure of cylindrical and spherical vessels, J. Appl. Mech. 25 (1958) (from memory)',
  inputs: {
    outsideDiameter,
    wall,
    ultimateStrength,
    strainHardening: ratio('n', 'strain-hardening exponent', { above: 0, max: 1 }),
  },
  output,
  example: { ...tube, strainHardening: 0.08 },
  requires: [isTube],
  si: ({ outsideDiameter: d, wall: t, ultimateStrength: s, strainHardening: n }) =>
    s * (0.25 / (n + 0.227)) * (Math.E / n) ** n * logRatio(d, t),
});
