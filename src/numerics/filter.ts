/** Butterworth low-pass filters as chains of second-order sections, run once or forward and backward. */
import { MeopError } from '../units/errors';
import { invalidArgument, requireFiniteArray, requireInteger, requirePositive } from './checks';

/** H(z) = (b0 + b1 z^-1 + b2 z^-2) / (1 + a1 z^-1 + a2 z^-2); a section of first order has b2 = a2 = 0. */
export interface FilterSection {
  readonly b0: number;
  readonly b1: number;
  readonly b2: number;
  readonly a1: number;
  readonly a2: number;
}

/** Specification of a low-pass filter. */
export interface LowPassOptions {
  /** Number of poles, 1 to 20. */
  readonly order: number;
  /** Frequency at which the gain is 1/sqrt(2) after all passes; below half the sample rate, in its unit. */
  readonly cutoff: number;
  readonly sampleRate: number;
  /**
   * Number of passes of the filter over the data: 2 for `filterZeroPhase`, so that `cutoff` keeps its meaning.
   * Default 1.
   */
  readonly passes?: 1 | 2;
}

/**
 * Designs a Butterworth low-pass filter by the bilinear transform with the cutoff prewarped.
 *
 * Source: A. V. Oppenheim and R. W. Schafer, Discrete-Time Signal Processing, design of IIR filters by the bilinear
 * transformation; two-pass correction by (sqrt(2) - 1)^(1 / (2 order)), from |H|^4 = 1/2.
 *
 * @example
 * butterworthLowPass({ order: 4, cutoff: 50, sampleRate: 1000 }).length // => 2
 */
export function butterworthLowPass(options: LowPassOptions): readonly FilterSection[] {
  const { order, cutoff, sampleRate, passes = 1 } = options;
  requireInteger('order', order, 1);
  if (order > 20) throw invalidArgument('order', order, 'at most 20');
  requirePositive('sampleRate', sampleRate);
  requirePositive('cutoff', cutoff);
  if (cutoff >= sampleRate / 2)
    throw invalidArgument('cutoff', cutoff, `below half the sample rate (${sampleRate / 2})`);
  // Gain |H|^2 = 1 / (1 + (w/wc)^(2n)); squared once more for two passes.
  const widening = passes === 2 ? (Math.SQRT2 - 1) ** (1 / (2 * order)) : 1;
  const k = Math.tan((Math.PI * cutoff) / sampleRate) / widening;
  const sections: FilterSection[] = [];
  if (order % 2 === 1) {
    const b = k / (1 + k);
    sections.push({ b0: b, b1: b, b2: 0, a1: (k - 1) / (k + 1), a2: 0 });
  }
  for (let pair = Math.floor(order / 2) - 1; pair >= 0; pair--) {
    // Poles at angle pi (2 pair + 1) / (2 order) from the imaginary axis: 1/Q is twice its sine.
    const damping = 2 * Math.sin((Math.PI * (2 * pair + 1)) / (2 * order));
    const norm = 1 / (1 + k * damping + k * k);
    const b = k * k * norm;
    sections.push({
      b0: b,
      b1: 2 * b,
      b2: b,
      a1: 2 * (k * k - 1) * norm,
      a2: (1 - k * damping + k * k) * norm,
    });
  }
  return sections;
}

/**
 * Gain of one pass of a filter at a frequency, in the unit of the sample rate.
 *
 * @example
 * filterGain(butterworthLowPass({ order: 2, cutoff: 10, sampleRate: 100 }), 10, 100).toFixed(6) // => '0.707107'
 */
export function filterGain(
  sections: readonly FilterSection[],
  frequency: number,
  sampleRate: number,
): number {
  requirePositive('sampleRate', sampleRate);
  if (!(frequency >= 0 && frequency <= sampleRate / 2)) {
    throw invalidArgument('frequency', frequency, `from 0 to half the sample rate (${sampleRate / 2})`);
  }
  const angle = (2 * Math.PI * frequency) / sampleRate;
  const [c1, s1, c2, s2] = [Math.cos(angle), Math.sin(angle), Math.cos(2 * angle), Math.sin(2 * angle)];
  let gain = 1;
  for (const { b0, b1, b2, a1, a2 } of sections) {
    gain *=
      Math.hypot(b0 + b1 * c1 + b2 * c2, b1 * s1 + b2 * s2) /
      Math.hypot(1 + a1 * c1 + a2 * c2, a1 * s1 + a2 * s2);
  }
  return gain;
}

/**
 * Runs the filter once over the signal, starting in the steady state of its first value so that a constant record
 * stays constant. The output lags the input; use `filterZeroPhase` for complete records.
 *
 * @example
 * Array.from(filterCausal(butterworthLowPass({ order: 3, cutoff: 5, sampleRate: 100 }), [7, 7, 7])).map((v) => v.toFixed(9)) // => ['7.000000000', '7.000000000', '7.000000000']
 */
export function filterCausal(sections: readonly FilterSection[], signal: ArrayLike<number>): Float64Array {
  requireFiniteArray('signal', signal);
  const out = Float64Array.from(signal);
  runInPlace(sections, out);
  return out;
}

/**
 * Runs the filter forward and then backward: no lag, and the square of the gain. The record is extended at both
 * ends by its rotation about the end point, which keeps level and slope, over `padding` samples. Design the filter
 * with `passes: 2` to keep the meaning of its cutoff. The default padding is three times the number of
 * coefficients; the signal must be longer than it.
 *
 * Source: F. Gustafsson, "Determining the initial states in forward-backward filtering", IEEE Trans. Signal
 * Processing 44 (1996), 988-992, for the method; steady-state start and odd extension (engineering practice, no
 * published source).
 *
 * @example
 * filterZeroPhase(butterworthLowPass({ order: 2, cutoff: 5, sampleRate: 100, passes: 2 }), new Float64Array(50).fill(3))[49].toFixed(9) // => '3.000000000'
 */
export function filterZeroPhase(
  sections: readonly FilterSection[],
  signal: ArrayLike<number>,
  options: { readonly padding?: number } = {},
): Float64Array {
  requireFiniteArray('signal', signal);
  const order = sections.reduce((sum, section) => sum + (section.a2 === 0 && section.b2 === 0 ? 1 : 2), 0);
  const padding = options.padding ?? 3 * (order + 1);
  requireInteger('padding', padding, 0);
  const count = signal.length;
  if (count <= padding) {
    throw new MeopError({
      code: 'invalid-argument',
      path: 'signal',
      given: count,
      expected: `a list of more than ${padding} values, so that it can be continued at its ends`,
      remedy: 'Record longer, or give a smaller padding',
    });
  }
  const extended = new Float64Array(count + 2 * padding);
  const first = signal[0];
  const last = signal[count - 1];
  for (let i = 0; i < padding; i++) {
    extended[i] = 2 * first - signal[padding - i];
    extended[padding + count + i] = 2 * last - signal[count - 2 - i];
  }
  extended.set(signal, padding);
  runInPlace(sections, extended);
  extended.reverse();
  runInPlace(sections, extended);
  extended.reverse();
  return extended.slice(padding, padding + count);
}

/** Transposed direct form II, each section started in the steady state of the first value it gets. */
function runInPlace(sections: readonly FilterSection[], signal: Float64Array): void {
  for (const { b0, b1, b2, a1, a2 } of sections) {
    const gain = (b0 + b1 + b2) / (1 + a1 + a2);
    let z1 = (gain - b0) * signal[0];
    let z2 = (b2 - a2 * gain) * signal[0];
    for (let i = 0; i < signal.length; i++) {
      const x = signal[i];
      const y = b0 * x + z1;
      z1 = b1 * x - a1 * y + z2;
      z2 = b2 * x - a2 * y;
      signal[i] = y;
    }
  }
}
