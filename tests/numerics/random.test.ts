import { describe, expect, it } from 'vitest';
import { erf } from '../../src/numerics/error-function';
import { randomStream, sfc32 } from '../../src/numerics/random';
import { mean, standardDeviation } from '../../src/numerics/statistics';
import { codeOf } from '../error-code';

describe('randomStream', () => {
  it('runs on sfc32 as others have it', () => {
    // Test vector of an open-source Go implementation (maloquacious/prng, sfc32_test.go): state 0, 12345, 0, counter 1,
    // the first 12 outputs dropped.
    const state = Uint32Array.of(0, 12345, 0, 1);
    for (let i = 0; i < 12; i++) sfc32(state);
    const outputs = Array.from({ length: 10 }, () => sfc32(state));
    expect(outputs).toEqual([
      235160590, 2967261163, 116171463, 2882324903, 362604721, 4227106926, 1933307004, 1608300071, 2256615412,
      2701957640,
    ]);
  });

  it('repeats itself for a seed and differs between seeds', () => {
    const draw = (seed: number) => {
      const stream = randomStream(seed);
      return Array.from({ length: 5 }, () => stream.uint32());
    };
    expect(draw(42)).toEqual(draw(42));
    const firsts = new Set<number>();
    for (let seed = 0; seed < 2000; seed++) firsts.add(draw(seed)[0]);
    // Birthday problem: among 2000 draws of 32 bits a single repeat has odds of one in two thousand.
    expect(firsts.size).toBeGreaterThanOrEqual(1999);
    expect(draw(2 ** 32)).not.toEqual(draw(0));
  });

  it('splits by the number of the task, whatever was drawn before', () => {
    const early = randomStream(7).split(3);
    const parent = randomStream(7);
    for (let i = 0; i < 100; i++) parent.uniform();
    const late = parent.split(3);
    expect(early.uniform()).toBe(late.uniform());
    expect(randomStream(7).split(4).uint32()).not.toBe(randomStream(7).split(3).uint32());
    expect(randomStream(7).split(3).split(0).uint32()).not.toBe(randomStream(7).split(3).uint32());
    expect(randomStream(3).split(7).uint32()).not.toBe(randomStream(7).split(3).uint32());
  });

  it('is uniform: moments and a chi-square of a hundred cells', () => {
    const stream = randomStream(2024);
    const count = 200000;
    const cells = new Float64Array(100);
    const values = Float64Array.from({ length: count }, () => stream.uniform());
    for (const value of values) cells[Math.floor(100 * value)]++;
    // Exact moments of the uniform distribution, five standard errors.
    expect(Math.abs(mean(values) - 0.5)).toBeLessThan((5 * Math.sqrt(1 / 12)) / Math.sqrt(count));
    expect(Math.abs(standardDeviation(values) - Math.sqrt(1 / 12))).toBeLessThan(0.002);
    const chiSquare = cells.reduce((sum, seen) => sum + (seen - count / 100) ** 2 / (count / 100), 0);
    // 99 degrees of freedom: mean 99, standard deviation 14.07; five of them either way.
    expect(Math.abs(chiSquare - 99)).toBeLessThan(5 * Math.sqrt(2 * 99));
    expect(values.every((value) => value >= 0 && value < 1)).toBe(true);
  });

  it('is normal: moments, tails, and no tie between neighbours', () => {
    const stream = randomStream(99);
    const count = 100000;
    const values = Float64Array.from({ length: count }, () => stream.normal());
    expect(Math.abs(mean(values))).toBeLessThan(5 / Math.sqrt(count));
    expect(Math.abs(standardDeviation(values) - 1)).toBeLessThan(5 / Math.sqrt(2 * count));
    for (const limit of [0.5, 1, 2, 3]) {
      const share = erf(limit / Math.SQRT2);
      const seen = values.filter((value) => Math.abs(value) < limit).length / count;
      expect(Math.abs(seen - share), `within ${limit}`).toBeLessThan(
        5 * Math.sqrt((share * (1 - share)) / count),
      );
    }
    let product = 0;
    for (let i = 1; i < count; i++) product += values[i] * values[i - 1];
    expect(Math.abs(product / count)).toBeLessThan(5 / Math.sqrt(count));
  });

  it('has unrelated streams for neighbouring tasks', () => {
    const root = randomStream(1);
    const count = 20000;
    const first = Float64Array.from({ length: count }, (_, task) => root.split(task).normal());
    let product = 0;
    for (let i = 1; i < count; i++) product += first[i] * first[i - 1];
    expect(Math.abs(product / count)).toBeLessThan(5 / Math.sqrt(count));
    expect(Math.abs(mean(first))).toBeLessThan(5 / Math.sqrt(count));
  });

  it('refuses seeds that are not whole numbers', () => {
    for (const seed of [-1, 0.5, Number.NaN, Infinity]) {
      expect(codeOf(() => randomStream(seed))).toBe('invalid-argument');
      expect(codeOf(() => randomStream(1).split(seed))).toBe('invalid-argument');
    }
  });
});
