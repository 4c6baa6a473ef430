import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { amplitudeSpectrum, crossCorrelation, fourierTransform } from '../../src/numerics/fourier';
import { codeOf } from '../error-code';

const number = fc.double({ min: -10, max: 10, noNaN: true });

describe('fourierTransform', () => {
  it('agrees with NumPy at a prime length', () => {
    // Computed with NumPy 2.4.6, fft.fft.
    const re = Float64Array.of(1, -2, 0.5, 3, 1.5, -1, 2.2);
    const im = new Float64Array(7);
    fourierTransform(re, im);
    const expectedRe = [5.2, -2.8184014782109825, 4.211684355524247, -0.49328287731326537];
    const expectedIm = [0, 1.1704747494166523, 5.9182700635420415, 1.5326670597230534];
    expectedRe.forEach((value, k) => {
      expect(re[k]).toBeCloseTo(value, 13);
      expect(im[k]).toBeCloseTo(expectedIm[k], 13);
      if (k > 0) expect(im[7 - k]).toBeCloseTo(-expectedIm[k], 13);
    });
  });

  it('equals its definition, comes back, and keeps the energy, at every length', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(number, number), { minLength: 1, maxLength: 40 }), (points) => {
        const n = points.length;
        const re = Float64Array.from(points, ([a]) => a);
        const im = Float64Array.from(points, ([, b]) => b);
        fourierTransform(re, im);
        for (let k = 0; k < n; k++) {
          let sumRe = 0;
          let sumIm = 0;
          points.forEach(([a, b], j) => {
            const angle = (-2 * Math.PI * ((j * k) % n)) / n;
            sumRe += a * Math.cos(angle) - b * Math.sin(angle);
            sumIm += a * Math.sin(angle) + b * Math.cos(angle);
          });
          expect(Math.abs(re[k] - sumRe)).toBeLessThan(1e-11);
          expect(Math.abs(im[k] - sumIm)).toBeLessThan(1e-11);
        }
        // Parseval.
        const energy = points.reduce((sum, [a, b]) => sum + a * a + b * b, 0);
        const spectral = re.reduce((sum, value, k) => sum + value * value + im[k] * im[k], 0) / n;
        expect(Math.abs(energy - spectral)).toBeLessThan(1e-11 * (1 + energy));
        fourierTransform(re, im, 'inverse');
        points.forEach(([a, b], j) => {
          expect(re[j]).toBeCloseTo(a, 11);
          expect(im[j]).toBeCloseTo(b, 11);
        });
      }),
    );
  });

  it('stays accurate at long lengths', () => {
    for (const n of [4096, 5000]) {
      const re = Float64Array.from({ length: n }, (_, j) => Math.cos((2 * Math.PI * 17 * j) / n));
      const im = new Float64Array(n);
      fourierTransform(re, im);
      // Exact: a cosine of whole periods is n/2 at its bin and at the mirror of it, nothing elsewhere.
      for (let k = 0; k < n; k++) {
        expect(Math.abs(re[k] - (k === 17 || k === n - 17 ? n / 2 : 0))).toBeLessThan(1e-9);
      }
    }
  });

  it('refuses parts of different length', () => {
    expect(codeOf(() => fourierTransform(new Float64Array(2), new Float64Array(3)))).toBe('invalid-argument');
    expect(codeOf(() => fourierTransform(new Float64Array(0), new Float64Array(0)))).toBe('invalid-argument');
  });
});

describe('amplitudeSpectrum', () => {
  it('shows each sine with its amplitude and the mean at zero', () => {
    for (const n of [200, 201]) {
      const wave = Array.from(
        { length: n },
        (_, i) =>
          3 + 2 * Math.sin((2 * Math.PI * 8 * i) / n + 0.7) + 0.5 * Math.cos((2 * Math.PI * 31 * i) / n),
      );
      const { frequency, amplitude } = amplitudeSpectrum(wave, { sampleRate: 1000 });
      expect(frequency[8]).toBeCloseTo(8000 / n, 12);
      expect(amplitude[0]).toBeCloseTo(3, 12);
      expect(amplitude[8]).toBeCloseTo(2, 12);
      expect(amplitude[31]).toBeCloseTo(0.5, 12);
      expect(amplitude[20]).toBeLessThan(1e-12);
      const windowed = amplitudeSpectrum(wave, { sampleRate: 1000, window: 'hann' });
      expect(windowed.amplitude[8]).toBeCloseTo(2, 12);
    }
  });

  it('leaks less through the window', () => {
    const wave = Array.from({ length: 256 }, (_, i) => Math.sin((2 * Math.PI * 20.5 * i) / 256));
    const plain = amplitudeSpectrum(wave, { sampleRate: 1 }).amplitude[60];
    const windowed = amplitudeSpectrum(wave, { sampleRate: 1, window: 'hann' }).amplitude;
    expect(windowed[60]).toBeLessThan(0.01 * plain);
    // Scalloping of the Hann window half way between two frequencies: 1.42 dB, a factor 0.849 (F. J. Harris, Proc. IEEE 66, 1978).
    expect(Math.max(...windowed)).toBeCloseTo(0.849, 2);
  });

  it('refuses misuse', () => {
    expect(codeOf(() => amplitudeSpectrum([], { sampleRate: 1 }))).toBe('invalid-argument');
    expect(codeOf(() => amplitudeSpectrum([1], { sampleRate: 0 }))).toBe('invalid-argument');
  });
});

describe('crossCorrelation', () => {
  it('agrees with NumPy', () => {
    // Computed with NumPy 2.4.6, correlate(..., 'full'), lags by SciPy 1.17.1 signal.correlation_lags.
    const { lag, value } = crossCorrelation([1, 2, 3, -1, 0.5], [2, -1, 0.3]);
    expect(Array.from(lag)).toEqual([-2, -1, 0, 1, 2, 3, 4]);
    [0.3, -0.4, 0.9, 0.7, 7.15, -2.5, 1].forEach((expected, i) => {
      expect(value[i]).toBeCloseTo(expected, 13);
    });
  });

  it('finds a delay', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 60 }), (delay) => {
        const pulse = Array.from({ length: 80 }, (_, i) => Math.exp(-(((i - 12) / 4) ** 2)));
        const later = Array.from({ length: 150 }, (_, i) => pulse[i - delay] ?? 0);
        const { lag, value } = crossCorrelation(later, pulse);
        expect(lag[value.indexOf(Math.max(...value))]).toBe(delay);
      }),
    );
  });

  it('refuses empty records', () => {
    expect(codeOf(() => crossCorrelation([], [1]))).toBe('invalid-argument');
  });
});
