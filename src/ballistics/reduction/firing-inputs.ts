// What the reductions of a firing have in common.
import type { Firing } from '../../firing';
import { ambientSi } from '../../firing/ambient';
import { analysedRecord } from '../../firing/analysis/analysed-record';
import type { AnalysedTrace } from '../../firing/analysis/analysed-trace';
import { firingInput } from '../../firing/firing';
import { ambientPressure } from '../../firing/motor-inputs';
import { instance, MeopError, optional, type Place, type Quantity } from '../../units';
import { pathTo } from '../../units/declare/place';
import { type Grain, type Regression, regress } from '../grain';

/** A firing with pressure, and the pressure around the motor. */
export const pressureRecord = {
  record: firingInput,
  ambientPressure: optional({
    ...ambientPressure,
    meaning: `${ambientPressure.meaning}; that of the record if omitted`,
  }),
};

const isGrainOrRegression = (value: unknown): value is Grain | Regression =>
  typeof value === 'object' &&
  value !== null &&
  ('shape' in value || ('si' in value && 'burningArea' in value));

/** A grain or its regression. */
export const grainInput = instance(
  'grain, or its regression',
  'a grain or its regression',
  isGrainOrRegression,
);

/** The regression of what was given. */
export const regressionOf = (grain: Grain | Regression): Regression =>
  'si' in grain ? grain : regress(grain);

/** The analysed pressure of a record. @throws MeopError `missing-field` where it has none */
export function pressureOf(record: Firing, at: Place): AnalysedTrace {
  const { pressure } = analysedRecord(record).traces;
  if (pressure !== undefined) return pressure;
  throw new MeopError({
    code: 'missing-field',
    procedure: at.procedure,
    path: pathTo(at, 'record.pressure'),
    expected: 'pressure of the firing',
  });
}

/** Pressure around the motor [Pa]: as given, or that of the record. @throws MeopError `missing-field` */
export function ambientAt(
  record: Firing,
  given: Quantity<'absolute pressure'> | undefined,
  at: Place,
): number {
  try {
    return ambientSi(record, given, at.procedure);
  } catch (error) {
    if (at.path === '' || !(error instanceof MeopError)) throw error;
    throw error.within(at.procedure, at.path);
  }
}
