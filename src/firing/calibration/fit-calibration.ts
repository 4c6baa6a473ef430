import { linearFit } from '../../numerics';
import {
  choice,
  formatNumber,
  inputs,
  instance,
  isQuantity,
  list,
  MeopError,
  optional,
  procedure,
  type QuantityInput,
  quantity,
  ratio,
  readInput,
  words,
} from '../../units';
import { type LineCalibration, type MeasuredKind, measuredKinds, readingRange } from './calibration';

type Load = QuantityInput<MeasuredKind> | QuantityInput<'mass'>;

/** A quantity of the measured kind, which is read once that kind is known. */
const loadOf = (meaning: string) =>
  instance(
    meaning,
    'a quantity',
    (value: unknown): value is Load => typeof value === 'string' || isQuantity(value),
  );

const point = /* @__PURE__ */ inputs(
  { reading: ratio('r', 'reading'), load: loadOf('load; a mass hung on the cell counts as its weight') },
  { meaning: 'calibration load and its reading' },
);

const gravity = 9.80665;

/**
 * Fits a calibration line to dead weights or a reference gauge: two points give a line, more points a least-squares
 * line with the covariance of slope and intercept. Cautions are added where the loads span few steps of the converter,
 * or where the line is extrapolated far beyond them.
 *
 * @example fitCalibration({ measures: 'force', points: [{ reading: 0, load: '0 N' }, { reading: 2, load: '10 N' }] }).slope // => 5
 */
export const fitCalibration = /* @__PURE__ */ procedure({
  name: 'fitCalibration',
  title: 'Calibration line through loads and their readings',
  source: 'ordinary least squares of load on reading; weight = mass times 9.80665 m/s² (exact by definition)',
  inputs: {
    measures: choice('measured quantity', measuredKinds),
    points: list('calibration loads and their readings', point, { min: 0 }),
    readingUnit: optional(words('unit of the readings'), 'V'),
    readingStep: optional(
      ratio('Δr', 'resolution of the converter, in the unit of the readings', { above: 0 }),
    ),
    usedUpTo: optional(loadOf('largest load for which the calibration will be used')),
    range: optional(readingRange),
  },
  gives: 'the line, its uncertainty where there are three points or more, and its limits',
  example:
    "fitCalibration({ measures: 'force', points: [{ reading: 0, load: '0 N' }, { reading: 2, load: '10 N' }] })",
  run: ({ measures, points, readingUnit, readingStep, usedUpTo, range }): LineCalibration => {
    if (points.length < 2)
      throw new MeopError({
        code: 'too-few-points',
        procedure: 'fitCalibration',
        path: 'points',
        given: points.length,
        expected: 'at least 2 points (3 for an uncertainty)',
      });
    const readings = points.map(({ reading }) => reading);
    const loads = points.map(({ load }, i) => loadSi(measures, load, i));
    const calibrated = { low: Math.min(...readings), high: Math.max(...readings) };
    if (calibrated.high === calibrated.low)
      throw new MeopError({
        code: 'out-of-domain',
        procedure: 'fitCalibration',
        path: 'points',
        given: readings,
        expected: 'points of different readings',
        remedy: 'Use different loads',
      });
    const cautions: string[] = [];
    const largest = Math.max(...loads.map(Math.abs));
    // Centred, so that slope and intercept are well conditioned.
    const centre = (calibrated.low + calibrated.high) / 2;
    const exact = points.length === 2;
    const fit = exact
      ? undefined
      : linearFit({ columns: [readings.map(() => 1), readings.map((r) => r - centre)], observations: loads });
    const [middle, slope] = fit?.coefficients ?? [
      (loads[0] + loads[1]) / 2,
      (loads[1] - loads[0]) / (readings[1] - readings[0]),
    ];
    const worst = fit ? Math.max(...Array.from(fit.residuals, Math.abs)) : 0;
    const step = readingStep === undefined ? undefined : (calibrated.high - calibrated.low) / readingStep;
    if (step !== undefined && step < 50)
      cautions.push(
        `The calibration spans ${formatNumber(step)} steps of the converter. Half a step is an error of ${formatNumber(50 / step)} % of every value. Calibrate with larger loads.`,
      );
    if (usedUpTo !== undefined) {
      const reach = Math.abs(readInput(measures, 'usedUpTo', usedUpTo, 'fitCalibration').si) / largest;
      if (reach > 1.5)
        cautions.push(
          `The line is used up to ${formatNumber(reach)} times the largest calibration load, where its slope is not known. Calibrate with larger loads.`,
        );
    }
    if (exact)
      cautions.push(
        'Two points give a line without a measure of its uncertainty. Calibrate with three or more.',
      );
    const [v00, v01, , v11] = fit?.covariance ?? [0, 0, 0, 0];
    return {
      form: 'line',
      measures,
      readingUnit,
      slope,
      intercept: middle - slope * centre,
      ...(fit && {
        covariance: [v11, v01 - centre * v11, v00 - 2 * centre * v01 + centre * centre * v11] as const,
        scatter: fit.scale,
        nonlinearity: largest > 0 ? worst / largest : 0,
      }),
      calibrated,
      ...(range && { range }),
      basis: exact
        ? 'two calibration points'
        : `least-squares line through ${points.length} calibration points`,
      cautions,
    };
  },
});

function loadSi(measures: MeasuredKind, load: unknown, i: number): number {
  const path = `points.${i}.load`;
  if (measures === 'force' && isMass(load))
    return readInput('mass', path, load, 'fitCalibration').si * gravity;
  return readInput(measures, path, load, 'fitCalibration').si;
}

function isMass(load: unknown): boolean {
  if (typeof load !== 'string') return isQuantity(load) && load.kind === 'mass';
  try {
    quantity('mass', load);
    return true;
  } catch (error) {
    if (error instanceof MeopError) return false;
    throw error;
  }
}
