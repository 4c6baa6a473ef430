import { MeopError } from '../units';
import type { BurnLaw } from './burn-law';
import { type Outcomes, runEnds } from './simulation/batch-kernel';

/**
 * What a batch must not keep quiet: motors that did not burn out, and pressures that the burn law was not characterised
 * for.
 *
 * @throws MeopError `out-of-range` where the law is told to refuse such pressures
 */
export function batchCautions(law: BurnLaw, outcomes: Outcomes): readonly string[] {
  const { end, leastBurnPressure, greatestPressure } = outcomes;
  const count = end.length;
  const { from, to } = law.characterised;
  const ended = runEnds.map(() => 0);
  let outside = 0;
  for (let i = 0; i < count; i++) {
    ended[end[i]]++;
    const low = leastBurnPressure[i];
    const high = greatestPressure[i];
    if (low >= from && high <= to) continue;
    if (law.outside === 'error')
      throw new MeopError(
        'out-of-range',
        `simulateMany: variations[${i}]: its pressure reaches ${(high > to ? high : low) / 1e6} MPa; the burn law was characterised from ${from / 1e6} to ${to / 1e6} MPa and is told to refuse others`,
        `variations[${i}]`,
        { value: high > to ? high : low, expected: `${from} to ${to} Pa` },
      );
    outside++;
  }
  return [
    ...runEnds.flatMap((name, i) =>
      i > 0 && ended[i] > 0 ? [`${ended[i]} of ${count} motors ended by '${name}', not by burning out`] : [],
    ),
    ...(outside > 0
      ? [
          `${outside} of ${count} motors reach pressures outside the ${from / 1e6} to ${to / 1e6} MPa for which the burn law was characterised`,
        ]
      : []),
  ];
}
