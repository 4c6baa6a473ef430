import type { RetainingRingSi } from './retaining-ring-modes';
import type { RetainingRingValues } from './review-retaining-ring';

/** Above this a spring-steel ring loses its temper: 200 °C. */
const temper = 473.15;

/** Cautions for a retaining ring and its groove. */
export function retainingRingCautions(
  { tube, ring }: RetainingRingValues,
  { sealDiameter, boreDiameter, dishing }: RetainingRingSi,
): readonly string[] {
  const { material, wallTemperature } = tube;
  return [
    ...(ring.ring?.cautions ?? []),
    ...(ring.ring === undefined
      ? []
      : [
          `The sizes of ${ring.ring.name} are nominal. Specify grooveDepth and thickness with their tolerances to include those of ring and groove.`,
        ]),
    ...(sealDiameter < boreDiameter
      ? [
          'The pressure is assumed to act on less than the bore. An O-ring in a groove of the closure seals on the bore.',
        ]
      : []),
    ...(material.elasticModulus === undefined || material.poissonRatio === undefined
      ? [
          `${material.name} has no elasticModulus and poissonRatio: the growth of the bore under pressure is neglected.`,
        ]
      : []),
    ...(wallTemperature !== undefined && wallTemperature.si > temper
      ? [
          `The case reaches ${wallTemperature}. A spring-steel ring loses its temper above 200 to 250 °C (quoted from memory, not verified). Use a heat-resistant ring or keep it cooler.`,
        ]
      : []),
    ...(dishing !== undefined && ring.play === undefined
      ? ['play not specified; assumed zero (closure without clearance in the bore).']
      : []),
    ...(ring.contactFactor === undefined
      ? [
          'contactFactor not specified; assumed 0.9 (a ring with lugs and gap; engineering practice, no published source).',
        ]
      : []),
    'The full hoop stress is assumed at the groove, which is conservative away from the seal.',
    'Install a stamped ring with its sharp side against the closure (engineering practice, no published source).',
  ];
}
