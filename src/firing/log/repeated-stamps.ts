import type { ClockOptions } from './clock';

/**
 * Gives each of several samples with one stamp a time of its own, in place. Where many repeat and the stamps keep close
 * to an even rate, the device sampled evenly and the host stamped what it found: then all times become even. Otherwise
 * the samples of one stamp are spread up to the next stamp, by no more than the usual step.
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
  const even = n > 1 ? (stamps[n - 1] - stamps[0]) / (n - 1) : 0;
  if (even > 0 && (repeats === 'uniform' || (repeats === 'auto' && repeated > 0.05 * n))) {
    let worst = 0;
    for (let i = 0; i < n; i++) worst = Math.max(worst, Math.abs(stamps[i] - stamps[0] - i * even));
    if (repeats === 'uniform' || worst < 10 * even) {
      for (let i = 1; i < n; i++)
        if (stamps[i] === stamps[i - 1])
          report.note('repeated stamp', 'repaired', lineOf(i), { note: 'even time base' });
      const start = stamps[0];
      const last = stamps[n - 1];
      for (let i = 0; i < n; i++) stamps[i] = start + i * even;
      stamps[n - 1] = last;
      return [
        `${repeated} stamps repeat the one before: the device samples evenly, so all times were made even (${(1 / even).toPrecision(6)} Hz; the largest change of a stamp is ${worst.toPrecision(3)} s)`,
      ];
    }
  }
  for (let i = 0; i < n; ) {
    let end = i + 1;
    while (end < n && stamps[end] === stamps[i]) end++;
    const count = end - i;
    if (count > 1) {
      const room = end < n ? (stamps[end] - stamps[i]) / count : step;
      const apart = Math.min(room, step);
      for (let k = 1; k < count; k++) {
        stamps[i + k] = stamps[i] + k * apart;
        report.note('repeated stamp', 'repaired', lineOf(i + k), { note: 'spread towards the next stamp' });
      }
    }
    i = end;
  }
  return [`${repeated} repeated stamps were spread towards the stamp after them`];
}
