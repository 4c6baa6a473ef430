import { MeopError, type QuantityInput, readInput } from '../units';
import type { Firing } from './firing';

/**
 * Pressure around the motor in Pa: the one given, else that of the record. It is never assumed, since where the record
 * does not say it only the one who stood there knows it.
 *
 * @throws MeopError `missing-field` where neither says it
 * @example ambientOf(firing({ origin: 'measured', time: series([0, 1], 's'), thrust: series([0, 5], 'N') }), '0.1 MPa', 'myReduction') // => 100000
 */
export function ambientOf(
  record: Firing,
  given: QuantityInput<'absolute pressure'> | undefined,
  caller: string,
): number {
  if (given !== undefined) {
    const { si } = readInput('absolute pressure', 'ambientPressure', given, caller);
    if (si >= 0) return si;
    throw new MeopError(
      'out-of-domain',
      `${caller}: ambientPressure: ${String(given)} given; 0 or more is expected`,
      'ambientPressure',
      { value: given, expected: 'absolute pressure' },
    );
  }
  if (record.ambientPressure !== undefined) return record.ambientPressure.si;
  throw new MeopError(
    'missing-field',
    `${caller}: ambientPressure: the record does not say it, and pressures are absolute; give it: { ambientPressure: '101.3 kPa' }, or make the record with it`,
    'ambientPressure',
    { expected: 'absolute pressure' },
  );
}
