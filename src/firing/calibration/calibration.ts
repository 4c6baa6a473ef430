import { formatNumber, MeopError, type NamedKind } from '../../units';
import { readThermocouple, type ThermocoupleType } from '../thermocouples/thermocouple';

/** The kinds that a channel of a log may measure. */
export type MeasuredKind = Extract<
  NamedKind,
  | 'gauge pressure'
  | 'absolute pressure'
  | 'force'
  | 'temperature'
  | 'mass'
  | 'length'
  | 'mass flow'
  | 'acceleration'
>;

/** The least and the greatest reading that still means something; beyond them the channel is saturated. */
export interface ReadingRange {
  readonly low: number;
  readonly high: number;
}

/** A straight line from reading to quantity, as data: it can be kept beside the log as JSON. */
export interface LineCalibration {
  readonly form: 'line';
  readonly measures: MeasuredKind;
  /** Unit of the reading: `counts`, `V`, `mV`, `mA`, `mV/V` or a unit of what is measured. */
  readonly readingUnit: string;
  /** SI per unit of reading. */
  readonly slope: number;
  /** SI at reading zero. */
  readonly intercept: number;
  /** Of slope and intercept, where they were fitted: variance, covariance, variance. */
  readonly covariance?: readonly [number, number, number];
  /** Scatter of the calibration points about the line, SI. */
  readonly scatter?: number;
  /** Largest departure of a calibration point from the line as a share of the largest load. */
  readonly nonlinearity?: number;
  /** Readings of the least and the greatest load calibrated with. */
  readonly calibrated?: ReadingRange;
  readonly range?: ReadingRange;
  /** Where the numbers come from. */
  readonly basis: string;
  readonly cautions: readonly string[];
}

/** A thermocouple's voltage, with the cold junction's temperature. */
export interface ThermocoupleCalibration {
  readonly form: 'thermocouple';
  readonly measures: 'temperature';
  readonly readingUnit: string;
  readonly type: ThermocoupleType;
  /** K; or the channel of the log that tells it, sample by sample. */
  readonly coldJunction: number | { readonly channel: string };
  /** Thermocouple voltage in V per unit of reading, and at reading zero. */
  readonly slope: number;
  readonly intercept: number;
  readonly range?: ReadingRange;
  readonly basis: string;
  readonly cautions: readonly string[];
}

/** How the readings of a channel become a quantity. */
export type Calibration = LineCalibration | ThermocoupleCalibration;

/** Readings turned into SI values, and what could not be. */
export interface CalibratedReadings {
  readonly values: Float64Array;
  /** Readings beyond the range of converter or sensor. */
  readonly beyondRange: number;
  /** Readings that stand for nothing (a voltage no temperature gives): their values are NaN. */
  readonly impossible: number;
}

/** Kernel: applies a calibration to readings; `coldJunctions` are those of a thermocouple whose own are logged, in K. */
export function applyCalibration(
  calibration: Calibration,
  readings: Float64Array,
  coldJunctions?: Float64Array,
): CalibratedReadings {
  const { slope, intercept, range } = calibration;
  const values = new Float64Array(readings.length);
  let beyondRange = 0;
  let impossible = 0;
  for (let i = 0; i < readings.length; i++) {
    const reading = readings[i];
    if (range && (reading >= range.high || reading <= range.low)) beyondRange++;
    values[i] = slope * reading + intercept;
  }
  if (calibration.form === 'thermocouple') {
    const { type, coldJunction } = calibration;
    if (typeof coldJunction !== 'number' && coldJunctions === undefined)
      throw new MeopError(
        'missing-field',
        `coldJunction: channel '${coldJunction.channel}' tells it, and is not at hand while a log is read: calibrate afterwards, calibrate(log, { … })`,
        'coldJunction',
      );
    for (let i = 0; i < values.length; i++) {
      const cold = typeof coldJunction === 'number' ? coldJunction : (coldJunctions?.[i] ?? Number.NaN);
      values[i] = readThermocouple(type, values[i], cold);
      if (Number.isNaN(values[i])) impossible++;
    }
  }
  return { values, beyondRange, impossible };
}

/** One standard deviation of a calibrated value that the calibration itself brings, SI; 0 where it was not fitted. */
export function calibrationDeviation(calibration: Calibration, reading: number): number {
  if (calibration.form !== 'line' || calibration.covariance === undefined) return 0;
  const [slopeVariance, both, interceptVariance] = calibration.covariance;
  return Math.sqrt(Math.max(0, slopeVariance * reading * reading + 2 * both * reading + interceptVariance));
}

/**
 * A calibration with its sign turned: a cell that reads less as thrust grows, mounted the other way round.
 *
 * @example invertCalibration(fitCalibration({ measures: 'force', points: [{ reading: 0, load: '0 N' }, { reading: 1, load: '5 N' }] })).slope // => -5
 */
export function invertCalibration(calibration: LineCalibration): LineCalibration {
  return {
    ...calibration,
    slope: -calibration.slope,
    intercept: -calibration.intercept,
    basis: `${calibration.basis}; sign turned`,
  };
}

/**
 * A calibration whose value is zero at a reading: the mean reading of the unloaded cell.
 *
 * @throws MeopError `not-finite`
 * @example tareCalibration(fitCalibration({ measures: 'force', points: [{ reading: 0, load: '0 N' }, { reading: 1, load: '5 N' }] }), 2).intercept // => -10
 */
export function tareCalibration(calibration: LineCalibration, unloadedReading: number): LineCalibration {
  if (!Number.isFinite(unloadedReading))
    throw new MeopError(
      'not-finite',
      `tareCalibration: unloadedReading: ${unloadedReading} given; a finite reading is expected`,
      'unloadedReading',
      { value: unloadedReading },
    );
  return {
    ...calibration,
    intercept: -calibration.slope * unloadedReading,
    basis: `${calibration.basis}; zero at ${formatNumber(unloadedReading)} ${calibration.readingUnit}`,
  };
}
