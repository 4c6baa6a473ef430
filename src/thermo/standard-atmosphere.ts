import {
  absolutePressure,
  choice,
  fromSiValue,
  MeopError,
  optional,
  procedure,
  type Quantity,
  unitFor,
  unitOf,
} from '../units';
import { altitude, highest, lowest } from './altitude';

// U.S. Standard Atmosphere 1976: its own gas constant, not that of the SI of 2019, which would move the pressure at
// 80 km by 0.02 %. Layer table and constants as in the standard; pressures of the layer bases follow from the chain.
const gravity = 9.80665;
const earthRadius = 6356766;
const gasConstant = 8314.32 / 28.9644;
const gamma = 1.4;
const layers = /* @__PURE__ */ chain([
  // name, geopotential height of the base in m, lapse rate in K/m
  ['troposphere', 0, -0.0065],
  ['lower stratosphere', 11000, 0],
  ['stratosphere', 20000, 0.001],
  ['stratosphere', 32000, 0.0028],
  ['stratopause', 47000, 0],
  ['mesosphere', 51000, -0.0028],
  ['mesosphere', 71000, -0.002],
]);

/** M/M0 every 500 m from 80 to 86 km (U.S. Standard Atmosphere 1976, table 8, quoted from memory, not verified; the end value is 0.999579). */
const molarMassShare = [
  1, 0.999996, 0.999989, 0.999971, 0.999941, 0.999909, 0.99987, 0.999829, 0.999786, 0.999741, 0.999694,
  0.999641, 0.999579,
];

interface Layer {
  readonly name: string;
  readonly base: number;
  readonly lapse: number;
  readonly temperature: number;
  readonly pressure: number;
}

function chain(rows: readonly (readonly [string, number, number])[]): readonly Layer[] {
  const found: Layer[] = [];
  let temperature = 288.15;
  let pressure = 101325;
  rows.forEach(([name, base, lapse], i) => {
    const layer = { name, base, lapse, temperature, pressure };
    found.push(layer);
    const top = rows[i + 1]?.[1] ?? base;
    pressure = pressureIn(layer, top);
    temperature += lapse * (top - base);
  });
  return found;
}

function pressureIn({ base, lapse, temperature, pressure }: Layer, height: number): number {
  if (lapse === 0) return pressure * Math.exp((-gravity * (height - base)) / (gasConstant * temperature));
  return (
    pressure * (temperature / (temperature + lapse * (height - base))) ** (gravity / (gasConstant * lapse))
  );
}

/** Air at an altitude of the standard atmosphere. */
export interface StandardAtmosphere {
  readonly layer: string;
  readonly geometricAltitude: Quantity<'length'>;
  readonly geopotentialAltitude: Quantity<'length'>;
  readonly temperature: Quantity<'temperature'>;
  readonly pressure: Quantity<'absolute pressure'>;
  readonly density: Quantity<'density'>;
  readonly soundSpeed: Quantity<'speed'>;
  readonly dynamicViscosity: Quantity<'dynamic viscosity'>;
}

/** Air in SI numbers. */
interface AirSi {
  readonly layer: string;
  readonly temperature: number;
  readonly pressure: number;
  readonly density: number;
  readonly soundSpeed: number;
  readonly dynamicViscosity: number;
}

function airAt(geometric: number, height: number): AirSi {
  const layer = layerAt(height);
  const scaled = layer.temperature + layer.lapse * (height - layer.base); // molecular-scale temperature
  const pressure = pressureIn(layer, height);
  return {
    layer: layer.name,
    temperature: scaled * molarShareAt(geometric),
    pressure,
    density: pressure / (gasConstant * scaled),
    soundSpeed: Math.sqrt(gamma * gasConstant * scaled),
    dynamicViscosity: (1.458e-6 * scaled ** 1.5) / (scaled + 110.4),
  };
}

function layerAt(height: number): Layer {
  let layer = layers[0];
  for (const candidate of layers) if (height >= candidate.base) layer = candidate;
  return layer;
}

function molarShareAt(geometric: number): number {
  if (geometric <= 80000) return 1;
  const place = Math.min((geometric - 80000) / 500, molarMassShare.length - 1);
  const i = Math.min(Math.floor(place), molarMassShare.length - 2);
  return molarMassShare[i] + (place - i) * (molarMassShare[i + 1] - molarMassShare[i]);
}

const geopotential = (geometric: number): number => (earthRadius * geometric) / (earthRadius + geometric);
const geometricOf = (height: number): number => (earthRadius * height) / (earthRadius - height);
const source =
  'U.S. Standard Atmosphere 1976 (NOAA, NASA, USAF), layer definitions; below 32 km as ICAO Doc 7488';

/**
 * U.S. Standard Atmosphere 1976 at an altitude, a yearly mean at 45° north. For the air of a test day use
 * {@link stationPressure}. `.si` takes the geometric altitude in metres.
 *
 * @example standardAtmosphere({ altitude: '1000 m' }).pressure.in('Pa') // => 89876.28
 */
export const standardAtmosphere = /* @__PURE__ */ procedure({
  name: 'standardAtmosphere',
  title: 'U.S. Standard Atmosphere 1976',
  source,
  inputs: {
    altitude,
    measure: optional(
      choice('measure of the altitude: geometric, or geopotential; they differ by 0.2 % at 11 km', [
        'geometric',
        'geopotential',
      ]),
      'geometric',
    ),
  },
  gives: 'pressure, temperature, density, speed of sound and viscosity of the air',
  example: { altitude: '1000 m' },
  checks: [
    ({ altitude, measure }) =>
      measure === 'geometric' || geometricOf(altitude.si) <= highest * (1 + 1e-12)
        ? undefined
        : { path: 'altitude', given: altitude, expected: 'at most 84.852 km geopotential (86 km geometric)' },
  ],
  run: ({ altitude, measure }): StandardAtmosphere => {
    const geometric = measure === 'geometric' ? altitude.si : geometricOf(altitude.si);
    const height = measure === 'geometric' ? geopotential(altitude.si) : altitude.si;
    const air = airAt(geometric, height);
    const unit = unitFor('length', altitude.unit);
    return {
      layer: air.layer,
      geometricAltitude: fromSiValue(geometric, 'length', unit),
      geopotentialAltitude: fromSiValue(height, 'length', unit),
      temperature: fromSiValue(air.temperature, 'temperature', unitOf('K')),
      pressure: fromSiValue(air.pressure, 'absolute pressure', unit.us ? unitOf('psi') : unitOf('kPa')),
      density: fromSiValue(air.density, 'density', unitOf('kg/m^3')),
      soundSpeed: fromSiValue(air.soundSpeed, 'speed', unitOf('m/s')),
      dynamicViscosity: fromSiValue(air.dynamicViscosity, 'dynamic viscosity', unitOf('Pa*s')),
    };
  },
  si: ({ altitude }: { readonly altitude: number }): AirSi => airAt(altitude, geopotential(altitude)),
});

function altitudeAt({ pressure: wanted }: { readonly pressure: number }): number {
  let layer = layers[0];
  for (const candidate of layers) if (candidate.pressure >= wanted) layer = candidate;
  const { base, lapse, temperature, pressure } = layer;
  const log = Math.log(wanted / pressure);
  return geometricOf(
    lapse === 0
      ? base - (log * gasConstant * temperature) / gravity
      : base + (temperature / lapse) * Math.expm1((-log * gasConstant * lapse) / gravity),
  );
}

/**
 * Geometric altitude at which the standard atmosphere has a pressure.
 *
 * @example standardAltitude({ pressure: '89876.28 Pa' }).in('m') // => 1000
 */
export const standardAltitude = /* @__PURE__ */ procedure({
  name: 'standardAltitude',
  title: 'Altitude of a pressure in the U.S. Standard Atmosphere 1976',
  source,
  inputs: { pressure: absolutePressure('p', 'pressure of the air') },
  gives: 'the geometric altitude',
  example: { pressure: '90 kPa' },
  run: ({ pressure }): Quantity<'length'> => {
    const altitude = altitudeAt({ pressure: pressure.si });
    if (altitude >= lowest && altitude <= highest) return fromSiValue(altitude, 'length', unitOf('m'));
    throw new MeopError({
      code: 'out-of-domain',
      procedure: 'standardAltitude',
      path: 'pressure',
      given: pressure,
      expected: 'a pressure of the standard atmosphere between -5 km and 86 km',
    });
  },
  si: altitudeAt,
});
