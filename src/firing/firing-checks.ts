import { MeopError } from '../units';

/** What a check needs to know of a series. */
interface AnySeries {
  readonly kind: string;
  readonly length: number;
  readonly si: Float64Array;
}

/** Two samples or more, finite, each later than the one before. */
export function checkTime(time: AnySeries): void {
  checkSeries('time', time, 'time');
  if (time.length < 2)
    throw new MeopError(
      'too-short',
      `firing: time: ${time.length} samples given; at least 2 are expected`,
      'time',
    );
  const { si } = time;
  for (let i = 1; i < si.length; i++) {
    if (si[i] > si[i - 1]) continue;
    throw new MeopError(
      'time-order',
      `firing: time: sample ${i} (${si[i]} s) is not later than sample ${i - 1} (${si[i - 1]} s); time must increase: sort the record, or use a uniform time base where stamps repeat`,
      `time[${i}]`,
      { value: si[i], expected: `above ${si[i - 1]} s` },
    );
  }
}

/** As long as time, of the kind it stands for, finite throughout. */
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
      `firing: ${name} has ${channel.length} samples and time has ${length}; they must be in step`,
      name,
      { value: channel.length, expected: String(length) },
    );
}

function checkSeries(name: string, given: AnySeries, kind: string): void {
  if (typeof given !== 'object' || given === null || !(given.si instanceof Float64Array))
    throw new MeopError(
      'not-a-series',
      `firing: ${name}: a Series is expected: write series(values, unit)`,
      name,
      { value: given, expected: `series of ${kind}` },
    );
  const general = kind === 'absolute pressure' ? 'pressure' : kind;
  if (given.kind !== kind && given.kind !== general) {
    const out =
      given.kind === 'gauge pressure'
        ? ': add the ambient pressure to each value and declare the sum absolute'
        : '';
    throw new MeopError(
      'wrong-kind',
      `firing: ${name}: a series of ${given.kind} given; ${kind} is expected${out}`,
      name,
      { value: given.kind, expected: kind },
    );
  }
  for (let i = 0; i < given.si.length; i++) {
    if (Number.isFinite(given.si[i])) continue;
    throw new MeopError(
      'not-finite',
      `firing: ${name}: sample ${i} is ${given.si[i]}; leave the sample out, or mark and repair it first`,
      `${name}[${i}]`,
      { value: given.si[i] },
    );
  }
}
