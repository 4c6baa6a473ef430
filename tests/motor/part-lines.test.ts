import { expect, test } from 'vitest';
import { linesOf, written } from '../../src/motor/part-lines';
import { namedRows } from '../../src/motor/part-rows';

test('lines that both ends have are written once, those of one end with its name', () => {
  expect(
    written([
      ...linesOf('case', ['thin']),
      ...linesOf('head-joint', ['bolts share alike', 'only here']),
      ...linesOf('aft-joint', ['bolts share alike']),
      { end: 'aft', about: 'seal 1', text: 'squeeze' },
      { text: 'no stand' },
    ]),
  ).toEqual([
    'case: thin',
    'head and aft joint: bolts share alike',
    'head joint: only here',
    'aft seal 1: squeeze',
    'no stand',
  ]);
  expect(written(linesOf('head-closure', ['bends']), ', ')).toEqual(['head closure, bends']);
});

test('rows of both ends that say the same are one row', () => {
  const rows = [
    { part: 'head-joint', mode: 'a' },
    { part: 'aft-joint', mode: 'a' },
    { part: 'aft-closure', mode: 'a' },
    { part: 'case', mode: 'a' },
  ] as const;
  expect(namedRows(rows, ({ mode }) => [mode]).map(({ part }) => part)).toEqual([
    'head and aft joint',
    'aft closure',
    'case',
  ]);
});
