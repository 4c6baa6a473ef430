import { describe, expect, test } from 'vitest';
import { MeopError, q } from '../../src/units';
import { readNotNegative, readPositive, refusal } from '../../src/units/refusal';

// What is expected here is the rule of messages itself: procedure, field, value as given, what was expected.
describe('the refusal of a value', () => {
  test('says field, value and what was expected, and keeps them for programs', () => {
    const error = refusal('wireRope', 'diameter', '0 mm', 'a length above zero');
    expect(error).toBeInstanceOf(MeopError);
    expect(error.message).toBe("wireRope: diameter must be a length above zero, got '0 mm'.");
    expect([error.code, error.path, error.given, error.expected]).toEqual([
      'out-of-domain',
      'diameter',
      '0 mm',
      'a length above zero',
    ]);
  });

  test('says why in a sentence of its own', () =>
    expect(refusal('size', 'share', 2, 'below 1', 'It is a part').message).toBe(
      'size: share must be below 1, got 2. It is a part.',
    ));

  test.each([
    ['what is not there', undefined, 'nothing'],
    ['a quantity', q('3 mm'), '3 mm'],
    ['a list', [24, 4], '[24,4]'],
    ['a record', { nominal: q('3 mm'), plus: '1 mm' }, '{"nominal":"3 mm","plus":"1 mm"}'],
    ['a long record, cut', { text: 'x'.repeat(200) }, `{"text":"${'x'.repeat(71)}…`],
  ])('shows %s', (_, value, text) =>
    expect(refusal('gland', 'bore', value, 'a length').message).toBe(
      `gland: bore must be a length, got ${text}.`,
    ),
  );

  test('zero is not above zero, and is not negative', () => {
    expect(readPositive('length', 'wall', '1 in', 'check').si).toBe(0.0254); // by definition of the inch
    expect(() => readPositive('length', 'wall', '0 mm', 'check')).toThrow(
      "check: wall must be a length above zero, got '0 mm'.",
    );
    expect(readNotNegative('gauge pressure', 'pressure', '0 psig', 'check').si).toBe(0);
    expect(() => readNotNegative('angle', 'turn', '-1 deg', 'check')).toThrow(
      "check: turn must be an angle of zero or more, got '-1 deg'.",
    );
    expect(() => readPositive('length', 'wall', undefined, 'check')).toThrow('missing required field wall');
  });
});
