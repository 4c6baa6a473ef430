import { choice, either, inputs, isQuantity, optional, procedure, ratio, words } from '../../units';
import { coldJunction, thermocoupleType } from '../thermocouples/thermocouple';
import { readingRange, type ThermocoupleCalibration } from './calibration';

const voltsPer = { V: 1, mV: 1e-3, µV: 1e-6 } as const;

/**
 * Returns the calibration of a thermocouple channel: from the voltage at the amplifier output to temperature, with the
 * cold junction compensated in voltage.
 *
 * @example thermocoupleCalibration({ type: 'K', coldJunction: '21 degC', readingUnit: 'mV' }).slope // => 0.001
 */
export const thermocoupleCalibration = /* @__PURE__ */ procedure({
  name: 'thermocoupleCalibration',
  title: 'Calibration of a thermocouple channel',
  source: 'NIST Standard Reference Database 60 (ITS-90; NIST Monograph 175, 1993)',
  inputs: {
    type: thermocoupleType,
    coldJunction: either('temperature of the cold junction, or the channel of the log that contains it', [
      inputs({ channel: words('name of the channel') }, { meaning: 'channel of the log' }),
      coldJunction,
    ]),
    readingUnit: optional(choice('unit of the readings', ['V', 'mV', 'µV']), 'mV'),
    gain: optional(ratio('G', 'amplifier gain between thermocouple and reading', { above: 0 }), 1),
    range: optional(readingRange),
  },
  gives: 'the calibration',
  example: { type: 'K', coldJunction: '21 degC', readingUnit: 'mV' },
  run: ({ type, coldJunction: cold, readingUnit, gain, range }): ThermocoupleCalibration => ({
    form: 'thermocouple',
    measures: 'temperature',
    readingUnit,
    type,
    coldJunction: isQuantity(cold) ? cold.si : cold,
    slope: voltsPer[readingUnit] / gain,
    intercept: 0,
    ...(range && { range }),
    basis: `type ${type} thermocouple, ITS-90 (NIST Standard Reference Database 60)`,
    cautions: [],
  }),
});
