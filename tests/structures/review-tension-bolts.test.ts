import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { reviewTensionBolts, type TensionBoltJoint } from '../../src/structures';
import { errorOf } from '../error-code';

const bolts = {
  thread: 'M6',
  boltClass: '8.8',
  count: 8,
  boltCircle: '80 mm',
  clampedThickness: '12 mm',
  engagement: '12 mm',
  holeDiameter: '6.6 mm',
  headDiameter: '12 mm',
  preload: '6 kN',
  tightening: 'torque wrench',
} as const;
const wide: TensionBoltJoint = {
  pressure: '5 MPa',
  sealDiameter: '50 mm',
  bolts,
  clampedMaterial: '6061-T6 bar',
  tappedMaterial: '6061-T6 bar',
  insideDiameter: '50 mm',
  outsideDiameter: '110 mm',
};
const marginOf = (joint: TensionBoltJoint, id: string): number => {
  const found = reviewTensionBolts(joint).margins.find((margin) => margin.id === id);
  if (found === undefined) throw new Error(`no mode ${id}`);
  return found.marginOfSafety;
};

/**
 * A flat closure on a wide flange, by hand (python 3.11, every step from the equation it names), M6 of class 8.8:
 *   d = 6 mm, P = 1 mm, A_t = 20.1234 mm² (ISO 898-1); E = 200 GPa; E of 6061-T6 = 68.9 GPa (The Aluminum Association, as its material record says)
 *   l = 12 + 6/2 = 15 mm (Shigley table 8-7)
 *   k_b = A_t·E/l = 268.312 kN/mm (8-17); k_m = 748.958 kN/mm (8-21, face 12 mm); C = 0.263757
 *   F = 5 MPa·π/4·(50 mm)² = 9817.48 N; P = F/8 = 1227.18 N
 *   F_i = 6000 N ±25 %: 7500 N; 6000·0.75·0.95 = 4275 N
 *   proof 580 MPa: S_p·A_t = 11671.56 N; (11671.56 − 7500)/C = 15707 N, but the parts separate first: 11671.56 N
 *   thread torque (8-26, f 0.15) 4.71751 N·m, half of it kept: τ = 110.4697 MPa; √(640² − 3·τ²) = 610.7285 MPa
 *   separation at 4275/(1 − C) = 5806.50 N, 23.6578 MPa (8-30)
 */
describe('a flat closure on a wide flange, by hand', () => {
  const review = reviewTensionBolts(wide);
  const close = (found: number, wanted: number) =>
    expect(Math.abs(found / wanted - 1), `${found}, by hand ${wanted}`).toBeLessThan(2e-5);

  test('stiffness, preload and forces', () => {
    close(review.boltStiffness.in('kN/mm'), 268.3117);
    close(review.memberStiffness?.in('kN/mm') ?? 0, 748.9582);
    close(review.jointConstant.low, 0.2637566);
    expect(review.jointConstant.high).toBe(review.jointConstant.low);
    close(review.endForce.in('N'), 9817.477);
    close(review.boltLoad.in('N'), 1227.1846);
    close(review.preload.max.in('N'), 7500);
    close(review.preload.min.in('N'), 4275);
    close(review.boltForce.in('N'), 7500 + 0.2637566 * 1227.1846);
    close(review.clampForce.in('N'), 4275 - (1 - 0.2637566) * 1227.1846);
    close(review.separationPressure.in('MPa'), 23.65783);
  });

  test.each([
    // Separates before its proof load: 11671.56/(1.5·1227.18) − 1.
    ['tension-bolt-proof', 5.340561],
    // 610.7285 MPa·A_t = 12289.92 N.
    ['tension-bolt-yield', 5.676486],
    // 800 MPa·A_t = 16098.70 N, factor 2.
    ['tension-bolt-break', 5.559201],
    ['joint-separation', 2.154377],
  ])('%s', (id, wanted) => close(marginOf(wide, id), wanted));

  test('fatigue: σ_a = C·P/(2·A_t), S_e 129 MPa, Goodman', () => {
    close(review.fatigue.amplitude.in('MPa'), 8.042341);
    close(review.fatigue.preloadStress.in('MPa'), 372.7009);
    close(review.fatigue.goodman ?? 0, 7.377743);
  });

  test('threads of the hole: limits of M6 6g/6H, and 27 ksi of shear (MIL-HDBK-5)', () => {
    // D_s 5.794 mm and E_n 5.500 mm (ISO 965-1 tables, from memory): A_n 146.29 mm²; its formulas agree to 1 %.
    expect(
      Math.abs((1 + marginOf(wide, 'tapped-thread-shear')) / (27233.2 / (2 * 1227.1846)) - 1),
    ).toBeLessThan(0.01);
  });

  test('under the heads: 78.885 mm² at 34 ksi of compressive yield (MIL-HDBK-5)', () => {
    // 18492.6 N, more than the bolt; after separation the bolt carries all of the load.
    close(1 + marginOf(wide, 'bolt-head-bearing-yield'), (78.88539 * 34 * 6.894757) / (1.5 * 1227.1846));
  });

  test('the working of a margin names its formulas', () => {
    const text = String(review.margins[0].explain());
    expect(text).toContain('8-29');
    expect(text).toContain('8-17');
  });
});

describe('bolts in tension', () => {
  test('a torque gives the preload of its nut factor', () => {
    const { preload: _, ...free } = bolts;
    // T/(K·d) = 7.2 N·m/(0.2·6 mm) = 6 kN (Shigley 8-27).
    const turned = reviewTensionBolts({
      ...wide,
      bolts: { ...free, torque: '7.2 N*m', finish: 'zinc plated' },
    });
    expect(turned.preload.nominal.in('N')).toBeCloseTo(6000, 6);
  });

  test('a narrow flange is evaluated over the band of joint constants', () => {
    const narrow = reviewTensionBolts({ ...wide, outsideDiameter: '95 mm' });
    expect(narrow.jointConstant.low).toBe(0.1);
    expect(narrow.jointConstant.high).toBe(0.5);
    expect(narrow.cautions.join(' ')).toContain('not certain');
    for (const { id, marginOfSafety } of narrow.margins)
      expect(marginOfSafety).toBeLessThanOrEqual(marginOf(wide, id) + 1e-12);
  });

  test('a high preload leaves the bolts what their share of the load may use, by hand', () => {
    // 8 kN + 25 % = 10 kN of 11671.56 N: (11671.56 − 10000)/C = 6337.5 N at C = 0.263757, 3343.1 N at 0.5 (Shigley 8-29).
    const tight = { ...wide, bolts: { ...bolts, preload: '8 kN' } } as const;
    expect(Math.abs(marginOf(tight, 'tension-bolt-proof') - 2.442842)).toBeLessThan(2e-5);
    const narrow = { ...tight, outsideDiameter: '95 mm' } as const;
    expect(Math.abs(marginOf(narrow, 'tension-bolt-proof') - 0.816145)).toBeLessThan(2e-5);
  });

  test('a joint constant that is known is used', () =>
    expect(reviewTensionBolts({ ...wide, jointConstant: 0.3 }).jointConstant).toMatchObject({
      low: 0.3,
      high: 0.3,
    }));

  test('more preload holds the parts together and takes from the bolts', () =>
    fc.assert(
      fc.property(
        fc.double({ min: 500, max: 5000, noNaN: true }),
        fc.double({ min: 10, max: 3000, noNaN: true }),
        (preload, more) => {
          const at = (newtons: number) => ({
            ...wide,
            bolts: { ...bolts, preload: `${newtons} N` as const },
          });
          const [less, greater] = [at(preload), at(preload + more)];
          expect(marginOf(greater, 'joint-separation')).toBeGreaterThan(marginOf(less, 'joint-separation'));
          expect(marginOf(greater, 'tension-bolt-proof')).toBeLessThanOrEqual(
            marginOf(less, 'tension-bolt-proof'),
          );
        },
      ),
      { numRuns: 20 },
    ));

  test('every failure pressure is in proportion to the load: twice the pressure, half the margin ratio', () => {
    const twice = reviewTensionBolts({ ...wide, pressure: '10 MPa' });
    for (const { id, marginOfSafety, failurePressure } of reviewTensionBolts(wide).margins) {
      const other = twice.margins.find((margin) => margin.id === id);
      expect(other?.failurePressure.si).toBeCloseTo(failurePressure.si, 0);
      expect(((other?.marginOfSafety ?? 0) + 1) * 2).toBeCloseTo(marginOfSafety + 1, 8);
    }
  });

  test('hot aluminium gains preload, cold aluminium loses it; each has its own limit', () => {
    const cold = reviewTensionBolts(wide);
    const hot = reviewTensionBolts({ ...wide, clampedTemperature: '80 degC' });
    expect(hot.preload.max.si).toBeGreaterThan(cold.preload.max.si);
    expect(hot.preload.min.si).toBe(cold.preload.min.si);
    const frozen = reviewTensionBolts({ ...wide, coldest: '-30 degC' });
    expect(frozen.preload.min.si).toBeLessThan(cold.preload.min.si);
    // A bolt that stays cold for a moment gains more than one as hot as its flange.
    const together = reviewTensionBolts({
      ...wide,
      clampedTemperature: '80 degC',
      boltTemperature: '80 degC',
    });
    expect(hot.preload.max.si).toBeGreaterThan(together.preload.max.si);
  });

  test('bolts that yield as they are tightened carry nothing', () => {
    const over = reviewTensionBolts({ ...wide, bolts: { ...bolts, preload: '13 kN' } });
    expect(over.margins.find(({ id }) => id === 'tension-bolt-proof')?.marginOfSafety).toBe(-1);
    expect(over.passes).toBe(false);
  });

  test.each([
    ['no preload', { ...wide, bolts: { ...bolts, preload: undefined } }, 'bolts.preload'],
    ['both', { ...wide, bolts: { ...bolts, torque: '7 N*m' } }, 'bolts.torque'],
    [
      'a hole wider than the head',
      { ...wide, bolts: { ...bolts, holeDiameter: '13 mm' } },
      'bolts.headDiameter',
    ],
    [
      'a hole narrower than the bolt',
      { ...wide, bolts: { ...bolts, holeDiameter: '5 mm' } },
      'bolts.holeDiameter',
    ],
    ['bolts outside the metal', { ...wide, outsideDiameter: '84 mm' }, 'bolts.boltCircle'],
  ])('refuses %s', (_, joint, path) => {
    expect(errorOf(() => Reflect.apply(reviewTensionBolts, undefined, [joint]))?.path).toBe(path);
  });
});
