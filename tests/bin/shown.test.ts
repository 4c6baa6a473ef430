import { runInNewContext } from 'node:vm';
import { describe, expect, test } from 'vitest';
import { shown } from '../../src/bin/shown';
import { MeopError, normalShock, oRing, oRingsForGroove, q, threadGeometry } from '../../src/index';

describe('values at the prompt', () => {
  test('a result is aligned names and values, without the noise of the last digits', () => {
    // NACA Report 1135 (1953), table II, M = 2: 0.5774, 4.500, 1.688, 2.667, 0.7209, 5.640.
    expect(shown(normalShock({ mach: 2, gamma: 1.4 }))).toMatchInlineSnapshot(`
      "mach                     2
      machBehind               0.5773502692
      pressureRatio            4.5
      temperatureRatio         1.6875
      densityRatio             2.666666667
      stagnationPressureRatio  0.7208738615
      pitotPressureRatio       5.640440813
      entropyRise              0.3272911064"
    `);
  });

  test('what has parts is indented, an empty list says so', () => {
    expect(
      shown({ ...threadGeometry('M6').limits, parts: [], inner: { deep: { size: q('1 in') } } }),
    ).toMatchInlineSnapshot(`
      "externalMajorMin  5.794 mm
      externalPitchMin  5.212 mm
      internalPitchMax  5.5 mm
      internalMinorMax  5.153 mm
      parts             none
      inner
        deep
          size  1 in"
    `);
  });

  test('a list of alike results is a table, its long texts below', () => {
    const text = shown(oRingsForGroove({ grooveDiameter: '2.278 in' }));
    const [head, rule, first] = text.split('\n');
    expect(head).toMatch(
      /^size +insideDiameter +insideDiameterTolerance +crossSection +crossSectionTolerance$/,
    );
    expect(rule).toMatch(/^─+$/);
    expect(first).toMatch(/^AS568-035 +2\.239 in/);
    expect(text.split('\n').filter((line) => line.startsWith('source: '))).toEqual([
      `source: ${oRing('035').source}`,
    ]);
    expect(text).toContain('\ncautions, AS568-228: ');
  });

  test('quantities, numbers and texts are themselves', () => {
    expect(shown(q('3/8 in'))).toBe('0.375 in');
    expect(shown(1 / 3)).toBe('0.3333333333333333');
    expect(shown('as it is')).toBe('as it is');
    expect(shown(new MeopError({ code: 'unknown-name', problem: 'no such thing' }))).toBe(
      'unknown-name: no such thing.',
    );
  });

  test('what the user makes is shown as JavaScript', () => {
    expect(shown(runInNewContext('({ a: 1, b: [2] })'))).toBe('{ a: 1, b: [ 2 ] }');
  });

  test('a record that holds itself ends', () => {
    const ring: Record<string, unknown> = { name: 'ring' };
    ring.self = ring;
    expect(shown(ring).split('\n').length).toBeLessThan(20);
  });
});
