import { type QuantityInput, readInput } from '../../units';
import type { ThermocoupleType } from '../thermocouples/thermocouple';
import type { ReadingRange, ThermocoupleCalibration } from './calibration';

const voltsPer: Readonly<Record<string, number>> = { V: 1, mV: 1e-3, µV: 1e-6 };

/**
 * Returns the calibration of a thermocouple channel: from the voltage at the amplifier output to temperature, with the
 * cold junction compensated in voltage.
 *
 * @example thermocoupleCalibration({ type: 'K', coldJunction: '21 degC', readingUnit: 'mV' }).slope // => 0.001
 */
export function thermocoupleCalibration(options: {
  readonly type: ThermocoupleType;
  /**
   * Temperature of the cold junction, or the channel of the log that contains it: `{ channel: 'temperature board' }`.
   */
  readonly coldJunction: QuantityInput<'temperature'> | { readonly channel: string };
  /** Unit of the readings. Default `'mV'`. */
  readonly readingUnit?: 'V' | 'mV' | 'µV';
  /** Amplifier gain between thermocouple and reading. Default 1. */
  readonly gain?: number;
  readonly range?: ReadingRange;
}): ThermocoupleCalibration {
  const { type, coldJunction, readingUnit = 'mV', gain = 1, range } = options;
  return {
    form: 'thermocouple',
    measures: 'temperature',
    readingUnit,
    type,
    coldJunction:
      typeof coldJunction === 'object' && 'channel' in coldJunction
        ? { channel: coldJunction.channel }
        : readInput('temperature', 'coldJunction', coldJunction, 'thermocoupleCalibration').si,
    slope: voltsPer[readingUnit] / gain,
    intercept: 0,
    ...(range && { range }),
    basis: `type ${type} thermocouple, ITS-90 (NIST Standard Reference Database 60)`,
    cautions: [],
  };
}
