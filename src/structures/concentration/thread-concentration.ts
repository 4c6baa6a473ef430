import { choice, optional, procedure } from '../../units';
import type { StressConcentration } from './stress-concentration';

// K_f of the root, by forming and strength of the steel.
const factors = {
  rolled: { 'low strength': 2.2, 'high strength': 3 },
  cut: { 'low strength': 2.8, 'high strength': 3.8 },
} as const;

const source =
  "Shigley's Mechanical Engineering Design, table 8-16, fatigue stress-concentration factors of threaded elements (quoted from memory, not verified)";

/**
 * Fatigue stress concentration at the root of a thread, on the average stress of the section at the root.
 *
 * @example threadConcentration({ forming: 'cut' }).factor // => 3.8
 */
export const threadConcentration = /* @__PURE__ */ procedure({
  name: 'threadConcentration',
  title: 'Fatigue stress concentration of a thread',
  source,
  inputs: {
    forming: choice('forming of the thread', ['cut', 'rolled'], { example: 'cut' }),
    steel: optional(
      choice(
        'strength of the steel: low to SAE grade 2 or class 5.8, high from grade 4 or class 6.6; the maximum of both where omitted',
        ['low strength', 'high strength'],
      ),
    ),
  },
  gives: 'the factor on the average stress of the section at the root',
  example: { forming: 'cut' },
  run: ({ forming, steel }): StressConcentration => {
    const { 'low strength': low, 'high strength': high } = factors[forming];
    return {
      factor: steel === undefined ? high : factors[forming][steel],
      range: { min: low, max: high },
      type: 'fatigue',
      nominal: 'average stress of the section at the root of the thread',
      source,
      provenance: 'from memory',
      cautions: [
        `The fatigue factor of a ${forming} thread is quoted from memory, not verified. It is for steel screws; for another metal it is an estimate.`,
        'Endurance limits measured on threaded screws already include this factor. Do not apply it to them.',
      ],
    };
  },
});
