import { choice, frequency, MeopError, optional, procedure } from '../../units';
import { analysedRecord } from '../analysis/analysed-record';
import { analysedTrace } from '../analysis/analysed-trace';
import { lowerBound, valueAt } from '../analysis/trace-values';
import { exampleFiring, type Firing, firingInput } from '../firing';
import { channelsOf, step, traceOf } from './step';

/** Kernel: values at new times, by linear interpolation. */
export function interpolated(time: Float64Array, values: Float64Array, at: Float64Array): Float64Array {
  const result = new Float64Array(at.length);
  const n = time.length;
  let i = 1;
  for (let k = 0; k < at.length; k++) {
    const t = at[k];
    if (t <= time[0] || t >= time[n - 1] || (k > 0 && t < at[k - 1])) {
      result[k] = valueAt(time, values, t);
      continue;
    }
    while (time[i] < t) i++;
    const step = time[i] - time[i - 1];
    result[k] = values[i - 1] + ((t - time[i - 1]) / step) * (values[i] - values[i - 1]);
  }
  return result;
}

/** Kernel: means over intervals of one period centred on each new time; the trace is linear between samples. */
export function averaged(
  time: Float64Array,
  values: Float64Array,
  at: Float64Array,
  period: number,
): Float64Array {
  // Differences of the running integral, so that the total is conserved.
  const running = new Float64Array(time.length);
  for (let i = 1; i < time.length; i++)
    running[i] = running[i - 1] + 0.5 * (values[i] + values[i - 1]) * (time[i] - time[i - 1]);
  const last = time.length - 1;
  const integralTo = (t: number): number => {
    if (t <= time[0]) return values[0] * (t - time[0]);
    if (t >= time[last]) return running[last] + values[last] * (t - time[last]);
    const i = Math.max(1, lowerBound(time, t));
    return running[i - 1] + 0.5 * (values[i - 1] + valueAt(time, values, t)) * (t - time[i - 1]);
  };
  return at.map((t) => (integralTo(t + period / 2) - integralTo(t - period / 2)) / period);
}

/** Kernel: evenly spaced times over a record. */
export function evenTimes(time: Float64Array, period: number): Float64Array {
  const start = time[0];
  const count = Math.floor((time[time.length - 1] - start) / period + 1e-9) + 1;
  return Float64Array.from({ length: count }, (_, i) => start + i * period);
}

/**
 * Resamples a record to an even time base. A reduced rate averages over each new interval, which conserves impulse and
 * prevents aliasing of noise; a peak shorter than the interval is reduced.
 *
 * @example resample(firing({ origin: 'measured', time: series([0, 1, 2], 's'), thrust: series([0, 2, 4], 'N') }), { rate: '2 Hz', method: 'linear' }).thrust?.at(1).in('N') // => 1
 */
export const resample = /* @__PURE__ */ procedure({
  name: 'resample',
  title: 'Resampling of a record to an even time base',
  source: 'definition: mean over each new interval, or linear interpolation',
  subject: firingInput,
  inputs: {
    rate: frequency('f', 'sample rate', { example: '100 Hz' }),
    method: optional(
      choice(
        'mean over each new interval, which conserves integrals, or linear interpolation; the mean where the rate is reduced',
        ['mean', 'linear'],
      ),
    ),
  },
  gives: 'the record at even times',
  example: `resample(${exampleFiring}, { rate: '2 Hz' })`,
  run: (given, options): Firing => {
    const record = analysedRecord(given);
    const rate = options.rate.si;
    const time = record.time.si;
    const span = time[time.length - 1] - time[0];
    if (span * rate < 1 || span * rate > 1e9)
      throw new MeopError({
        code: 'out-of-domain',
        procedure: 'resample',
        path: 'rate',
        given: options.rate,
        expected: `between ${1 / span} and ${1e9 / span} Hz (2 to 10⁹ samples in ${span} s)`,
      });
    const period = 1 / rate;
    const meanRate = (time.length - 1) / span;
    const method = options.method ?? (rate < 0.75 * meanRate ? 'mean' : 'linear');
    const at = evenTimes(time, period);
    const to = (values: Float64Array): Float64Array =>
      method === 'mean' ? averaged(time, values, at, period) : interpolated(time, values, at);
    const dropped = otherChannels.filter((name) => record[name] !== undefined);
    const { massFlow, burningArea, web, portMassFlux, throatDiameter, propellantMass, ...rest } = record;
    void [massFlow, burningArea, web, portMassFlux, throatDiameter, propellantMass];
    return step(
      analysedRecord(rest),
      {
        time: at,
        channels: Object.fromEntries(
          channelsOf(record, undefined, 'resample').map((channel) => [
            channel,
            analysedTrace(at, to(traceOf(record, channel, 'resample').values)),
          ]),
        ),
        temperatures: Object.fromEntries(
          Object.entries(record.temperatures).map(([name, channel]) => [name, to(channel.si)]),
        ),
      },
      `resampled from ${Number(meanRate.toPrecision(5))} to ${Number(rate.toPrecision(5))} Hz (${method})${dropped.length > 0 ? `; computed channels omitted: ${dropped.join(', ')}` : ''}`,
    );
  },
});

const otherChannels = [
  'massFlow',
  'burningArea',
  'web',
  'portMassFlux',
  'throatDiameter',
  'propellantMass',
] as const;
