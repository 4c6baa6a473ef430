import type { ClockOptions } from './clock';

/**
 * The even clock behind repeated stamps. Where each stamp covers several samples, as whole seconds do at 10 Hz, the
 * first and the last stamp cover parts of their second only. Then the line is fitted through the samples at which the
 * stamp changes.
 */
function evenClock(
  stamps: Float64Array,
  repeated: number,
): { readonly even: number; readonly start: number } {
  const n = stamps.length;
  if (n < 2) return { even: 0, start: stamps[0] };
  let first = 1;
  while (first < n && stamps[first] === stamps[0]) first++;
  let last = n - 1;
  while (last > 0 && stamps[last - 1] === stamps[n - 1]) last--;
  if (repeated > 0.6 * n && last > first) {
    const even = (stamps[last] - stamps[first]) / (last - first);
    return { even, start: stamps[first] - first * even };
  }
  return { even: (stamps[n - 1] - stamps[0]) / (n - 1), start: stamps[0] };
}

/**
 * Gives each of several samples with one stamp its own time, in place. Where many repeat and the stamps follow an even
 * rate closely, the device sampled evenly and the host stamped late: then all times become even. Otherwise the samples
 * of one stamp are spread up to the next stamp, by at most the usual step.
 */
export function spreadRepeats(
  stamps: Float64Array,
  step: number,
  { repeats, report, lineOf }: Omit<ClockOptions, 'wrapsAfter'>,
): readonly string[] {
  const n = stamps.length;
  let repeated = 0;
  for (let i = 1; i < n; i++) if (stamps[i] === stamps[i - 1]) repeated++;
  if (repeated === 0 && repeats !== 'uniform') return [];
  const { even, start } = evenClock(stamps, repeated);
  if (even > 0 && (repeats === 'uniform' || (repeats === 'auto' && repeated > 0.05 * n))) {
    let worst = 0;
    for (let i = 0; i < n; i++) worst = Math.max(worst, Math.abs(stamps[i] - start - i * even));
    // A coarse stamp is late by at most its own step.
    if (repeats === 'uniform' || worst < Math.max(10 * even, repeated > 0.6 * n ? 1.1 * step : 0)) {
      for (let i = 1; i < n; i++)
        if (stamps[i] === stamps[i - 1])
          report.note('repeated stamp', 'repaired', lineOf(i), { note: 'even time base' });
      for (let i = 0; i < n; i++) stamps[i] = start + i * even;
      return [
        `time: ${repeated} stamps repeat the one before, as with even sampling by the device. All times were made even (${(1 / even).toPrecision(6)} Hz). The largest change of a stamp is ${worst.toPrecision(3)} s.`,
      ];
    }
  }
  const usual = step * (1 - repeated / n);
  for (let i = 0; i < n; ) {
    let end = i + 1;
    while (end < n && stamps[end] === stamps[i]) end++;
    const count = end - i;
    if (count > 1) {
      const room = end < n ? (stamps[end] - stamps[i]) / count : usual;
      const apart = Math.min(room, step);
      for (let k = 1; k < count; k++) {
        stamps[i + k] = stamps[i] + k * apart;
        report.note('repeated stamp', 'repaired', lineOf(i + k), { note: 'spread towards the next stamp' });
      }
    }
    i = end;
  }
  return [`time: ${repeated} repeated stamps were spread towards the stamp after them.`];
}
