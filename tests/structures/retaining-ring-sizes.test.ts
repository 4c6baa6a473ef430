import { describe, expect, test } from 'vitest';
import { retainingRingNames, retainingRingSize, tabulatedEdgeMargin } from '../../src/structures/closures';
import { codeAndPathOf } from '../error-code';

const all = retainingRingNames().map((name) => retainingRingSize(name));

describe('standard retaining rings', () => {
  test('143 of three series, each found by its own name', () => {
    expect(all.length).toBe(143);
    expect(all.map(({ name }) => name)).toEqual(retainingRingNames());
    expect(new Set(all.map(({ series }) => series))).toEqual(new Set(['DIN 472', 'ASME 3BM1', 'inch 3000']));
  });

  // Read in the sources that each ring names: DIN 472 list; Machinery's Handbook, 31st ed., page 1899 table 2; page 1916 table 12.
  test.each([
    ['DIN 472 38', 1.5, 40, 1.6, 3],
    ['DIN 472 50', 2, 53, 2.15, 4.5],
    ['ASME 3BM1 100', 2.8, 106.3, 2.95, 9.5],
  ])('%s: thickness %d, groove diameter %d and width %d, edge margin %d mm', (name, ...values) => {
    const ring = retainingRingSize(name);
    const { thickness, grooveDiameter, grooveWidth, edgeMargin } = ring;
    expect(
      [thickness, grooveDiameter, grooveWidth, edgeMargin].map((one) => Number(one.in('mm').toFixed(9))),
    ).toEqual(values);
  });
  test('inch 3000 1.5', () => {
    const { thickness, grooveDiameter, edgeMargin } = retainingRingSize('inch 3000 1.5');
    expect([thickness, grooveDiameter, edgeMargin].map((one) => Number(one.in('in').toFixed(9)))).toEqual([
      0.05, 1.594, 0.141,
    ]);
  });

  test('a groove is deeper than nothing, wider than its ring and as deep as its diameter says', () => {
    for (const ring of all) {
      const [depth, halfStep] = [ring.grooveDepth.si, (ring.grooveDiameter.si - ring.bore.si) / 2];
      // The tables round the depth to hundredths of a millimetre.
      expect(Math.abs(depth - halfStep), ring.name).toBeLessThan(6e-6);
      expect(ring.grooveWidth.si, ring.name).toBeGreaterThan(ring.thickness.si);
      // Machinery's Handbook, page 1916: three depths; the rings of 5.375 in print 0.405 for 0.4125 in.
      const three = tabulatedEdgeMargin.si({ grooveDepth: depth });
      expect(Math.abs(ring.edgeMargin.si - three), ring.name).toBeLessThan(0.2e-3);
      if (ring.freeDiameter) expect(ring.freeDiameter.si, ring.name).toBeGreaterThan(ring.grooveDiameter.si);
    }
  });

  test('corrected and remembered rows carry their note', () => {
    expect(all.filter(({ cautions }) => cautions.length > 0).map(({ name }) => name)).toEqual([
      'DIN 472 28',
      'DIN 472 100',
    ]);
    expect(retainingRingSize('DIN 472 28').grooveDiameter.in('mm')).toBeCloseTo(29.4, 9);
    expect(all.filter(({ provenance }) => provenance === 'from memory').map(({ name }) => name)).toEqual([
      'DIN 472 100',
    ]);
  });

  test.each(['din472-50', 'DIN 472 50 mm', ' DIN  472 - 50'])('%s is DIN 472 50', (name) =>
    expect(retainingRingSize(name).name).toBe('DIN 472 50'),
  );
  test.each(['3BM1 65', 'ASME B27.7 3BM1 65'])('%s is ASME 3BM1 65', (name) =>
    expect(retainingRingSize(name).name).toBe('ASME 3BM1 65'),
  );
  test.each(['DIN 472 49', 'DIN 472 50 in', 'DIN 471 50', '50', ''])('%s is unknown', (name) =>
    expect(codeAndPathOf(() => retainingRingSize(name))).toMatch(/^unknown-name/),
  );
});
