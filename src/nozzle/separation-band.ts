import { gamma } from '../thermo/gas-inputs';
import { areaRatioSi, isentropicPressureRatioSi, vandenkerckhoveSi } from '../thermo/isentropic-kernels';
import { machFromAreaRatioSi } from '../thermo/mach-from-area-ratio';
import { fromSiValue, optional, printable, procedure, type Quantity, table, unitOf } from '../units';
import { vacuumThrustCoefficientAtSi } from './ideal-nozzle-kernels';
import { ambientAboveZero, chamberPressure, expansionRatio } from './nozzle-inputs';
import { type SeparationCriterion, separationCriteria } from './separation';
import { separationMachSi } from './separation-mach';

/** The prediction of one criterion. */
export interface SeparationPrediction {
  readonly criterion: SeparationCriterion;
  /** Wall pressure at which the flow separates from the wall. */
  readonly pressure: Quantity<'absolute pressure'>;
  readonly pressureOverAmbient: number;
  readonly mach: number;
  /** Area at the separation point/throat area. */
  readonly areaRatio: number;
  /** Thrust coefficient of the separated flow, with ambient pressure on the wall downstream. */
  readonly thrustCoefficient: number;
  /** Whether the separation point is inside the nozzle; absent where no expansion ratio is specified. */
  readonly separates?: boolean;
}

/** The range of the published criteria. */
export interface SeparationBand {
  readonly predictions: readonly SeparationPrediction[];
  readonly lowest: Quantity<'absolute pressure'>;
  readonly highest: Quantity<'absolute pressure'>;
  /** What the criteria predict together; absent where no expansion ratio is specified. */
  readonly verdict?: 'attached' | 'separated' | 'the rules disagree';
  readonly cautions: readonly string[];
  toString(): string;
}

/**
 * Wall pressure at which over-expanded flow separates, as the range of five published criteria, none of which is accurate in
 * general: {@link summerfieldSeparationRatio}, {@link schmuckerSeparationRatio}, {@link kaltBadalSeparationRatio},
 * {@link schillingSeparationRatio} and {@link starkSeparationRatio}. With an expansion ratio each states whether this nozzle separates.
 *
 * @example separationPressure({ gamma: 1.2, chamberPressure: '300 psi', ambientPressure: '14.7 psi' }).predictions[0].pressure.in('psi') // => 5.88
 */
export const separationPressure = /* @__PURE__ */ procedure({
  name: 'separationPressure',
  title: 'Separation pressure of an over-expanded nozzle',
  source: 'The five criteria of separationCriteria, each with its own source',
  inputs: {
    gamma,
    chamberPressure,
    ambientPressure: ambientAboveZero,
    expansionRatio: optional(expansionRatio),
  },
  gives: 'wall pressure, Mach number and area at the separation point by each criterion, and their range',
  example: { gamma: 1.2, chamberPressure: '300 psi', ambientPressure: '14.7 psi' },
  checks: [
    ({ chamberPressure, ambientPressure }) =>
      ambientPressure.si < 0.5 * chamberPressure.si
        ? undefined
        : {
            path: 'ambientPressure',
            given: ambientPressure,
            expected: `below half of the chamber pressure (${chamberPressure})`,
          },
  ],
  run: ({ gamma, chamberPressure, ambientPressure, expansionRatio }): SeparationBand => {
    const [chamber, ambient] = [chamberPressure.si, ambientPressure.si];
    const exitMach = expansionRatio && machFromAreaRatioSi(expansionRatio, gamma, true);
    const show = unitOf(ambientPressure.unit);
    const predictions = separationCriteria.map((criterion): SeparationPrediction => {
      const mach = separationMachSi(gamma, ambient / chamber, criterion);
      const wall = isentropicPressureRatioSi(mach, gamma) * chamber;
      const areaRatio = areaRatioSi(mach, gamma);
      const vacuum = vacuumThrustCoefficientAtSi(mach, gamma, vandenkerckhoveSi(gamma));
      return {
        criterion,
        pressure: fromSiValue(wall, 'absolute pressure', show),
        pressureOverAmbient: wall / ambient,
        mach,
        areaRatio,
        thrustCoefficient: vacuum - (areaRatio * ambient) / chamber,
        ...(exitMach !== undefined && { separates: mach < exitMach }),
      };
    });
    const sorted = [...predictions].sort((a, b) => a.pressure.si - b.pressure.si);
    const lowest = sorted[0].pressure;
    const highest = sorted[sorted.length - 1].pressure;
    const separated = predictions.filter(({ separates }) => separates).length;
    const result = {
      predictions,
      lowest,
      highest,
      ...(exitMach !== undefined && { verdict: verdictOf(separated) }),
      cautions: [
        `The criteria differ by ${((highest.si / lowest.si - 1) * 100).toFixed(0)} % here. Throats under about 20 mm are outside the tests to which they were fitted.`,
        ...(predictions.some(({ mach }) => mach < 1.5)
          ? [
              'At least one criterion predicts separation below Mach 1.5, outside the tests. So near the throat no criterion is reliable.',
            ]
          : []),
      ],
    };
    return printable(result, () =>
      table(
        predictions.map((p) => ({
          criterion: p.criterion,
          'p_sep/p_a': p.pressureOverAmbient.toPrecision(4),
          pressure: p.pressure.format(),
          Mach: p.mach.toPrecision(4),
          'A/A_t': p.areaRatio.toPrecision(4),
          C_F: p.thrustCoefficient.toPrecision(4),
          ...(p.separates !== undefined && { separates: p.separates ? 'yes' : 'no' }),
        })),
      ),
    );
  },
});

const verdictOf = (separated: number): SeparationBand['verdict'] & string =>
  separated === 0 ? 'attached' : separated === separationCriteria.length ? 'separated' : 'the rules disagree';
