import { MeopError } from '../units';
import type { BurnLaw } from './burn-law';
import { outsideRemedy, rangeText } from './rate-by-law';
import { type Outcomes, runEnds } from './simulation/batch-kernel';

/**
 * Cautions of a batch: motors that did not burn out, and pressures outside the characterisation of the burn law.
 *
 * @throws MeopError `out-of-range` where the law does not allow such pressures
 */
export function batchCautions(law: BurnLaw, outcomes: Outcomes): readonly string[] {
  const { end, minBurnPressure, maxPressure } = outcomes;
  const count = end.length;
  const { from, to } = law.characterised;
  const ended = runEnds.map(() => 0);
  let outside = 0;
  for (let i = 0; i < count; i++) {
    ended[end[i]]++;
    const low = minBurnPressure[i];
    const high = maxPressure[i];
    if (low >= from && high <= to) continue;
    if (law.outside === 'error')
      throw new MeopError({
        code: 'out-of-range',
        procedure: 'simulateMany',
        path: `variations.${i}`,
        problem: `the pressure reaches ${(high > to ? high : low) / 1e6} MPa and leaves the characterised range of the burn law, ${rangeText(law)}`,
        remedy: outsideRemedy,
      });
    outside++;
  }
  return [
    ...runEnds.flatMap((name, i) =>
      i > 0 && ended[i] > 0 ? [`${ended[i]} of ${count} motors ended by '${name}' and did not burn out`] : [],
    ),
    ...(outside > 0
      ? [
          `${outside} of ${count} motors reach pressures outside the characterised range of the burn law, ${rangeText(law)}`,
        ]
      : []),
  ];
}
