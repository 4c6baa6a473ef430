import { linearInterpolant } from '../../numerics';
import { choice, MeopError, named, optional, procedure, temperature, type Values } from '../../units';
import { datumCaution } from './datum';
import type { Retention, RetentionCurve } from './material';
import { materials } from './material-table';
import { exposure } from './part-temperature';

/** Strength at or after a temperature, as a fraction of the room-temperature strength. */
export interface StrengthRetention {
  /** 0 to 1; strength gained at low temperature is neglected. */
  readonly fraction: number;
  readonly source: string;
  readonly cautions: readonly string[];
}

/** Up to 100 °F (38 °C) handbooks call it room temperature. */
const roomTop = 310.93;
/** −50 °C, below which the standards of bolts and seals end. */
const coldest = 223.15;

const name = 'strengthRetention';

const inputs = {
  material: named('material of the part', materials, { example: '6061-T6 drawn tube' }),
  property: choice('strength property', ['yield', 'ultimate']),
  temperature: temperature('T', 'temperature of the metal, not of the gas', { example: '200 degC' }),
  exposure,
  state: optional(
    choice('strength at temperature, or at room temperature afterwards', ['hot', 'after exposure']),
    'hot',
  ),
};

/**
 * The fraction of the room-temperature strength that remains at, or after, a temperature. Below 38 °C it is 1.
 *
 * @throws MeopError `missing-data` where the material has no curve, `out-of-domain` beyond the temperatures of the curve
 * @example strengthRetention({ material: '6061-T6 drawn tube', property: 'yield', temperature: '200 degC' }).fraction // => 0.693
 */
export const strengthRetention = /* @__PURE__ */ procedure({
  name,
  title: 'Strength retained at or after a temperature',
  source: 'the retention curves of the material, each with its source',
  inputs,
  gives: 'the fraction of the room-temperature strength',
  example: { material: '6061-T6 drawn tube', property: 'yield', temperature: '200 degC' },
  run: (values) => retentionOf(values),
});

/** The same from values that are read. */
export function retentionOf({
  material: record,
  property,
  temperature: { si: t },
  exposure: { si: time },
  state,
}: Values<typeof inputs>): StrengthRetention {
  if (t <= roomTop)
    return {
      fraction: 1,
      source: 'room temperature',
      cautions:
        t < coldest
          ? [
              `${record.name} at ${(t - 273.15).toFixed(0)} °C: steels and seals become brittle at so low a temperature. Check the unit of the temperature.`,
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
  // A single curve without a time (0) is valid for any; one for a short time is not valid for a longer one.
  const longer = second === undefined && only !== undefined && only.exposure > 0 && time > only.exposure;
  return {
    fraction: fractionAt(record.name, data, property, t, time),
    source: origin.source,
    cautions: [
      ...(caution === undefined ? [] : [caution]),
      ...(longer
        ? [
            `The strength of ${record.name} ${state} is known for ${only.exposure / 3600} h at temperature. Longer heating reduces it further.`,
          ]
        : []),
    ],
  };
}

function fractionAt(
  of: string,
  data: Retention,
  property: 'ultimate' | 'yield',
  temperature: number,
  time: number,
): number {
  const curves = data[property];
  // Read from small figures, curves of neighbouring exposures cross by a per cent: longer heating is never credited.
  let previous: { readonly exposure: number; readonly fraction: number } | undefined;
  for (const curve of curves) {
    const read = onCurve(of, curve, temperature);
    const fraction = Math.min(read, previous?.fraction ?? 1);
    if (time <= curve.exposure || curves.length === 1) {
      if (previous === undefined) return fraction;
      const share = Math.log(time / previous.exposure) / Math.log(curve.exposure / previous.exposure);
      return previous.fraction + share * (fraction - previous.fraction);
    }
    previous = { exposure: curve.exposure, fraction };
  }
  const longest = (curves.at(-1)?.exposure ?? 0) / 3600;
  throw new MeopError({
    code: 'out-of-domain',
    procedure: name,
    path: 'exposure',
    given: `${time / 3600} h`,
    expected: `at most ${longest} h, the longest exposure in the curves of ${of}`,
  });
}

function onCurve(of: string, { points }: RetentionCurve, temperature: number): number {
  const top = points[points.length - 1][0];
  if (temperature > top)
    throw new MeopError({
      code: 'out-of-domain',
      procedure: name,
      path: 'temperature',
      given: `${(temperature - 273.15).toFixed(1)} °C`,
      expected: `at most ${(top - 273.15).toFixed(0)} °C, the end of the curve of ${of}: no strength is allowed above it`,
    });
  const line = linearInterpolant(
    points.map(([t]) => t),
    points.map(([, fraction]) => fraction),
  );
  return temperature <= points[0][0] ? points[0][1] : line.at(temperature);
}

function noCurve(of: string, state: string): MeopError {
  const field = state === 'hot' ? 'atTemperature' : 'afterExposure';
  return new MeopError({
    code: 'missing-data',
    procedure: name,
    path: 'material',
    given: of,
    problem: `${of} has no strength curve ${state}`,
    expected: `a material with '${field}'`,
    remedy: `Pass a Material object with '${field}'`,
  });
}
