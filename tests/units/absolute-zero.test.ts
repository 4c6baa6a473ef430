import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { q, quantity, series, seriesOf } from '../../src/units';
import { codeOf, errorOf } from '../error-code';

const messageOf = (act: () => unknown): string => errorOf(act)?.message ?? '';

// Absolute zero: 0 K, −273.15 °C, −459.67 °F, by the definitions of the scales.
describe('a temperature below absolute zero', () => {
  test.each(['-300 degC', '-273.16 degC', '-1 K', '-460 degF', '-1 degR'])('%s is refused', (text) => {
    expect(codeOf(() => q(text))).toBe('out-of-domain');
    expect(codeOf(() => quantity('temperature', text))).toBe('out-of-domain');
    expect(messageOf(() => q(text))).toContain('absolute zero');
  });
  test.each(['-273.15 degC', '0 K', '-459.67 degF', '-40 degC', '0 degR'])('%s is not', (text) => {
    expect(Math.max(0, q(text).si)).toBeGreaterThanOrEqual(0);
  });
  test('is refused as a number with a unit and in a series, by its place', () => {
    expect(codeOf(() => q(-300, 'degC'))).toBe('out-of-domain');
    expect(messageOf(() => series([20, -300], 'degC'))).toContain('values[1]');
    expect(codeOf(() => seriesOf('temperature', [-1], 'K'))).toBe('out-of-domain');
  });
  test('is refused as the result of arithmetic', () => {
    expect(codeOf(() => q('20 degC').minus(q('300 delta_K')))).toBe('out-of-domain');
    expect(codeOf(() => q('20 degC').times(-1))).toBe('out-of-domain');
  });
  test('a difference may be as far below zero as it is', () => {
    expect(q('-300 delta_degC').si).toBeCloseTo(-300, 9);
    expect(quantity('temperature difference', '-300 K').si).toBe(-300);
    expect(seriesOf('temperature difference', [-300], 'delta_K').at(0).si).toBe(-300);
    expect(q('20 degC').minus(q('1000 degC')).si).toBeCloseTo(-980, 9);
  });
  test('any scale refuses exactly what lies below its zero', () => {
    const zeros = { K: 0, degC: -273.15, degF: -459.67 } as const;
    fc.assert(
      fc.property(
        fc.constantFrom('K' as const, 'degC' as const, 'degF' as const),
        fc.double({ min: 1e-6, max: 1e4, noNaN: true }),
        (scale, step) => {
          expect(q(zeros[scale] + step, scale).si).toBeGreaterThan(0);
          expect(codeOf(() => q(zeros[scale] - step, scale))).toBe('out-of-domain');
        },
      ),
    );
  });
});
