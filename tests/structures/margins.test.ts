import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  designFactors,
  designPressures,
  factorSet,
  factorSetNames,
  governing,
  type Margin,
  margin,
  marginOfSafety,
  marginTable,
  proofCheck,
  proofFactor,
} from '../../src/structures';
import { q, quantity } from '../../src/units';
import { codeOf } from '../error-code';

const mpa = (value: number) => quantity('stress', `${value} MPa`);
const made = (applied: number, allowable: number, factor = 1.5, cautions: readonly string[] = []): Margin =>
  margin({
    mode: `mode ${applied}`,
    applied: mpa(applied),
    allowable: mpa(allowable),
    factor,
    source: 'a test',
    cautions,
  });

describe('margins', () => {
  test('the margin is zero where factor times applied is allowed, negative beyond, −1 without any allowance', () => {
    expect(made(100, 150).marginOfSafety).toBeCloseTo(0, 12);
    expect(made(100, 120).marginOfSafety).toBeLessThan(0);
    expect(made(100, 0).marginOfSafety).toBe(-1);
  });
  test('takes stresses, loads or pressures of one kind and refuses a mixture', () => {
    const load = margin({
      mode: 'pull',
      applied: q('1 kN'),
      allowable: q('3 kN'),
      factor: 2,
      source: 'a test',
    });
    expect(load.marginOfSafety).toBeCloseTo(0.5, 12);
    const pressure = {
      applied: quantity('gauge pressure', '7 MPag'),
      allowable: quantity('gauge pressure', '21 MPa'),
    };
    expect(margin({ mode: 'burst', ...pressure, factor: 2, source: 'a test' }).marginOfSafety).toBeCloseTo(
      0.5,
      12,
    );
    expect(
      codeOf(() =>
        margin({ mode: 'odd', applied: q('1 kN'), allowable: q('3 MPa'), factor: 2, source: 'x' }),
      ),
    ).toBe('wrong-kind');
    expect(codeOf(() => made(0, 100))).toBe('out-of-domain');
    expect(codeOf(() => made(-5, 100))).toBe('out-of-domain');
    expect(codeOf(() => made(5, 100, 0))).toBe('out-of-domain');
    expect(codeOf(() => made(5, -1))).toBe('out-of-domain');
  });
  test('governing is the least, whatever the order; nothing governs nothing', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 1, max: 500, noNaN: true }), { minLength: 1, maxLength: 8 }),
        (stresses) => {
          const list = stresses.map((stress) => made(stress, 200));
          expect(governing(list).marginOfSafety).toBe(
            Math.min(...list.map(({ marginOfSafety: left }) => left)),
          );
          expect(governing([...list].reverse()).marginOfSafety).toBe(governing(list).marginOfSafety);
        },
      ),
    );
    expect(codeOf(() => governing([]))).toBe('empty-list');
  });
  test('falls with load and factor, rises with the allowable', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 1e9, noNaN: true }),
        fc.double({ min: 1, max: 1e9, noNaN: true }),
        fc.double({ min: 1, max: 5, noNaN: true }),
        (applied, allowable, factor) => {
          const left = (a: number, b: number, f: number) =>
            marginOfSafety.si({ applied: a, allowable: b, factor: f });
          expect(left(applied * 1.01, allowable, factor)).toBeLessThan(left(applied, allowable, factor));
          expect(left(applied, allowable * 1.01, factor)).toBeGreaterThan(left(applied, allowable, factor));
          expect(left(applied, allowable, factor * 1.01)).toBeLessThan(left(applied, allowable, factor));
        },
      ),
    );
  });
  test('the table puts the least first and each caution once', () => {
    const text = marginTable([made(50, 200, 1.5, ['same']), made(100, 200, 1.5, ['same'])]);
    expect(text.indexOf('mode 100')).toBeLessThan(text.indexOf('mode 50'));
    expect(text.match(/caution: same/g)).toHaveLength(1);
  });
});

describe('factors', () => {
  test('every set names a source; what is not published says so', () => {
    for (const set of factorSetNames().map(factorSet)) {
      expect(set.source.length).toBeGreaterThan(10);
      expect(['published', 'from memory', 'engineering practice, no published source']).toContain(
        set.provenance,
      );
    }
    expect(designFactors({ set: 'NASA SP-8025, upper' }).cautions.join()).toContain('from memory');
    expect(designFactors().ultimateFactor).toBe(2); // amateur ground testing: engineering practice, no published source
  });
  test('a set that lacks a factor is refused, never completed in silence', () => {
    expect(codeOf(() => designFactors({ set: 'solid motor 1961, manned' }))).toBe('missing-field');
    expect(
      designFactors({ set: 'solid motor 1961, manned', ultimateFactor: 1.5, proofFactor: 1.2 }).yieldFactor,
    ).toBe(1.25);
    expect(codeOf(() => designFactors({ yieldFactor: 0.9, ultimateFactor: 2, proofFactor: 1.5 }))).toBe(
      'out-of-domain',
    );
  });
  test('proof: no yield at the proof pressure', () => {
    const { proof } = designPressures({ meop: '700 psi', factors: designFactors() });
    expect(proofCheck({ proofPressure: proof, yieldPressure: '1050 psi' }).marginOfSafety).toBeCloseTo(0, 12);
    expect(proofCheck({ proofPressure: proof, yieldPressure: '1000 psi' }).marginOfSafety).toBeLessThan(0);
    expect(codeOf(() => proofCheck({ proofPressure: '-1 psi', yieldPressure: '1000 psi' }))).toBe(
      'out-of-domain',
    );
  });
});

describe('proof factor', () => {
  // MIL-STD-1522A, approach A (from memory): (1 + BF)/2, and 1.5 from a burst factor of 2 on.
  test.each([
    [1.25, 1.125],
    [1.5, 1.25],
    [2, 1.5],
    [4, 1.5],
  ])('burst factor %d: %d', (burstFactor, expected) =>
    expect(proofFactor.si({ burstFactor })).toBe(expected),
  );
});

test('the allowable of a margin is shown in the unit of the stress beside it', () => {
  const shown = margin({
    mode: 'plate',
    applied: q('43 MPa'),
    allowable: q('38 ksi'),
    factor: 2,
    source: 'a test',
  });
  expect(String(shown.allowable)).toBe('262 MPa');
  expect(shown.allowable.si).toBe(q('38 ksi').si);
});
