import {
  formula,
  fromSiValue,
  length,
  type Quantity,
  type QuantityInput,
  readInput,
  temperatureDifference,
  thermalExpansion,
  unitOf,
} from '../units';
import { type FieldsOf, requireFields } from '../units/known-fields';
import { readPositive, refusal } from '../units/refusal';

const procedure = 'insertFit';

/**
 * A dimension after free thermal expansion.
 *
 * @example thermallyExpandedDimension({ dimension: '40 mm', expansion: '4.5e-6 1/K', temperatureRise: '1000 delta_K' }).in('mm') // => 40.18
 */
export const thermallyExpandedDimension = /* @__PURE__ */ formula({
  name: 'thermallyExpandedDimension',
  title: 'Dimension after thermal expansion',
  equation: 'D = D_0·(1 + α·ΔT)',
  source: 'Definition of the mean coefficient of linear expansion',
  inputs: {
    dimension: length('D_0', 'dimension at room temperature'),
    expansion: thermalExpansion('α', 'mean coefficient of linear expansion over the rise'),
    temperatureRise: temperatureDifference('ΔT', 'temperature above room temperature'),
  },
  output: length('D', 'dimension at temperature'),
  example: { dimension: '40 mm', expansion: '4.5e-6 1/K', temperatureRise: '1000 delta_K' },
  requires: [
    ({ expansion, temperatureRise }) =>
      expansion * temperatureRise > -1 || 'the expansion leaves no dimension; check its unit',
  ],
  si: ({ dimension, expansion, temperatureRise }) => dimension * (1 + expansion * temperatureRise),
  solve: {
    dimension: (grown, { expansion, temperatureRise }) => grown / (1 + expansion * temperatureRise),
    temperatureRise: (grown, { dimension, expansion }) => (grown / dimension - 1) / expansion,
    expansion: (grown, { dimension, temperatureRise }) => (grown / dimension - 1) / temperatureRise,
  },
});

/** One of the two parts of a fit. */
export interface FitPart {
  /** Diameter at room temperature. */
  readonly diameter: QuantityInput<'length'>;
  /** Symmetric tolerance; default none. */
  readonly plusMinus?: QuantityInput<'length'>;
  /**
   * Mean coefficient of linear expansion. For graphite it can differ by a third across the pressing direction; use
   * that value.
   */
  readonly expansion: QuantityInput<'thermal expansion'>;
  /** Temperature in service. */
  readonly temperature: QuantityInput<'temperature'>;
}

/** Options of {@link insertFit}. */
export interface InsertFitOptions {
  /** The throat insert, by its outer diameter. */
  readonly insert: FitPart;
  /** The housing, by its bore. */
  readonly housing: FitPart;
  /** Temperature at which the diameters were measured. */
  readonly roomTemperature: QuantityInput<'temperature'>;
}

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
  /** Width of the bond line, half the diametral clearance, at room temperature and in service, nominal size. */
  readonly bondLineAtRoom: Quantity<'length'>;
  readonly bondLineInService: Quantity<'length'>;
  readonly cautions: readonly string[];
}

const fitPartFields: FieldsOf<FitPart> = {
  diameter: 'required',
  plusMinus: 'optional',
  expansion: 'required',
  temperature: 'required',
};

const insertFitFields: FieldsOf<InsertFitOptions> = {
  insert: 'required',
  housing: 'required',
  roomTemperature: 'required',
};

/**
 * Clearance or interference between a throat insert and its housing, from the two diameters with their tolerances, at room
 * temperature and in service; and the thickness of the bond line. Thermal expansion is free: an interference is a difference
 * of diameters, not a stress.
 *
 * Source: linear thermal expansion; worst-case tolerance stack (engineering practice, no published source).
 *
 * @throws MeopError `out-of-domain` for diameters or temperatures not above 0, a negative tolerance, or an expansion that is not a small number
 * @example insertFit({ insert: { diameter: '40 mm', expansion: '4.5e-6 1/K', temperature: '1300 K' }, housing: { diameter: '40.2 mm', expansion: '23.6e-6 1/K', temperature: '400 K' }, roomTemperature: '300 K' }).service.nominal.in('mm') // => 0.114872
 */
export function insertFit(options: InsertFitOptions): InsertFit {
  requireFields(procedure, options, insertFitFields);
  const room = readPositive('temperature', 'roomTemperature', options.roomTemperature, procedure).si;
  const insert = readPart('insert', options.insert, room);
  const housing = readPart('housing', options.housing, room);
  const cold = clearance(housing.diameter, housing.tolerance, 1, insert.diameter, insert.tolerance, 1);
  const hot = clearance(
    housing.diameter,
    housing.tolerance,
    housing.growth,
    insert.diameter,
    insert.tolerance,
    insert.growth,
  );
  const half = (c: Clearance): Quantity<'length'> => millimetres(c.nominal.si / 2);
  const cautions = [
    ...(hot.fit !== 'clearance'
      ? [
          'The insert can press on the housing in service. Graphite withstands compression, but a tapered or stepped seat can split.',
        ]
      : []),
    ...(cold.fit !== 'clearance'
      ? ['The parts may require force or heat for assembly at room temperature.']
      : []),
    ...(hot.max.si > cold.max.si
      ? [
          'The gap opens in service. A rigid bond can crack and leak gas; then only the seat retains the insert.',
        ]
      : []),
    'The temperatures are transient: the insert heats in seconds, the housing much later. Check the temperatures at ignition and at burnout.',
  ];
  return { room: cold, service: hot, bondLineAtRoom: half(cold), bondLineInService: half(hot), cautions };
}

function clearance(
  bore: number,
  boreTol: number,
  boreGrowth: number,
  plug: number,
  plugTol: number,
  plugGrowth: number,
): Clearance {
  const least = (bore - boreTol) * boreGrowth - (plug + plugTol) * plugGrowth;
  const greatest = (bore + boreTol) * boreGrowth - (plug - plugTol) * plugGrowth;
  return {
    min: millimetres(least),
    nominal: millimetres(bore * boreGrowth - plug * plugGrowth),
    max: millimetres(greatest),
    fit: least >= 0 ? 'clearance' : greatest <= 0 ? 'interference' : 'either',
  };
}

function readPart(
  part: 'insert' | 'housing',
  given: FitPart,
  room: number,
): { readonly diameter: number; readonly tolerance: number; readonly growth: number } {
  requireFields(`insertFit: ${part}`, given, fitPartFields);
  const { diameter, plusMinus, expansion, temperature } = given;
  const size = readPositive('length', `${part}.diameter`, diameter, procedure).si;
  const tolerance =
    plusMinus === undefined ? 0 : readInput('length', `${part}.plusMinus`, plusMinus, procedure).si;
  const alpha = readInput('thermal expansion', `${part}.expansion`, expansion, procedure).si;
  const warm = readPositive('temperature', `${part}.temperature`, temperature, procedure).si;
  if (!(tolerance >= 0 && tolerance < size))
    throw refusal(procedure, `${part}.plusMinus`, plusMinus, 'at least 0 and below the diameter');
  if (!(Math.abs(alpha) < 1e-3))
    throw refusal(procedure, `${part}.expansion`, expansion, 'of the order of 1e-6 to 3e-5 per kelvin');
  return { diameter: size, tolerance, growth: 1 + alpha * (warm - room) };
}

const millimetres = (si: number): Quantity<'length'> => fromSiValue(si, 'length', unitOf('mm'));
