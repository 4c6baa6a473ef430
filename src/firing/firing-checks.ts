import { MeopError, type Series } from '../units';

const procedure = 'firing';

/** Requires two samples or more, finite, each later than the one before. */
export function checkTime(time: Series<'time'>): void {
  checkFinite('time', time);
  if (time.length < 2)
    throw new MeopError({
      code: 'too-short',
      procedure,
      path: 'time',
      given: time.length,
      expected: 'at least 2 samples long',
    });
  const { si } = time;
  for (let i = 1; i < si.length; i++) {
    if (si[i] > si[i - 1]) continue;
    throw new MeopError({
      code: 'time-order',
      procedure,
      path: `time[${i}]`,
      given: `${si[i]} s`,
      expected: `after the sample before it, ${si[i - 1]} s`,
      remedy: 'Sort the record, or use a uniform time base where stamps repeat',
    });
  }
}

/** Requires a series as long as time, with finite samples. */
export function checkChannel(name: string, channel: Series | undefined, length: number): void {
  if (channel === undefined) return;
  checkFinite(name, channel);
  if (channel.length !== length)
    throw new MeopError({
      code: 'length-mismatch',
      procedure,
      path: name,
      given: channel.length,
      expected: `as many samples as time, ${length}`,
    });
}

function checkFinite(name: string, { si }: Series): void {
  const at = si.findIndex((value) => !Number.isFinite(value));
  if (at >= 0)
    throw new MeopError({
      code: 'not-finite',
      procedure,
      path: `${name}[${at}]`,
      given: si[at],
      expected: 'finite',
      remedy: 'Omit the sample, or repair it first',
    });
}
