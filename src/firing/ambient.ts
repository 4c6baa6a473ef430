import { MeopError, type QuantityInput, readInput } from '../units';
import type { Firing } from './firing';

/**
 * Returns the pressure around the motor in Pa: the given value, or else that of the record. It is never assumed.
 *
 * @throws MeopError `missing-field` where neither is known
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
      `${caller}: ambientPressure must be 0 or more, got ${String(given)}`,
      'ambientPressure',
      { value: given, expected: 'absolute pressure' },
    );
  }
  if (record.ambientPressure !== undefined) return record.ambientPressure.si;
  throw new MeopError(
    'missing-field',
    `${caller}: missing required field ambientPressure (pressure around the motor; the record has none). Give { ambientPressure: '101.3 kPa' }, or make the record with it.`,
    'ambientPressure',
    { expected: 'absolute pressure' },
  );
}
