/** Discrete Fourier transform of any length, amplitude spectrum and cross-correlation. */
import { invalidArgument, requireFiniteArray, requirePositive, requireSameLength } from './checks';

/**
 * Transforms complex numbers in place: X_k = sum of x_j exp(-2 pi i j k / n); the inverse has the other sign and a factor 1/n.
 * Any length: powers of two directly, others through a convolution of a power of two.
 *
 * Source: J. W. Cooley and J. W. Tukey, Math. Comp. 19 (1965), 297-301; L. I. Bluestein, IEEE Trans. Audio
 * Electroacoust. 18 (1970), 451-455.
 *
 * @example
 * (() => { const re = Float64Array.of(1, 2, 3, 4); fourierTransform(re, new Float64Array(4)); return re[0]; })() // => 10
 */
export function fourierTransform(
  re: Float64Array,
  im: Float64Array,
  direction: 'forward' | 'inverse' = 'forward',
): void {
  requireSameLength('re', re, 'im', im);
  const n = re.length;
  if (n === 0) throw invalidArgument('re.length', n, 'at least 1');
  // The inverse is the forward transform of the parts exchanged.
  const [a, b] = direction === 'forward' ? [re, im] : [im, re];
  if ((n & (n - 1)) === 0) powerOfTwo(a, b);
  else bluestein(a, b);
  if (direction === 'inverse') {
    for (let i = 0; i < n; i++) {
      re[i] /= n;
      im[i] /= n;
    }
  }
}

function powerOfTwo(re: Float64Array, im: Float64Array): void {
  const n = re.length;
  for (let i = 1, j = 0; i < n; i++) {
    let bit = n >> 1;
    for (; j & bit; bit >>= 1) j ^= bit;
    j ^= bit;
    if (i < j) {
      [re[i], re[j]] = [re[j], re[i]];
      [im[i], im[j]] = [im[j], im[i]];
    }
  }
  const half = n >> 1;
  const cosines = new Float64Array(half);
  const sines = new Float64Array(half);
  for (let k = 0; k < half; k++) {
    cosines[k] = Math.cos((2 * Math.PI * k) / n);
    sines[k] = -Math.sin((2 * Math.PI * k) / n);
  }
  for (let size = 2; size <= n; size *= 2) {
    const wing = size >> 1;
    const stride = n / size;
    for (let start = 0; start < n; start += size) {
      for (let k = 0; k < wing; k++) {
        const c = cosines[k * stride];
        const s = sines[k * stride];
        const p = start + k;
        const q = p + wing;
        const re2 = re[q] * c - im[q] * s;
        const im2 = re[q] * s + im[q] * c;
        re[q] = re[p] - re2;
        im[q] = im[p] - im2;
        re[p] += re2;
        im[p] += im2;
      }
    }
  }
}

function bluestein(re: Float64Array, im: Float64Array): void {
  const n = re.length;
  const m = powerAbove(2 * n - 1);
  const cosines = new Float64Array(n);
  const sines = new Float64Array(n);
  for (let k = 0; k < n; k++) {
    // k^2 modulo 2n keeps the angle small, and with it its rounding.
    const angle = (Math.PI * ((k * k) % (2 * n))) / n;
    cosines[k] = Math.cos(angle);
    sines[k] = Math.sin(angle);
  }
  const aRe = new Float64Array(m);
  const aIm = new Float64Array(m);
  const bRe = new Float64Array(m);
  const bIm = new Float64Array(m);
  for (let k = 0; k < n; k++) {
    aRe[k] = re[k] * cosines[k] + im[k] * sines[k];
    aIm[k] = im[k] * cosines[k] - re[k] * sines[k];
    bRe[k] = cosines[k];
    bIm[k] = sines[k];
    if (k > 0) {
      bRe[m - k] = cosines[k];
      bIm[m - k] = sines[k];
    }
  }
  powerOfTwo(aRe, aIm);
  powerOfTwo(bRe, bIm);
  for (let k = 0; k < m; k++) {
    const product = aRe[k] * bRe[k] - aIm[k] * bIm[k];
    aIm[k] = aRe[k] * bIm[k] + aIm[k] * bRe[k];
    aRe[k] = product;
  }
  powerOfTwo(aIm, aRe);
  for (let k = 0; k < n; k++) {
    const x = aRe[k] / m;
    const y = aIm[k] / m;
    re[k] = x * cosines[k] + y * sines[k];
    im[k] = y * cosines[k] - x * sines[k];
  }
}

function powerAbove(count: number): number {
  let size = 1;
  while (size < count) size *= 2;
  return size;
}

/** Amplitude spectrum of a signal. */
export interface Spectrum {
  /** From zero to half the sample rate, in its unit. */
  readonly frequency: Float64Array;
  /** Amplitude of the sine at each frequency, in the unit of the signal; the mean at zero. */
  readonly amplitude: Float64Array;
}

/**
 * Single-sided amplitude spectrum: a sine of amplitude A at one of the frequencies shows as A there.
 * `window: 'hann'` lowers the leakage of sines between the frequencies, whose peak is then up to 15 % low.
 *
 * @example
 * amplitudeSpectrum([1, -1, 1, -1], { sampleRate: 4 }).amplitude[2] // => 1
 */
export function amplitudeSpectrum(
  signal: ArrayLike<number>,
  options: { readonly sampleRate: number; readonly window?: 'none' | 'hann' },
): Spectrum {
  requireFiniteArray('signal', signal);
  requirePositive('sampleRate', options.sampleRate);
  const n = signal.length;
  const re = Float64Array.from(signal);
  const im = new Float64Array(n);
  let weight = n;
  if (options.window === 'hann' && n > 1) {
    // Periodic form, so that its sum is exactly n / 2.
    for (let i = 0; i < n; i++) re[i] *= 0.5 - 0.5 * Math.cos((2 * Math.PI * i) / n);
    weight = n / 2;
  }
  fourierTransform(re, im);
  const bins = Math.floor(n / 2) + 1;
  const frequency = Float64Array.from({ length: bins }, (_, k) => (k * options.sampleRate) / n);
  const amplitude = Float64Array.from({ length: bins }, (_, k) => {
    // Zero and half the sample rate have no mirror image; every other frequency includes its own.
    const sides = k === 0 || 2 * k === n ? 1 : 2;
    return (sides * Math.hypot(re[k], im[k])) / weight;
  });
  return { frequency, amplitude };
}

/** Cross-correlation of two records at each shift. */
export interface CrossCorrelation {
  /** Shift in samples of each value, ascending: from -(second.length - 1) to first.length - 1. */
  readonly lag: Int32Array;
  /** Sum over i of first[i + lag] second[i]. */
  readonly value: Float64Array;
}

/**
 * Cross-correlation of two records at every shift. It is largest where `first` is most similar to `second` delayed
 * by `lag` samples; subtract the means first if they are not zero.
 *
 * @example
 * Array.from(crossCorrelation([0, 0, 1], [1, 0]).value).map((v) => Math.round(v)) // => [0, 0, 0, 1]
 */
export function crossCorrelation(first: ArrayLike<number>, second: ArrayLike<number>): CrossCorrelation {
  requireFiniteArray('first', first);
  requireFiniteArray('second', second);
  const count = first.length + second.length - 1;
  const size = powerAbove(count);
  const re = new Float64Array(size);
  const im = new Float64Array(size);
  const re2 = new Float64Array(size);
  const im2 = new Float64Array(size);
  re.set(first);
  re2.set(second);
  fourierTransform(re, im);
  fourierTransform(re2, im2);
  for (let k = 0; k < size; k++) {
    const product = re[k] * re2[k] + im[k] * im2[k];
    im[k] = im[k] * re2[k] - re[k] * im2[k];
    re[k] = product;
  }
  fourierTransform(re, im, 'inverse');
  const before = second.length - 1;
  const lag = Int32Array.from({ length: count }, (_, i) => i - before);
  return { lag, value: Float64Array.from(lag, (shift) => re[shift < 0 ? size + shift : shift]) };
}
