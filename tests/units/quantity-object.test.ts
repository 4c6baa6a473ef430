import { inspect } from 'node:util';
import { describe, expect, it } from 'vitest';
import {
  absolute,
  fromSiArray,
  fromSiValue,
  gauge,
  isClose,
  isQuantity,
  MeopError,
  type Quantity,
  q,
  quantity,
  series,
  seriesOf,
  unitOf,
} from '../../src/units';
import { codeOf } from '../error-code';
import { hoopStress } from './sample-formulas';

const loose = (target: object, method: string | symbol, ...given: unknown[]): unknown =>
  Reflect.apply(Reflect.get(target, method), target, given);

describe('absolute and gauge', () => {
  it('undo each other', () => {
    for (const ambient of ['1 atm', '0.7 bar', '14.2 psi'] as const)
      for (const reading of ['0 psig', '50 psig', '-3 psig', '7 MPag'] as const) {
        const back = gauge(absolute(reading, ambient), ambient);
        expect(isClose(back, q(reading), { abs: q('1e-9 psid'), rel: 1e-12 })).toBe(true);
        expect(back.kind).toBe('gauge pressure');
      }
    expect(absolute('4 barg', '1.01 bar').in('bar')).toBe(5.01);
    expect(absolute('4 barg', '1.01 bar').kind).toBe('absolute pressure');
    expect(gauge('5.01 bara', '1.01 bar').in('bar')).toBe(4);
  });
  it('keep the unit that was given', () => {
    expect(absolute('50 psig', '1 atm').unit).toBe('psi');
    expect(absolute('4 barg', '1 atm').unit).toBe('bar');
    expect(absolute('4 MPa', '1 atm').unit).toBe('MPa');
  });
  it('refuse the wrong reference, and what is below vacuum', () => {
    expect(codeOf(() => loose({ absolute }, 'absolute', '50 psia', '1 atm'))).toBe('wrong-kind');
    expect(codeOf(() => loose({ gauge }, 'gauge', '50 psig', '1 atm'))).toBe('wrong-kind');
    expect(codeOf(() => absolute('-2 barg', '1 bar'))).toBe('out-of-domain');
    expect(codeOf(() => absolute('2 barg', '-1 bar'))).toBe('out-of-domain');
    expect(codeOf(() => gauge('-0.1 bara', '1 bar'))).toBe('out-of-domain');
    expect(codeOf(() => loose({ absolute }, 'absolute', '50 psig'))).toBe('missing-field'); // ambient is never assumed
  });
});

describe('a quantity', () => {
  const size = q('3/8 in');
  it('cannot be changed', () => {
    for (const field of ['si', 'kind', 'unit', 'cautions'])
      expect(() => Object.defineProperty(size, field, { value: 1 }) && Reflect.get(size, field)).not.toBe(1);
    expect(Reflect.set(size, 'si', 5)).toBe(false);
    expect(Reflect.set(size, 'kind', 'area')).toBe(false);
    expect(size.plus(size).si).toBe(2 * 0.009525);
    expect(() => loose(size.cautions, 'push', 'x')).toThrow();
  });
  it('is no number: arithmetic on it fails and says how it is done', () => {
    expect(() => Number(size)).toThrow(/\.in\('in'\)/);
    expect(codeOf(() => Math.sqrt(Number(size)))).toBe('quantity-as-number');
    expect(() => Reflect.apply(Math.max, undefined, [size, 1])).toThrow(MeopError);
    expect(`${size}`).toBe('0.375 in');
    expect(() => Number(q('30 deg'))).toThrow(/\.in\('rad'\)/); // what sines take
  });
  it('is not joined as text by a plus sign, which would make 21 of 2 and 1; a ratio is its number', () => {
    // As plain JavaScript adds, past the compiler.
    const sum = (a: unknown, b: unknown): unknown => new Function('a', 'b', 'return a + b')(a, b);
    expect(codeOf(() => sum(size, 1))).toBe('quantity-as-number');
    expect(codeOf(() => sum(size, size))).toBe('quantity-as-number');
    expect(codeOf(() => sum(size, ' wide'))).toBe('quantity-as-number');
    expect(sum(q('2 in').per(q('1 in')), 1)).toBe(3);
    expect(sum(q('5 %'), 1)).toBe(1.05);
    expect([size, size].join(' and ')).toBe('0.375 in and 0.375 in');
  });
  it('says what is wrong with a call, whatever it is given', () => {
    const call = (work: (...given: unknown[]) => unknown, ...given: unknown[]): string =>
      codeOf(() => work(...given));
    const [make, named] = [q, quantity].map(
      (work) =>
        (...given: unknown[]): unknown =>
          Reflect.apply(work, undefined, given),
    );
    expect(call(make, '100', 'psi')).toBe('two-units');
    expect(call(make, '100 mm', 'in')).toBe('two-units');
    expect(call(named, 'impuls', '230 s')).toBe('unknown-kind');
    expect(call(named, 'length')).toBe('missing-field');
    expect(call(named, 'length', 5)).toBe('bare-number');
    expect(call(() => loose(size, 'as', 'lenght'))).toBe('unknown-kind');
    expect(call(() => loose(size, 'in'))).toBe('unknown-unit');
    expect(call(() => loose(size, 'to', 5))).toBe('unknown-unit');
  });
  it('shown in a unit of another reference or kind, the error tells the way there', () => {
    expect(() => loose(q('50 psig'), 'to', 'psia')).toThrow('Convert with absolute(p, ambient)');
    expect(() => loose(q('50 psia'), 'to', 'psig')).toThrow('Convert with gauge(p, ambient)');
    expect(() => loose(q('200 N*s').per(q('0.1 kg')), 'to', 's')).toThrow(".as('specific impulse')");
    expect(() => loose(size, 'plus', '1 mm')).toThrow("Write q('1 mm')");
  });
  it('prints as itself in Node and as text and HTML in a notebook', () => {
    expect(inspect(size)).toBe('0.375 in');
    expect(inspect({ size })).toBe('{ size: 0.375 in }');
    const shown: unknown = loose(size, Symbol.for('Jupyter.display'));
    expect(shown).toEqual({ 'text/plain': '0.375 in', 'text/html': '<span>0.375 in</span>' });
  });
  it('prints its cautions', () => {
    const thick = fromSiValue<'stress'>(1e6, 'stress', unitOf('MPa'), ['the wall is not thin']);
    expect(inspect(thick)).toBe('1 MPa\n  caution: the wall is not thin');
    expect(thick.to('psi').cautions).toEqual(['the wall is not thin']);
    expect(thick.times(2).cautions).toEqual([]);
  });
  it('of another copy of the library is taken as its own', () => {
    const mine = q('1000 psi');
    const foreign = {
      [Symbol.for('meop.quantity')]: true,
      si: mine.si,
      kind: 'pressure',
      unit: 'psi',
      toJSON: () => '1000 psi',
      format: () => '1000 psi',
    };
    expect(isQuantity(foreign)).toBe(true);
    if (!isQuantity(foreign)) return;
    const pressure: Quantity<'pressure'> = quantity('pressure', foreign);
    expect(mine.plus(pressure).in('psi')).toBe(2000);
    expect(loose(mine, 'plus', foreign)).toMatchObject({ kind: 'pressure' });
    expect(loose(q('2 in^2'), 'times', foreign)).toMatchObject({ kind: 'force' });
    expect(hoopStress({ pressure, radius: '1 in', wall: '0.1 in' }).in('psi')).toBe(10_000);
  });
  it('is known from what only looks like one', () => {
    for (const value of [null, undefined, 1, '1 mm', {}, { si: 1, kind: 'length', unit: 'mm' }, []])
      expect(isQuantity(value)).toBe(false);
  });
});

describe('isClose', () => {
  it('compares within one kind, relatively unless told otherwise', () => {
    expect(isClose(q('1 in'), q('25.4 mm'))).toBe(true);
    expect(isClose(q('0.1 m').plus(q('0.2 m')), q('0.3 m'))).toBe(true);
    expect(isClose(q('1 m'), q('1.0001 m'))).toBe(false);
    expect(isClose(q('1 m'), q('1.0001 m'), { rel: 1e-3 })).toBe(true);
    expect(isClose(q('1 m'), q('1.0001 m'), { abs: q('1 mm') })).toBe(true);
    expect(isClose(q('0 m'), q('1e-12 m'))).toBe(false);
    expect(codeOf(() => isClose(q('1 m'), q('1 s')))).toBe('wrong-kind');
    expect(codeOf(() => isClose(q('1 m'), q('1 m'), { abs: q('1 s') }))).toBe('wrong-kind');
    expect(codeOf(() => isClose(q('1 psig'), q('1 psia')))).toBe('wrong-kind');
  });
  it('takes the tolerance as a difference: a degree is no 274 K', () => {
    const [room, warm] = [q('21 degC'), q('30 degC')];
    expect(codeOf(() => isClose(room, warm, { abs: q('1 degC') }))).toBe('wrong-kind');
    expect(isClose(room, warm, { abs: q('1 delta_degC') })).toBe(false);
    expect(isClose(room, warm, { abs: q('10 delta_degC') })).toBe(true);
    expect(isClose(q('1 psia'), q('1.1 psia'), { abs: q('0.2 psi') })).toBe(true);
  });
  it('refuses what is no quantity and no number', () => {
    const call = (...given: unknown[]): string => codeOf(() => Reflect.apply(isClose, undefined, given));
    expect(call('1 in', q('25.4 mm'))).toBe('wrong-kind');
    expect(call(q('1 in'), '25.4 mm')).toBe('wrong-kind');
    expect(call(1, 1)).toBe('wrong-kind');
    expect(call(q('1 in'), q('1 in'), { abs: '1 mm' })).toBe('wrong-kind');
    expect(call(q('1 in'), q('1 in'), { rel: '1%' })).toBe('not-finite');
  });
});

describe('a series', () => {
  const run = series([1, 2, 3, 4, 5, 6], 'MPa');
  it('keeps SI doubles and shows them in a unit', () => {
    expect([...run.si]).toEqual([1e6, 2e6, 3e6, 4e6, 5e6, 6e6]);
    expect([...run.in('bar')]).toEqual([10, 20, 30, 40, 50, 60]);
    expect([...run.to('bar').in('bar')]).toEqual([10, 20, 30, 40, 50, 60]);
    expect(run.to('bar').unit).toBe('bar');
    expect(run.kind).toBe('pressure');
    expect(run.length).toBe(6);
  });
  it('gives one value, from the end too', () => {
    expect(run.at(0).in('MPa')).toBe(1);
    expect(run.at(-1).in('MPa')).toBe(6);
    for (const index of [6, -7, 0.5, Number.NaN]) expect(codeOf(() => run.at(index))).toBe('index-range');
  });
  it('knows its least and greatest', () => {
    expect(run.min().in('MPa')).toBe(1);
    expect(run.max().in('MPa')).toBe(6);
    expect(codeOf(() => series([], 'mm').min())).toBe('empty-series');
  });
  it('prints what fits on a line, and goes to JSON with its unit', () => {
    expect(inspect(run)).toBe('[1, 2, 3, 4, …, 6] MPa (6 values of pressure)');
    expect(JSON.stringify(series([1, 2.5], 'in'))).toBe('{"unit":"in","values":[1,2.5]}');
  });
  it('refuses what is not finite and units of another kind', () => {
    expect(codeOf(() => series([1, Number.NaN], 'mm'))).toBe('not-finite');
    expect(codeOf(() => loose({ seriesOf }, 'seriesOf', 'length', [1], 'psi'))).toBe('wrong-unit');
    expect(codeOf(() => loose(run, 'in', 'mm'))).toBe('wrong-unit');
    expect(codeOf(() => loose({ seriesOf }, 'seriesOf', 'gauge pressure', [1], 'psia'))).toBe('wrong-unit');
    expect(() => series([1, Number.POSITIVE_INFINITY], 'mm')).toThrow(/values\[1\]/);
  });
  it('shares its array with the kernels', () => {
    const si = Float64Array.of(0.01, 0.02);
    expect(fromSiArray('length', si, 'mm').si).toBe(si);
    expect([...fromSiArray('temperature', Float64Array.of(273.15), 'degC').in('degC')]).toEqual([0]);
  });
});
