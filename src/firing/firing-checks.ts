import { MeopError } from '../units';

/** The properties of a series that the checks use. */
interface AnySeries {
  readonly kind: string;
  readonly length: number;
  readonly si: Float64Array;
}

/** Requires two samples or more, finite, each later than the one before. */
export function checkTime(time: AnySeries): void {
  checkSeries('time', time, 'time');
  if (time.length < 2)
    throw new MeopError('too-short', `firing: time must have at least 2 samples, got ${time.length}`, 'time');
  const { si } = time;
  for (let i = 1; i < si.length; i++) {
    if (si[i] > si[i - 1]) continue;
    throw new MeopError(
      'time-order',
      `firing: time must increase from sample to sample, got ${si[i]} s at sample ${i} after ${si[i - 1]} s. Sort the record, or use a uniform time base where stamps repeat.`,
      `time[${i}]`,
      { value: si[i], expected: `above ${si[i - 1]} s` },
    );
  }
}

/** Requires a series as long as time, of the given kind, with finite samples. */
export function checkChannel(
  name: string,
  channel: AnySeries | undefined,
  kind: string,
  length: number,
): void {
  if (channel === undefined) return;
  checkSeries(name, channel, kind);
  if (channel.length !== length)
    throw new MeopError(
      'length-mismatch',
      `firing: ${name} must have as many samples as time (${length}), got ${channel.length}`,
      name,
      { value: channel.length, expected: String(length) },
    );
}

function checkSeries(name: string, given: AnySeries, kind: string): void {
  if (typeof given !== 'object' || given === null || !(given.si instanceof Float64Array))
    throw new MeopError(
      'not-a-series',
      `firing: ${name} must be a Series. Write series(values, unit).`,
      name,
      { value: given, expected: `series of ${kind}` },
    );
  const general = kind === 'absolute pressure' ? 'pressure' : kind;
  if (given.kind !== kind && given.kind !== general) {
    const out =
      given.kind === 'gauge pressure'
        ? '. Add the ambient pressure to each value and declare the sum absolute.'
        : '';
    throw new MeopError(
      'wrong-kind',
      `firing: ${name} must be a series of ${kind}, got a series of ${given.kind}${out}`,
      name,
      { value: given.kind, expected: kind },
    );
  }
  for (let i = 0; i < given.si.length; i++) {
    if (Number.isFinite(given.si[i])) continue;
    throw new MeopError(
      'not-finite',
      `firing: ${name} must be finite, got ${given.si[i]} at sample ${i}. Omit the sample, or repair it first.`,
      `${name}[${i}]`,
      { value: given.si[i] },
    );
  }
}
