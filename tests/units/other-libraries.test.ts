import Qty from 'js-quantities';
import { unit as mathUnit } from 'mathjs';
import { expect, it } from 'vitest';
import { unitOf } from '../../src/units/unit';

// Where mathjs 15.2.0 and js-quantities 1.8.0 give a unit another size than its definition does, and why. Ours are
// checked against exact fractions in conversions.test.ts; here it is said what a reader who compares will find.

type Comparison = readonly [ours: string, si: string, mathjs: string, jsQuantities: string];
const shared: readonly Comparison[] = [
  ...['in', 'ft', 'yd', 'mi', 'mil'].map((name): Comparison => [name, 'm', name, name]),
  ['nmi', 'm', '', 'nmi'],
  ['L', 'm^3', 'L', 'L'],
  ['US_gal', 'm^3', 'gal', 'gal'],
  ['US_fl_oz', 'm^3', 'floz', 'floz'],
  ['lb', 'kg', 'lbm', 'lb'],
  ['oz', 'kg', 'oz', 'oz'],
  ['gr', 'kg', 'gr', ''],
  ['slug', 'kg', '', 'slug'],
  ['short_ton', 'kg', 'ton', 'short-ton'],
  ['t', 'kg', 'tonne', 'tonne'],
  ['lbf', 'N', 'lbf', 'lbf'],
  ['kip', 'N', 'kip', ''],
  ['kgf', 'N', 'kgf', ''],
  ['dyn', 'N', 'dyn', 'dyn'],
  ['psi', 'Pa', 'psi', 'psi'],
  ['lbf/in^2', 'Pa', 'lbf/in^2', 'lbf/in2'],
  ['bar', 'Pa', 'bar', 'bar'],
  ['atm', 'Pa', 'atm', 'atm'],
  ['Torr', 'Pa', 'torr', 'torr'],
  ['mmHg', 'Pa', 'mmHg', 'mmHg'],
  ['inHg', 'Pa', '', 'inHg'],
  ['inH2O', 'Pa', '', 'inH2O'],
  ['Btu', 'J', 'BTU', 'btu'],
  ['cal_th', 'J', '', 'cal'],
  ['erg', 'J', 'erg', 'erg'],
  ['eV', 'J', 'eV', 'eV'],
  ['kWh', 'J', 'kWh', 'kWh'],
  ['hp', 'W', 'hp', 'hp'],
  ['deg', 'rad', 'deg', 'deg'],
  ['rpm', 'rad/s', '', 'rpm'],
  ['P', 'Pa*s', '', 'poise'],
  ['St', 'm^2/s', '', 'stokes'],
  ['mph', 'm/s', '', 'mph'],
  ['kn', 'm/s', '', 'knot'],
];

/** The rows of one library that differ by more than rounding noise, with the relative difference. */
function differing(
  name: 'mathjs' | 'js-quantities',
  column: 2 | 3,
  sizeOf: (unit: string, si: string) => number,
) {
  return shared.flatMap((row) => {
    if (row[column] === '') return [];
    const { factor, divisor } = unitOf(row[0]);
    const off = sizeOf(row[column], row[1]) / (factor / divisor) - 1;
    return Math.abs(off) > 1e-14 ? [`${name} ${row[0]} ${off.toExponential(1)}`] : [];
  });
}

const reasons: Readonly<Record<string, string>> = {
  'mathjs kip -3.4e-9': '1000 lbf typed as 4448.2216 N',
  'mathjs psi -5.9e-11': 'typed as 6894.75729276459 Pa: not even its own lbf/in^2',
  'mathjs Torr -2.8e-6': 'typed as 133.322 Pa; the definition is atm/760',
  'mathjs mmHg -2.9e-6': 'typed as 133.322 Pa; conventional mercury is 13595.1 kg/m³ under standard gravity',
  'mathjs eV -4.3e-8': 'the value of CODATA 2010; exact since the SI of 2019',
  'mathjs hp -5.9e-11': 'typed as 745.6998715386 W; the definition is 550 ft·lbf/s',
  'js-quantities US_gal 4.2e-9': '231 in³ typed to 8 digits',
  'js-quantities US_fl_oz 4.6e-9': 'a gallon/128 typed to 9 digits',
  'js-quantities oz -8.8e-10': 'lb/16 typed to 9 digits',
  'js-quantities slug -2.5e-9': 'typed to 9 digits',
  'js-quantities lbf 8.6e-8': 'typed as 4.448222 N; exactly 4.4482216152605 N',
  'js-quantities psi 3.9e-7': 'typed as 6894.76 Pa',
  'js-quantities lbf/in^2 8.6e-8': 'its lbf',
  'js-quantities Torr -3.2e-9': 'atm/760 typed as 133.322368 Pa',
  'js-quantities mmHg -1.5e-7': 'taken to be a torr',
  'js-quantities inHg -1.5e-7': '25.4 torr, not 25.4 mmHg',
  'js-quantities inH2O -2.8e-5': 'water at 4 °C, not conventional water',
  'js-quantities Btu 1.4e-7': 'the Btu of ISO 31-4 to 7 digits; ours is the International Table Btu',
  'js-quantities hp 5.6e-10': 'typed to 9 digits',
  'js-quantities kn -8.6e-10': 'a nautical mile per hour typed to 9 digits',
};

it('mathjs and js-quantities differ from the definitions in these rows, for these reasons', () => {
  const found = [
    ...differing('mathjs', 2, (name, si) => mathUnit(1, name).toNumber(si)),
    ...differing('js-quantities', 3, (name, si) => new Qty(1, name).to(si.replace('^', '')).scalar),
  ];
  expect(found).toEqual(Object.keys(reasons));
});
