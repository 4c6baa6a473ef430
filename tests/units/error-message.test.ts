import { describe, expect, test } from 'vitest';
import { type ErrorFacts, MeopError, q } from '../../src/units';

// What is expected here is the rule of messages itself: procedure, field, limit, value as given, fix.

const facts = { code: 'out-of-domain', procedure: 'gland', path: 'bore', expected: 'a length' };
const message = (change: Partial<ErrorFacts>): string => new MeopError({ ...facts, ...change }).message;

describe('an error', () => {
  test('is data, and its message is rendered from it', () => {
    const error = new MeopError({ ...facts, given: '0 mm', remedy: 'Measure again', note: 'no length' });
    expect(error).toBeInstanceOf(MeopError);
    expect([error.code, error.procedure, error.path, error.given, error.expected, error.remedy]).toEqual([
      'out-of-domain',
      'gland',
      'bore',
      '0 mm',
      'a length',
      'Measure again',
    ]);
    expect(error.message).toBe("gland: bore must be a length, got '0 mm' (no length). Measure again.");
    expect(error.statement).toBe("bore must be a length, got '0 mm' (no length). Measure again.");
    expect(String(error)).toBe(`MeopError: ${error.message}`);
  });

  test.each([
    ['what is not there', undefined, 'nothing'],
    ['a text, cut', 'x'.repeat(70), `'${'x'.repeat(60)}…'`],
    ['a quantity', q('3 mm'), '3 mm'],
    ['a list', [24, 4], '[24,4]'],
    ['a record', { nominal: q('3 mm'), plus: '1 mm' }, '{"nominal":"3 mm","plus":"1 mm"}'],
    ['a long record, cut', { text: 'x'.repeat(200) }, `{"text":"${'x'.repeat(71)}…`],
    ['a function', Math.sqrt, 'the function sqrt'],
    ['an instance', new Date(0), 'an object'],
  ])('shows %s', (_, given, text) =>
    expect(message({ given })).toBe(`gland: bore must be a length, got ${text}.`),
  );

  test('a record that refers to itself does not break it', () => {
    const given: Record<string, unknown> = {};
    given.self = given;
    expect(message({ given })).toContain('got an object that refers to itself.');
  });

  test('a problem replaces the sentence', () =>
    expect(message({ problem: 'the fit did not converge', remedy: 'Give more points' })).toBe(
      'gland: bore: the fit did not converge. Give more points.',
    ));

  test('unknown and missing have their own forms', () => {
    expect(
      message({
        code: 'unknown-name',
        given: 'M7',
        note: 'thread',
        expected: 'M5, M6',
        remedy: "did you mean 'M6'?",
      }),
    ).toBe("gland: bore: unknown thread 'M7'; did you mean 'M6'? Available: M5, M6.");
    expect(message({ code: 'missing-field' })).toBe('gland: missing required field bore (a length).');
  });

  test('is reported by a caller under its own name, at its own path', () => {
    const error = new MeopError({ ...facts, given: '0 mm' });
    expect(error.within('review', 'seals.0').message).toBe(
      "review: seals.0.bore must be a length, got '0 mm'.",
    );
    expect(error.at('review', 'seal').message).toBe("review: seal must be a length, got '0 mm'.");
    expect(error.within('review').path).toBe('bore');
  });
});
