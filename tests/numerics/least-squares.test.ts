import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { linearFit } from '../../src/numerics/least-squares';
import { randomStream } from '../../src/numerics/random';
import { standardDeviation } from '../../src/numerics/statistics';
import { codeOf } from '../error-code';

const x = [0.2, 0.5, 1, 1.7, 2.4, 3.3, 4.1, 5.0];
const y = [1.1, 1.9, 2.7, 4.4, 5.2, 7.6, 8.8, 11.3];
const parabola = [x.map(() => 1), x, x.map((v) => v * v)];

const expectAll = (values: ArrayLike<number>, expected: number[], relative: number) => {
  expect(values.length).toBe(expected.length);
  expected.forEach((value, i) => {
    expect(Math.abs(values[i] - value), `[${i}] ${values[i]} against ${value}`).toBeLessThanOrEqual(
      relative * Math.abs(value),
    );
  });
};

describe('linearFit', () => {
  it('agrees with NumPy, plain and weighted', () => {
    // Computed with NumPy 2.4.6: linalg.lstsq and inv(X'X) times the residual variance.
    const plain = linearFit({ columns: parabola, observations: y });
    expectAll(plain.coefficients, [0.8864119297211054, 1.7947262435158833, 0.05179896121076118], 1e-12);
    expectAll(
      plain.covariance,
      [
        0.05685615724928035, -0.04724605015877238, 0.0077072275436018325, -0.0472460501587724,
        0.05739143422574744, -0.010641055262426948, 0.007707227543601843, -0.010641055262426953,
        0.002107429524702359,
      ],
      1e-11,
    );
    // Computed with NumPy 2.4.6: polyfit with w = 1/s, cov='unscaled' and cov=True.
    const weights = [0.1, 0.1, 0.2, 0.2, 0.3, 0.3, 0.4, 0.5].map((s) => 1 / (s * s));
    const known = linearFit({ columns: parabola, observations: y, weights, scatter: 'known' });
    expectAll(known.coefficients, [0.7805406072680364, 2.020263557205137, 0.0029640830886105947], 1e-10);
    expectAll(known.standardErrors, [0.10599918302666639, 0.18400410118048832, 0.04408344890308356], 1e-12);
    const estimated = linearFit({ columns: parabola, observations: y, weights });
    expectAll(
      estimated.standardErrors,
      [0.1199730341033342, 0.20826132500027383, 0.04989496114617897],
      1e-11,
    );
    expect(estimated.degreesOfFreedom).toBe(5);
  });

  it('reproduces the Longley reference problem, whose columns are nearly dependent', () => {
    // NIST Statistical Reference Datasets, Longley: data and certified values (from memory).
    const rows = [
      [60323, 83.0, 234289, 2356, 1590, 107608, 1947],
      [61122, 88.5, 259426, 2325, 1456, 108632, 1948],
      [60171, 88.2, 258054, 3682, 1616, 109773, 1949],
      [61187, 89.5, 284599, 3351, 1650, 110929, 1950],
      [63221, 96.2, 328975, 2099, 3099, 112075, 1951],
      [63639, 98.1, 346999, 1932, 3594, 113270, 1952],
      [64989, 99.0, 365385, 1870, 3547, 115094, 1953],
      [63761, 100.0, 363112, 3578, 3350, 116219, 1954],
      [66019, 101.2, 397469, 2904, 3048, 117388, 1955],
      [67857, 104.6, 419180, 2822, 2857, 118734, 1956],
      [68169, 108.4, 442769, 2936, 2798, 120445, 1957],
      [66513, 110.8, 444546, 4681, 2637, 121950, 1958],
      [68655, 112.6, 482704, 3813, 2552, 123366, 1959],
      [69564, 114.2, 502601, 3931, 2514, 125368, 1960],
      [69331, 115.7, 518173, 4806, 2572, 127852, 1961],
      [70551, 116.9, 554894, 4007, 2827, 130081, 1962],
    ];
    const columns = [rows.map(() => 1), ...[1, 2, 3, 4, 5, 6].map((k) => rows.map((row) => row[k]))];
    const fit = linearFit({ columns, observations: rows.map((row) => row[0]) });
    expectAll(
      fit.coefficients,
      [
        -3482258.63459582, 15.0618722713733, -0.035819179292591, -2.02022980381683, -1.03322686717359,
        -0.0511041056535807, 1829.15146461355,
      ],
      1e-8,
    );
    expectAll(
      fit.standardErrors,
      [
        890420.383607373, 84.9149257747669, 0.0334910077722432, 0.488399681651699, 0.214274163161675,
        0.22607320006937, 455.478499142212,
      ],
      1e-8,
    );
    expect(fit.scale).toBeCloseTo(304.854073561965, 6);
  });

  it('leaves residuals at right angles to every column', () => {
    const value = fc.double({ min: -10, max: 10, noNaN: true });
    fc.assert(
      fc.property(fc.array(fc.tuple(value, value, value), { minLength: 6, maxLength: 25 }), (points) => {
        // Distinct abscissae keep the columns independent.
        const a = points.map(([p], i) => i + 0.02 * p);
        const b = points.map(([, q], i) => Math.sin(i) + 0.02 * q);
        const z = points.map(([, , r]) => r);
        const fit = linearFit({ columns: [a.map(() => 1), a, b], observations: z });
        for (const column of [a.map(() => 1), a, b]) {
          const dot = column.reduce((sum, entry, i) => sum + entry * fit.residuals[i], 0);
          expect(Math.abs(dot)).toBeLessThan(1e-9);
        }
      }),
    );
  });

  it('shrugs off outliers when robust', () => {
    const random = randomStream(11);
    const t = Array.from({ length: 60 }, (_, i) => i / 10);
    const z = t.map((v, i) => 2 + 3 * v + 0.05 * random.normal() + (i % 9 === 4 ? 20 : 0));
    const columns = [t.map(() => 1), t];
    const plain = linearFit({ columns, observations: z });
    const huber = linearFit({ columns, observations: z, robust: 'huber' });
    const tukey = linearFit({ columns, observations: z, robust: 'tukey' });
    // True line: 2 + 3 t.
    expect(Math.abs(plain.coefficients[0] - 2)).toBeGreaterThan(1);
    expect(Math.abs(huber.coefficients[0] - 2)).toBeLessThan(0.1);
    expect(Math.abs(tukey.coefficients[0] - 2)).toBeLessThan(0.03);
    expect(Math.abs(tukey.coefficients[1] - 3)).toBeLessThan(0.01);
    expect(tukey.robustness[4]).toBe(0);
    expect(tukey.robustness[5]).toBeGreaterThan(0.3);
    expect(tukey.scale).toBeLessThan(0.08);
    expect(huber.iterations).toBeGreaterThan(1);
  });

  it('states robust standard errors that match the scatter over many samples', () => {
    for (const robust of ['none', 'huber', 'tukey'] as const) {
      const random = randomStream(3);
      const t = Array.from({ length: 40 }, (_, i) => i / 20);
      const slopes: number[] = [];
      let stated = 0;
      for (let k = 0; k < 400; k++) {
        const fit = linearFit({
          columns: [t.map(() => 1), t],
          observations: t.map((v) => v + random.normal()),
          robust,
        });
        slopes.push(fit.coefficients[1]);
        stated += fit.standardErrors[1] / 400;
      }
      // The scatter of 400 samples is known to 3.5 %; the formulas are asymptotic.
      expect(Math.abs(stated / standardDeviation(slopes) - 1), robust).toBeLessThan(0.12);
    }
  });

  it('keeps exact data exact, robust or not', () => {
    const observations = x.map((v) => 1 - 2 * v);
    for (const robust of ['none', 'huber', 'tukey'] as const) {
      const fit = linearFit({ columns: [x.map(() => 1), x], observations, robust });
      expect(fit.coefficients[0]).toBeCloseTo(1, 12);
      expect(fit.coefficients[1]).toBeCloseTo(-2, 12);
      for (const error of fit.standardErrors) expect(error).toBeLessThan(1e-13);
    }
  });

  it('refuses what cannot be fitted', () => {
    expect(codeOf(() => linearFit({ columns: [x, x.map((v) => 2 * v)], observations: y }))).toBe(
      'singular-matrix',
    );
    expect(codeOf(() => linearFit({ columns: [x.map(() => 0)], observations: y }))).toBe('singular-matrix');
    expect(codeOf(() => linearFit({ columns: [x], observations: y, weights: x.map(() => 0) }))).toBe(
      'singular-matrix',
    );
    expect(codeOf(() => linearFit({ columns: [], observations: y }))).toBe('invalid-argument');
    expect(codeOf(() => linearFit({ columns: [[1, 2]], observations: y }))).toBe('invalid-argument');
    expect(
      codeOf(() =>
        linearFit({
          columns: [
            [1, 1],
            [0, 1],
          ],
          observations: [1, 2],
        }),
      ),
    ).toBe('invalid-argument');
    expect(
      linearFit({
        columns: [
          [1, 1],
          [0, 1],
        ],
        observations: [1, 2],
        scatter: 'known',
      }).coefficients[1],
    ).toBeCloseTo(1, 14);
    expect(codeOf(() => linearFit({ columns: [x], observations: y, weights: x.map(() => -1) }))).toBe(
      'invalid-argument',
    );
    expect(codeOf(() => linearFit({ columns: [x], observations: y.map(() => Number.NaN) }))).toBe(
      'invalid-argument',
    );
  });
});
