import type { Firing } from '../firing';
import { type AnalysedTrace, analysedTrace } from './analysed-trace';

/** The channels that are analysed and cleaned. */
export type CleanedChannel = 'pressure' | 'thrust';

/**
 * A firing record with what has been found out about its channels. It is passed from step to step as a record is, so
 * that edges, baselines and noise are found once for each set of samples.
 */
export interface AnalysedRecord extends Firing {
  /** Not enumerable: a copy with other samples, made by spreading, has to be analysed anew. */
  readonly traces: AnalysedTraces;
}

type AnalysedTraces = { readonly [K in CleanedChannel]?: AnalysedTrace };

/**
 * The record as one whose analysis can be asked for; one that is analysed comes back as it is. Of the traces that are
 * known already, those of the same samples are kept.
 */
export function analysedRecord(record: Firing, known: readonly AnalysedTrace[] = []): AnalysedRecord {
  if (isAnalysed(record)) return record;
  const time = record.time.si;
  const trace = (channel: CleanedChannel): AnalysedTraces => {
    const values = record[channel]?.si;
    if (values === undefined) return {};
    const same = known.find((one) => one.values === values && one.time === time);
    return { [channel]: same ?? analysedTrace(time, values) };
  };
  const made: AnalysedRecord = { ...record, traces: { ...trace('pressure'), ...trace('thrust') } };
  Object.defineProperty(made, 'traces', { enumerable: false });
  return made;
}

const isAnalysed = (record: Firing): record is AnalysedRecord => 'traces' in record;
