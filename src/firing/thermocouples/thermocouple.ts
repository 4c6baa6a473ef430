import {
  choice,
  fromSiValue,
  MeopError,
  procedure,
  type Quantity,
  ratio,
  temperature,
  unitOf,
} from '../../units';
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

const types = ['K', 'J', 'T', 'N', 'E'] as const satisfies readonly ThermocoupleType[];

/** Type letter of a thermocouple. */
export const thermocoupleType = /* @__PURE__ */ choice('type of the thermocouple', types);

/** Temperature of the cold junction. */
export const coldJunction = /* @__PURE__ */ temperature('T_c', 'temperature of the cold junction', {
  example: '21 degC',
});

const source = 'NIST Standard Reference Database 60 (ITS-90; NIST Monograph 175, 1993)';

/**
 * Returns the temperature of the hot junction of a thermocouple from its voltage and the temperature of its cold
 * junction.
 *
 * @example thermocoupleTemperature({ type: 'K', voltage: 4.09623, coldJunction: '0 degC' }).in('degC').toFixed(2) // => '100.00'
 */
export const thermocoupleTemperature = /* @__PURE__ */ procedure({
  name: 'thermocoupleTemperature',
  title: 'Temperature of a thermocouple from its voltage',
  source,
  inputs: {
    type: thermocoupleType,
    voltage: ratio('E', 'measured voltage in mV, as in thermocouple tables', { example: 4.09623 }),
    coldJunction,
  },
  gives: 'the temperature of the hot junction',
  example: { type: 'K', voltage: 4.09623, coldJunction: '0 degC' },
  run: ({ type, voltage, coldJunction: cold }): Quantity<'temperature'> => {
    const kelvin = readThermocouple(type, voltage / 1000, cold.si);
    if (Number.isFinite(kelvin)) return fromSiValue<'temperature'>(kelvin, 'temperature', unitOf('degC'));
    const { inverse } = thermocoupleFunctions[type];
    throw new MeopError({
      code: 'out-of-domain',
      procedure: 'thermocoupleTemperature',
      path: 'voltage',
      given: `${voltage} mV`,
      note: `cold junction at ${cold}`,
      expected: `equivalent to ${inverse[0].from} to ${inverse[inverse.length - 1].to} mV with the cold junction at 0 °C (type ${type})`,
      remedy: 'Check polarity and type, and for an open junction',
    });
  },
});

/**
 * Returns the voltage of a thermocouple in mV.
 *
 * @example thermocoupleVoltage({ type: 'K', temperature: '100 degC', coldJunction: '0 degC' }).toFixed(3) // => '4.096'
 */
export const thermocoupleVoltage = /* @__PURE__ */ procedure({
  name: 'thermocoupleVoltage',
  title: 'Voltage of a thermocouple from its temperatures',
  source,
  inputs: {
    type: thermocoupleType,
    temperature: temperature('T', 'temperature of the hot junction', { example: '100 degC' }),
    coldJunction,
  },
  gives: 'the voltage in mV',
  example: { type: 'K', temperature: '100 degC', coldJunction: '0 degC' },
  run: ({ type, temperature: hot, coldJunction: cold }): number => {
    const volts = thermocoupleEmfSi(type, hot.si, cold.si);
    if (Number.isFinite(volts)) return volts * 1000;
    const { direct } = thermocoupleFunctions[type];
    throw new MeopError({
      code: 'out-of-domain',
      procedure: 'thermocoupleVoltage',
      path: 'temperature',
      given: hot,
      note: `cold junction at ${cold}`,
      expected: `from ${direct[0].from} to ${direct[direct.length - 1].to} °C (type ${type}), and the cold junction too`,
    });
  },
});
