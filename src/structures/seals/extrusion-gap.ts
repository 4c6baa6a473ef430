import { flag, fromSiValue, gaugePressure, optional, procedure, type Quantity, unitOf } from '../../units';
import { boreGland } from './seal-groups';

// Diametral clearance in thousandths of an inch up to a pressure in psi; room temperature, no backup ring.
const bands: readonly (readonly [psi: number, at70: number, at90: number])[] = [
  [500, 16, 28],
  [1000, 10, 24],
  [1500, 6, 20],
  [2000, 4, 16],
  [3000, 2, 10],
];

/** The maximum gap of a seal. */
export interface ExtrusionGapLimit {
  /** Diametral clearance; zero above the table, where a backup ring is required. */
  readonly clearance: Quantity<'length'>;
  readonly source: string;
  readonly cautions: readonly string[];
}

/**
 * The maximum diametral clearance that an O-ring bridges without a backup ring: the whole clearance, since the
 * closure may be off centre. Stepped in pressure as the table is; interpolated for a hardness between 70 and 90.
 *
 * @example extrusionGapLimit({ pressure: '900 psi', hardness: 70 }).clearance.in('in') // => 0.01
 */
export const extrusionGapLimit = /* @__PURE__ */ procedure({
  name: 'extrusionGapLimit',
  title: 'Maximum clearance that an O-ring bridges under pressure',
  source: 'Seal & Design Inc., limits of diametral clearance against fluid pressure (room temperature)',
  inputs: {
    pressure: gaugePressure('p', 'pressure across the seal', { min: 0, example: '900 psi' }),
    hardness: boreGland.fields.hardness,
    silicone: optional(
      flag('whether the rubber is silicone, which tears easily and bridges half the gap', { example: false }),
      false,
    ),
  },
  gives: 'the maximum diametral clearance',
  example: { pressure: '900 psi', hardness: 70 },
  run: ({ pressure, hardness, silicone }): ExtrusionGapLimit => {
    const psi = pressure.si / unitOf('psi').factor;
    const row = bands.find(([upTo]) => psi <= upTo * (1 + 1e-12));
    const cautions: string[] = [];
    if (psi > 1500) cautions.push('Above 1500 psi consider a backup ring (Parker O-Ring Handbook).');
    if (!row) cautions.push('Above 3000 psi the table states no clearance. Fit a backup ring.');
    if (hardness !== 70 && hardness !== 90)
      cautions.push('The clearance is interpolated between the values of the table for 70 and 90 Shore A.');
    if (silicone) cautions.push('The clearance is halved for silicone (Parker O-Ring Handbook).');
    const [, at70, at90] = row ?? [0, 0, 0];
    const mil = at70 + ((at90 - at70) * (hardness - 70)) / 20;
    return {
      clearance: fromSiValue((silicone ? mil / 2 : mil) * 25.4e-6, 'length', unitOf('mm')),
      source: extrusionGapLimit.source,
      cautions,
    };
  },
});
