import { fromSiArray, MeopError } from '../../units';
import { ambientOf } from '../ambient';
import { type Firing, firing } from '../firing';

/** The channels that cleaning works on. */
export type CleanedChannel = 'pressure' | 'thrust';

const kinds = { pressure: 'absolute pressure', thrust: 'force' } as const;

/** What a step of cleaning makes of a record: new samples for some channels, a new time where samples moved. */
export interface StepChanges {
  readonly time?: Float64Array;
  readonly channels?: Partial<Record<CleanedChannel, Float64Array>>;
  readonly temperatures?: Readonly<Record<string, Float64Array>>;
  readonly cautions?: readonly string[];
}

/** A new record with the changes made and one line more in its history; the old one is left as it is. */
export function step(record: Firing, changes: StepChanges, line: string): Firing {
  const { time, channels = {}, temperatures, cautions = [] } = changes;
  return firing({
    ...record,
    ...(time && { time: fromSiArray('time', time, 's') }),
    ...(channels.pressure && { pressure: fromSiArray('absolute pressure', channels.pressure, 'MPa') }),
    ...(channels.thrust && { thrust: fromSiArray('force', channels.thrust, 'N') }),
    ...(temperatures && {
      temperatures: Object.fromEntries(
        Object.entries(temperatures).map(([name, si]) => [name, fromSiArray('temperature', si, 'degC')]),
      ),
    }),
    cautions: [...record.cautions, ...cautions.filter((caution) => !record.cautions.includes(caution))],
    history: [...record.history, line],
  });
}

/** The samples of a channel as plain SI numbers. @throws MeopError `missing-field` */
export function channelSi(record: Firing, channel: CleanedChannel, caller: string): Float64Array {
  const found = record[channel];
  if (found !== undefined) return found.si;
  throw new MeopError('missing-field', `${caller}: ${channel}: the record has no ${channel}`, channel, {
    expected: `a series of ${kinds[channel]}`,
  });
}

/** The channels asked for, or those of pressure and thrust that the record has. */
export function channelsOf(
  record: Firing,
  asked: readonly CleanedChannel[] | undefined,
  caller: string,
): readonly CleanedChannel[] {
  if (asked !== undefined) {
    for (const channel of asked) channelSi(record, channel, caller);
    return asked;
  }
  const all: readonly CleanedChannel[] = ['pressure', 'thrust'];
  return all.filter((channel) => record[channel] !== undefined);
}

/** What a pressure stands at before ignition: ambient. Thrust stands at zero. @throws MeopError `missing-field` */
export function baselineValue(record: Firing, channel: CleanedChannel, caller: string): number {
  if (channel === 'thrust') return 0;
  return ambientOf(record, undefined, caller);
}

/** A value as text, in the unit that the channel is shown in. */
export function shown(channel: CleanedChannel, si: number): string {
  return channel === 'thrust' ? `${Number(si.toPrecision(4))} N` : `${Number((si / 1e6).toPrecision(4))} MPa`;
}
