import { fromSiValue, type Quantity, type QuantityInput, readInput, unitOf } from '../units';
import { type FieldsOf, requireFields } from '../units/known-fields';
import { refusal } from '../units/refusal';

const procedure = 'standardAtmosphere';

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
const lowest = -5000;
const highest = 86000;

/** M/M0 every 500 m from 80 to 86 km (U.S. Standard Atmosphere 1976, table 8, from memory; the end value is 0.999579). */
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

/** What {@link standardAtmosphere} needs. */
export interface StandardAtmosphereOptions {
  /** Altitude above mean sea level, from −5 km to 86 km geometric. */
  readonly altitude: QuantityInput<'length'>;
  /** What the altitude is: height as a tape measures it, or geopotential; they differ by 0.2 % at 11 km. Default geometric. */
  readonly measure?: 'geometric' | 'geopotential';
}

/**
 * Pressure in the standard atmosphere at a geometric altitude in metres; plain numbers, unchecked (−5000 to 86000 m).
 *
 * @example standardPressureSi(1000) // => 89876.3
 */
export function standardPressureSi(geometricAltitude: number): number {
  const height = (earthRadius * geometricAltitude) / (earthRadius + geometricAltitude);
  return pressureIn(layerAt(height), height);
}

/**
 * Geometric altitude in metres at which the standard atmosphere has a pressure; plain numbers, unchecked.
 *
 * @example standardAltitudeSi(101325) // => 0
 */
export function standardAltitudeSi(absolutePressure: number): number {
  let layer = layers[0];
  for (const candidate of layers) if (candidate.pressure >= absolutePressure) layer = candidate;
  const { base, lapse, temperature, pressure } = layer;
  const log = Math.log(absolutePressure / pressure);
  const height =
    lapse === 0
      ? base - (log * gasConstant * temperature) / gravity
      : base + (temperature / lapse) * Math.expm1((-log * gasConstant * lapse) / gravity);
  return (earthRadius * height) / (earthRadius - height);
}

function layerAt(height: number): Layer {
  let layer = layers[0];
  for (const candidate of layers) if (height >= candidate.base) layer = candidate;
  return layer;
}

const standardAtmosphereFields: FieldsOf<StandardAtmosphereOptions> = {
  altitude: 'required',
  measure: 'optional',
};

/**
 * U.S. Standard Atmosphere 1976 at an altitude up to 86 km. It is a yearly mean at 45° north: for the air of a test day
 * use {@link stationPressure}.
 *
 * Source: U.S. Standard Atmosphere 1976 (NOAA, NASA, USAF), layer definitions; the same as ICAO Doc 7488 below 32 km.
 *
 * @throws MeopError `out-of-domain` below −5 km or above 86 km, where the standard's layers end
 * @example standardAtmosphere({ altitude: '1000 m' }).pressure.in('Pa') // => 89876.28
 */
export function standardAtmosphere(options: StandardAtmosphereOptions): StandardAtmosphere {
  requireFields(procedure, options, standardAtmosphereFields);
  const { altitude, measure = 'geometric' } = options;
  const { si, unit } = readInput('length', 'altitude', altitude, procedure);
  if (measure !== 'geometric' && measure !== 'geopotential')
    throw refusal(procedure, 'measure', measure, "'geometric' or 'geopotential'");
  const geometric = measure === 'geometric' ? si : (earthRadius * si) / (earthRadius - si);
  if (!(geometric >= lowest && geometric <= highest * (1 + 1e-12)))
    throw refusal(
      procedure,
      'altitude',
      altitude,
      'from -5 km to 86 km geometric',
      'above that the standard is defined differently',
    );
  const height = measure === 'geopotential' ? si : (earthRadius * si) / (earthRadius + si);
  const layer = layerAt(height);
  const scaled = layer.temperature + layer.lapse * (height - layer.base); // molecular-scale temperature
  const pressure = pressureIn(layer, height);
  const show = unit.us ? unitOf('psi') : unitOf('kPa');
  return {
    layer: layer.name,
    geometricAltitude: fromSiValue(geometric, 'length', unit),
    geopotentialAltitude: fromSiValue(height, 'length', unit),
    temperature: fromSiValue(scaled * molarShareAt(geometric), 'temperature', unitOf('K')),
    pressure: fromSiValue(pressure, 'absolute pressure', show),
    density: fromSiValue(pressure / (gasConstant * scaled), 'density', unitOf('kg/m^3')),
    soundSpeed: fromSiValue(Math.sqrt(gamma * gasConstant * scaled), 'speed', unitOf('m/s')),
    dynamicViscosity: fromSiValue(
      (1.458e-6 * scaled ** 1.5) / (scaled + 110.4),
      'dynamic viscosity',
      unitOf('Pa*s'),
    ),
  };
}

function molarShareAt(geometric: number): number {
  if (geometric <= 80000) return 1;
  const place = Math.min((geometric - 80000) / 500, molarMassShare.length - 1);
  const i = Math.min(Math.floor(place), molarMassShare.length - 2);
  return molarMassShare[i] + (place - i) * (molarMassShare[i + 1] - molarMassShare[i]);
}
