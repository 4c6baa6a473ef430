import Decimal from 'decimal.js';
import { describe, expect, it } from 'vitest';
import { constants, unitOf } from '../../src/units';
import table from './conversions.json';

// The SI Brochure, 9th ed. (2019), fixes k = 1.380649e-23 J/K, N_A = 6.02214076e23 /mol, h = 6.62607015e-34 J s and
// c = 299792458 m/s (in conversions.json with their provenance); the others follow from these.

const Exact = Decimal.clone({ precision: 50 });
const listed = new Map(table.constants.map(({ symbol, value }) => [symbol, new Exact(value)]));
const exact = (symbol: string): Decimal => listed.get(symbol) ?? new Exact(Number.NaN);

describe('constants', () => {
  it('standard gravity, 3rd CGPM (1901)', () =>
    expect(constants.standardGravity.value).toBe(exact('g_n').toNumber()));
  it('standard atmosphere, 10th CGPM (1954)', () =>
    expect(constants.standardAtmosphere.value).toBe(exact('atm').toNumber()));
  it('molar gas constant, k·N_A to the last digit', () => {
    const product = exact('k').times(exact('N_A'));
    expect(product.toString()).toBe(exact('R').toString());
    expect(constants.molarGasConstant.value).toBe(product.toNumber());
  });
  it('Stefan-Boltzmann constant, 2π⁵k⁴/(15h³c²) to the last bit', () => {
    const above = Exact.acos(-1).pow(5).times(2).times(exact('k').pow(4));
    const below = exact('h').pow(3).times(exact('c').pow(2)).times(15);
    expect(constants.stefanBoltzmann.value).toBe(above.div(below).toNumber());
    expect(above.div(below).toSignificantDigits(10, Decimal.ROUND_DOWN).toNumber()).toBe(
      exact('sigma').toNumber(),
    );
  });
  it('zero of the Celsius scale: 0 °C is 273.15 K', () => {
    const [celsius] = table.temperaturePoints;
    expect(constants.zeroCelsius.value).toBe(Number(celsius.offset));
  });
  it('each has a unit that parses, a symbol, a name and a source', () => {
    for (const { unit, symbol, name, source } of Object.values(constants)) {
      expect(unitOf(unit).factor).toBe(1);
      for (const text of [symbol, name, source]) expect(text).not.toBe('');
    }
  });
});
