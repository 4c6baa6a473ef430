import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { integrate } from '../../src/numerics/adaptive-quadrature';
import { besselJ0, besselJ1 } from '../../src/numerics/bessel';
import { erf, erfc, erfcx } from '../../src/numerics/error-function';
import { codeOf } from '../error-code';

const within = (value: number, expected: number, relative: number, note: string) => {
  expect(Math.abs(value - expected), note).toBeLessThanOrEqual(relative * Math.abs(expected));
};

describe('error functions', () => {
  it('agree with a 40-digit evaluation', () => {
    // Computed with mpmath 1.3.0 at 40 digits: x, erf, erfc, exp(x^2) erfc.
    const table: [number, number, number, number][] = [
      [1e-300, 1.1283791670955126e-300, 1, 1],
      [1e-10, 1.1283791670955126e-10, 0.999999999887162, 0.999999999887162],
      [0.1, 0.1124629160182849, 0.887537083981715, 0.8964569799691267],
      [0.3, 0.3286267594591274, 0.6713732405408726, 0.7345993345676551],
      [0.5, 0.5204998778130465, 0.4795001221869535, 0.6156903441929259],
      [0.7, 0.6778011938374184, 0.32219880616258156, 0.525930337349441],
      [0.9999, 0.8426592780487595, 0.15734072195124052, 0.4276108989010802],
      [1, 0.8427007929497149, 0.15729920705028513, 0.427583576155807],
      [1.5, 0.9661051464753108, 0.033894853524689274, 0.3215854164543175],
      [2, 0.9953222650189527, 0.004677734981047266, 0.25539567631050575],
      [3, 0.9999779095030014, 2.209049699858544e-5, 0.17900115118138996],
      [3.75, 0.9999998862727434, 1.1372725656979665e-7, 0.14558972127503855],
      [5, 0.9999999999984626, 1.537459794428035e-12, 0.11070463773306863],
      [8, 1, 1.1224297172982926e-29, 0.06998516620088092],
      [12, 1, 1.3562611692059042e-64, 0.04685422101489376],
      [20, 1, 5.395865611607901e-176, 0.02817434874105132],
      [26, 1, 5.663192408856143e-296, 0.021683584850562907],
    ];
    for (const [x, a, b, c] of table) {
      within(erf(x), a, 6e-16, `erf(${x})`);
      within(erf(-x), -a, 6e-16, `erf(${-x})`);
      within(erfc(x), b, 1.2e-15, `erfc(${x})`);
      within(erfcx(x), c, 8e-16, `erfcx(${x})`);
    }
    within(erfcx(-0.2), 1.2726020284831958, 8e-16, 'erfcx(-0.2)');
    within(erfcx(-5), 144009798674.66104, 2e-15, 'erfcx(-5)');
    within(erfcx(-20), 1.0442939379528289e174, 4e-15, 'erfcx(-20)');
    within(erfcx(1e6), 5.641895835474742e-7, 8e-16, 'erfcx(1e6)');
  });

  it('agree with the handbook table', () => {
    // Abramowitz and Stegun, Handbook of Mathematical Functions, table 7.1, ten decimals (from memory).
    expect(erf(0.5)).toBeCloseTo(0.5204998778, 10);
    expect(erf(1)).toBeCloseTo(0.8427007929, 9);
    expect(erf(2)).toBeCloseTo(0.995322265, 9);
  });

  it('take the limits', () => {
    expect([erf(0), erfc(0), erfcx(0)]).toEqual([0, 1, 1]);
    expect([erf(Infinity), erf(-Infinity), erfc(Infinity), erfc(-Infinity), erfcx(Infinity)]).toEqual([
      1, -1, 0, 2, 0,
    ]);
    expect(erfc(1e30)).toBe(0);
    expect(erfcx(1e20)).toBeCloseTo(1e-20 / Math.sqrt(Math.PI), 34);
    expect(codeOf(() => erf(Number.NaN))).toBe('invalid-argument');
    expect(codeOf(() => erfcx(-30))).toBe('invalid-argument');
  });

  it('keep their identities and order', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -6, max: 6, noNaN: true }),
        fc.double({ min: 1e-6, max: 1, noNaN: true }),
        (x, d) => {
          expect(erf(x) + erfc(x)).toBeCloseTo(1, 14);
          expect(erf(x + d)).toBeGreaterThanOrEqual(erf(x));
          if (x > -5) within(erfcx(x) * Math.exp(-x * x), erfc(x), 1e-14, `x = ${x}`);
        },
      ),
    );
  });
});

describe('Bessel functions', () => {
  it('agree with a 40-digit evaluation', () => {
    // Computed with mpmath 1.3.0 at 40 digits: x, J0, J1.
    const table: [number, number, number][] = [
      [0, 1, 0],
      [1e-9, 1, 5e-10],
      [0.1, 0.99750156206604, 0.049937526036242],
      [0.5, 0.9384698072408129, 0.2422684576748739],
      [1, 0.7651976865579666, 0.4400505857449335],
      [2, 0.22389077914123567, 0.5767248077568734],
      [2.4, 0.002507683297243859, 0.520185268181931],
      [3, -0.26005195490193345, 0.3390589585259365],
      [5, -0.1775967713143383, -0.32757913759146523],
      [7.5, 0.2663396578803784, 0.1352484275797055],
      [8, 0.1716508071375539, 0.23463634685391463],
      [8.0001, 0.1716273427913037, 0.23465057773647316],
      [10, -0.24593576445134835, 0.04347274616886144],
      [15, -0.014224472826780772, 0.20510403861352275],
      [25, 0.09626678327595811, -0.1253502495802899],
      [50, 0.055812327669251816, -0.09751182812517514],
      [100, 0.019985850304223122, -0.07714535201411216],
      [1000, 0.024786686152420176, 0.004728311907089524],
      [12345.678, 3.058671332275825e-5, -0.007180894964739374],
    ];
    for (const [x, j0, j1] of table) {
      const envelope = x <= 8 ? 1 : Math.sqrt(2 / (Math.PI * x));
      expect(Math.abs(besselJ0(x) - j0), `J0(${x})`).toBeLessThanOrEqual(5e-16 * envelope);
      expect(Math.abs(besselJ1(x) - j1), `J1(${x})`).toBeLessThanOrEqual(5e-16 * envelope);
      expect(besselJ0(-x)).toBe(besselJ0(x));
      expect(besselJ1(-x)).toBe(-besselJ1(x));
    }
    within(besselJ1(1e-9), 5e-10, 4e-16, 'J1 near zero');
  });

  it('vanish at their tabulated zeros', () => {
    // Abramowitz and Stegun, Handbook of Mathematical Functions, table 9.5; digits computed with mpmath 1.3.0.
    for (const zero of [2.404825557695773, 5.520078110286311, 8.653727912911013, 30.634606468431976]) {
      expect(Math.abs(besselJ0(zero))).toBeLessThan(1e-15);
    }
    for (const zero of [3.8317059702075125, 7.015586669815619, 10.173468135062722, 32.189679910974405]) {
      expect(Math.abs(besselJ1(zero))).toBeLessThan(1e-15);
    }
  });

  it('meet their integral definition', () => {
    // Abramowitz and Stegun 9.1.18 and 9.1.21: J_n(x) is the mean over theta of cos(n theta - x sin theta).
    fc.assert(
      fc.property(fc.double({ min: 0, max: 40, noNaN: true }), (x) => {
        const mean = (n: number) =>
          integrate((angle) => Math.cos(n * angle - x * Math.sin(angle)), {
            lower: 0,
            upper: Math.PI,
            absoluteTolerance: 1e-14,
          }).value / Math.PI;
        expect(Math.abs(besselJ0(x) - mean(0))).toBeLessThan(3e-14);
        expect(Math.abs(besselJ1(x) - mean(1))).toBeLessThan(3e-14);
      }),
      { numRuns: 40 },
    );
  });

  it('refuse what is not a number', () => {
    expect(codeOf(() => besselJ0(Number.NaN))).toBe('invalid-argument');
    expect(codeOf(() => besselJ1(Infinity))).toBe('invalid-argument');
  });
});
