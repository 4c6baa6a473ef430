import { fromSiValue, MeopError, type NamedKind, type Quantity, type QuantityInput, unitOf } from '../units';
import { type FieldsOf, requireFields } from '../units/known-fields';
import { readPositive } from '../units/refusal';
import { type BurnLaw, temperatureFactorSi } from './burn-law';
import { bandAt, bandRateSi } from './burn-law-band';

/** What the burning rate depends on. */
export interface BurnConditions {
  /** Absolute chamber pressure. */
  readonly pressure: QuantityInput<'absolute pressure'>;
  /** Initial temperature of the grain; that of the characterisation where left out. */
  readonly temperature?: QuantityInput<'temperature'>;
}

const context = 'burnRate';

const fields: FieldsOf<BurnConditions> = { pressure: 'required', temperature: 'optional' };

/** The burning rate by a law, with cautions where the law is trusted beyond what was measured. */
export function rateByLaw(law: BurnLaw, conditions: BurnConditions | undefined): Quantity<'speed'> {
  if (typeof conditions !== 'object' || conditions === null)
    throw new MeopError(
      'missing-field',
      `${context}: after a burn law { pressure, temperature? } is expected`,
      'pressure',
    );
  requireFields(context, conditions, fields);
  const pressure = positive('absolute pressure', 'pressure', conditions.pressure);
  const temperature =
    conditions.temperature === undefined
      ? law.referenceTemperature.si
      : positive('temperature', 'temperature', conditions.temperature);
  const held = pressureHeld(law, pressure);
  const rate = bandRateSi(law.bands[bandAt(law.bands, held)], held) * temperatureFactorSi(law, temperature);
  const cautions = [
    ...rangeCautions(law, pressure, pressure),
    ...(law.temperatureSensitivity === undefined && temperature !== law.referenceTemperature.si
      ? [sensitivityUnknown]
      : []),
  ];
  return fromSiValue<'speed'>(rate, 'speed', unitOf('mm/s'), cautions);
}

/** Said where a grain temperature is given and the law does not know what it does. */
export const sensitivityUnknown =
  'the burn law has no temperature sensitivity: the grain temperature given changes nothing';

/** The pressure at which the law is evaluated: its end where it is told to clamp. */
function pressureHeld(law: BurnLaw, pressure: number): number {
  const { from, to } = law.characterised;
  if (law.outside === 'extrapolate' || (pressure >= from && pressure <= to)) return pressure;
  if (law.outside === 'clamp') return Math.min(Math.max(pressure, from), to);
  throw new MeopError(
    'out-of-range',
    `${context}: pressure: ${pressure / 1e6} MPa given; the law was characterised from ${from / 1e6} to ${to / 1e6} MPa and is told to refuse others: say outside: 'extrapolate' or 'clamp'`,
    'pressure',
    { value: pressure, expected: `${from} to ${to} Pa` },
  );
}

/** Cautions for pressures from `least` to `most` [Pa] that leave the characterised range. */
export function rangeCautions(law: BurnLaw, least: number, most: number): readonly string[] {
  const { from, to } = law.characterised;
  const how = law.outside === 'clamp' ? 'the rate at its end is used' : 'the law is extrapolated';
  const mpa = (pressure: number): string => `${Number((pressure / 1e6).toPrecision(4))} MPa`;
  return [
    ...(most > to
      ? [`${mpa(most)} is above the ${mpa(to)} up to which the burn law was characterised: ${how}`]
      : []),
    ...(least < from
      ? [`${mpa(least)} is below the ${mpa(from)} from which the burn law was characterised: ${how}`]
      : []),
  ];
}

const positive = (kind: NamedKind, field: string, value: unknown): number =>
  readPositive(kind, field, value, context).si;
