import { findRoot } from '../../numerics';
import { formula, frequency, fromSiValue, procedure, type Quantity, ratio, time, unitOf } from '../../units';

/**
 * Bandwidth of a sensor or amplifier from its rise time. Faster features of a trace are those of the sensor. A sample
 * rate of five to ten times the bandwidth is recommended (engineering practice, no published source).
 *
 * @example bandwidthFromRiseTime({ riseTime: '2 ms' }).in('Hz') // => 175
 */
export const bandwidthFromRiseTime = /* @__PURE__ */ formula({
  name: 'bandwidthFromRiseTime',
  title: 'Bandwidth of a sensor from its rise time',
  equation: 'B = 0.35 / t_r',
  source: 'first-order lag, 10 % to 90 %: ln 9 / (2·π) = 0.3497, rounded to 0.35 by convention',
  inputs: { riseTime: time('t_r', 'rise time from 10 % to 90 % of a step') },
  output: frequency('B', 'bandwidth, −3 dB'),
  example: { riseTime: '2 ms' },
  si: ({ riseTime }) => 0.35 / riseTime,
});

/**
 * Resolution of a converter, in the unit of its span.
 *
 * @example converterStep({ span: 5, bits: 10 }) // => 0.0048828125
 */
export const converterStep = /* @__PURE__ */ formula({
  name: 'converterStep',
  title: 'Resolution of an analogue-to-digital converter',
  equation: 'd = U / 2^b',
  source: 'definition',
  inputs: {
    span: ratio('U', 'span of the converter, in the unit of the reading', { above: 0 }),
    bits: ratio('b', 'number of bits of the converter', { min: 1, max: 64 }),
  },
  output: ratio('d', 'resolution, in the unit of the span'),
  example: { span: 5, bits: 10 },
  si: ({ span, bits }) => span / 2 ** bits,
});

/** Response of a first-order lag to the peak of a pulse. */
export interface FirstOrderPeakResponse {
  /** Measured peak/true peak. */
  readonly peakRatio: number;
  /** Delay of the measured peak behind the true one. */
  readonly peakDelay: Quantity<'time'>;
}

/**
 * Computes the response of a sensor with a first-order lag to a short pulse (half a sine): the measured fraction of the
 * peak, and its delay. A gas-filled line to a transducer, a damped load cell and a sheathed thermocouple are such lags.
 *
 * @example firstOrderPeakResponse({ duration: '0.4 s', timeConstant: '20 ms' }).peakRatio.toFixed(4) // => '0.9879'
 */
export const firstOrderPeakResponse = /* @__PURE__ */ procedure({
  name: 'firstOrderPeakResponse',
  title: 'Response of a first-order lag to the peak of a pulse',
  source: "exact response y = (sin ω·t − ω·τ·cos ω·t + ω·τ·exp(−t / τ)) / (1 + (ω·τ)²) of τ·y' + y = sin ω·t",
  inputs: {
    duration: time('T', 'duration of the pulse', { example: '0.4 s' }),
    timeConstant: time('τ', 'time constant: time to 63 % of a step', { example: '20 ms' }),
  },
  gives: 'the measured fraction of the peak and its delay',
  example: { duration: '0.4 s', timeConstant: '20 ms' },
  run: ({ duration: { si: duration }, timeConstant: { si: lag } }): FirstOrderPeakResponse => {
    const turn = Math.PI / duration;
    const slow = turn * lag;
    // The rate of the response is 0 where it meets the pulse itself, which falls after its centre.
    const { root } = findRoot((t) => Math.cos(turn * t) + slow * Math.sin(turn * t) - Math.exp(-t / lag), {
      lower: duration / 2,
      upper: duration,
    });
    return {
      peakRatio: Math.sin(turn * root),
      peakDelay: fromSiValue(root - duration / 2, 'time', unitOf('ms')),
    };
  },
});
