import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  burstPressure,
  collapsePressure,
  datum,
  faupelBurst,
  hoopYieldPressure,
  type Material,
  reviewShell,
  svenssonBurst,
  thickWallStress,
  turnerBurst,
  yieldPressure,
  yieldPressuresAtTemperature,
} from '../../src/structures';
import { quantity } from '../../src/units';
import { codeOf } from '../error-code';

const positive = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('yield and burst', () => {
  test('at the yield pressure the bore is at yield; at the hoop yield pressure its hoop stress is', () => {
    fc.assert(
      fc.property(positive(1.005, 4), (k) => {
        const tube = { insideRadius: 1, outsideRadius: k };
        const first = yieldPressure.si({ yieldStrength: 100, ...tube });
        expect(thickWallStress.si({ ...tube, pressure: first, radius: 1 }).vonMises).toBeCloseTo(100, 8);
        const hoop = hoopYieldPressure.si({ yieldStrength: 100, ...tube });
        expect(thickWallStress.si({ ...tube, pressure: hoop, radius: 1 }).hoop).toBeCloseTo(100, 8);
        // √3·K² against K² + 1: the hoop criterion is the lower one up to K² = 1/(√3 − 1).
        expect(hoop < first).toBe(k * k < 1 / (Math.sqrt(3) - 1));
        expect(collapsePressure.si({ yieldStrength: 100, ...tube })).toBeGreaterThan(first);
      }),
    );
  });
  test('Faupel lies between full yield and full flow; without reserve of strength it is full yield', () => {
    const tube = { outsideDiameter: 88.9e-3, wall: 6.35e-3 };
    const radii = { insideRadius: 38.1e-3, outsideRadius: 44.45e-3 };
    fc.assert(
      fc.property(positive(0.3, 1), (ratio) => {
        const burst = faupelBurst.si({ ...tube, yieldStrength: ratio, ultimateStrength: 1 });
        expect(burst).toBeGreaterThanOrEqual(
          collapsePressure.si({ yieldStrength: ratio, ...radii }) * (1 - 1e-12),
        );
        expect(burst).toBeLessThanOrEqual(collapsePressure.si({ yieldStrength: 1, ...radii }) * (1 + 1e-12));
      }),
    );
    expect(faupelBurst.si({ ...tube, yieldStrength: 1, ultimateStrength: 1 })).toBeCloseTo(
      collapsePressure.si({ yieldStrength: 1, ...radii }),
      12,
    );
  });
  test('Svensson falls with hardening, and tends to more than Turner where there is none', () => {
    const tube = { outsideDiameter: 1, wall: 0.05, ultimateStrength: 1 };
    const at = (n: number) => svenssonBurst.si({ ...tube, strainHardening: n });
    for (const [a, b] of [
      [0.02, 0.05],
      [0.05, 0.1],
      [0.1, 0.3],
    ])
      expect(at(b)).toBeLessThan(at(a));
    // n → 0: 0.25/0.227 = 1.101 times the ultimate strength times ln K.
    expect(at(1e-6) / turnerBurst.si(tube)).toBeCloseTo(0.25 / 0.227, 4);
  });
  test('reports every method with the spread, takes the least, and says what a method lacks', () => {
    const tube = { insideRadius: '1.5 in', outsideRadius: '1.75 in', ultimateStrength: '42 ksi' } as const;
    const burst = burstPressure({ ...tube, yieldStrength: '35 ksi', strainHardening: 0.05 });
    expect(burst.estimates.map(({ method }) => method)).toEqual([
      'Barlow',
      'mean diameter',
      'Turner',
      'Faupel',
      'Svensson',
    ]);
    expect(burst.method).toBe('Barlow');
    expect(burst.pressure.in('psi')).toBeCloseTo(6000, 6); // case burst-barlow-and-mean
    expect(burst.spread).toBeCloseTo(burst.maxPressure.si / burst.pressure.si - 1, 12);
    expect(burst.spread).toBeGreaterThan(0.1);
    expect(String(burst)).toContain('methods differ');
    expect(codeOf(() => burstPressure({ ...tube, method: 'Faupel' }))).toBe('missing-field');
    expect(codeOf(() => burstPressure({ ...tube, outsideRadius: '1.4 in' }))).toBe('out-of-domain');
  });
  test('a hot wall yields sooner', () => {
    const tube = {
      material: '6061-T6 drawn tube',
      insideRadius: '1.5 in',
      outsideRadius: '1.75 in',
    } as const;
    const cold = yieldPressuresAtTemperature(tube);
    const hot = yieldPressuresAtTemperature({ ...tube, temperature: '200 degC' });
    // MIL-HDBK-5J figure 3.6.2.2.1(b): 69.3 % of the yield strength is left after half an hour at 200 °C.
    expect(hot.firstYield.si / cold.firstYield.si).toBeCloseTo(69.3 / 100, 9);
  });
});

describe('review of a plain tube', () => {
  const tube = {
    tube: { material: '6061-T6 drawn tube', outsideDiameter: '3.5 in', wall: '0.25 in' },
    ovality: '0.2 mm',
  } as const;
  const worst = (meop: number, celsius: number) =>
    reviewShell({
      ...tube,
      tube: { ...tube.tube, wallTemperature: quantity('temperature', `${celsius} degC`) },
      meop: quantity('gauge pressure', `${meop} MPa`),
    });
  test('margins fall with pressure and with temperature', () => {
    fc.assert(
      fc.property(
        positive(1, 30),
        positive(20, 300),
        positive(0.01, 5),
        positive(0.1, 40),
        (p, t, dp, dt) => {
          const base = worst(p, t);
          const higher = worst(p + dp, t);
          const hotter = worst(p, t + dt);
          base.margins.forEach((margin, i) => {
            expect(higher.margins[i].marginOfSafety).toBeLessThan(margin.marginOfSafety);
            expect(hotter.margins[i].marginOfSafety).toBeLessThanOrEqual(margin.marginOfSafety + 1e-12);
          });
          expect(base.governing.marginOfSafety).toBe(
            Math.min(...base.margins.map(({ marginOfSafety }) => marginOfSafety)),
          );
        },
      ),
      { numRuns: 25 },
    );
  });
  test('names what it leaves out and prints a table', () => {
    const review = worst(7, 100);
    expect(review.cautions.join()).toContain('buckling');
    expect(String(review)).toContain('yield at the proof test');
    expect(review.margins.map(({ mode }) => mode)).toContain('yield of an oval tube');
    expect(review.margins[0].temperature?.in('degC')).toBeCloseTo(100, 9);
  });
  test('pressures are shown as the pressure was given, whatever the radii are in', () => {
    const { margins } = reviewShell({
      tube: { material: '6061-T6', outsideDiameter: '76 mm', wall: '3 mm' },
      meop: '600 psi',
    });
    for (const { allowable, applied } of margins.filter(({ mode }) => /burst|proof/.test(mode)))
      expect([allowable.unit, applied.unit]).toEqual(['psi', 'psi']);
  });
  test('what is no metal is said to be none', () => {
    const plastic = {
      name: 'PVC pipe',
      form: 'pipe',
      class: 'brittle',
      ultimateStrength: datum('stress', '48 MPa', { basis: 'S', source: 'a pipe maker' }),
      yieldStrength: datum('stress', '40 MPa', { basis: 'S', source: 'a pipe maker' }),
    } as const;
    const cautionsOf = (material: Material | '6061-T6'): string =>
      reviewShell({
        tube: { outsideDiameter: '60 mm', wall: '4 mm', material },
        meop: '2 MPa',
      }).cautions.join();
    expect(cautionsOf(plastic)).toContain('fragments');
    expect(cautionsOf('6061-T6')).not.toContain('fragments');
  });
});
