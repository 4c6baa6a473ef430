import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  fromSiValue,
  isQuantity,
  type Kind,
  namedKinds,
  type Quantity,
  q,
  quantity,
  unitFor,
} from '../../src/units';
import { dimensionOfKind, kindFacts } from '../../src/units/kinds';
import { codeOf } from '../error-code';

const value = fc.double({ min: -1e6, max: 1e6, noNaN: true });
const positive = fc.double({ min: 1e-3, max: 1e6, noNaN: true });
const kind = fc.constantFrom(...namedKinds());
// Typed as a length whatever it is: the kinds are drawn at run time, where the compiler cannot follow.
const of = (si: number, what: Kind): Quantity<'length'> =>
  fromSiValue<'length'>(si, what, unitFor(what, kindFacts(what)?.metric ?? '1'));
const close = (a: number, b: number): void =>
  expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-12 * Math.max(Math.abs(a), Math.abs(b)));
/** Calls as plain JavaScript does, past the compiler. */
const loose = (target: object, method: string, ...given: unknown[]): unknown =>
  Reflect.apply(Reflect.get(target, method), target, given);

// Kinds that are no points: their sums are of the same kind.
const vectors = namedKinds().filter((name) => name !== 'temperature' && name !== 'gauge pressure');

describe('sums', () => {
  it('commute, associate, have an inverse, and keep the unit of the first', () => {
    fc.assert(
      fc.property(fc.constantFrom(...vectors), value, value, value, (what, a, b, c) => {
        const [x, y, z] = [of(a, what), of(b, what), of(c, what)];
        expect(x.plus(y).si).toBe(y.plus(x).si);
        expect(x.plus(y).plus(z).si).toBeCloseTo(x.plus(y.plus(z)).si, 6);
        expect(x.plus(y).unit).toBe(x.unit);
        expect(x.minus(x).si).toBe(0);
        expect(x.plus(y).si).toBe(a + b);
        expect(x.plus(y).kind).toBe(what);
      }),
    );
  });
  it('of two kinds are refused unless one is the general kind of the other', () => {
    for (const a of namedKinds())
      for (const b of namedKinds()) {
        const sum = codeOf(() => of(1, a).plus(of(1, b)));
        const same = dimensionOfKind(a) === dimensionOfKind(b);
        if (!same) expect(sum, `${a} plus ${b}`).toBe('wrong-kind');
      }
    expect(codeOf(() => of(1, 'torque').plus(of(1, 'energy')))).toBe('no error');
    expect(codeOf(() => of(1, 'energy').plus(of(1, 'torque')))).toBe('wrong-kind');
    expect(codeOf(() => of(1, 'angle').plus(of(1, 'dimensionless')))).toBe('wrong-kind');
    expect(codeOf(() => of(1, 'stress').plus(of(1, 'absolute pressure')))).toBe('wrong-kind');
  });
  it('with what is no quantity are refused', () => {
    for (const other of [1, '1 mm', null, undefined, { si: 1, kind: 'length' }, [], Number.NaN])
      for (const method of ['plus', 'minus'])
        expect(codeOf(() => loose(q('1 mm'), method, other))).toBe('wrong-kind');
  });
});

describe('points', () => {
  it('a gauge pressure plus a gauge pressure means nothing', () => {
    expect(codeOf(() => loose(q('50 psig'), 'plus', q('50 psig')))).toBe('wrong-kind');
  });
  it('the difference of two gauge readings is a pressure difference, as of two absolute ones', () => {
    fc.assert(
      fc.property(value, value, positive, (a, b, ambient) => {
        const difference = of(a, 'gauge pressure').minus(of(b, 'gauge pressure'));
        expect(difference.kind).toBe('pressure difference');
        expect(difference.si).toBe(a - b);
        const high = 1e7;
        const other = of(high + a + ambient, 'absolute pressure').minus(
          of(high + b + ambient, 'absolute pressure'),
        );
        expect(other.kind).toBe('pressure difference');
        expect(other.si).toBeCloseTo(difference.si, 6);
      }),
    );
  });
  it('a gauge pressure takes a difference and stays a gauge pressure', () => {
    expect(q('50 psig').plus(q('10 psid')).kind).toBe('gauge pressure');
    expect(q('50 psig').minus(q('10 psid')).in('psig')).toBe(40);
  });
  it('a gauge pressure forms no ratio with a pressure, either way round; with a load it does', () => {
    for (const other of ['1 psig', '1 psia', '1 psi']) {
      expect(codeOf(() => loose(q('50 psig'), 'per', q(other)))).toBe('gauge-ratio');
      expect(codeOf(() => loose(q(other), 'per', q('50 psig')))).toBe('gauge-ratio');
    }
    expect(q('50 psig').per(q('1 psid')).si).toBeCloseTo(50, 12);
    expect(q('50 psig').per(quantity('stress', '1 ksi')).si).toBeCloseTo(0.05, 12);
    expect(quantity('stress', '1 ksi').per(q('50 psig')).si).toBeCloseTo(20, 12);
    expect(q('50 psig').per(q('2 mm')).si).toBe(q('50 psig').si / 0.002);
    expect(q('50 psig').per(2).in('psig')).toBe(25);
  });
  it('absolute pressures form ratios', () => {
    expect(q('50 psia').per(q('25 psia')).si).toBe(2);
  });
  it('a temperature plus a temperature means nothing, minus it is a difference', () => {
    expect(codeOf(() => loose(q('20 degC'), 'plus', q('20 degC')))).toBe('wrong-kind');
    const rise = q('70 degF').minus(q('50 degF'));
    expect(rise.kind).toBe('temperature difference');
    expect(rise.in('delta_degF')).toBeCloseTo(20, 10);
    expect(q('50 degF').plus(rise).in('degF')).toBeCloseTo(70, 10);
  });
  it('a difference of temperatures takes no temperature', () => {
    expect(codeOf(() => loose(q('5 delta_K'), 'plus', q('20 degC')))).toBe('wrong-kind');
    expect(q('5 delta_K').plus(q('9 delta_degF')).in('delta_K')).toBe(10);
  });
  it('temperature differences convert without the origin', () => {
    expect(q('9 delta_degF').in('K')).toBe(5);
    expect(q('9 delta_degF').in('delta_degC')).toBe(5);
    expect(q('10 degC').in('degF')).toBe(50);
  });
});

describe('products and quotients', () => {
  it('multiply values and add exponents, for any two kinds', () => {
    fc.assert(
      fc.property(kind, kind, positive, positive, (a, b, x, y) => {
        const [l, r] = [dimensionOfKind(a), dimensionOfKind(b)];
        fc.pre(l.exponents.every((e, i) => Math.abs(e + r.exponents[i]) <= 7)); // what a quantity can have
        const [left, right] = [of(x, a), of(y, b)];
        const product = left.times(right);
        expect(product.si).toBe(x * y);
        const p = dimensionOfKind(product.kind);
        expect([...p.exponents]).toEqual(l.exponents.map((e, i) => e + r.exponents[i]));
        if (a !== 'gauge pressure' || dimensionOfKind(b) !== l) close(product.per(right).si, x);
        expect(product.times(0.5).si).toBe(x * y * 0.5);
      }),
      { numRuns: 1000 },
    );
  });
  it('divide by a quantity of the same kind to a number', () => {
    fc.assert(
      fc.property(fc.constantFrom(...vectors), positive, positive, (what, x, y) => {
        const ratio = loose(of(x, what), 'per', of(y, what));
        expect(isQuantity(ratio) && ratio.kind).toBe('dimensionless');
      }),
    );
  });
  it('find the named kinds of the trade', () => {
    const named: readonly (readonly [Quantity, Kind])[] = [
      [q('1 MPa').times(q('1 mm^2')), 'force'],
      [q('1 N').times(q('1 m')), 'energy'],
      [q('1 N').times(q('1 s')), 'impulse'],
      [q('1 N').per(q('1 mm^2')), 'pressure'],
      [q('1 N').per(q('1 mm')), 'stiffness'],
      [q('1 kg').per(q('1 m^3')), 'density'],
      [q('1 kg').per(q('1 s')), 'mass flow'],
      [q('1 m').per(q('1 s')), 'speed'],
      [q('1 N*s').per(q('1 kg')), 'speed'],
      [q('1 MPa').times(q('1 s')), 'pressure integral'],
      [q('1 J').per(q('1 s')), 'power'],
      [q('1 m').times(q('1 s')), 'dimension 1,0,1,0,0'],
      [q('2').times(q('1 m')), 'length'],
      [q('30 deg').times(q('1 m')), 'length'],
    ];
    for (const [made, expected] of named) expect(made.kind).toBe(expected);
  });
  it('keep the kind when multiplied by a number, and when by a dimensionless quantity', () => {
    expect(q('50 psig').times(2).kind).toBe('gauge pressure');
    expect(quantity('torque', '3 N*m').times(q('2')).kind).toBe('torque');
  });
  it('refuse to divide by zero and to leave the doubles', () => {
    expect(codeOf(() => q('1 mm').per(0))).toBe('divided-by-zero');
    expect(codeOf(() => q('1 mm').per(q('0 s')))).toBe('divided-by-zero');
    expect(codeOf(() => q('1e300 m').times(1e300))).toBe('not-finite');
    expect(codeOf(() => q('1e308 m').plus(q('1e308 m')))).toBe('not-finite');
    expect(codeOf(() => q('1 m').times(Number.NaN))).toBe('not-finite');
    expect(codeOf(() => q('1e300 m').pow(2))).toBe('not-finite');
    for (const other of ['2', null, undefined, {}])
      for (const method of ['times', 'per'])
        expect(codeOf(() => loose(q('1 mm'), method, other))).toBe('wrong-kind');
  });
});

describe('powers and roots', () => {
  it('undo each other', () => {
    fc.assert(
      fc.property(positive, fc.constantFrom(2, 3), (x, n) => {
        const power = of(x, 'length').pow(n);
        expect(power.kind).toBe(n === 2 ? 'area' : 'volume');
        close(power.root(n).si, x);
        expect(power.root(n).kind).toBe('length');
      }),
    );
  });
  it('follow the laws of exponents', () => {
    const x = q('3 mm');
    close(x.pow(2).times(x.pow(3)).si, x.pow(5).si);
    close(x.pow(-2).si, 1 / x.pow(2).si);
    expect(x.pow(0).si).toBe(1);
    expect(x.pow(0).kind).toBe('dimensionless');
    expect(x.pow(1).kind).toBe('length');
  });
  it('take half powers and refuse what is no exponent', () => {
    expect(q('4 m').root(2).kind).toBe('dimension 0.5,0,0,0,0');
    expect(q('4 m').root(2).si).toBe(2);
    expect(q('-8 mm^3').root(3).in('mm')).toBeCloseTo(-2, 12);
    for (const n of [0.5, Number.NaN, Number.POSITIVE_INFINITY])
      expect(codeOf(() => q('4 m').pow(n))).toBe('power');
    for (const n of [1, 0, -2, 2.5]) expect(codeOf(() => q('4 m').root(n))).toBe('power');
    expect(codeOf(() => q('-4 m^2').root(2))).toBe('power');
    expect(codeOf(() => q('4 m').root(3))).toBe('dimension-range');
    expect(codeOf(() => q('4 m').pow(8))).toBe('dimension-range');
    expect(codeOf(() => q('4 m^7').times(q('1 m')))).toBe('dimension-range');
  });
});

describe('the meaning of a value', () => {
  it('is changed within one dimension only, between a kind and its general kind', () => {
    expect(q('4 N*m').as('torque').kind).toBe('torque');
    expect(quantity('torque', '4 N*m').as('energy').kind).toBe('energy');
    expect(q('4 bar').as('gauge pressure').kind).toBe('gauge pressure');
    expect(codeOf(() => q('4 barg').as('absolute pressure'))).toBe('wrong-kind');
    expect(codeOf(() => q('4 mm').as('area'))).toBe('wrong-kind');
    expect(codeOf(() => q('20 degC').as('temperature difference'))).toBe('wrong-kind');
  });
  it('is kept when shown in another unit, and refused in a unit of another kind', () => {
    const shown = q('50 psig').to('barg');
    expect(shown.kind).toBe('gauge pressure');
    expect(shown.si).toBe(q('50 psig').si);
    expect(codeOf(() => loose(q('50 psig'), 'in', 'psia'))).toBe('wrong-unit');
    expect(codeOf(() => loose(q('50 mm'), 'in', 'psi'))).toBe('wrong-unit');
    expect(codeOf(() => loose(q('50 mm'), 'to', 'mmm'))).toBe('unknown-unit');
    expect(codeOf(() => loose(q('50 mm'), 'format', { unit: 's' }))).toBe('wrong-unit');
    expect(q('50 psig').in('psi')).toBe(50);
  });
});

describe('turning', () => {
  it('keeps turns apart from cycles: no rpm is read as Hz', () => {
    expect(q('3000 rpm').kind).toBe('angular speed');
    for (const text of ['10 rad/s', '10 deg/s', '10 rev/min']) expect(q(text).kind).toBe('angular speed');
    expect(q('50 Hz').kind).toBe('frequency');
    expect(codeOf(() => loose(q('3000 rpm'), 'in', 'Hz'))).toBe('wrong-unit');
    expect(codeOf(() => loose(q('3000 rpm'), 'as', 'frequency'))).toBe('wrong-kind');
    expect(codeOf(() => quantity('angular speed', '50 Hz'))).toBe('wrong-kind');
    expect(codeOf(() => loose(q('3000 rpm'), 'plus', q('1 Hz')))).toBe('wrong-kind');
  });
  it('comes of an angle and a time or a frequency', () => {
    expect(q('360 deg').per(q('1 s')).in('rpm')).toBeCloseTo(60, 12);
    expect(q('50 Hz').times(q('1 rev')).in('rpm')).toBeCloseTo(3000, 10);
    expect(q('1 m').per(q('1 s')).per(q('1 m')).kind).toBe('frequency');
    expect(q('3000 rpm').times(q('1 m')).kind).toBe('speed');
  });
});
