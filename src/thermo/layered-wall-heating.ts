import {
  fromSiArray,
  fromSiValue,
  heatTransferCoefficient,
  length,
  list,
  optional,
  printable,
  procedure,
  type Quantity,
  type Series,
  table,
  temperature,
  time,
  unitOf,
} from '../units';
import { hotGas, initialTemperature } from './heat-inputs';
import { marchWall, type WallHistorySi, type WallLayerSi } from './wall-march';
import { heatedLayer, stepWith } from './wall-steps';

/** Temperatures of a layer. */
export interface HeatedLayer {
  readonly name: string;
  readonly hotFace: Series<'temperature'>;
  readonly coldFace: Series<'temperature'>;
  /** Averaged by heat content: the temperature of a thin metal wall. */
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
  /**
   * Error of the maximum temperatures, from half the cells and steps. It is larger at the start of heating and of
   * the soak.
   */
  readonly estimatedError: Quantity<'temperature difference'>;
  readonly cautions: readonly string[];
  toString(): string;
}

const step = /* @__PURE__ */ stepWith(heatedLayer);
type Step = ReturnType<typeof step.read>;

/**
 * Temperatures in a wall of layers, liner and case, through a firing and the soak after it, in one dimension.
 * After the heating no heat crosses the hot face in either direction, so that all of it ends in the wall:
 * conservative for the case.
 *
 * @example layeredWallHeating({ gasTemperature: '1550 K', gasCoefficient: '900 W/(m^2*K)', heatingTime: '2 s', duration: '2 s', initialTemperature: '300 K', steps: [{ thickness: '3 mm', conductivity: '167 W/(m*K)', density: '2700 kg/m^3', specificHeat: '896 J/(kg*K)' }] }).layers[0].hottestMean.in('K') // => 573.2721
 */
export const layeredWallHeating = /* @__PURE__ */ procedure({
  name: 'layeredWallHeating',
  title: 'Temperatures in a wall of layers through a firing and the soak after it',
  source: 'Conduction by finite volumes on two grids, extrapolated to zero cell and step size',
  inputs: {
    ...hotGas,
    heatingTime: time('t_b', 'time for which the gas heats the wall: the burning time'),
    duration: time(
      't',
      'time from ignition to the end of the calculation; a lined case is hottest well after burnout',
    ),
    steps: list('layers and contacts from the hot side', step),
    initialTemperature,
    outsideTemperature: optional(
      temperature('T_o', 'temperature of the air outside; assumed equal to the initial temperature'),
    ),
    outsideCoefficient: optional(
      heatTransferCoefficient('h_o', 'heat-transfer coefficient outside; zero is conservative', { min: 0 }),
      0,
    ),
    innerRadius: optional(length('r', 'radius of the heated face of a tube; assumed a plane wall')),
  },
  gives: 'temperatures of the faces and the mean of every layer over time, and their maxima',
  example: {
    gasTemperature: '1550 K',
    gasCoefficient: '900 W/(m^2*K)',
    heatingTime: '2 s',
    duration: '2 s',
    initialTemperature: '300 K',
    steps: [
      {
        thickness: '3 mm',
        conductivity: '167 W/(m*K)',
        density: '2700 kg/m^3',
        specificHeat: '896 J/(kg*K)',
      },
    ],
  },
  checks: [
    ({ duration, heatingTime }) =>
      duration.si >= heatingTime.si
        ? undefined
        : {
            path: 'duration',
            given: duration,
            expected: `at least the heating time (${heatingTime})`,
            remedy: 'Count it from ignition',
          },
    ({ steps }) => {
      const loose = steps.findIndex((one, i) => 'contact' in one && (i === 0 || i === steps.length - 1));
      if (loose < 0) return undefined;
      const problem = 'a contact has a layer on either side';
      return { path: `steps.${loose}.contact`, problem, remedy: 'Add the layer, or remove the contact' };
    },
  ],
  run: (values): LayeredWallHeating => {
    const initial = values.initialTemperature.si;
    const heating = values.heatingTime.si;
    const duration = values.duration.si;
    const gas = { temperature: values.gasTemperature.si, coefficient: values.gasCoefficient.si };
    const { layers, names } = layersOf(values.steps);
    const wall = {
      layers,
      innerRadius: values.innerRadius?.si ?? Infinity,
      initial,
      outside: {
        temperature: values.outsideTemperature?.si ?? initial,
        coefficient: values.outsideCoefficient.si,
      },
      stretches: [
        { duration: heating, ...gas },
        ...(duration > heating
          ? [{ duration: duration - heating, temperature: gas.temperature, coefficient: 0 }]
          : []),
      ],
    };
    return resultOf(marchWall(wall, 40, 80), marchWall(wall, 80, 160), names, heating);
  },
});

/** The layers, each with the contacts behind it, and their names. */
function layersOf(steps: readonly Step[]): {
  readonly layers: readonly WallLayerSi[];
  readonly names: readonly string[];
} {
  const layers: WallLayerSi[] = [];
  const names: string[] = [];
  for (const one of steps) {
    if ('contact' in one) {
      const before = layers.pop();
      if (before) layers.push({ ...before, contactBehind: before.contactBehind + one.contact.si });
      continue;
    }
    names.push(one.name ?? `layer ${names.length + 1}`);
    layers.push({
      thickness: one.thickness.si,
      conductivity: one.conductivity.si,
      heatCapacity: one.density.si * one.specificHeat.si,
      contactBehind: 0,
    });
  }
  return { layers, names };
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
    'constant properties, no charring and no heat of decomposition; a liner that chars or separates exposes the wall',
    ...(still.length > 0 && end.si > heating
      ? [`${still.map(({ name }) => name).join(', ')} still heating at the end; specify a longer duration`]
      : []),
    ...(end.si === heating && layers.length > 1
      ? [
          'the heat soak after burnout, when the outer layers are hottest, is not included; specify a longer duration',
        ]
      : []),
  ];
  const estimatedError: Quantity<'temperature difference'> = fromSiValue(
    error,
    'temperature difference',
    unitOf('delta_K'),
  );
  return printable({ time, layers, estimatedError, cautions }, () =>
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
    ].join('\n'),
  );
}
