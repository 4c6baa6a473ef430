import { fromSiValue, MeopError, type Quantity, type QuantityInput, readInput, unitOf } from '../../units';
import { type ThermocoupleType, thermocoupleFunctions } from './its90';

export type { ThermocoupleType } from './its90';

const icePoint = 273.15;

/**
 * Kernel: emf of a thermocouple in V by the ITS-90 reference function, for junction temperatures in K; NaN outside its
 * range.
 */
export function thermocoupleEmfSi(
  type: ThermocoupleType,
  temperature: number,
  coldJunction = icePoint,
): number {
  return (emfMillivolts(type, temperature - icePoint) - emfMillivolts(type, coldJunction - icePoint)) / 1000;
}

function emfMillivolts(type: ThermocoupleType, celsius: number): number {
  const { direct, exponential } = thermocoupleFunctions[type];
  for (const { from, to, coefficients } of direct) {
    // Conversion of 1273.15 K gives 1000 °C with a rounding error.
    if (celsius < from - 1e-9 || celsius > to + 1e-9) continue;
    const value = horner(coefficients, celsius);
    return exponential && from >= 0
      ? value + exponential.a0 * Math.exp(exponential.a1 * (celsius - exponential.a2) ** 2)
      : value;
  }
  return Number.NaN;
}

/**
 * Kernel: temperature in K of the hot junction for a measured voltage in V; NaN where no temperature gives it.
 *
 * The cold junction is compensated in voltage, because the functions are not linear. The approximate inverse is refined
 * by Newton steps on the reference function, so that it reproduces the emf.
 */
export function readThermocouple(type: ThermocoupleType, voltage: number, coldJunction: number): number {
  const millivolts = voltage * 1000 + emfMillivolts(type, coldJunction - icePoint);
  const { inverse, direct } = thermocoupleFunctions[type];
  const last = inverse.length - 1;
  // The printed limits are rounded, so half a microvolt beyond them is accepted.
  if (!(millivolts >= inverse[0].from - 5e-4 && millivolts <= inverse[last].to + 5e-4)) return Number.NaN;
  let k = 0;
  while (k < last && millivolts > inverse[k].to) k++;
  let celsius = horner(inverse[k].coefficients, millivolts);
  const top = direct[direct.length - 1].to;
  for (let i = 0; i < 3; i++) {
    const at = Math.min(Math.max(celsius, direct[0].from + 1), top - 0.5);
    const slope = emfMillivolts(type, at + 0.5) - emfMillivolts(type, at - 0.5);
    const next = celsius - (emfMillivolts(type, Math.min(celsius, top)) - millivolts) / slope;
    if (!Number.isFinite(next)) break;
    celsius = next;
  }
  return celsius + icePoint;
}

const horner = (coefficients: readonly number[], x: number): number =>
  coefficients.reduceRight((sum, c) => sum * x + c, 0);

/**
 * Returns the temperature of the hot junction of a thermocouple from its voltage and the temperature of its cold
 * junction.
 *
 * `voltage` is in mV, as in thermocouple tables. Source: NIST Standard Reference Database 60 (ITS-90; NIST Monograph
 * 175, 1993).
 *
 * @throws MeopError `out-of-domain` where no temperature within the range of the type gives the voltage
 * @example thermocoupleTemperature({ type: 'K', voltage: 4.09623, coldJunction: '0 degC' }).in('degC').toFixed(2) // => '100.00'
 */
export function thermocoupleTemperature(options: {
  readonly type: ThermocoupleType;
  /** Measured voltage, mV. */
  readonly voltage: number;
  readonly coldJunction: QuantityInput<'temperature'>;
}): Quantity<'temperature'> {
  const { type, voltage } = options;
  requireType('thermocoupleTemperature', type);
  const cold = readInput('temperature', 'coldJunction', options.coldJunction, 'thermocoupleTemperature').si;
  const kelvin = readThermocouple(type, voltage / 1000, cold);
  if (!Number.isFinite(kelvin)) {
    const { inverse } = thermocoupleFunctions[type];
    throw new MeopError(
      'out-of-domain',
      `thermocoupleTemperature: voltage must correspond to ${inverse[0].from} to ${inverse[inverse.length - 1].to} mV from a cold junction at 0 °C (type ${type}), got ${voltage} mV with the cold junction at ${String(options.coldJunction)}. Check polarity, type and for an open junction.`,
      'voltage',
      { value: voltage },
    );
  }
  return fromSiValue<'temperature'>(kelvin, 'temperature', unitOf('degC'));
}

/**
 * Returns the voltage of a thermocouple in mV.
 *
 * @throws MeopError `out-of-domain` outside the type's range
 * @example thermocoupleVoltage({ type: 'K', temperature: '100 degC', coldJunction: '0 degC' }).toFixed(3) // => '4.096'
 */
export function thermocoupleVoltage(options: {
  readonly type: ThermocoupleType;
  readonly temperature: QuantityInput<'temperature'>;
  readonly coldJunction: QuantityInput<'temperature'>;
}): number {
  const { type } = options;
  requireType('thermocoupleVoltage', type);
  const hot = readInput('temperature', 'temperature', options.temperature, 'thermocoupleVoltage').si;
  const cold = readInput('temperature', 'coldJunction', options.coldJunction, 'thermocoupleVoltage').si;
  const volts = thermocoupleEmfSi(type, hot, cold);
  if (Number.isFinite(volts)) return volts * 1000;
  const { direct } = thermocoupleFunctions[type];
  throw new MeopError(
    'out-of-domain',
    `thermocoupleVoltage: temperature and coldJunction must be from ${direct[0].from} to ${direct[direct.length - 1].to} °C (type ${type}), got ${String(options.temperature)} and ${String(options.coldJunction)}`,
    'temperature',
    { value: options.temperature },
  );
}

function requireType(caller: string, type: string): void {
  if (Object.hasOwn(thermocoupleFunctions, type)) return;
  throw new MeopError(
    'unknown-name',
    `${caller}: unknown type '${type}'. Available: ${Object.keys(thermocoupleFunctions).join(', ')}.`,
    'type',
    { value: type },
  );
}
