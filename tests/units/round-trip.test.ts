import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  formatNumber,
  fromSiValue,
  namedKinds,
  type Quantity,
  q,
  quantity,
  unitFor,
  unitOf,
} from '../../src/units';
import { toSi } from '../../src/units/unit';
import { unitNames } from '../../src/units/unit-names';
import { gnuRows } from './gnu-names';

const seed = 1959;
const allUnits = [...new Set([...gnuRows.keys(), ...namedKinds().flatMap(unitNames)])];
const finite = fc.double({ noDefaultInfinity: true, noNaN: true });
const everyday = fc.double({ min: -1e6, max: 1e6, noNaN: true });
const short = fc
  .tuple(fc.integer({ min: -99_999, max: 99_999 }), fc.integer({ min: 0, max: 4 }))
  .map(([n, d]) => n / 10 ** d);
const number = fc.oneof(short, everyday, finite);
/** Whether a number in a unit would be a temperature below absolute zero, which is refused. */
const isRefused = (value: number, unit: string): boolean => {
  const { kind } = unitOf(unit);
  return kind === 'temperature' && toSi(value, unitOf(unit)) < 0;
};
const bits = (value: number): bigint => {
  const view = new DataView(new ArrayBuffer(8));
  view.setFloat64(0, value);
  return view.getBigInt64(0);
};

describe('a quantity as text', () => {
  it('10,000 times text → quantity → text → quantity loses no bit, in any unit', () => {
    let units = new Set<string>();
    fc.assert(
      fc.property(number, fc.constantFrom(...allUnits), (value, unit) => {
        fc.pre(Math.abs(value) < 1e290); // else the SI value is no double, and is refused
        fc.pre(!isRefused(value, unit));
        const first = q(`${value} ${unit}`);
        const text = first.toJSON();
        const second = q(text);
        expect(bits(second.si), `${value} ${unit} → ${text}`).toBe(bits(first.si === 0 ? 0 : first.si));
        expect(second.kind).toBe(first.kind);
        expect(second.toJSON()).toBe(text); // the text itself is settled
        units = units.add(unit);
      }),
      { numRuns: 10_000, seed },
    );
    expect(units.size).toBe(allUnits.length);
  });

  it('keeps bits that its unit cannot hold, and its kind', () => {
    fc.assert(
      fc.property(everyday, fc.constantFrom(...namedKinds()), fc.nat(50), (si, kind, i) => {
        const names = unitNames(kind);
        fc.pre(names.length > 0);
        fc.pre(kind !== 'temperature' || si >= 0);
        const made = fromSiValue(si === 0 ? 0 : si, kind, unitFor(kind, names[i % names.length]));
        const read = quantity(kind, made.toJSON());
        expect(bits(read.si), made.toJSON()).toBe(bits(made.si));
        expect(read.kind).toBe(kind);
      }),
      { numRuns: 10_000, seed },
    );
  });

  it('goes through JSON inside a document', () => {
    const document = {
      wall: q('1/8 in'),
      pressure: q('1000 psi'),
      impulse: quantity('specific impulse', '230 s'),
    };
    const read: Record<string, string> = JSON.parse(JSON.stringify(document));
    expect(read).toEqual({ wall: '0.125 in', pressure: '1000 psi', impulse: '230 lbf*s/lb' });
    expect(q(read.wall).si).toBe(document.wall.si);
    expect(quantity('specific impulse', read.impulse).si).toBe(document.impulse.si);
  });

  it('gives back the number that went in, in the unit it went in by', () => {
    fc.assert(
      fc.property(short, fc.constantFrom(...allUnits), (value, unit) => {
        fc.pre(!isRefused(value, unit));
        const made: { in(unit: string): number } = q(value, unit);
        expect(made.in(unit)).toBe(value === 0 ? 0 : value);
      }),
      { numRuns: 10_000, seed },
    );
  });

  it('has 25.4 millimetres to the inch', () => expect(q('1 in').in('mm')).toBe(25.4));
});

describe('a quantity as people read it', () => {
  const pressure = q('1000 psi');
  it('has four significant figures and no trailing noise', () => {
    expect(pressure.to('MPa').format()).toBe('6.895 MPa');
    expect(String(q('0.1 m').plus(q('0.2 m')))).toBe('0.3 m');
    expect(String(q('25.4 mm').to('in'))).toBe('1 in');
    expect(pressure.format({ unit: 'MPa', figures: 2 })).toBe('6.9 MPa');
    expect(pressure.format({ unit: 'MPa', figures: 16 })).toBe('6.894757293168361 MPa');
    expect(`${q('3/8 in')}`).toBe('0.375 in');
  });
  it('keeps the digits left of the point', () => {
    expect(q('12345 psi').format()).toBe('12345 psi');
    expect(q('12345.6 psi').format({ figures: 2 })).toBe('12346 psi');
    expect(formatNumber(999_999_999, 3)).toBe('999999999');
  });
  it('groups digits only where asked', () => {
    expect(q('1234567 Pa').format()).toBe('1234567 Pa');
    expect(q('1234567 Pa').format({ groups: true })).toBe('1\u2009234\u2009567 Pa');
    expect(q('1234.56789 Pa').format({ groups: true, figures: 8 })).toBe('1\u2009234.5679 Pa');
    expect(q('123 Pa').format({ groups: true })).toBe('123 Pa');
  });
  it('turns to powers of ten where a decimal would be long', () => {
    expect(q('0.00001 m').format()).toBe('1e-5 m');
    expect(q('1e12 Pa').format()).toBe('1e+12 Pa');
    expect(q('0.0001 m').format()).toBe('0.0001 m');
  });
  it('writes units as they are printed', () => {
    const printed: readonly (readonly [string, string])[] = [
      ['4.2 kg/m^3', '4.2 kg/m³'],
      ['4.2 N*m', '4.2 N·m'],
      ['21 degC', '21 °C'],
      ['30 deg', '30°'],
      ['5 delta_degF', '5 Δ°F'],
      ['2 MPa*m^0.5', '2 MPa·m^0.5'],
      ['3 s^-1', '3 s⁻¹'],
      ['50 psig', '50 psig'],
      ['0.35', '0.35'],
    ];
    for (const [text, expected] of printed) expect(q(text).format()).toBe(expected);
  });
  it('says gauge and absolute where the unit does not', () => {
    expect(quantity('gauge pressure', '5 MPa').format()).toBe('5 MPa gauge');
    expect(quantity('absolute pressure', '5 MPa').format()).toBe('5 MPa absolute');
    expect(quantity('gauge pressure', '50 psig').format()).toBe('50 psig');
  });
  it('never prints more digits than asked, and stays within half of the last', () => {
    fc.assert(
      fc.property(everyday, fc.integer({ min: 1, max: 17 }), (value, figures) => {
        const text = formatNumber(value, figures);
        const read = Number(text);
        const whole = Math.floor(Math.log10(Math.max(Math.abs(value), Math.abs(read)))) + 1; // 999.5 may become 1000
        const kept = Math.max(figures, Math.min(whole, 9));
        const digits = text.replace(/e.*/, '').replace(/[-.]/g, '').replace(/^0+/, '');
        expect(digits.length, text).toBeLessThanOrEqual(kept);
        expect(Math.abs(read - value)).toBeLessThanOrEqual(
          0.5000001 * 10 ** (whole - figures) + Number.EPSILON * Math.abs(value),
        );
        expect(text).not.toMatch(/\.\d*0$/);
      }),
      { numRuns: 3000, seed },
    );
  });
  it('refuses figures that are none', () => {
    for (const figures of [0, 18, 2.5, Number.NaN]) expect(() => formatNumber(1, figures)).toThrow(/1 to 17/);
  });
  it('shows products in metric or US units after what they were made of', () => {
    const printed: readonly (readonly [Quantity, string])[] = [
      [q('100 psi').times(q('2 in^2')), '200 lbf'],
      [q('1 MPa').times(q('100 mm^2')), '100 N'],
      [q('10 lbf').per(q('2 in^2')), '5 psi'],
      [q('10 N').per(q('2 mm^2')), '5 MPa'],
      [q('2 in').times(q('3 in')), '6 in²'],
      [q('2 m').times(q('3 s')), '6 m·s'],
    ];
    for (const [made, expected] of printed) expect(made.format()).toBe(expected);
  });
});
