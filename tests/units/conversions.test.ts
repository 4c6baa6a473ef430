import Decimal from 'decimal.js';
import { describe, expect, it } from 'vitest';
import { q, quantity, unitFor } from '../../src/units';
import { fromSi, toSi } from '../../src/units/unit';
import table from './conversions.json';

// 107 exact fractions, with their sources in conversions.json: GNU Units 2.22 definitions, pint 0.19.2, and from
// memory NIST SP 811 (2008) appendix B and the SI Brochure, 9th ed. (2019).

const Exact = Decimal.clone({ precision: 60 });
const pi = Exact.acos(-1);

/** The exact SI size of a row, rounded once to a double. */
function rounded({ fraction, expression }: (typeof table.rows)[number]): number {
  if (fraction !== undefined) {
    const [above, below] = fraction.split('/');
    return new Exact(above).div(below).toNumber();
  }
  const irrational: Readonly<Record<string, Decimal>> = {
    'pi/180': pi.div(180),
    '2*pi/60': pi.times(2).div(60),
    '2*pi': pi.times(2),
    // psi from the same table, exactly, times the root of an inch
    '6894757.293168361...*sqrt(0.0254)': new Exact('8896443230521')
      .div('1290320')
      .times(new Exact('0.0254').sqrt()),
  };
  return irrational[expression ?? ''].toNumber();
}

const unitOfRow = ({ symbol, unit }: (typeof table.rows)[number]) =>
  unitFor(symbol === 's (specific impulse)' ? 'specific impulse' : 'dimensionless', unit);

describe('the size of a unit', () => {
  it('is checked in 107 rows', () => expect(table.rows).toHaveLength(107));

  it.each(table.rows)('$symbol is its exact fraction, rounded once', (row) => {
    const unit = unitOfRow(row);
    expect(toSi(1, unit)).toBe(rounded(row)); // to the last bit
    const decimal = Number(row.factor); // the table agrees with itself: 20 digits, 16 where a root is taken
    expect(Math.abs(rounded(row) - decimal)).toBeLessThanOrEqual(Number.EPSILON * decimal);
    expect(fromSi(rounded(row), unit)).toBe(1);
  });

  it('measures what the table says', () => {
    for (const row of table.rows) {
      const si = row.si.split(' or ')[0].replace(/ \(=.*/, '');
      const text = si.replace(/sqrt\((\w+)\)/, '$1^0.5').replace(/ (?=[a-zA-Z(])/g, '*');
      expect(unitOfRow(row).dimension, row.symbol).toBe(unitFor('dimensionless', text).dimension);
    }
  });
});

describe('temperature points', () => {
  // conversions.json: K = C + 273.15; K = (F + 459.67)·5/9; K = R·5/9
  it.each([
    ['0 degC', 273.15],
    ['100 degC', 373.15],
    ['-40 degF', 233.15],
    ['32 degF', 273.15],
    ['212 degF', 373.15],
    ['-459.67 degF', 0],
    ['491.67 degR', 273.15],
  ])('%s is %d K', (text, kelvin) => {
    expect(q(text).si).toBeCloseTo(kelvin, 12);
  });
  it('0 degF is 459.67·5/9 K to one unit in the last place', () => {
    const exact = new Exact('459.67').times(5).div(9).toNumber();
    expect(Math.abs(q('0 degF').si - exact)).toBeLessThanOrEqual(Number.EPSILON * exact);
  });
  it('gives back what went in', () => {
    expect(q('21 degC').in('degF')).toBe(69.8);
    expect(q('98.6 degF').in('degC')).toBe(37);
    expect(quantity('temperature difference', '9 delta_degF').in('delta_degC')).toBe(5);
  });
});

describe('identities that hold exactly by definition', () => {
  it.each([
    ['1 in', 'mm', 25.4],
    ['1 ft', 'in', 12],
    ['1 yd', 'm', 0.9144],
    ['1 mi', 'ft', 5280],
    ['1 lb', 'kg', 0.45359237],
    ['1 lb', 'oz', 16],
    ['1 lbf', 'N', 4.4482216152605],
    ['1 kip', 'lbf', 1000],
    ['1 lbf/in^2', 'psi', 1],
    ['1 atm', 'Pa', 101325],
    ['760 Torr', 'atm', 1],
    ['1 Btu/lb', 'J/kg', 2326],
    ['1 Btu/(lb*degF)', 'J/(kg*K)', 4186.8],
    ['1 rev', 'deg', 360],
    ['1 slug', 'lbf*s^2/ft', 1],
    ['1000 psi', 'MPa', 6.894757293168361],
  ])('%s in %s', (text, unit, expected) => {
    const value: { in(unit: string): number } = q(text); // the compiler cannot see the kind of a text it is handed
    expect(value.in(unit)).toBe(expected);
  });

  // Two sizes that were each rounded once to a double: their ratio may be one unit in the last place away.
  it.each([
    ['1 lb', 'gr', 7000],
    ['1 US_gal', 'in^3', 231],
    ['60 rpm', 'rad/s', 2 * Math.PI],
  ])('%s in %s, but for the last bit', (text, unit, expected) => {
    const value: { in(unit: string): number } = q(text);
    expect(Math.abs(value.in(unit) - expected)).toBeLessThanOrEqual(Number.EPSILON * expected);
  });
});
