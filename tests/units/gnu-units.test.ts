import { describe, expect, it } from 'vitest';
import { namedKinds } from '../../src/units';
import { unitOf } from '../../src/units/unit';
import { unitNames } from '../../src/units/unit-names';
import { atoms, spellings } from '../../src/units/unit-table';
import { askGnu, exponentsOf, gnuInstalled, gnuRows, gnuSource } from './gnu-names';

// Every unit text of this library against GNU Units 2.22, as recorded by tests/units/record-gnu-units.sh.

// GNU Units multiplies doubles on the way to the answer: a few units in the last place of noise, no more.
const noise = 1e-15;
const differences: Readonly<Record<string, string>> = {
  kg_TNT: 'GNU Units scales its TNT by the short ton; by convention a kilogram of TNT is 4.184 MJ exactly',
};

describe(`against ${gnuSource}`, () => {
  it('has every unit text', () => {
    const prefixed = Object.entries(atoms).flatMap(([name, [, prefixes]]) =>
      prefixes ? prefixes.split(' ').map((prefix) => prefix + name) : [],
    );
    // GNU Units takes no half powers of a unit that is no square.
    const listed = namedKinds()
      .flatMap(unitNames)
      .filter((text) => !text.includes('^0.5'));
    const texts = [...Object.keys(atoms), ...Object.keys(spellings), ...prefixed, ...listed];
    expect(texts.filter((text) => !gnuRows.has(text))).toEqual([]);
    expect(texts.length).toBeGreaterThan(300);
  });

  it('differs where it is known to, and nowhere else', () => {
    const differing = [...gnuRows.values()].filter(({ unit, value }) => {
      const { factor, divisor } = unitOf(unit);
      return Math.abs(factor / divisor - value) > noise * value;
    });
    expect(differing.map(({ unit }) => unit)).toEqual(Object.keys(differences));
  });

  it('measures the same dimension', () => {
    for (const { unit, base } of gnuRows.values())
      expect([...unitOf(unit).dimension.exponents], unit).toEqual(exponentsOf(base));
  });

  it.runIf(gnuInstalled())('agrees with the GNU Units installed here, row by row', () => {
    const rows = [...gnuRows.values()];
    const answers = askGnu(rows.map(({ gnu }) => gnu));
    rows.forEach(({ unit, value, base }, i) => {
      expect(answers[i]?.base, unit).toBe(base);
      expect(Math.abs((answers[i]?.value ?? 0) - value), unit).toBeLessThanOrEqual(noise * value);
    });
  });
});
