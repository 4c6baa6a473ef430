import { linearInterpolant } from '../../numerics';
import { MeopError, type QuantityInput, readInput } from '../../units';
import { type FieldsOf, requireFields } from '../../units/known-fields';
import { readNotNegative } from '../../units/refusal';
import { datumCaution } from './datum';
import type { MaterialName } from './library';
import { materialOf } from './library';
import type { Material, Retention, RetentionCurve } from './material';

/** What is asked of a material that is or was hot. */
export interface RetentionInput {
  readonly material: Material | MaterialName;
  readonly property: 'ultimate' | 'yield';
  /** Of the metal, not of the gas. */
  readonly temperature: QuantityInput<'temperature'>;
  /** Time at that temperature; half an hour, the shortest that handbooks give, where left out. */
  readonly exposure?: QuantityInput<'time'>;
  /** Strength while hot, or back at room temperature. Default `'hot'`. */
  readonly state?: 'hot' | 'after exposure';
}

/** The part of the room-temperature strength that is left. */
export interface StrengthRetention {
  /** 0 to 1; strength gained by cold is not credited. */
  readonly fraction: number;
  readonly source: string;
  readonly cautions: readonly string[];
}

/** Up to 100 °F (38 °C) handbooks call it room temperature. */
const roomTop = 310.93;
/** −50 °C, below which the standards of bolts and seals end. */
const coldest = 223.15;

const strengthRetentionFields: FieldsOf<RetentionInput> = {
  material: 'required',
  property: 'required',
  temperature: 'required',
  exposure: 'optional',
  state: 'optional',
};

/**
 * The fraction of the room-temperature strength that is left at, or after, a temperature. Below 38 °C it is 1.
 *
 * @throws MeopError `missing-data` where the material has no curve, `out-of-domain` beyond the curve's temperatures
 * @example strengthRetention({ material: '6061-T6 drawn tube', property: 'yield', temperature: '200 degC' }).fraction // => 0.693
 */
export function strengthRetention(options: RetentionInput): StrengthRetention {
  requireFields('strengthRetention', options, strengthRetentionFields);
  const { material, property, temperature, exposure = '0.5 h', state = 'hot' } = options;
  const record = materialOf(material);
  const t = readInput('temperature', 'temperature', temperature, 'strengthRetention').si;
  const time = readNotNegative('time', 'exposure', exposure, 'strengthRetention').si;
  if (t <= roomTop)
    return {
      fraction: 1,
      source: 'room temperature',
      cautions:
        t < coldest
          ? [
              `${record.name} at ${(t - 273.15).toFixed(0)} °C: cold as that is rarely meant, and steels and seals turn brittle; was °C meant?`,
            ]
          : [],
    };
  const data = state === 'hot' ? record.atTemperature : record.afterExposure;
  if (data === undefined) throw noCurve(record.name, state);
  const { origin } = data;
  const caution =
    origin.provenance === 'published'
      ? undefined
      : datumCaution(`strength of ${record.name} ${state}`, { ...origin, basis: 'computed' });
  const [only, second] = data[property];
  // A lone curve without a time (0) holds for any; one for a short time says nothing of a longer one.
  const longer = second === undefined && only !== undefined && only.exposure > 0 && time > only.exposure;
  return {
    fraction: fractionAt(record.name, data, property, t, time),
    source: origin.source,
    cautions: [
      ...(caution === undefined ? [] : [caution]),
      ...(longer
        ? [
            `strength of ${record.name} ${state} is known for ${only.exposure / 3600} h at temperature: longer heating leaves less`,
          ]
        : []),
    ],
  };
}

function fractionAt(
  name: string,
  data: Retention,
  property: 'ultimate' | 'yield',
  temperature: number,
  time: number,
): number {
  const curves = data[property];
  // Read from small figures, curves of neighbouring exposures cross by a per cent: longer heating never counts as better.
  let previous: { readonly exposure: number; readonly fraction: number } | undefined;
  for (const curve of curves) {
    const read = onCurve(name, curve, temperature);
    const fraction = Math.min(read, previous?.fraction ?? 1);
    if (time <= curve.exposure || curves.length === 1) {
      if (previous === undefined) return fraction;
      const share = Math.log(time / previous.exposure) / Math.log(curve.exposure / previous.exposure);
      return previous.fraction + share * (fraction - previous.fraction);
    }
    previous = { exposure: curve.exposure, fraction };
  }
  const longest = (curves.at(-1)?.exposure ?? 0) / 3600;
  throw new MeopError(
    'out-of-domain',
    `strengthRetention: exposure: ${time / 3600} h given; the curves of ${name} end at ${longest} h`,
    'exposure',
    { value: time, expected: `at most ${longest} h` },
  );
}

function onCurve(name: string, { points }: RetentionCurve, temperature: number): number {
  const top = points[points.length - 1][0];
  if (temperature > top)
    throw new MeopError(
      'out-of-domain',
      `strengthRetention: temperature: ${(temperature - 273.15).toFixed(1)} °C given; the curve of ${name} ends at ${(top - 273.15).toFixed(0)} °C: nothing is allowed above it`,
      'temperature',
      { value: temperature, expected: `at most ${top} K` },
    );
  const line = linearInterpolant(
    points.map(([t]) => t),
    points.map(([, fraction]) => fraction),
  );
  return temperature <= points[0][0] ? points[0][1] : line.at(temperature);
}

function noCurve(name: string, state: string): MeopError {
  const field = state === 'hot' ? 'atTemperature' : 'afterExposure';
  return new MeopError(
    'missing-data',
    `strengthRetention: ${name} has no strength curve ${state}; give a Material with '${field}'`,
    field,
    { value: name, expected: `a material with '${field}'` },
  );
}
