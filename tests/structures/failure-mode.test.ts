import { describe, expect, test } from 'vitest';
import {
  boltShearStress,
  closureForce,
  customThread,
  reviewJoint,
  reviewRetainingRing,
  reviewShell,
  reviewThreadedClosure,
  worstBoltLoad,
} from '../../src/structures';
import {
  type Calculation,
  evaluated,
  given,
  step,
  stepsOf,
} from '../../src/structures/failure-mode/calculation';
import { failureMargin } from '../../src/structures/failure-mode/failure-margin';
import { failureSequence } from '../../src/structures/failure-mode/failure-sequence';
import { leastFavourable } from '../../src/structures/failure-mode/least-favourable';
import { q, unitOf } from '../../src/units';
import { evaluate } from './arithmetic';

describe('a calculation', () => {
  const force = step(closureForce, { pressure: 7e6, sealDiameter: 0.05 });
  const load = step(worstBoltLoad, { load: force, count: 8, shareFactor: 1 });
  const shear = step(boltShearStress, { load, area: 20e-6 });

  test('evaluates each formula with the results of earlier ones', () => {
    // By hand: 7 MPa · π · 50² mm² / 4 = 13 744.468 N, an eighth of it on 20 mm².
    expect(shear.value / 1e6).toBeCloseTo(13744.468 / 8 / 20, 4);
    expect(evaluated(boltShearStress, { load: load.value, area: 20e-6 })).toBe(shear.value);
  });
  test('lists each step once, after those that it is made of', () => {
    const names = (...of: readonly Calculation[]): readonly string[] =>
      stepsOf(...of).map(({ formula }) => formula.id);
    expect(names(shear)).toEqual(['closureForce', 'worstBoltLoad', 'boltShearStress']);
    expect(names(load, shear, given('stress', 1))).toEqual(names(shear));
  });
  test('ends in a margin of stress, load or pressure', () => {
    const mode = {
      id: 'bolt-shear',
      part: 'joint',
      limit: 'ultimate',
      factor: 2,
      sources: [],
      cautions: [],
    } as const;
    const ofLoad = failureMargin({
      ...mode,
      calculation: load,
      allowable: given('force', 5000),
      unit: unitOf('N'),
    });
    expect(ofLoad.explain().formulas.at(-1)).toBe('loadMarginOfSafety');
    expect(ofLoad.marginOfSafety).toBeCloseTo(5000 / (2 * 1718.058) - 1, 6);
    expect(ofLoad.failurePressure).toBeUndefined();
    const ofPressure = failureMargin({
      ...mode,
      calculation: given('gauge pressure', 7e6),
      allowable: given('gauge pressure', 21e6),
      pressure: 7e6,
      unit: unitOf('MPa'),
    });
    expect(ofPressure.explain().formulas).toEqual(['pressureMarginOfSafety']);
    expect(ofPressure.marginOfSafety).toBe(0.5);
    expect(ofPressure.failurePressure.in('MPa')).toBe(21);
  });
});

describe('at its failure pressure', () => {
  const factors = { yieldFactor: 1, ultimateFactor: 1, proofFactor: 1 };
  const joint = {
    tube: { outsideDiameter: '76 mm', wall: '3 mm', material: '6061-T6 drawn tube' },
    closureMaterial: '6061-T6 bar',
    thread: 'M6',
    boltClass: '8.8',
    count: 12,
    edgeDistance: '12 mm',
    factors,
  } as const;
  const ring = {
    tube: { outsideDiameter: '70 mm', wall: '5 mm', material: '6061-T6 drawn tube' },
    ring: { grooveDepth: '1.5 mm', edgeMargin: '6 mm', thickness: '2 mm', shearStrength: '800 MPa' },
    factors,
  } as const;
  const screwed = {
    thread: customThread({ majorDiameter: '70 mm', pitch: '2 mm' }),
    engagement: '12 mm',
    tube: { outsideDiameter: '78 mm', material: '6061-T6 drawn tube' },
    closureMaterial: '6061-T6 bar',
    factors,
  } as const;
  // An oval tube is rounded out as pressure rises, and a thread is lost: neither is proportional to pressure.
  const tube = {
    tube: { material: '6061-T6 drawn tube', outsideDiameter: '82 mm', wall: '3 mm' },
    ovality: '0.4 mm',
    factors,
  } as const;
  const at = {
    joint: (pressure: number) => reviewJoint({ ...joint, pressure: q(pressure, 'Pa') }).modes,
    ring: (pressure: number) => reviewRetainingRing({ ...ring, pressure: q(pressure, 'Pa') }).margins,
    thread: (pressure: number) => reviewThreadedClosure({ ...screwed, pressure: q(pressure, 'Pa') }).margins,
    tube: (pressure: number) => reviewShell({ ...tube, meop: q(pressure, 'Pa') }).margins,
  };
  test.each(Object.entries(at))('each mode of the %s has its allowable applied', (_, margins) => {
    for (const { id, failurePressure } of margins(5e6)) {
      if (failurePressure === undefined) continue;
      const then = margins(failurePressure.si).find((one) => one.id === id);
      expect(Math.abs(then?.marginOfSafety ?? Number.NaN), id).toBeLessThan(1e-8);
    }
  });
  test('the sequence is that of pressure, and the proof test is not in it', () => {
    const margins = at.tube(5e6);
    const sequence = failureSequence(margins, q('5 MPa').as('gauge pressure'));
    const pressures = sequence.map(({ failurePressure }) => failurePressure.si);
    expect(pressures).toEqual([...pressures].sort((a, b) => a - b));
    expect(sequence.map(({ id }) => id)).not.toContain('proof-yield');
    expect(sequence).toHaveLength(margins.length - 1);
    expect(sequence[0].meopRatio).toBeCloseTo(pressures[0] / 5e6, 12);
  });
  test('the least favourable of two analyses has the lesser margin of each mode', () => {
    const [low, high] = [at.ring(4e6), at.ring(5e6)];
    const least = leastFavourable([low, high]);
    expect(least.map(({ id }) => id)).toEqual(low.map(({ id }) => id));
    least.forEach(({ marginOfSafety }, i) => {
      expect(marginOfSafety).toBe(high[i].marginOfSafety);
    });
  });
});

test('the evaluator of written arithmetic does sums as they are written', () => {
  expect(evaluate('2·3 / 4·2')).toBe(3);
  expect(evaluate('−2² + √(9)·3³ − (1 − 4)')).toBe(80);
  expect(evaluate('2^(−1) + max(1, min(5, 1e1)) / 2')).toBe(3);
  expect(evaluate('π·cos(0)² + ln(e)')).toBeCloseTo(Math.PI + 1, 12);
  expect(() => evaluate('2 · x')).toThrow(/not understood/);
  expect(() => evaluate('2 3')).toThrow(/left over/);
});
