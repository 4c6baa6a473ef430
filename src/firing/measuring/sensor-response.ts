import { findRoot } from '../../numerics';
import {
  formula,
  frequency,
  fromSiValue,
  MeopError,
  type Quantity,
  type QuantityInput,
  ratio,
  readInput,
  time,
  unitOf,
} from '../../units';

/**
 * Bandwidth of a sensor or amplifier from its rise time: faster features of a trace are the sensor's own. Sampling at
 * five to ten times the bandwidth is common practice.
 *
 * @throws MeopError `out-of-domain` for a rise time not above 0
 * @example bandwidthFromRiseTime({ riseTime: '2 ms' }).in('Hz') // => 175
 */
export const bandwidthFromRiseTime = /* @__PURE__ */ formula({
  name: 'bandwidthFromRiseTime',
  title: 'Bandwidth of a sensor from its rise time',
  equation: 'B = 0.35 / t_r',
  source: 'first-order lag, 10 % to 90 %: ln 9 / (2·π) = 0.3497, rounded to 0.35 as is common practice',
  inputs: { riseTime: time('t_r', 'time from 10 % to 90 % of a sudden change') },
  output: frequency('B', 'bandwidth, −3 dB'),
  example: { riseTime: '2 ms' },
  si: ({ riseTime }) => 0.35 / riseTime,
  solve: { riseTime: (bandwidth) => 0.35 / bandwidth },
});

/**
 * Step of a converter in the unit of its span: nothing finer is told by one reading.
 *
 * @throws MeopError `out-of-domain`
 * @example converterStep({ span: 5, bits: 10 }) // => 0.0048828125
 */
export const converterStep = /* @__PURE__ */ formula({
  name: 'converterStep',
  title: 'Step of an analogue to digital converter',
  equation: 'd = U / 2^b',
  source: 'definition',
  inputs: {
    span: ratio('U', 'reading from one end of the converter to the other, in its own unit', { above: 0 }),
    bits: ratio('b', 'bits of the converter', { min: 1, max: 64 }),
  },
  output: ratio('d', 'step, in the unit of the span'),
  example: { span: 5, bits: 10 },
  si: ({ span, bits }) => span / 2 ** bits,
  solve: { span: (step, { bits }) => step * 2 ** bits, bits: (step, { span }) => Math.log2(span / step) },
});

/** What a lag leaves of a peak. */
export interface FirstOrderPeakResponse {
  /** Peak told over true peak. */
  readonly peakRatio: number;
  /** How much later than the true peak. */
  readonly peakDelay: Quantity<'time'>;
}

/**
 * What a sensor with a first-order lag makes of a short pulse, here half a sine: how much of the peak it tells, and how
 * late. A gas-filled line to a transducer, a damped load cell and a thermocouple in its sheath are such lags.
 *
 * Source: exact response y = (sin ω·t − ω·τ·cos ω·t + ω·τ·exp(−t / τ)) / (1 + (ω·τ)²) of τ·y' + y = sin ω·t.
 *
 * @throws MeopError `out-of-domain` for a duration or time constant not above 0
 * @example firstOrderPeakResponse({ duration: '0.4 s', timeConstant: '20 ms' }).peakRatio.toFixed(4) // => '0.9879'
 */
export function firstOrderPeakResponse(options: {
  /** Length of the pulse. */
  readonly duration: QuantityInput<'time'>;
  /** Time in which the sensor makes up 63 % of a sudden change. */
  readonly timeConstant: QuantityInput<'time'>;
}): FirstOrderPeakResponse {
  const read = (field: 'duration' | 'timeConstant'): number => {
    const { si } = readInput('time', field, options[field], 'firstOrderPeakResponse');
    if (si > 0) return si;
    throw new MeopError(
      'out-of-domain',
      `firstOrderPeakResponse: ${field}: ${String(options[field])} given; above 0 is expected`,
      field,
      { value: options[field], expected: 'above 0' },
    );
  };
  const duration = read('duration');
  const lag = read('timeConstant');
  const turn = Math.PI / duration;
  const slow = turn * lag;
  // The rate of the response is 0 where it meets the pulse itself, which falls after its middle.
  const { root } = findRoot((t) => Math.cos(turn * t) + slow * Math.sin(turn * t) - Math.exp(-t / lag), {
    lower: duration / 2,
    upper: duration,
  });
  return {
    peakRatio: Math.sin(turn * root),
    peakDelay: fromSiValue(root - duration / 2, 'time', unitOf('ms')),
  };
}
