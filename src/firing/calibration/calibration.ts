import { formatNumber, inputs, instance, MeopError, procedure, ratio, type Values } from '../../units';
import { readThermocouple, type ThermocoupleType } from '../thermocouples/thermocouple';

/** The kinds of quantity that channels of logs measure. */
export const measuredKinds = [
  'gauge pressure',
  'absolute pressure',
  'force',
  'temperature',
  'mass',
  'length',
  'mass flow',
  'acceleration',
] as const;
/** The kind of quantity that a channel of a log measures. */
export type MeasuredKind = (typeof measuredKinds)[number];

export const readingRange = /* @__PURE__ */ inputs(
  { low: ratio('r_1', 'lowest valid reading'), high: ratio('r_2', 'highest valid reading') },
  { meaning: 'valid readings; beyond them the channel is saturated' },
);
/** Lowest and highest valid reading of a channel. */
export type ReadingRange = Values<typeof readingRange.fields>;

/** A straight line from reading to quantity, as data that can be stored with the log as JSON. */
export interface LineCalibration {
  readonly form: 'line';
  readonly measures: MeasuredKind;
  /** Unit of the reading: `counts`, `V`, `mV`, `mA`, `mV/V` or a unit of what is measured. */
  readonly readingUnit: string;
  /** SI units per unit of reading. */
  readonly slope: number;
  /** SI value at reading zero. */
  readonly intercept: number;
  /** Covariance of a fitted slope and intercept: variance, covariance, variance. */
  readonly covariance?: readonly [number, number, number];
  /** Standard deviation of the calibration points about the line, SI. */
  readonly scatter?: number;
  /** Largest deviation of a calibration point from the line/largest load. */
  readonly nonlinearity?: number;
  /** Readings at the lowest and the highest calibration load. */
  readonly calibrated?: ReadingRange;
  readonly range?: ReadingRange;
  /** Origin of the numbers. */
  readonly basis: string;
  readonly cautions: readonly string[];
}

/** Voltage of a thermocouple, with the temperature of its cold junction. */
export interface ThermocoupleCalibration {
  readonly form: 'thermocouple';
  readonly measures: 'temperature';
  readonly readingUnit: string;
  readonly type: ThermocoupleType;
  /** Temperature of the cold junction in K, or the channel of the log that contains it sample by sample. */
  readonly coldJunction: number | { readonly channel: string };
  /** Thermocouple voltage in V per unit of reading, and at reading zero. */
  readonly slope: number;
  readonly intercept: number;
  readonly range?: ReadingRange;
  readonly basis: string;
  readonly cautions: readonly string[];
}

/** Conversion of the readings of a channel into a quantity. */
export type Calibration = LineCalibration | ThermocoupleCalibration;

const isLine = (value: unknown): value is LineCalibration => isCalibration(value) && value.form === 'line';

/** Whether a value is a calibration: by what it contains, since calibrations are stored as JSON. */
export const isCalibration = (value: unknown): value is Calibration =>
  typeof value === 'object' &&
  value !== null &&
  'form' in value &&
  (value.form === 'line' || (value.form === 'thermocouple' && 'type' in value && 'coldJunction' in value)) &&
  'slope' in value &&
  typeof value.slope === 'number' &&
  'intercept' in value &&
  typeof value.intercept === 'number' &&
  'readingUnit' in value &&
  'measures' in value &&
  'cautions' in value &&
  Array.isArray(value.cautions);

const exampleLine =
  "fitCalibration({ measures: 'force', points: [{ reading: 0, load: '0 N' }, { reading: 2, load: '10 N' }] })";
const remedy = 'Make one with fitCalibration or a calibration of the sensor';

/** A calibration of any sensor. */
export const calibrationInput = /* @__PURE__ */ instance(
  'conversion of the readings of a channel into a quantity',
  'a Calibration',
  isCalibration,
  { remedy },
);

/** A straight calibration line. */
const lineInput = /* @__PURE__ */ instance('the calibration', 'a LineCalibration', isLine, { remedy });

/** Readings converted into SI values, and the number of invalid ones. */
export interface CalibratedReadings {
  readonly values: Float64Array;
  /** Number of readings beyond the range of converter or sensor. */
  readonly beyondRange: number;
  /** Number of readings without a physical value (a voltage that no temperature gives), which become NaN. */
  readonly impossible: number;
}

/**
 * Kernel: applies a calibration to readings. `coldJunctions` are logged cold-junction temperatures of a thermocouple,
 * in K.
 */
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
      throw new MeopError({
        code: 'missing-field',
        procedure: 'readLog',
        path: 'coldJunction',
        given: coldJunction.channel,
        problem: `must be a temperature while a log is read, got the channel '${coldJunction.channel}'`,
        remedy: 'Calibrate afterwards: calibrate(log, { … })',
      });
    for (let i = 0; i < values.length; i++) {
      const cold = typeof coldJunction === 'number' ? coldJunction : (coldJunctions?.[i] ?? Number.NaN);
      values[i] = readThermocouple(type, values[i], cold);
      if (Number.isNaN(values[i])) impossible++;
    }
  }
  return { values, beyondRange, impossible };
}

/** Standard deviation of a calibrated value due to the calibration, SI; 0 where it was not fitted. */
export function calibrationDeviation(calibration: Calibration, reading: number): number {
  if (calibration.form !== 'line' || calibration.covariance === undefined) return 0;
  const [slopeVariance, both, interceptVariance] = calibration.covariance;
  return Math.sqrt(Math.max(0, slopeVariance * reading * reading + 2 * both * reading + interceptVariance));
}

/**
 * Returns a calibration with its sign inverted, for a load cell mounted in the opposite direction, whose reading falls
 * as thrust rises.
 *
 * @example invertCalibration(fitCalibration({ measures: 'force', points: [{ reading: 0, load: '0 N' }, { reading: 1, load: '5 N' }] })).slope // => -5
 */
export const invertCalibration = /* @__PURE__ */ procedure({
  name: 'invertCalibration',
  title: 'Calibration with its sign inverted',
  source: 'definition',
  subject: lineInput,
  inputs: {},
  gives: 'the calibration of the inverted reading',
  example: `invertCalibration(${exampleLine})`,
  run: (calibration): LineCalibration => ({
    ...calibration,
    slope: -calibration.slope,
    intercept: -calibration.intercept,
    basis: `${calibration.basis}; sign inverted`,
  }),
});

/**
 * Returns a calibration whose value is zero at a reading: the mean reading of the unloaded cell.
 *
 * @example tareCalibration(fitCalibration({ measures: 'force', points: [{ reading: 0, load: '0 N' }, { reading: 1, load: '5 N' }] }), { unloadedReading: 2 }).intercept // => -10
 */
export const tareCalibration = /* @__PURE__ */ procedure({
  name: 'tareCalibration',
  title: 'Calibration with its zero at a reading',
  source: 'definition',
  subject: lineInput,
  inputs: { unloadedReading: ratio('r_0', 'mean reading of the unloaded cell', { example: 0.02 }) },
  gives: 'the calibration with its zero moved',
  example: `tareCalibration(${exampleLine}, { unloadedReading: 0.02 })`,
  run: (calibration, { unloadedReading }): LineCalibration => ({
    ...calibration,
    intercept: -calibration.slope * unloadedReading,
    basis: `${calibration.basis}; zero at ${formatNumber(unloadedReading)} ${calibration.readingUnit}`,
  }),
});
