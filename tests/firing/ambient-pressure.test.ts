import { expect, test } from 'vitest';
import {
  align,
  detectBurn,
  detectClipping,
  type Firing,
  findResonance,
  firing,
  lowPass,
  recoverPressure,
  recoverThrust,
  removeBaseline,
} from '../../src/firing';
import { fromSiArray, q } from '../../src/units';
import { errorOf } from '../error-code';

// What is expected is the rule itself: ambient pressure is given, never assumed.
const time = Float64Array.from({ length: 1000 }, (_, i) => i / 250);
const pulse = (t: number): number => (t > 1 && t < 3 ? Math.sin((Math.PI * (t - 1)) / 2) : 0);
const record = (pressureLimit: number, thrustLimit: number): Firing =>
  firing({
    origin: 'measured',
    time: fromSiArray('time', time, 's'),
    pressure: fromSiArray(
      'absolute pressure',
      time.map((t) => 9e4 + Math.min(pressureLimit, 4e6 * pulse(t))),
      'MPa',
    ),
    thrust: fromSiArray(
      'force',
      time.map((t) => Math.min(thrustLimit, 300 * pulse(t))),
      'N',
    ),
  });
const silent = record(2.5e6, 1000);
const thrustCut = record(1e7, 200);

const refusal = (call: () => unknown): string => {
  const error = errorOf(call);
  return error ? `${error.code} ${error.path}: ${error.message}` : 'no error';
};

test.each([
  ['recoverPressure', () => recoverPressure(silent)],
  ['recoverThrust', () => recoverThrust(thrustCut)],
  ['detectClipping', () => detectClipping(silent)],
  ['detectBurn', () => detectBurn(silent)],
  ['align', () => align(silent)],
  ['lowPass', () => lowPass(silent, { cutoff: '20 Hz' })],
  ['findResonance', () => findResonance(silent, { channel: 'pressure' })],
  ['removeBaseline', () => removeBaseline(silent)],
])('%s of a record without ambient pressure raises an error with the fix', (name, call) => {
  expect(refusal(call)).toMatch(/^missing-field ambientPressure: /);
  expect(refusal(call)).toContain(`${name}: missing required field ambientPressure`);
  expect(refusal(call)).toContain("{ ambientPressure: '101.3 kPa' }");
});

test('given as an option it does what it does in the record, and the record recovered carries it', () => {
  const said = firing({ ...silent, ambientPressure: q('90 kPa').as('absolute pressure') });
  const option = recoverPressure(silent, { ambientPressure: '90 kPa' });
  expect(option.peak.value.si).toBe(recoverPressure(said).peak.value.si);
  expect(option.record.ambientPressure?.si).toBe(90_000);
  const spans = detectClipping(silent, { ambientPressure: '90 kPa' }).pressure?.spans;
  expect(spans).toEqual(detectClipping(said).pressure?.spans);
  expect(spans?.length).toBe(1);
});

test('an ambient pressure below nothing is refused', () => {
  expect(refusal(() => recoverPressure(silent, { ambientPressure: '-1 kPa' }))).toMatch(/^out-of-domain/);
});
