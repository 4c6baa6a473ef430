import { describe, expect, expectTypeOf, it } from 'vitest';
import {
  type Arguments,
  choice,
  count,
  either,
  flag,
  inputs,
  instance,
  isSeries,
  length,
  list,
  MeopError,
  type NamedTable,
  named,
  optional,
  type Quantity,
  q,
  ratio,
  readInputs,
  series,
  temperature,
  trace,
  unitName,
  type Values,
  variants,
  words,
} from '../../src/units';
import { errorOf } from '../error-code';

// What is expected here is the rule of declared inputs itself, stated in the design; no published value is involved.

const tube = inputs(
  {
    outsideDiameter: length('D', 'outside diameter', { example: '50 mm', worse: 'high' }),
    wall: length('t', 'wall thickness', { example: '3 mm', worse: 'low', synonyms: ['gauge'] }),
    temperature: optional(temperature('T', 'temperature of the wall')),
  },
  {
    meaning: 'the tube',
    checks: [
      ({ outsideDiameter, wall }) =>
        2 * wall.si < outsideDiameter.si
          ? undefined
          : { path: 'wall', given: wall, expected: 'less than half the outside diameter' },
    ],
  },
);

interface Bolt {
  readonly name: string;
  readonly diameter: number;
}
const bolts: NamedTable<Bolt, 'M5' | 'M6'> = {
  what: 'bolt',
  names: () => ['M5', 'M6'],
  usual: ['M5', 'M6'],
  find: (name) => {
    if (name === 'M5' || name === 'M6') return { name, diameter: Number(name.slice(1)) };
    throw new MeopError({ code: 'unknown-name', given: name, note: 'bolt', expected: 'M5, M6' });
  },
  is: (value): value is Bolt => typeof value === 'object' && value !== null && 'diameter' in value,
};

const joint = {
  tube,
  bolt: named('bolt', bolts),
  count: count('n', 'number of bolts'),
  washer: optional(choice('washer under the head', ['hard', 'soft']), 'hard'),
  lubricated: optional(flag('whether the thread is lubricated')),
  share: optional(ratio('k', 'load of the worst bolt divided by the equal share', { min: 1 }), 1),
  sizes: optional(list('sizes to try', length('d', 'diameter'), { min: 2 })),
};
const read = (given: unknown): Values<typeof joint> => readInputs(joint, given, { procedure: 'f', path: '' });
const plain = { tube: { outsideDiameter: '50 mm', wall: '3 mm' }, bolt: 'M5', count: 8 } as const;

const messageOf = (call: () => unknown): string => {
  const error = errorOf(call);
  return error ? `${error.code}: ${error.message}` : 'accepted';
};

describe('declared inputs', () => {
  it('are read into quantities, numbers, entries and words, with what is assumed', () => {
    const values = read(plain);
    expect(values.tube.wall.si).toBe(0.003); // by definition of the millimetre
    expect(values.tube.temperature).toBeUndefined();
    expect(values.bolt).toEqual({ name: 'M5', diameter: 5 });
    expect([values.count, values.washer, values.lubricated, values.share]).toEqual([8, 'hard', undefined, 1]);
  });
  it('may be passed on: what was read is read again as the same', () => {
    const once = read(plain);
    expect(read(once)).toEqual(once);
    expectTypeOf<Values<typeof joint>>().toExtend<Arguments<typeof joint>>();
  });
  it('take what their type says, and their types say what they take', () => {
    expectTypeOf<Arguments<typeof joint>['washer']>().toEqualTypeOf<'hard' | 'soft' | undefined>();
    expectTypeOf<Values<typeof joint>['tube']['wall']>().toEqualTypeOf<Quantity<'length'>>();
    expectTypeOf<Values<typeof joint>['count']>().toEqualTypeOf<number>();
    expectTypeOf<(typeof tube)['fields']['wall']['worse']>().toEqualTypeOf<'low'>();
    // @ts-expect-error a length is not a temperature
    const wrong: Arguments<typeof joint> = { ...plain, tube: { ...plain.tube, temperature: '3 mm' } };
    expect(() => read(wrong)).toThrow('tube.temperature must be a temperature');
  });
  it('a group has a typical argument where its fields have', () => {
    expect(tube.example).toEqual({ outsideDiameter: '50 mm', wall: '3 mm' });
    expect(inputs({ wall: length('t', 'wall') }, { meaning: 'bare' }).example).toBeUndefined();
  });

  it.each([
    [
      'nothing',
      undefined,
      'missing-field: f: must be an object { tube, bolt, count, washer, lubricated, share, sizes }, got nothing.',
    ],
    [
      'a missing field',
      { ...plain, count: undefined },
      'missing-field: f: missing required field count (number of bolts).',
    ],
    [
      'a missing field of a group',
      { ...plain, tube: { wall: '3 mm' } },
      'missing-field: f: missing required field tube.outsideDiameter (outside diameter).',
    ],
    [
      'a misspelt field',
      { ...plain, tube: { ...plain.tube, wal: 1 } },
      "unknown-field: f: unknown field 'tube.wal'; did you mean 'wall'? Fields: outsideDiameter, wall, temperature.",
    ],
    [
      'a value out of its domain, as it was given',
      { ...plain, tube: { ...plain.tube, wall: '0 in' } },
      "out-of-domain: f: tube.wall must be above 0 in, got '0 in'.",
    ],
    [
      'a fraction, as it was given',
      { ...plain, tube: { outsideDiameter: '1/16 in', wall: '1/16 in' } },
      'out-of-domain: f: tube.wall must be less than half the outside diameter, got 0.0625 in.',
    ],
    [
      'another kind',
      { ...plain, tube: { ...plain.tube, wall: '3 s' } },
      "wrong-kind: f: tube.wall must be a length, got '3 s' (a time). Use a unit such as mm or in.",
    ],
    [
      'an unknown name',
      { ...plain, bolt: 'M7' },
      "unknown-name: f: bolt: unknown bolt 'M7'. Available: M5, M6.",
    ],
    ['no name', { ...plain, bolt: 7 }, 'wrong-kind: f: bolt must be the name of a bolt, or a bolt, got 7.'],
    [
      'another word',
      { ...plain, washer: 'sofd' },
      "unknown-name: f: washer: unknown washer under the head 'sofd'; did you mean 'soft'? Available: 'hard', 'soft'.",
    ],
    [
      'half a bolt',
      { ...plain, count: 2.5 },
      'out-of-domain: f: count must be a whole number and at least 1, got 2.5.',
    ],
    ['yes', { ...plain, lubricated: 'yes' }, "wrong-kind: f: lubricated must be true or false, got 'yes'."],
    [
      'a short list',
      { ...plain, sizes: ['3 mm'] },
      'wrong-kind: f: sizes must be a list of 2 or more, got ["3 mm"].',
    ],
    [
      'a list with a wrong item',
      { ...plain, sizes: ['3 mm', '-3 mm'] },
      "out-of-domain: f: sizes.1 must be above 0 mm, got '-3 mm'.",
    ],
  ])('refuse %s', (_, given, message) => expect(messageOf(() => read(given))).toBe(message));

  it('variants are told apart by a name, and each has its own fields', () => {
    const law = variants('law', 'law of the throat', {
      constant: { rate: ratio('r', 'rate') },
      power: { rate: ratio('r', 'rate'), exponent: optional(ratio('n', 'exponent'), 0.5) },
    });
    const at = { procedure: 'f', path: 'throat' };
    expect(law.read({ law: 'power', rate: 2 }, at)).toEqual({ law: 'power', rate: 2, exponent: 0.5 });
    expect(messageOf(() => law.read({ law: 'constant', rate: 2, exponent: 1 }, at))).toBe(
      "unknown-field: f: unknown field 'throat.exponent'. Fields: rate.",
    );
    expect(messageOf(() => law.read({ law: 'cubic', rate: 2 }, at))).toContain(
      "throat.law: unknown law of the throat 'cubic'. Available: 'constant', 'power'.",
    );
    expect(messageOf(() => law.read(7, at))).toContain('throat: must be an object');
  });
  it('either takes each of its sorts', () => {
    const both = either('a length or a word', [length('x', 'length'), words('word')]);
    const at = { procedure: 'f', path: 'x' };
    expect([both.read('3 mm', at), both.read('three', at)].map(String)).toEqual(['3 mm', 'three']);
    expect(messageOf(() => both.read(7, at))).toBe('wrong-kind: f: x must be a non-empty string, got 7.');
  });
  it('where no sort reads a value, the error deepest inside it is reported', () => {
    const both = either('a list of lengths or an object', [
      list('lengths', length('x', 'length')),
      inputs({ size: length('x', 'length') }, { meaning: 'an object' }),
    ]);
    const at = { procedure: 'f', path: 'x' };
    expect(messageOf(() => both.read(['1 mm', '0 mm'], at))).toContain('x.1 must be above 0 mm');
    expect(messageOf(() => both.read({ size: '0 mm' }, at))).toContain('x.size must be above 0 mm');
  });
  it('a trace is a series of its kind, long enough', () => {
    const times = trace('time', 'times', { min: 2 });
    const at = { procedure: 'f', path: 'time' };
    expect(isSeries(times.read(series([0, 1], 's'), at))).toBe(true);
    expect(messageOf(() => times.read([0, 1], at))).toBe(
      "wrong-kind: f: time must be a series of time, got [0,1]. Make one with seriesOf('time', values, unit).",
    );
    expect(messageOf(() => times.read(series([0, 1], 'mm'), at))).toContain('(a length)');
    expect(messageOf(() => times.read(series([0], 's'), at))).toContain('at least 2 values long');
  });
  it('an instance is known by its own test', () => {
    const date = instance('when', 'a Date', (value): value is Date => value instanceof Date, {
      remedy: 'Use new Date()',
    });
    expect(messageOf(() => date.read('today', { procedure: 'f', path: 'when' }))).toBe(
      "wrong-kind: f: when must be a Date, got 'today'. Use new Date().",
    );
  });
  it('a unit is given by its name, and is one of the kind', () => {
    const rate = { rateUnit: unitName('speed', 'unit of the rate') };
    const at = { procedure: 'f', path: '' };
    expect(readInputs(rate, { rateUnit: 'in/s' }, at).rateUnit.text).toBe('in/s');
    expect(() => readInputs(rate, { rateUnit: 'mm' }, at)).toThrow(
      "f: rateUnit must be a unit of speed, got 'mm'.",
    );
    expect(() => readInputs(rate, { rateUnit: 7 }, at)).toThrow(
      'f: rateUnit must be the name of a unit of speed, got 7.',
    );
  });
  it('a quantity keeps the unit it was given in', () => {
    const { tube: read1 } = read({ ...plain, tube: { outsideDiameter: q('2 in'), wall: '1/8 in' } });
    expect(String(read1.wall)).toBe('0.125 in');
  });
});
