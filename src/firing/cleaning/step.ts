import { fromSiArray, MeopError } from '../../units';
import { ambientSi } from '../ambient';
import { type AnalysedRecord, analysedRecord, type CleanedChannel } from '../analysis/analysed-record';
import type { AnalysedTrace } from '../analysis/analysed-trace';
import { type Firing, type FiringEvent, firingOf } from '../firing';

const kinds = { pressure: 'absolute pressure', thrust: 'force' } as const;

/** Changes of a cleaning step: new samples of some channels, and a new time base where samples moved. */
interface StepChanges {
  readonly time?: Float64Array;
  readonly channels?: Partial<Record<CleanedChannel, AnalysedTrace>>;
  readonly temperatures?: Readonly<Record<string, Float64Array>>;
  /** Events added to those of the record. */
  readonly events?: readonly FiringEvent[];
  readonly cautions?: readonly string[];
}

/**
 * Returns a new record with the changes and one more line of history. The given record is not changed; the analysis of
 * unchanged channels is reused.
 */
export function step(record: AnalysedRecord, changes: StepChanges, line: string): AnalysedRecord {
  const { time, channels = {}, temperatures, events = [], cautions = [] } = changes;
  const { pressure, thrust } = channels;
  const next = firingOf<Firing>({
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

/** Returns a channel of the record. @throws MeopError `missing-field` */
export function traceOf(record: AnalysedRecord, channel: CleanedChannel, caller: string): AnalysedTrace {
  const found = record.traces[channel];
  if (found !== undefined) return found;
  throw new MeopError({
    code: 'missing-field',
    procedure: caller,
    path: channel,
    expected: `a series of ${kinds[channel]}`,
    remedy: 'Make the record with it',
  });
}

/** The requested channels, or by default those of pressure and thrust that the record has. */
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

/** Resting value of a channel: ambient for pressure, zero for thrust. @throws MeopError `missing-field` */
export function baselineValue(record: Firing, channel: CleanedChannel, caller: string): number {
  if (channel === 'thrust') return 0;
  return ambientSi(record, undefined, caller);
}

/** A value as text, in the display unit of the channel. */
export function shown(channel: CleanedChannel, si: number): string {
  return channel === 'thrust' ? `${Number(si.toPrecision(4))} N` : `${Number((si / 1e6).toPrecision(4))} MPa`;
}
