import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { butterworthLowPass, filterCausal, filterGain, filterZeroPhase } from '../../src/numerics/filter';
import { codeOf } from '../error-code';

const signal = Float64Array.from(
  { length: 60 },
  (_, n) => Math.sin(0.2 * n) + 0.3 * Math.cos(2.1 * n) + 0.02 * n,
);
const pick = (values: Float64Array, places: number[]) => places.map((i) => values[i]);
const expectAll = (values: number[], expected: number[], digits: number) => {
  expected.forEach((value, i) => {
    expect(values[i]).toBeCloseTo(value, digits);
  });
};

describe('Butterworth low-pass filter', () => {
  it('agrees with SciPy in gain, one pass, and zero-phase filtering', () => {
    // Computed with SciPy 1.17.1: signal.butter(output='sos', fs=1000), sosfreqz at 20, 50 and 200,
    // sosfilt started with sosfilt_zi times the first value, sosfiltfilt with its default padding and with padlen=0.
    const cases: [number, number, number[], number[], number[], number[]][] = [
      [
        4,
        50,
        [0.9996901986768907, Math.SQRT1_2, 0.0022584203932322867],
        [0.29999999999999954, 0.2999030221622576, 0.9074575030648182, 0.4594445329712493],
        [
          0.28851299831174265, 0.4319152273729677, 0.43601716175234717, 0.33020419937855594,
          0.2996577804297475, 0.3499959104861862,
        ],
        [0.4318942947709722, 0.33810773976102615, 0.45944453297124865],
      ],
      [
        3,
        120,
        [0.9999919503160368, 0.9979572490821672, 0.15975399300865514],
        [0.30000000000000004, 0.2933341459506143, 0.853349214282727, 0.17526723564448915],
        [
          0.3014072001182936, 0.3682276548557414, 0.4404812395084553, 0.3206988004671483, 0.32117168683563857,
          0.42948306332059205,
        ],
        [0.24594937051936355, 0.3206932268925543, 0.1752672356444892],
      ],
      [
        5,
        10,
        [0.031080967005442682, 0.00030753979591148343, 1.51411447126493e-7],
        [0.29999999999999605, 0.2999999935544926, 0.30079879211167493, 0.4180740180172781],
        [
          0.29988094676814886, 0.3037513013112075, 0.3664618416804482, 0.4262538010573092, 0.4625056346448655,
          0.4626275487757708,
        ],
        [0.39052707950745547, 0.4168861618808051, 0.4180740180172727],
      ],
    ];
    for (const [order, cutoff, gains, causal, both, unpadded] of cases) {
      const sections = butterworthLowPass({ order, cutoff, sampleRate: 1000 });
      expectAll(
        [20, 50, 200].map((f) => filterGain(sections, f, 1000)),
        gains,
        12,
      );
      expectAll(pick(filterCausal(sections, signal), [0, 1, 15, 59]), causal, 11);
      expectAll(pick(filterZeroPhase(sections, signal), [0, 1, 15, 30, 58, 59]), both, 11);
      expectAll(pick(filterZeroPhase(sections, signal, { padding: 0 }), [0, 30, 59]), unpadded, 11);
    }
  });

  it('has the gain it is named for, at any order', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 20 }),
        fc.double({ min: 0.02, max: 0.48, noNaN: true }),
        (order, cutoff) => {
          const once = butterworthLowPass({ order, cutoff, sampleRate: 1 });
          expect(filterGain(once, 0, 1)).toBeCloseTo(1, 9);
          expect(filterGain(once, cutoff, 1)).toBeCloseTo(Math.SQRT1_2, 6);
          expect(filterGain(once, 0.5, 1)).toBeLessThan(1e-12);
          const twice = butterworthLowPass({ order, cutoff, sampleRate: 1, passes: 2 });
          expect(filterGain(twice, cutoff, 1) ** 2).toBeCloseTo(Math.SQRT1_2, 6);
          // Maximally flat: the gain falls all the way.
          let before = 1 + 1e-9;
          for (let f = 0.01; f < 0.5; f += 0.01) {
            const gain = filterGain(once, f, 1);
            expect(gain).toBeLessThanOrEqual(before * (1 + 1e-9));
            before = gain;
          }
          for (const { a1, a2 } of once) {
            // Poles inside the unit circle: the stability triangle.
            expect(Math.abs(a2)).toBeLessThan(1);
            expect(Math.abs(a1)).toBeLessThan(1 + a2);
          }
        },
      ),
    );
  });

  it('has no lag when run both ways: what is symmetric stays so', () => {
    const sections = butterworthLowPass({ order: 4, cutoff: 8, sampleRate: 100, passes: 2 });
    const bump = Float64Array.from({ length: 401 }, (_, i) => Math.exp(-(((i - 200) / 30) ** 2)));
    const smooth = filterZeroPhase(sections, bump);
    for (let i = 0; i <= 200; i++) expect(smooth[i]).toBeCloseTo(smooth[400 - i], 12);
    expect(smooth[200]).toBeCloseTo(1, 2);
    const late = filterCausal(sections, bump);
    expect(late.indexOf(late.reduce((a, b) => Math.max(a, b)))).toBeGreaterThan(201);
  });

  it('leaves levels and straight lines alone, and is linear', () => {
    const sections = butterworthLowPass({ order: 4, cutoff: 10, sampleRate: 100, passes: 2 });
    const number = fc.double({ min: -100, max: 100, noNaN: true });
    fc.assert(
      fc.property(number, number, (level, slope) => {
        const line = Float64Array.from({ length: 80 }, (_, i) => level + slope * i);
        const size = 1e-9 * (1 + Math.abs(level) + 80 * Math.abs(slope));
        filterZeroPhase(sections, new Float64Array(80).fill(level)).forEach((v) => {
          expect(Math.abs(v - level)).toBeLessThan(size);
        });
        // The start of a ramp still shows the start-up of the steady state, over the padding.
        const filtered = filterZeroPhase(sections, line);
        expect(Math.abs(filtered[40] - line[40])).toBeLessThan(1e-3 * (1 + Math.abs(slope)));
        const both = filterZeroPhase(
          sections,
          line.map((v, i) => 2 * v + signal[i % 60]),
        );
        const noise = filterZeroPhase(
          sections,
          line.map((_, i) => signal[i % 60]),
        );
        both.forEach((v, i) => {
          expect(Math.abs(v - 2 * filtered[i] - noise[i])).toBeLessThan(10 * size);
        });
      }),
      { numRuns: 30 },
    );
  });

  it('refuses misuse', () => {
    const good = { order: 2, cutoff: 10, sampleRate: 100 };
    for (const bad of [
      { order: 0 },
      { order: 2.5 },
      { order: 21 },
      { cutoff: 0 },
      { cutoff: 50 },
      { sampleRate: Number.NaN },
    ]) {
      expect(
        codeOf(() => butterworthLowPass({ ...good, ...bad })),
        JSON.stringify(bad),
      ).toBe('invalid-argument');
    }
    const sections = butterworthLowPass(good);
    expect(codeOf(() => filterZeroPhase(sections, [1, 2, 3]))).toBe('invalid-argument');
    expect(codeOf(() => filterZeroPhase(sections, new Float64Array(40).fill(Number.NaN)))).toBe(
      'invalid-argument',
    );
    expect(codeOf(() => filterCausal(sections, []))).toBe('invalid-argument');
    expect(codeOf(() => filterGain(sections, 51, 100))).toBe('invalid-argument');
  });
});
