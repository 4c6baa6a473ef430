import { expect, test } from 'vitest';
import { calibrate, readLog, thermocoupleCalibration, thermocoupleVoltage } from '../../../src/firing';
import { q } from '../../../src/units';
import { codeOf } from '../../error-code';

// A hot junction that stays at 600 °C while the board with the cold junction warms from 20 to 50 °C: the voltage falls,
// the temperature told must not. Truth is what the voltages were made from (ITS-90, tested in calibration.test.ts).
const rows = Array.from({ length: 60 }, (_, i) => {
  const cold = 20 + i / 2;
  const voltage = thermocoupleVoltage({
    type: 'K',
    temperature: '600 degC',
    coldJunction: q(cold, 'degC'),
  });
  return `${100 * i},${voltage},${cold}`;
});
const log = readLog(`time (ms),throat (mV),board (degC)\n${rows.join('\n')}\n`, {
  channels: { 'temperature throat': { column: 'throat' }, 'temperature board': { column: 'board' } },
});
const throat = (channel: string) => ({
  'temperature throat': thermocoupleCalibration({ type: 'K', coldJunction: { channel } }),
});
test('a logged cold junction is compensated sample by sample', () => {
  const { values } = calibrate(log, throat('temperature board')).channels['temperature throat'];
  for (const kelvin of values) expect(kelvin).toBeCloseTo(873.15, 3);
  const fixed = calibrate(log, {
    'temperature throat': thermocoupleCalibration({ type: 'K', coldJunction: '20 degC' }),
  }).channels['temperature throat'].values;
  // Some 30 K of drift of the board would else be read as the nozzle's.
  expect(fixed[0] - fixed[fixed.length - 1]).toBeGreaterThan(20);
});

test('a channel that is not there, or is no temperature, is refused', () => {
  expect(codeOf(() => calibrate(log, throat('temperature elsewhere')))).toBe('missing-field');
  expect(codeOf(() => calibrate(log, throat('temperature throat')))).toBe('wrong-kind');
  const calibration = thermocoupleCalibration({ type: 'K', coldJunction: { channel: 'temperature board' } });
  const channels = { 'temperature throat': { column: 2, calibration } };
  expect(codeOf(() => readLog('time (ms),throat (mV)\n0,1\n1,1\n2,1\n', { channels }))).toBe('missing-field');
});
