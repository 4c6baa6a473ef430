import { describe, expect, test } from 'vitest';
import { allowable, type MaterialName, material, withEstimatedStrengths } from '../../src/structures';
import { codeOf } from '../error-code';

describe('steels with typical values only', () => {
  const names = [
    '4140 annealed',
    '4140 normalised',
    '4140 tempered 425 C',
    '4140 tempered 540 C',
    '4140 tempered 650 C',
    '1018 cold drawn',
  ] as const satisfies readonly MaterialName[];
  test.each(names)('%s has no allowable, and estimates nothing from its typical values', (name) => {
    for (const property of ['ultimate', 'yield', 'shear ultimate'] as const)
      expect(codeOf(() => allowable({ material: name, property }))).toBe('no-allowable');
    expect(codeOf(() => withEstimatedStrengths(name))).toBe('no-allowable');
    expect(allowable({ material: name, property: 'yield', basis: 'typical' }).value.si).toBeGreaterThan(0);
  });
  // eFunda, tensile properties of AISI 4140 by treatment (published, seen).
  test('4140 softens as it is tempered hotter', () => {
    const strength = (name: string) => material(name).typical?.ultimateStrength?.value.in('MPa');
    expect(names.slice(2, 5).map(strength)).toEqual([1248, 951, 758]);
  });
});

describe('minimums of specifications', () => {
  // ASTM A513 type 5, stress relieved (steel distributor’s table, seen); ASTM B210, B241, A276, A269 (from memory); ksi.
  test.each([
    ['1020 DOM tube', 65, 55, 'published'],
    ['1026 DOM tube', 75, 65, 'published'],
    ['7075-T6 drawn tube', 77, 66, 'from memory'],
    ['7075-T6 extruded tube', 78, 70, 'from memory'],
    ['304 bar and tube', 75, 30, 'from memory'],
    ['316 bar and tube', 75, 30, 'from memory'],
  ] as const)('%s', (name, ultimate, yielding, provenance) => {
    const { ultimateStrength, yieldStrength } = material(name);
    expect(ultimateStrength?.value.in('ksi')).toBeCloseTo(ultimate, 9);
    expect(yieldStrength?.value.in('ksi')).toBeCloseTo(yielding, 9);
    expect([ultimateStrength?.basis, yieldStrength?.basis]).toEqual([
      'specified minimum',
      'specified minimum',
    ]);
    expect(yieldStrength?.provenance).toBe(provenance);
  });
  test('a material without a minimum in shear has none', () => {
    expect(codeOf(() => allowable({ material: '1026 DOM tube', property: 'shear ultimate' }))).toBe(
      'no-allowable',
    );
    // 0.49 of 75 ksi, the minimum ratio of the handbook metals
    expect(withEstimatedStrengths('1026 DOM tube').shearUltimate?.value.in('ksi')).toBeCloseTo(36.75, 6);
  });
});
