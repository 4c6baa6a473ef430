import { area, force, formula, optional, ratio, stress } from '../../units';
import { preloadOfBolt } from './joint-constant';

/**
 * The preload that handbooks recommend.
 *
 * @example recommendedPreload({ stressArea: '20 mm^2', proofStress: '600 MPa' }).in('kN') // => 9
 */
export const recommendedPreload = /* @__PURE__ */ formula({
  name: 'recommendedPreload',
  title: 'Recommended preload of a bolt',
  equation: 'F_i = x·A_t·S_p',
  source: "Shigley's Mechanical Engineering Design, 9th ed., equations 8-31 and 8-32",
  inputs: {
    fraction: optional(
      ratio('x', 'fraction of the proof load: 0.75 for a joint that is reused, 0.9 for a permanent one', {
        above: 0,
        max: 1,
      }),
      0.75,
    ),
    stressArea: area('A_t', 'tensile stress area'),
    proofStress: stress('S_p', 'proof stress of the bolt', { above: 0 }),
  },
  output: force('F_i', 'preload'),
  example: { stressArea: '20.1 mm^2', proofStress: '580 MPa' },
  si: ({ fraction = 0.75, stressArea, proofStress }) => fraction * stressArea * proofStress,
});

/** @example proofStressFromYield({ yieldStrength: '400 MPa' }).in('MPa') // => 340 */
export const proofStressFromYield = /* @__PURE__ */ formula({
  name: 'proofStressFromYield',
  title: 'Proof stress of a bolt whose standard states none',
  equation: 'S_p = 0.85·S_y',
  source: "Shigley's Mechanical Engineering Design, 9th ed., section 8-8, text after equation 8-32",
  inputs: { yieldStrength: stress('S_y', 'yield strength of the bolt', { above: 0 }) },
  output: stress('S_p', 'proof stress'),
  example: { yieldStrength: '450 MPa' },
  si: ({ yieldStrength }) => 0.85 * yieldStrength,
});

const scatter = ratio('G', 'scatter of the tightening method, plus and minus', { min: 0, below: 1 });

/**
 * The maximum preload: what tightening may leave, and what heat adds to it.
 *
 * @example maximumPreload({ preload: '5 kN', scatter: 0.35 }).in('N') // => 6750
 */
export const maximumPreload = /* @__PURE__ */ formula({
  name: 'maximumPreload',
  title: 'Maximum preload of a bolt',
  equation: 'F_max = F_i·(1 + G) + ΔF',
  source: 'Definition of scatter; the strength of the bolt is evaluated at the maximum preload',
  inputs: {
    preload: preloadOfBolt,
    scatter,
    thermalChange: optional(
      force('ΔF', 'change of preload by heat or cold, where it is a gain', { min: 0 }),
      0,
    ),
  },
  output: force('F_max', 'maximum preload'),
  example: { preload: '5 kN', scatter: 0.25 },
  si: ({ preload, scatter: g, thermalChange = 0 }) => preload * (1 + g) + thermalChange,
});

/**
 * The minimum preload: what tightening may leave, less what relaxation and heat take from it.
 *
 * @example minimumPreload({ preload: '5 kN', scatter: 0.35, relaxation: 0 }).in('N') // => 3250
 */
export const minimumPreload = /* @__PURE__ */ formula({
  name: 'minimumPreload',
  title: 'Minimum preload of a bolt',
  equation: 'F_min = max(0, F_i·(1 − G)·(1 − z) + ΔF)',
  source:
    'Definition of scatter; separation is evaluated at the minimum preload (relaxation of 5 % from memory)',
  inputs: {
    preload: preloadOfBolt,
    scatter,
    relaxation: optional(ratio('z', 'fraction lost by embedding and relaxation', { min: 0, below: 1 }), 0.05),
    thermalChange: optional(
      force('ΔF', 'change of preload by heat or cold, where it is a loss', { max: 0 }),
      0,
    ),
  },
  output: force('F_min', 'minimum preload', { min: 0 }),
  example: { preload: '5 kN', scatter: 0.25 },
  si: ({ preload, scatter: g, relaxation = 0.05, thermalChange = 0 }) =>
    Math.max(0, preload * (1 - g) * (1 - relaxation) + thermalChange),
});

/**
 * The symmetric scatter of a tightening factor, which is the maximum preload over the minimum.
 *
 * @example scatterOfTighteningFactor({ tighteningFactor: 1.5 }) // => 0.2
 */
export const scatterOfTighteningFactor = /* @__PURE__ */ formula({
  name: 'scatterOfTighteningFactor',
  title: 'Scatter of a tightening factor',
  equation: 'G = (α_A − 1) / (α_A + 1)',
  source: 'Definition of the tightening factor, maximum over minimum preload (VDI 2230, from memory)',
  inputs: { tighteningFactor: ratio('α_A', 'tightening factor', { min: 1 }) },
  output: ratio('G', 'scatter, plus and minus', { min: 0, below: 1 }),
  example: { tighteningFactor: 1.6 },
  si: ({ tighteningFactor }) => (tighteningFactor - 1) / (tighteningFactor + 1),
});
