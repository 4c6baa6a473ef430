import { describe, expect, it } from 'vitest';
import { composedGrain, coneCore, finocyl, regress } from '../../../../src/ballistics';

// Expected values by hand from the geometry of cones and tubes.

const off = (value: number, wanted: number): number => Math.abs(value / wanted - 1);
const cone = (burningEnds: 'both' | 'none') =>
  regress(
    composedGrain({
      outerDiameter: '60 mm',
      length: '150 mm',
      burningEnds,
      cores: [coneCore({ headDiameter: '16 mm', aftDiameter: '28 mm' })],
    }),
  );

describe('slices of a grain of varying section', () => {
  it('hold together what the grain holds, at every depth', () => {
    const grains = [
      cone('both'),
      regress(
        finocyl({
          outerDiameter: '76 mm',
          boreDiameter: '20 mm',
          length: '180 mm',
          fins: 6,
          finThickness: '4 mm',
          finTipDiameter: '44 mm',
          finFrom: '100 mm',
        }),
      ),
    ];
    for (const { layout, si } of grains) {
      const { slices } = layout()[0];
      expect(slices.length).toBeGreaterThanOrEqual(24);
      for (let i = 0; i < 50; i++) {
        const w = (si.burnout * i) / 50;
        const held = slices.reduce((sum, slice) => sum + slice.volumeAt(w), 0);
        expect(Math.abs(held - si.volumeAt(w))).toBeLessThan(1e-6 * si.volume[0]);
      }
    }
  });

  it('burn as the cone does in each', () => {
    const { slices } = cone('none').layout()[0];
    const length = 0.15 / slices.length;
    slices.forEach((slice, i) => {
      const radius = 0.008 + (0.006 * (i + 0.5)) / slices.length;
      // Lateral area of a frustum: its slope is 6 mm in 150 mm.
      const area = 2 * Math.PI * radius * length * Math.hypot(1, 0.006 / 0.15);
      expect(off(slice.areaAt(0), area)).toBeLessThan(1e-3);
    });
  });

  it('have the burning faces where these are, until they have passed', () => {
    const { slices } = cone('both').layout()[0];
    const last = slices.length - 1;
    const length = 0.15 / slices.length;
    const face = (radius: number): number => Math.PI * (0.03 ** 2 - radius ** 2);
    const bore = (radius: number): number => 2 * Math.PI * radius * length;
    expect(off(slices[0].areaAt(0), face(0.008) + bore(0.008))).toBeLessThan(1e-2);
    expect(off(slices[last].areaAt(0), face(0.014) + bore(0.014))).toBeLessThan(1e-2);
    expect(slices[0].volumeAt(1.05 * length)).toBe(0);
    expect(slices[last].volumeAt(1.05 * length)).toBe(0);
    expect(slices[1].volumeAt(1.05 * length)).toBeGreaterThan(0);
  });
});
