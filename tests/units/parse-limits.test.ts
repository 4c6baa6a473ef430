import { describe, expect, it } from 'vitest';
import { MeopError, q, quantity, unitOf } from '../../src/units';

describe('values that are no texts', () => {
  it('are refused with a code', () => {
    const give: (value: unknown) => unknown = (value) => Reflect.apply(q, undefined, [value]);
    for (const value of [
      undefined,
      null,
      true,
      {},
      [],
      Symbol('x'),
      () => 1,
      12n,
      Object.create(null),
      new Date(Number.NaN),
    ])
      expect(() => give(value), typeof value).toThrow(MeopError);
    for (const value of [Number.NaN, Number.POSITIVE_INFINITY])
      expect(() => q(value, 'mm')).toThrow(/must be a finite number/);
  });
  it('and so are kinds that do not exist', () => {
    expect(() => Reflect.apply(quantity, undefined, ['colour', '3 mm'])).toThrow(MeopError);
  });
});

describe('the time a text takes', () => {
  const pieces = [
    '1',
    ' ',
    '1 ',
    '-',
    '9/',
    'm*',
    '1*',
    'm^',
    '(',
    'µ',
    '%*',
    'mm ',
    '/',
    '"',
    '⁻',
    'x',
    '\n',
    '1e1',
  ];
  const seconds = (work: () => unknown): number => {
    const least = [1, 2, 3].map(() => {
      const start = performance.now();
      try {
        work();
      } catch (error) {
        if (!(error instanceof MeopError)) throw error;
      }
      return performance.now() - start;
    });
    return Math.min(...least) / 1000;
  };
  it.each(pieces)('is no worse than linear in its length: %j repeated', (piece) => {
    for (const read of [
      (text: string) => q(`1 ${text}`),
      (text: string) => q(text),
      (text: string) => unitOf(text),
    ]) {
      const short = seconds(() => read(piece.repeat(20_000 / piece.length)));
      const long = seconds(() => read(piece.repeat(160_000 / piece.length)));
      // Eight times the length: quadratic would be 64 times the time, 160,000 characters then several seconds.
      expect(long).toBeLessThan(Math.max(0.3, 24 * short));
    }
  });
});
