import { formula, gaugePressure, ratio } from '../units';

/**
 * Proof factor for a burst factor, where each vessel is proof-tested: halfway between 1 and the burst factor; 1.5 from a
 * burst factor of 2.
 *
 * @example proofFactor({ burstFactor: 1.5 }) // => 1.25
 */
export const proofFactor = /* @__PURE__ */ formula({
  name: 'proofFactor',
  title: 'Proof factor from the burst factor',
  equation: 'PF = min(1.5, (1 + BF) / 2)',
  source: 'MIL-STD-1522A and AIAA S-080, approach A (from memory)',
  inputs: {
    burstFactor: ratio('BF', 'burst pressure/maximum expected operating pressure', { min: 1 }),
  },
  output: ratio('PF', 'proof pressure/maximum expected operating pressure'),
  example: { burstFactor: 1.5 },
  si: ({ burstFactor }) => Math.min(1.5, (1 + burstFactor) / 2),
});

/** @example proofPressure({ pressure: '5 MPa', factor: 1.5 }).in('MPa') // => 7.5 */
export const proofPressure = /* @__PURE__ */ formula({
  name: 'proofPressure',
  title: 'Pressure of a proof test',
  equation: 'p_p = PF·p',
  source: 'Definition of the proof factor',
  inputs: {
    pressure: gaugePressure('p', 'maximum expected operating pressure'),
    factor: ratio('PF', 'proof factor', { above: 0 }),
  },
  output: gaugePressure('p_p', 'proof pressure'),
  example: { pressure: '5 MPa', factor: 1.5 },
  si: ({ pressure, factor }) => pressure * factor,
});
