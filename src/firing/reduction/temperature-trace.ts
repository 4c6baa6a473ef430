import { fromSiValue, optional, procedure, type Quantity, temperature, trace, unitOf } from '../../units';
import { valueAt } from '../analysis/trace-values';

/** Characteristic values of a temperature trace. */
export interface TemperatureTrace {
  readonly start: Quantity<'temperature'>;
  readonly peak: Quantity<'temperature'>;
  readonly timeOfPeak: Quantity<'time'>;
  readonly rise: Quantity<'temperature difference'>;
  /** Maximum rate of rise over 5 % of the record, so that noise has little influence. */
  readonly fastestRise: Quantity<'temperature rate'>;
  /** Time above the threshold; undefined where none is specified. */
  readonly timeAbove: Quantity<'time'> | undefined;
  /** True where the peak is the last sample, so that the true peak came later. */
  readonly stillRising: boolean;
}

/**
 * Computes peak, time of peak, rate of rise and time above a threshold of a temperature trace.
 *
 * @example temperatureTrace({ time: series([0, 1, 2, 3], 's'), temperature: series([20, 60, 100, 80], 'degC') }).peak.in('degC') // => 100
 */
export const temperatureTrace = /* @__PURE__ */ procedure({
  name: 'temperatureTrace',
  title: 'Characteristic values of a temperature trace',
  source: 'definitions',
  inputs: {
    time: trace('time', 'times of the samples, increasing'),
    temperature: trace('temperature', 'temperatures at these times'),
    threshold: optional(temperature('T_1', 'temperature above which the time is counted')),
  },
  checks: [
    (given) =>
      given.temperature.length === given.time.length
        ? undefined
        : {
            code: 'length-mismatch',
            path: 'temperature',
            given: given.temperature.length,
            expected: `as many samples as time, ${given.time.length}`,
          },
  ],
  gives: 'peak, time of peak, rate of rise and time above the threshold',
  example:
    "temperatureTrace({ time: series([0, 1, 2, 3], 's'), temperature: series([20, 60, 100, 80], 'degC') })",
  run: ({ time: { si: time }, temperature: { si: values }, threshold }): TemperatureTrace => {
    const last = values.length - 1;
    let top = 0;
    for (let i = 0; i <= last; i++) if (values[i] > values[top]) top = i;
    const stride = (time[last] - time[0]) / 20;
    let fastest = 0;
    for (let i = 0; i <= last && time[i] + stride <= time[last]; i++)
      fastest = Math.max(fastest, (valueAt(time, values, time[i] + stride) - values[i]) / stride);
    const kelvin = (si: number): Quantity<'temperature'> => fromSiValue(si, 'temperature', unitOf('degC'));
    const seconds = (si: number): Quantity<'time'> => fromSiValue(si, 'time', unitOf('s'));
    return {
      start: kelvin(values[0]),
      peak: kelvin(values[top]),
      timeOfPeak: seconds(time[top]),
      rise: fromSiValue(values[top] - values[0], 'temperature difference', unitOf('delta_K')),
      fastestRise: fromSiValue(fastest, 'temperature rate', unitOf('K/s')),
      timeAbove: threshold && seconds(timeAbove(time, values, threshold.si)),
      stillRising: top === last,
    };
  },
});

/** Time above a level, with interpolated crossings. */
function timeAbove(time: Float64Array, values: Float64Array, level: number): number {
  let sum = 0;
  for (let i = 1; i < time.length; i++) {
    const a = values[i - 1] - level;
    const b = values[i] - level;
    const step = time[i] - time[i - 1];
    if (a >= 0 && b >= 0) sum += step;
    else if (a > 0 || b > 0) sum += (step * Math.max(a, b)) / Math.abs(a - b);
  }
  return sum;
}
