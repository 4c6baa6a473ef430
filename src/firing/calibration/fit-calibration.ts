import { linearFit } from '../../numerics';
import { formatNumber, MeopError, type Quantity, type QuantityInput, quantity, readInput } from '../../units';
import type { LineCalibration, MeasuredKind, ReadingRange } from './calibration';

/** A calibration load and its reading. A mass hung on the cell counts as its weight. */
export interface CalibrationPoint<K extends MeasuredKind> {
  readonly reading: number;
  readonly load: QuantityInput<K> | (K extends 'force' ? QuantityInput<'mass'> : never);
}

/** Input of {@link fitCalibration}. */
export interface CalibrationFitOptions<K extends MeasuredKind> {
  readonly measures: K;
  readonly points: readonly CalibrationPoint<K>[];
  /** Unit of the readings. Default `'V'`. */
  readonly readingUnit?: string;
  /** Resolution of the converter, in the unit of the readings. */
  readonly readingStep?: number;
  /** Largest load for which the calibration will be used, to compute its extrapolation. */
  readonly usedUpTo?: QuantityInput<K>;
  readonly range?: ReadingRange;
}

const gravity = 9.80665;

/**
 * Fits a calibration line to dead weights or a reference gauge: two points give a line, more points a least-squares
 * line with the covariance of slope and intercept. Cautions are added where the loads span few steps of the converter,
 * or where the line is extrapolated far beyond them.
 *
 * Source: ordinary least squares of load on reading; weight = mass times 9.80665 m/s² (exact by definition).
 *
 * @throws MeopError `too-few-points`, `out-of-domain` where all readings are equal
 * @example fitCalibration({ measures: 'force', points: [{ reading: 0, load: '0 N' }, { reading: 2, load: '10 N' }] }).slope // => 5
 */
export function fitCalibration<const K extends MeasuredKind>(
  options: CalibrationFitOptions<K>,
): LineCalibration {
  const { measures, points, readingUnit = 'V', readingStep, usedUpTo, range } = options;
  if (points.length < 2)
    throw new MeopError(
      'too-few-points',
      `fitCalibration: points must contain at least 2 points (3 for an uncertainty), got ${points.length}`,
      'points',
      { value: points.length, expected: 'at least 2' },
    );
  const readings = points.map(({ reading }, i) => finiteReading(reading, i));
  const loads = points.map(({ load }, i) => loadSi(measures, load, i));
  const calibrated = { low: Math.min(...readings), high: Math.max(...readings) };
  if (calibrated.high === calibrated.low)
    throw new MeopError(
      'out-of-domain',
      'fitCalibration: points must contain different readings, got equal ones. Use different loads.',
      'points',
    );
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
}

function finiteReading(reading: number, i: number): number {
  if (typeof reading === 'number' && Number.isFinite(reading)) return reading;
  throw new MeopError(
    'not-finite',
    `fitCalibration: points[${i}].reading must be a finite number, got ${String(reading)}`,
    `points[${i}].reading`,
    { value: reading },
  );
}

function loadSi(measures: MeasuredKind, load: unknown, i: number): number {
  const path = `points[${i}].load`;
  if (measures === 'force' && isMass(load))
    return readInput('mass', path, load, 'fitCalibration').si * gravity;
  return readInput(measures, path, load, 'fitCalibration').si;
}

function isMass(load: unknown): load is Quantity<'mass'> | string {
  if (typeof load !== 'string')
    return typeof load === 'object' && load !== null && 'kind' in load && load.kind === 'mass';
  try {
    quantity('mass', load);
    return true;
  } catch (error) {
    if (error instanceof MeopError) return false;
    throw error;
  }
}
