import { areaRatioSi, isentropicPressureRatioSi, vandenkerckhoveSi } from '../thermo/isentropic-kernels';
import { machFromAreaRatioSi } from '../thermo/mach-from-area-ratio';
import {
  fromSiValue,
  type NamedKind,
  type Quantity,
  type QuantityInput,
  readInput,
  table,
  unitOf,
} from '../units';
import { type FieldsOf, requireFields } from '../units/known-fields';
import { refusal } from '../units/refusal';
import { vacuumThrustCoefficientAt } from './ideal-nozzle';
import { type SeparationCriterion, separationCriteria, separationMachSi } from './separation';

const procedure = 'separationPressure';

/** Options of {@link separationPressure}. */
export interface SeparationPressureOptions {
  readonly gamma: number;
  /** Chamber stagnation pressure. */
  readonly chamberPressure: QuantityInput<'absolute pressure'>;
  readonly ambientPressure: QuantityInput<'absolute pressure'>;
  /** Exit/throat area ratio, at least 1; if given, each criterion states whether this nozzle separates. */
  readonly expansionRatio?: number;
}

/** Prediction of one criterion. */
export interface SeparationPrediction {
  readonly criterion: SeparationCriterion;
  /** Wall pressure at separation. */
  readonly pressure: Quantity<'absolute pressure'>;
  readonly pressureOverAmbient: number;
  readonly mach: number;
  /** Ratio of the area there to throat area. */
  readonly areaRatio: number;
  /** Thrust coefficient of the separated flow with ambient pressure on the wall downstream. */
  readonly thrustCoefficient: number;
  /** True if separation is inside the nozzle; absent where no expansion ratio was given. */
  readonly separates?: boolean;
}

/** Range of the published criteria. */
export interface SeparationBand {
  readonly predictions: readonly SeparationPrediction[];
  readonly lowest: Quantity<'absolute pressure'>;
  readonly highest: Quantity<'absolute pressure'>;
  /** Combined verdict of the criteria on the nozzle; absent where no expansion ratio was given. */
  readonly verdict?: 'attached' | 'separated' | 'the rules disagree';
  readonly cautions: readonly string[];
  toString(): string;
}

const separationPressureFields: FieldsOf<SeparationPressureOptions> = {
  gamma: 'required',
  chamberPressure: 'required',
  ambientPressure: 'required',
  expansionRatio: 'optional',
};

/**
 * Wall pressure at which over-expanded flow separates, as the range of five published criteria.
 *
 * Source: the criteria as given at {@link summerfieldSeparationRatio}, {@link schmuckerSeparationRatio}, {@link
 * kaltBadalSeparationRatio}, {@link schillingSeparationRatio} and {@link starkSeparationRatio}.
 *
 * @throws MeopError `out-of-domain` for γ not above 1, an exit smaller than the throat, or an ambient pressure not
 * above 0 or not below half of the chamber pressure
 * @example separationPressure({ gamma: 1.2, chamberPressure: '300 psi', ambientPressure: '14.7 psi' }).predictions[0].pressure.in('psi') // => 5.88
 */
export function separationPressure(options: SeparationPressureOptions): SeparationBand {
  requireFields(procedure, options, separationPressureFields);
  const read = (kind: NamedKind, field: keyof SeparationPressureOptions): number =>
    readInput(kind, field, options[field], procedure).si;
  const gamma = read('dimensionless', 'gamma');
  const chamber = read('absolute pressure', 'chamberPressure');
  const ambient = read('absolute pressure', 'ambientPressure');
  const exit = options.expansionRatio === undefined ? undefined : read('dimensionless', 'expansionRatio');
  if (!(gamma > 1)) throw refusal(procedure, 'gamma', options.gamma, 'above 1');
  if (!(chamber > 0)) throw refusal(procedure, 'chamberPressure', options.chamberPressure, 'above 0 MPa');
  if (!(ambient > 0 && ambient < 0.5 * chamber))
    throw refusal(
      procedure,
      'ambientPressure',
      options.ambientPressure,
      'above 0 and below half of the chamber pressure',
    );
  if (exit !== undefined && !(exit >= 1)) throw refusal(procedure, 'expansionRatio', exit, 'at least 1');
  const exitMach = exit === undefined ? undefined : machFromAreaRatioSi(exit, gamma, true);

  const { unit } = readInput('absolute pressure', 'ambientPressure', options.ambientPressure, procedure);
  const show = unitOf(unit.text);
  const predictions = separationCriteria.map((criterion): SeparationPrediction => {
    const mach = separationMachSi(gamma, ambient / chamber, criterion);
    const wall = isentropicPressureRatioSi(mach, gamma) * chamber;
    const areaRatio = areaRatioSi(mach, gamma);
    return {
      criterion,
      pressure: fromSiValue(wall, 'absolute pressure', show),
      pressureOverAmbient: wall / ambient,
      mach,
      areaRatio,
      thrustCoefficient:
        vacuumThrustCoefficientAt(mach, gamma, vandenkerckhoveSi(gamma)) - (areaRatio * ambient) / chamber,
      ...(exitMach !== undefined && { separates: mach < exitMach }),
    };
  });
  const sorted = [...predictions].sort((a, b) => a.pressure.si - b.pressure.si);
  const lowest = sorted[0].pressure;
  const highest = sorted[sorted.length - 1].pressure;
  const separated = predictions.filter(({ separates }) => separates).length;
  const text = (): string =>
    table(
      predictions.map((p) => ({
        rule: p.criterion,
        'p_sep/p_a': p.pressureOverAmbient.toPrecision(4),
        pressure: p.pressure.format(),
        Mach: p.mach.toPrecision(4),
        'A/A_t': p.areaRatio.toPrecision(4),
        C_F: p.thrustCoefficient.toPrecision(4),
        ...(p.separates !== undefined && { separates: p.separates ? 'yes' : 'no' }),
      })),
    );
  return {
    predictions,
    lowest,
    highest,
    ...(exit !== undefined && {
      verdict:
        separated === 0
          ? 'attached'
          : separated === separationCriteria.length
            ? 'separated'
            : 'the rules disagree',
    }),
    cautions: [
      `The criteria differ by ${((highest.si / lowest.si - 1) * 100).toFixed(0)} % here. Throats below about 20 mm are outside the range of their tests.`,
      ...(predictions.some(({ mach }) => mach < 1.5)
        ? [
            'A criterion predicts separation below Mach 1.5, outside the range of its tests. No criterion is reliable so near the throat.',
          ]
        : []),
    ],
    toString: text,
    ...{ [Symbol.for('nodejs.util.inspect.custom')]: text },
  };
}
