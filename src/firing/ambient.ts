import { MeopError, optional, procedure, type QuantityInput } from '../units';
import { exampleFiring, type Firing, firingInput } from './firing';
import { ambientPressure } from './motor-inputs';

/** Kernel: {@link ambientOf} on behalf of another calculation. */
export function ambientSi(
  record: Firing,
  given: QuantityInput<'absolute pressure'> | undefined,
  caller: string,
): number {
  const path = 'ambientPressure';
  if (given !== undefined) return ambientPressure.read(given, { procedure: caller, path }).si;
  if (record.ambientPressure !== undefined) return record.ambientPressure.si;
  throw new MeopError({
    code: 'missing-field',
    procedure: caller,
    path,
    expected: `${ambientPressure.meaning}; the record has none`,
    remedy: "Give { ambientPressure: '101.3 kPa' }, or make the record with it",
  });
}

/**
 * Returns the pressure around the motor in Pa: the given value, or else that of the record. It is never assumed.
 *
 * @example ambientOf(firing({ origin: 'measured', time: series([0, 1], 's'), thrust: series([0, 5], 'N') }), { ambientPressure: '0.1 MPa' }) // => 100000
 */
export const ambientOf = /* @__PURE__ */ procedure({
  name: 'ambientOf',
  title: 'Ambient pressure of a firing',
  source: 'the given value, or else that of the record',
  subject: firingInput,
  inputs: { ambientPressure: optional(ambientPressure) },
  gives: 'the pressure around the motor, Pa',
  example: `ambientOf(${exampleFiring}, { ambientPressure: '0.1 MPa' })`,
  run: (record, given): number => ambientSi(record, given.ambientPressure, 'ambientOf'),
});
