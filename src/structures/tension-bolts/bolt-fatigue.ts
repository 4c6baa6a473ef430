import { area, force, formula, ratio, stress } from '../../units';
import { jointShare } from './joint-constant';

/**
 * Amplitude of the stress in a preloaded bolt as its separating load goes from zero to the maximum and back.
 *
 * @example boltStressAmplitude({ jointConstant: 0.25, load: '8 kN', stressArea: '20 mm^2' }).in('MPa') // => 50
 */
export const boltStressAmplitude = /* @__PURE__ */ formula({
  name: 'boltStressAmplitude',
  title: 'Stress amplitude of a preloaded bolt, repeated load',
  equation: 'σ_a = C·P / (2·A_t)',
  source: "Shigley's Mechanical Engineering Design, 9th ed., equation 8-39",
  inputs: {
    jointConstant: jointShare,
    load: force('P', 'separating load of one bolt'),
    stressArea: area('A_t', 'tensile stress area'),
  },
  output: stress('σ_a', 'stress amplitude', { min: 0 }),
  example: { jointConstant: 0.3, load: '4 kN', stressArea: '20.1 mm^2' },
  si: ({ jointConstant, load, stressArea }) => (jointConstant * load) / (2 * stressArea),
});

const amplitude = stress('σ_a', 'stress amplitude', { above: 0 });
const preloadStress = stress('σ_i', 'stress of the preload', { min: 0 });
const endurance = stress('S_e', 'endurance strength of the bolt, thread notch included', { above: 0 });
const ultimate = stress('S_ut', 'ultimate tensile strength of the bolt', { above: 0 });
const proof = stress('S_p', 'proof stress of the bolt', { above: 0 });
const output = ratio('n_f', 'fatigue factor on the separating load');
const source = "Shigley's Mechanical Engineering Design, 9th ed., section 8-11";
const example = { amplitude: '30 MPa', preloadStress: '435 MPa', endurance: '129 MPa' } as const;

/**
 * Fatigue factor of a preloaded bolt by Goodman's line; the load is repeated from zero.
 *
 * @example boltGoodmanFactor({ amplitude: '30 MPa', preloadStress: '400 MPa', endurance: '200 MPa', ultimate: '800 MPa' }).toFixed(4) // => '2.6667'
 */
export const boltGoodmanFactor = /* @__PURE__ */ formula({
  name: 'boltGoodmanFactor',
  title: 'Fatigue factor of a preloaded bolt, Goodman',
  equation: 'n_f = S_e·(S_ut − σ_i) / (σ_a·(S_ut + S_e))',
  source: `${source}, Goodman`,
  inputs: { amplitude, preloadStress, endurance, ultimate },
  output,
  example: { ...example, ultimate: '800 MPa' },
  si: ({ amplitude: a, preloadStress: i, endurance: e, ultimate: u }) => (e * (u - i)) / (a * (u + e)),
});

/** @example boltGerberFactor({ amplitude: '30 MPa', preloadStress: '0 MPa', endurance: '200 MPa', ultimate: '800 MPa' }).toFixed(4) // => '6.2951' */
export const boltGerberFactor = /* @__PURE__ */ formula({
  name: 'boltGerberFactor',
  title: 'Fatigue factor of a preloaded bolt, Gerber',
  equation: 'n_f = (S_ut·√(S_ut² + 4·S_e·(S_e + σ_i)) − S_ut² − 2·σ_i·S_e) / (2·σ_a·S_e)',
  source: `${source}, Gerber`,
  inputs: { amplitude, preloadStress, endurance, ultimate },
  output,
  example: { ...example, ultimate: '800 MPa' },
  si: ({ amplitude: a, preloadStress: i, endurance: e, ultimate: u }) =>
    (u * Math.sqrt(u * u + 4 * e * (e + i)) - u * u - 2 * i * e) / (2 * a * e),
});

/** @example boltEllipticFactor({ amplitude: '30 MPa', preloadStress: '0 MPa', endurance: '300 MPa', proofStress: '400 MPa' }).toFixed(4) // => '8.0000' */
export const boltEllipticFactor = /* @__PURE__ */ formula({
  name: 'boltEllipticFactor',
  title: 'Fatigue factor of a preloaded bolt, ASME-elliptic',
  equation: 'n_f = S_e·(S_p·√(S_p² + S_e² − σ_i²) − σ_i·S_e) / (σ_a·(S_p² + S_e²))',
  source: `${source}, ASME-elliptic`,
  inputs: { amplitude, preloadStress, endurance, proofStress: proof },
  output,
  example: { ...example, proofStress: '580 MPa' },
  requires: [
    ({ preloadStress: i, proofStress: p }) => i <= p || 'the preload must not exceed the proof load',
  ],
  si: ({ amplitude: a, preloadStress: i, endurance: e, proofStress: p }) =>
    (e * (p * Math.sqrt(p * p + e * e - i * i) - i * e)) / (a * (p * p + e * e)),
});

/**
 * Factor on the repeated load at which the maximum stress reaches the proof stress.
 *
 * @example boltProofLineFactor({ amplitude: '30 MPa', preloadStress: '400 MPa', proofStress: '580 MPa' }) // => 3
 */
export const boltProofLineFactor = /* @__PURE__ */ formula({
  name: 'boltProofLineFactor',
  title: 'Factor of a preloaded bolt to its proof line',
  equation: 'n = (S_p − σ_i) / (2·σ_a)',
  source: `${source}, proof line`,
  inputs: { amplitude, preloadStress, proofStress: proof },
  output: ratio('n', 'factor on the separating load at the proof stress'),
  example: { amplitude: '30 MPa', preloadStress: '435 MPa', proofStress: '580 MPa' },
  si: ({ amplitude: a, preloadStress: i, proofStress: p }) => (p - i) / (2 * a),
});
