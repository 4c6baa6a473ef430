import {
  formula,
  fromSiValue,
  inputs,
  length,
  optional,
  procedure,
  type Quantity,
  temperature,
  temperatureDifference,
  thermalExpansion,
  unitOf,
  type Values,
} from '../units';

/** @example thermallyExpandedDimension({ dimension: '40 mm', expansion: '4.5e-6 1/K', temperatureRise: '1000 delta_K' }).in('mm') // => 40.18 */
export const thermallyExpandedDimension = /* @__PURE__ */ formula({
  name: 'thermallyExpandedDimension',
  title: 'Dimension after thermal growth',
  equation: 'D = D_0·(1 + α·ΔT)',
  source: 'Definition of the mean coefficient of linear expansion',
  inputs: {
    dimension: length('D_0', 'dimension at room temperature'),
    expansion: thermalExpansion('α', 'mean coefficient of linear expansion over the rise'),
    temperatureRise: temperatureDifference('ΔT', 'temperature above room temperature'),
  },
  output: length('D', 'dimension at elevated temperature'),
  example: { dimension: '40 mm', expansion: '4.5e-6 1/K', temperatureRise: '1000 delta_K' },
  requires: [
    ({ expansion, temperatureRise }) =>
      expansion * temperatureRise > -1 ||
      'the dimension would not be above zero after the expansion; check its unit',
  ],
  si: ({ dimension, expansion, temperatureRise }) => dimension * (1 + expansion * temperatureRise),
});

const fitPart = {
  diameter: /* @__PURE__ */ length('D', 'diameter at room temperature', { example: '40 mm' }),
  plusMinus: /* @__PURE__ */ optional(
    /* @__PURE__ */ length('±D', 'tolerance of the diameter, in each direction', { min: 0 }),
    0,
  ),
  expansion: /* @__PURE__ */ thermalExpansion(
    'α',
    'mean coefficient of linear expansion; across the pressing direction of graphite it may differ by a third',
    { above: -1e-3, below: 1e-3, example: '4.5e-6 1/K' },
  ),
  temperature: /* @__PURE__ */ temperature('T', 'temperature in service', { example: '1300 K' }),
};

const partOf = (meaning: string) =>
  inputs(fitPart, {
    meaning,
    checks: [
      ({ diameter, plusMinus }) =>
        plusMinus.si < diameter.si
          ? undefined
          : { path: 'plusMinus', given: plusMinus, expected: `below the diameter, ${diameter}` },
    ],
  });

/** Minimum, nominal and maximum diametral clearance; negative is interference. */
export interface Clearance {
  readonly min: Quantity<'length'>;
  readonly nominal: Quantity<'length'>;
  readonly max: Quantity<'length'>;
  readonly fit: 'clearance' | 'interference' | 'either';
}

/** The fit of an insert in its housing, at room temperature and in service. */
export interface InsertFit {
  readonly room: Clearance;
  readonly service: Clearance;
  /** Width of the bond line, half the nominal diametral clearance, at room temperature. */
  readonly bondLineAtRoom: Quantity<'length'>;
  /** Width of the bond line in service. */
  readonly bondLineInService: Quantity<'length'>;
  readonly cautions: readonly string[];
}

/**
 * Clearance or interference between a throat insert and its housing, from the two diameters with their tolerances, at room
 * temperature and in service, and the bond line that must follow the difference. Thermal growth is unrestrained: an
 * interference is the deformation that the parts would have to accommodate, not a stress.
 *
 * @example insertFit({ insert: { diameter: '40 mm', expansion: '4.5e-6 1/K', temperature: '1300 K' }, housing: { diameter: '40.2 mm', expansion: '23.6e-6 1/K', temperature: '400 K' }, roomTemperature: '300 K' }).service.nominal.in('mm') // => 0.114872
 */
export const insertFit = /* @__PURE__ */ procedure({
  name: 'insertFit',
  title: 'Fit of a throat insert in its housing',
  source: 'Linear thermal expansion; worst-case tolerance stack (engineering practice, no published source)',
  inputs: {
    insert: partOf('throat insert, by its outer diameter'),
    housing: partOf('housing, by its bore'),
    roomTemperature: temperature('T_0', 'temperature at which the diameters were measured'),
  },
  gives: 'diametral clearance and width of the bond line at room temperature and in service',
  example: {
    insert: { diameter: '40 mm', expansion: '4.5e-6 1/K', temperature: '1300 K' },
    housing: { diameter: '40.2 mm', expansion: '23.6e-6 1/K', temperature: '400 K' },
    roomTemperature: '300 K',
  },
  run: ({ insert, housing, roomTemperature }): InsertFit => {
    const growth = ({ expansion, temperature }: FitPart): number =>
      1 + expansion.si * (temperature.si - roomTemperature.si);
    const room = clearance(housing, 1, insert, 1);
    const service = clearance(housing, growth(housing), insert, growth(insert));
    const cautions = [
      ...(service.fit !== 'clearance'
        ? [
            'In service the insert may press on the housing. Graphite carries compression, but a tapered or stepped seat may split.',
          ]
        : []),
      ...(room.fit !== 'clearance' ? ['At room temperature assembly may require force or heat.'] : []),
      ...(service.max.si > room.max.si
        ? [
            'The gap opens in service. A rigid bond may crack and leak, so that only the seat retains the insert.',
          ]
        : []),
      'The insert heats in seconds, the housing much later. Check the temperatures at ignition as well as at burnout.',
    ];
    const half = (c: Clearance): Quantity<'length'> => millimetres(c.nominal.si / 2);
    return { room, service, bondLineAtRoom: half(room), bondLineInService: half(service), cautions };
  },
});

type FitPart = Values<typeof fitPart>;

function clearance(bore: FitPart, boreGrowth: number, plug: FitPart, plugGrowth: number): Clearance {
  const [boreSize, boreTolerance] = [bore.diameter.si, bore.plusMinus.si];
  const [plugSize, plugTolerance] = [plug.diameter.si, plug.plusMinus.si];
  const min = (boreSize - boreTolerance) * boreGrowth - (plugSize + plugTolerance) * plugGrowth;
  const max = (boreSize + boreTolerance) * boreGrowth - (plugSize - plugTolerance) * plugGrowth;
  return {
    min: millimetres(min),
    nominal: millimetres(boreSize * boreGrowth - plugSize * plugGrowth),
    max: millimetres(max),
    fit: min >= 0 ? 'clearance' : max <= 0 ? 'interference' : 'either',
  };
}

const millimetres = (si: number): Quantity<'length'> => fromSiValue(si, 'length', unitOf('mm'));
