import { MeopError } from './errors';
import type { Kind } from './kinds';

/** Exponents of length, mass, time, temperature and amount of substance; halves are allowed. */
export type Exponents = readonly [
  length: number,
  mass: number,
  time: number,
  temperature: number,
  amount: number,
];

/** A dimension: its exponents and one integer that encodes all of them. */
export interface Dimension {
  readonly exponents: Exponents;
  /** Doubled exponents as base-64 digits, so that multiplying quantities is adding integers. */
  readonly key: number;
  /** Its general kind, computed on first use. */
  kind?: Kind;
}

const largest = 7; // two such exponents still fit one digit, so a sum of two keys is never ambiguous
const known = new Map<number, Dimension>();
const symbols = ['m', 'kg', 's', 'K', 'mol'] as const;

/** The dimension with these exponents; the same object for the same exponents. */
export function dimension(exponents: Exponents): Dimension {
  let key = 0;
  for (let i = 0; i < 5; i++) {
    const twice = exponents[i] * 2;
    if (!Number.isInteger(twice) || Math.abs(exponents[i]) > largest)
      throw new MeopError({
        code: 'dimension-range',
        path: `exponent of ${symbols[i]}`,
        given: exponents[i],
        expected: `whole or half, at most ${largest}`,
        remedy: 'Use plain SI numbers',
      });
    key += twice * 64 ** i;
  }
  let found = known.get(key);
  if (!found) {
    found = { exponents, key };
    known.set(key, found);
  }
  return found;
}

/** The dimension of a product a·bⁿ. */
export function combine(a: Dimension, b: Dimension, n: number): Dimension {
  if (n === 1 || n === -1) {
    const found = known.get(a.key + n * b.key);
    if (found) return found;
  }
  const sum = (i: 0 | 1 | 2 | 3 | 4): number => a.exponents[i] + n * b.exponents[i];
  return dimension([sum(0), sum(1), sum(2), sum(3), sum(4)]);
}

/** Dimensionless. */
export const dimensionless: Dimension = /* @__PURE__ */ dimension([0, 0, 0, 0, 0]);

/** The coherent SI unit of a dimension in base units, as a string that parses: `m^2*kg*s^-3` or `1`. */
export function coherentText({ exponents }: Dimension): string {
  const factors = exponents.flatMap((e, i) => (e === 0 ? [] : [e === 1 ? symbols[i] : `${symbols[i]}^${e}`]));
  return factors.join('*') || '1';
}
