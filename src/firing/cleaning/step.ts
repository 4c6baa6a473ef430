import { fromSiArray, MeopError } from '../../units';
import { ambientOf } from '../ambient';
import { type AnalysedRecord, analysedRecord, type CleanedChannel } from '../analysis/analysed-record';
import type { AnalysedTrace } from '../analysis/analysed-trace';
import { type Firing, type FiringEvent, firing } from '../firing';

const kinds = { pressure: 'absolute pressure', thrust: 'force' } as const;

/** What a step of cleaning makes of a record: new samples for some channels, a new time where samples moved. */
interface StepChanges {
  readonly time?: Float64Array;
  readonly channels?: Partial<Record<CleanedChannel, AnalysedTrace>>;
  readonly temperatures?: Readonly<Record<string, Float64Array>>;
  /** Added to those of the record. */
  readonly events?: readonly FiringEvent[];
  readonly cautions?: readonly string[];
}

/**
 * A new record with the changes made and one line more in its history; the old one is left as it is. What was found out
 * about a channel is kept with its samples.
 */
export function step(record: AnalysedRecord, changes: StepChanges, line: string): AnalysedRecord {
  const { time, channels = {}, temperatures, events = [], cautions = [] } = changes;
  const { pressure, thrust } = channels;
  const next = firing({
    ...record,
    ...(time && { time: fromSiArray('time', time, 's') }),
    ...(pressure && { pressure: fromSiArray('absolute pressure', pressure.values, 'MPa') }),
    ...(thrust && { thrust: fromSiArray('force', thrust.values, 'N') }),
    ...(temperatures && {
      temperatures: Object.fromEntries(
        Object.entries(temperatures).map(([name, si]) => [name, fromSiArray('temperature', si, 'degC')]),
      ),
    }),
    events: [...record.events, ...events],
    cautions: [...record.cautions, ...cautions.filter((caution) => !record.cautions.includes(caution))],
    history: [...record.history, line],
  });
  return analysedRecord(next, Object.values({ ...record.traces, ...channels }));
}

/** A channel of a record. @throws MeopError `missing-field` */
export function traceOf(record: AnalysedRecord, channel: CleanedChannel, caller: string): AnalysedTrace {
  const found = record.traces[channel];
  if (found !== undefined) return found;
  throw new MeopError('missing-field', `${caller}: ${channel}: the record has no ${channel}`, channel, {
    expected: `a series of ${kinds[channel]}`,
  });
}

/** The channels asked for, or those of pressure and thrust that the record has. */
export function channelsOf(
  record: AnalysedRecord,
  asked: readonly CleanedChannel[] | undefined,
  caller: string,
): readonly CleanedChannel[] {
  if (asked !== undefined) {
    for (const channel of asked) traceOf(record, channel, caller);
    return asked;
  }
  const all: readonly CleanedChannel[] = ['pressure', 'thrust'];
  return all.filter((channel) => record.traces[channel] !== undefined);
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
