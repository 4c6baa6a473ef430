import {
  fromSiArray,
  fromSiValue,
  MeopError,
  type NamedKind,
  type Quantity,
  type QuantityInput,
  type Series,
  table,
  unitOf,
} from '../units';
import { type FieldsOf, requireFields } from '../units/known-fields';
import { readNotNegative, readPositive, refusal } from '../units/refusal';
import { marchWall, type WallHistorySi, type WallLayerSi } from './wall-march';

/** One step of the way through a wall that heats up: a layer, or the contact between two. */
export type HeatedWallStep =
  | {
      readonly name?: string;
      readonly thickness: QuantityInput<'length'>;
      readonly conductivity: QuantityInput<'thermal conductivity'>;
      readonly density: QuantityInput<'density'>;
      readonly specificHeat: QuantityInput<'specific heat'>;
    }
  | {
      readonly name?: string;
      /** Aluminium on aluminium in air, 10 µm rough, at 1 bar: 2.75e-4 m²·K/W (Incropera, table 3.1, from memory). */
      readonly contact: QuantityInput<'thermal insulance'>;
    };

/** What {@link layeredWallHeating} needs. */
export interface LayeredWallHeatingOptions {
  /** Driving temperature of the gas: the adiabatic wall temperature. */
  readonly gasTemperature: QuantityInput<'temperature'>;
  readonly gasCoefficient: QuantityInput<'heat-transfer coefficient'>;
  /** How long the gas heats the wall: the burning time. */
  readonly heatingTime: QuantityInput<'time'>;
  /** From ignition to the end of what is looked at; a lined case is hottest well after burnout. */
  readonly duration: QuantityInput<'time'>;
  /** From the hot side to the cold one. */
  readonly steps: readonly HeatedWallStep[];
  readonly initialTemperature: QuantityInput<'temperature'>;
  /** Default the initial temperature. */
  readonly outsideTemperature?: QuantityInput<'temperature'>;
  /** Default 0: no heat leaves outside, which is the safe side. */
  readonly outsideCoefficient?: QuantityInput<'heat-transfer coefficient'>;
  /** Radius of the heated face of a tube; default a plane wall. */
  readonly innerRadius?: QuantityInput<'length'>;
}

/** How hot a layer gets. */
export interface HeatedLayer {
  readonly name: string;
  readonly hotFace: Series<'temperature'>;
  readonly coldFace: Series<'temperature'>;
  /** By heat content: what a thin metal wall is at. */
  readonly mean: Series<'temperature'>;
  readonly hottestFace: Quantity<'temperature'>;
  readonly hottestMean: Quantity<'temperature'>;
  readonly hottestMeanAt: Quantity<'time'>;
}

/** A wall of layers through a firing and after it. */
export interface LayeredWallHeating {
  readonly time: Series<'time'>;
  /** The layers, without the contacts, from the hot side. */
  readonly layers: readonly HeatedLayer[];
  /** What the hottest values may be off by, from half the cells and steps. The first instants of a stretch are worse. */
  readonly estimatedError: Quantity<'temperature difference'>;
  readonly cautions: readonly string[];
  toString(): string;
}

const procedure = 'layeredWallHeating';
const layeredWallHeatingFields: FieldsOf<LayeredWallHeatingOptions> = {
  gasTemperature: 'required',
  gasCoefficient: 'required',
  heatingTime: 'required',
  duration: 'required',
  steps: 'required',
  initialTemperature: 'required',
  outsideTemperature: 'optional',
  outsideCoefficient: 'optional',
  innerRadius: 'optional',
};

/**
 * Temperatures in a wall of layers, liner and case, through a firing and the soak after it, in one dimension. After the heating time no
 * heat passes the hot face either way, so that all of it ends in the wall: the safe side for the case.
 *
 * Source: conduction by finite volumes, twice, extrapolated to no cell and step size.
 *
 * @throws MeopError `missing-field` for no layer, `out-of-domain` for values not above 0 or a duration shorter than the heating
 * @example layeredWallHeating({ gasTemperature: '1550 K', gasCoefficient: '900 W/(m^2*K)', heatingTime: '2 s', duration: '2 s', initialTemperature: '300 K', steps: [{ thickness: '3 mm', conductivity: '167 W/(m*K)', density: '2700 kg/m^3', specificHeat: '896 J/(kg*K)' }] }).layers[0].hottestMean.in('K') // => 573.2721
 */
export function layeredWallHeating(options: LayeredWallHeatingOptions): LayeredWallHeating {
  requireFields(procedure, options, layeredWallHeatingFields);
  const initial = above('temperature', 'initialTemperature', options.initialTemperature);
  const heating = above('time', 'heatingTime', options.heatingTime);
  const duration = above('time', 'duration', options.duration);
  if (duration < heating)
    throw refusal(
      procedure,
      'duration',
      options.duration,
      'at least the heating time',
      'it counts from ignition',
    );
  const outsideCoefficient =
    options.outsideCoefficient === undefined
      ? 0
      : readNotNegative(
          'heat-transfer coefficient',
          'outsideCoefficient',
          options.outsideCoefficient,
          procedure,
        ).si;
  const gas = {
    temperature: above('temperature', 'gasTemperature', options.gasTemperature),
    coefficient: above('heat-transfer coefficient', 'gasCoefficient', options.gasCoefficient),
  };
  const { layers, names } = readSteps(options.steps);
  const wall = {
    layers,
    innerRadius:
      options.innerRadius === undefined ? Infinity : above('length', 'innerRadius', options.innerRadius),
    initial,
    outside: {
      temperature:
        options.outsideTemperature === undefined
          ? initial
          : above('temperature', 'outsideTemperature', options.outsideTemperature),
      coefficient: outsideCoefficient,
    },
    stretches: [
      { duration: heating, ...gas },
      ...(duration > heating
        ? [{ duration: duration - heating, temperature: gas.temperature, coefficient: 0 }]
        : []),
    ],
  };
  const coarse = marchWall(wall, 40, 80);
  const fine = marchWall(wall, 80, 160);
  return resultOf(coarse, fine, names, heating);
}

function resultOf(
  coarse: WallHistorySi,
  fine: WallHistorySi,
  names: readonly string[],
  heating: number,
): LayeredWallHeating {
  let error = 0;
  // Both schemes are of second order: the error of the finer is a third of what it differs by from the coarser.
  const better = (few: Float64Array, many: Float64Array): Float64Array => {
    const values = few.map((value, k) => many[2 * k] + (many[2 * k] - value) / 3);
    const most = values.reduce((a, b) => Math.max(a, b));
    error = Math.max(error, Math.abs(most - many.reduce((a, b, k) => (k % 2 === 0 ? Math.max(a, b) : a))));
    return values;
  };
  const kelvin = (values: Float64Array): Series<'temperature'> => fromSiArray('temperature', values, 'K');
  const time = fromSiArray('time', coarse.time, 's');
  const layers = names.map((name, l): HeatedLayer => {
    const [hotFace, coldFace, mean] = [
      kelvin(better(coarse.hotFaces[l], fine.hotFaces[l])),
      kelvin(better(coarse.coldFaces[l], fine.coldFaces[l])),
      kelvin(better(coarse.means[l], fine.means[l])),
    ];
    const hottestMean = mean.max();
    return {
      name,
      hotFace,
      coldFace,
      mean,
      hottestFace: hotFace.max().si > coldFace.max().si ? hotFace.max() : coldFace.max(),
      hottestMean,
      hottestMeanAt: time.at(mean.si.indexOf(hottestMean.si)),
    };
  });
  const end = time.at(-1);
  const still = layers.filter(({ mean }) => mean.si.length > 1 && mean.at(-1).si - mean.at(-2).si > 0.01);
  const cautions = [
    'constant properties, no charring and no heat of decomposition; a liner that chars or leaves bares the wall',
    ...(still.length > 0 && end.si > heating
      ? [`${still.map(({ name }) => name).join(', ')} still warming at the end: give a longer duration`]
      : []),
    ...(end.si === heating && layers.length > 1
      ? ['the soak after burnout is left out, when the outer layers are hottest: give a longer duration']
      : []),
  ];
  const estimatedError: Quantity<'temperature difference'> = fromSiValue(
    error,
    'temperature difference',
    unitOf('delta_K'),
  );
  const text = (): string =>
    [
      table(
        layers.map((one) => ({
          layer: one.name,
          'hottest face': one.hottestFace.format(),
          'hottest mean': one.hottestMean.format(),
          at: one.hottestMeanAt.format(),
          'mean at end': one.mean.at(-1).format(),
        })),
      ),
      ...cautions.map((caution) => `caution: ${caution}`),
    ].join('\n');
  return {
    time,
    layers,
    estimatedError,
    cautions,
    toString: text,
    ...{ [Symbol.for('nodejs.util.inspect.custom')]: text },
  };
}

function readSteps(steps: readonly HeatedWallStep[]): {
  layers: readonly WallLayerSi[];
  names: readonly string[];
} {
  const layers: WallLayerSi[] = [];
  const names: string[] = [];
  (Array.isArray(steps) ? steps : []).forEach((step: HeatedWallStep, i) => {
    const path = `steps[${i}]`;
    if ('contact' in step) {
      requireFields(`${procedure}: ${path}`, step, { name: 'optional', contact: 'required' });
      const contact = above('thermal insulance', `${path}.contact`, step.contact);
      const before = layers.pop();
      if (before === undefined || i === steps.length - 1)
        throw refusal(procedure, `${path}.contact`, step.contact, 'a layer on either side of a contact');
      layers.push({ ...before, contactBehind: before.contactBehind + contact });
      return;
    }
    requireFields(`${procedure}: ${path}`, step, {
      name: 'optional',
      thickness: 'required',
      conductivity: 'required',
      density: 'required',
      specificHeat: 'required',
    });
    names.push(step.name ?? `layer ${names.length + 1}`);
    layers.push({
      thickness: above('length', `${path}.thickness`, step.thickness),
      conductivity: above('thermal conductivity', `${path}.conductivity`, step.conductivity),
      heatCapacity:
        above('density', `${path}.density`, step.density) *
        above('specific heat', `${path}.specificHeat`, step.specificHeat),
      contactBehind: 0,
    });
  });
  if (layers.length === 0)
    throw new MeopError(
      'missing-field',
      `${procedure}: steps: none given; at least one layer is expected`,
      'steps',
    );
  return { layers, names };
}

const above = (kind: NamedKind, field: string, value: unknown): number =>
  readPositive(kind, field, value, procedure).si;
