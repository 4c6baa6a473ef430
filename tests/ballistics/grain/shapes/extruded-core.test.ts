import { describe, expect, test } from 'vitest';
import { extrudedCore, internalTube, regress } from '../../../../src/ballistics/grain';
import { off } from '../grain-case';

const outer = { outerDiameter: '50 mm', length: '60 mm' } as const;
describe('an outline drawn point by point', () => {
  test('a circle drawn as SVG path data or as two bulged corners is the tube', () => {
    const outer = { outerDiameter: '50 mm', length: '80 mm' } as const;
    const tube = regress(internalTube({ ...outer, boreDiameter: '16 mm' })).si;
    for (const outline of [
      'M 8 0 A 8 8 0 0 1 -8 0 A 8 8 0 0 1 8 0 Z',
      'M8,0 a8,8 0 0 0 -16,0 a8 8 0 0 0 16 0z',
      [
        { x: '8 mm', y: '0 mm', bulge: 1 },
        { x: '-8 mm', y: '0 mm', bulge: 1 },
      ] as const,
    ]) {
      const drawn = regress(extrudedCore({ ...outer, outline })).si;
      for (const w of [0, 0.004, 0.016]) expect(off(drawn.areaAt(w), tube.areaAt(w))).toBeLessThan(1e-6);
    }
    // A ring: the inner loop is propellant again, so this is the rod and tube.
    const ring =
      'M 20 0 A 20 20 0 0 1 -20 0 A 20 20 0 0 1 20 0 Z M 10 0 A 10 10 0 0 1 -10 0 A 10 10 0 0 1 10 0 Z';
    const gap = regress(extrudedCore({ outerDiameter: '60 mm', length: '100 mm', outline: ring })).si;
    expect(off(gap.areaAt(0.005), 2 * Math.PI * 0.03 * 0.1)).toBeLessThan(1e-6);
  });
});

describe('loops of an outline', () => {
  test.each([
    ['overlap', 'M -6 -9 H 6 V 9 H -6 Z M 3 -3 H 13 V 3 H 3 Z'],
    ['cross themselves', 'M -8 -8 L 8 8 L 8 -8 L -8 8 Z'],
    ['stand on each other', 'M -6 -9 H 6 V 9 H -6 Z M -6 -9 H 6 V 9 H -6 Z'],
    ['cross by an arc', 'M 8 0 A 8 8 0 0 1 -8 0 A 8 8 0 0 1 8 0 Z M 0 -2 H 12 V 2 H 0 Z'],
  ])('loops that %s are refused', (_, outline) => {
    expect(() => extrudedCore({ ...outer, outline })).toThrow(/crosses or retraces itself/);
  });

  test('loops that only touch at a corner, and nested ones, are not', () => {
    const { castVolume } = regress(
      extrudedCore({ ...outer, outline: 'M 0 0 H 10 V 10 H 0 Z M 0 0 H -10 V -10 H 0 Z' }),
    );
    expect(off(castVolume.in('mm^3'), 60 * (Math.PI * 625 - 200))).toBeLessThan(1e-4);
    const ring = regress(
      extrudedCore({ ...outer, outline: 'M -12 -12 H 12 V 12 H -12 Z M -8 -8 H 8 V 8 H -8 Z' }),
    );
    expect(off(ring.castVolume.in('mm^3'), 60 * (Math.PI * 625 - 24 * 24 + 16 * 16))).toBeLessThan(1e-4);
  });
});
