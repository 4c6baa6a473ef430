import { type Arguments, fromSiValue, inputs, MeopError, optional, type Quantity, unitOf } from '../units';
import { type BurnLaw, temperatureFactorSi } from './burn-law';
import { bandAt, bandRateSi } from './burn-law-band';
import { ratePoint } from './burn-law-inputs';
import { grainTemperature } from './motor-inputs';

const context = 'burnRate';

/** What the burning rate by a law depends on. */
const conditionInputs = /* @__PURE__ */ inputs(
  { pressure: ratePoint.fields.pressure, temperature: optional(grainTemperature) },
  { meaning: 'conditions of burning' },
);

/** Chamber pressure and, optionally, grain temperature; that of the characterisation if omitted. */
export type BurnConditions = Arguments<typeof conditionInputs.fields>;

/** The burning rate by a law, with cautions outside its characterisation. */
export function rateByLaw(law: BurnLaw, conditions: BurnConditions | undefined): Quantity<'speed'> {
  const given = conditionInputs.read(conditions, { procedure: context, path: '' });
  const temperature = given.temperature?.si ?? law.referenceTemperature.si;
  const pressure = evaluationPressure(law, given.pressure);
  const rate =
    bandRateSi(law.bands[bandAt(law.bands, pressure)], pressure) * temperatureFactorSi(law, temperature);
  const cautions = [
    ...rangeCautions(law, given.pressure.si, given.pressure.si),
    ...(law.temperatureSensitivity === undefined && temperature !== law.referenceTemperature.si
      ? [sensitivityUnknown]
      : []),
  ];
  return fromSiValue<'speed'>(rate, 'speed', unitOf('mm/s'), cautions);
}

/** Caution where a grain temperature is given and its effect is not known. */
export const sensitivityUnknown =
  'the burn law has no temperature sensitivity; the grain temperature has no effect on the result';

/** The characterised range of a law, in words. */
export const rangeText = ({ characterised: { from, to } }: BurnLaw): string =>
  `${from / 1e6} to ${to / 1e6} MPa`;

/** Fix for a pressure that the law refuses. */
export const outsideRemedy =
  "Set outside: 'extrapolate' or 'clamp' in the burn law to allow pressures outside its characterised range";

/** The pressure at which the law is evaluated: a limit of its range where it is clamped. */
function evaluationPressure(law: BurnLaw, pressure: Quantity<'absolute pressure'>): number {
  const { from, to } = law.characterised;
  if (law.outside === 'extrapolate' || (pressure.si >= from && pressure.si <= to)) return pressure.si;
  if (law.outside === 'clamp') return Math.min(Math.max(pressure.si, from), to);
  throw new MeopError({
    code: 'out-of-range',
    procedure: context,
    path: 'pressure',
    given: pressure,
    expected: `in the characterised range of the burn law, ${rangeText(law)}`,
    remedy: outsideRemedy,
  });
}

/** Cautions for pressures from a minimum to a maximum [Pa] that leave the characterised range. */
export function rangeCautions(law: BurnLaw, min: number, max: number): readonly string[] {
  const { from, to } = law.characterised;
  const how = law.outside === 'clamp' ? 'the rate at that limit is used' : 'the law is extrapolated';
  const mpa = (pressure: number): string => `${Number((pressure / 1e6).toPrecision(4))} MPa`;
  return [
    ...(max > to
      ? [`${mpa(max)} is above the ${mpa(to)} limit of the burn law's characterisation; ${how}`]
      : []),
    ...(min < from
      ? [`${mpa(min)} is below the ${mpa(from)} limit of the burn law's characterisation; ${how}`]
      : []),
  ];
}
