import { type Firing, withText } from '../firing';
import { type AnalysedTrace, analysedTrace } from './analysed-trace';

/** The channels that are analysed and cleaned. */
export type CleanedChannel = 'pressure' | 'thrust';

/**
 * A firing record together with the analysis of its channels. It is passed from step to step like any record, so that
 * burn edges, baselines and noise are determined once for each set of samples.
 */
export interface AnalysedRecord extends Firing {
  /** Not enumerable: a copy made by spreading may contain other samples and must be analysed again. */
  readonly traces: AnalysedTraces;
}

type AnalysedTraces = { readonly [K in CleanedChannel]?: AnalysedTrace };

/**
 * Returns the record with its analysis; a record that is already analysed is returned unchanged. Known traces of the
 * same samples are reused.
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
  return withText(made);
}

const isAnalysed = (record: Firing): record is AnalysedRecord => 'traces' in record;
