import { formula, ratio } from '../units';

/**
 * Proof factor that goes with a burst factor, where each vessel is proof-tested: halfway between 1 and the burst factor; from a
 * burst factor of 2 on it stays 1.5.
 *
 * @example proofFactor({ burstFactor: 1.5 }) // => 1.25
 */
export const proofFactor = /* @__PURE__ */ formula({
  name: 'proofFactor',
  title: 'Proof factor from the burst factor',
  equation: 'PF = min(1.5, (1 + BF) / 2)',
  source: 'MIL-STD-1522A and AIAA S-080, approach A (from memory)',
  inputs: {
    burstFactor: ratio('BF', 'burst pressure over the maximum expected operating pressure', { min: 1 }),
  },
  output: ratio('PF', 'proof pressure over the maximum expected operating pressure'),
  example: { burstFactor: 1.5 },
  si: ({ burstFactor }) => Math.min(1.5, (1 + burstFactor) / 2),
});
