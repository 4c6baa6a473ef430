import { describe, expect, test } from 'vitest';
import { composedGrain, finCore, finocyl, regress } from '../../../../src/ballistics/grain';
import { off } from '../grain-case';

const outer = { outerDiameter: '50 mm', length: '60 mm' } as const;
const deg = (v: number): number => (v * Math.PI) / 180;
const NOTCH = 9 * Math.cos(deg(30)) + Math.sqrt(81 * Math.cos(deg(30)) ** 2 - 45);

// Expected values here are elementary geometry, worked out beside each test.
describe('cavities that share space count it once', () => {
  test('fins without a bore: what they share about the axis is cast away once, and so are their flat ends', () => {
    const half = 2.5;
    const tip = 12;
    for (const count of [2, 3, 4, 6]) {
      const grain = composedGrain({
        ...outer,
        cores: [
          finCore({
            count,
            thickness: `${2 * half} mm`,
            tipDiameter: `${2 * tip} mm`,
            from: '20 mm',
            to: '45 mm',
          }),
        ],
      });
      // A sector of 180 deg/N beside a fin's middle line: the half fin less the triangle beyond the line to its neighbour.
      const beyond = count > 2 ? (half * half) / Math.tan(deg(180 / count)) : 0;
      const section = count * (2 * half * tip - beyond);
      const root = count > 2 ? half / Math.tan(deg(180 / count)) : 0;
      const perimeter = 2 * count * (half + tip - root);
      const { si } = regress(grain, { stations: 1 });
      expect(off(1e9 * si.volume[0], Math.PI * 625 * 60 - 25 * section), `${count}`).toBeLessThan(1e-3);
      expect(off(1e6 * si.area[0], 25 * perimeter + 2 * section), `${count}`).toBeLessThan(2e-3);
    }
  });

  test('two round fins back to back are a plate with round edges: no face between them', () => {
    const plate = composedGrain({
      ...outer,
      cores: [finCore({ count: 2, thickness: '3 mm', tipDiameter: '40 mm', tip: 'round' })],
    });
    // Two flats of 2 × 18.5 mm and two half circles of radius 1.5 mm.
    expect(off(1e6 * regress(plate).si.area[0], 60 * (4 * 18.5 + 2 * Math.PI * 1.5))).toBeLessThan(1e-6);
  });

  test.each([
    // Half width 5: sides meet at 5 / tan 30°, then a rectangle and a quarter circle to the fin's middle line.
    [
      'by their sides',
      5,
      12 * (12.5 / Math.tan(deg(30)) + 5 * (10 - 5 / Math.tan(deg(30))) + 6.25 * Math.PI),
    ],
    // Half width 6: the circles about (9, 0) and its turns meet on the line at 30° at ρ with ρ² - 18 ρ cos 30° + 81 = 36;
    // to the middle line there is a triangle and a sector.
    ['by their tips', 6, 12 * (0.25 * 9 * NOTCH + 18 * Math.acos((NOTCH * Math.cos(deg(30)) - 9) / 6))],
  ])('wide round fins meet %s', (_, half, port) => {
    const fins = finCore({ count: 6, thickness: `${2 * half} mm`, tipDiameter: '30 mm', tip: 'round' });
    const { castVolume } = regress(composedGrain({ ...outer, cores: [fins] }));
    expect(off(castVolume.in('mm^3'), 60 * (Math.PI * 625 - port))).toBeLessThan(1e-4);
  });

  test('square fins that fill everything between them are refused', () => {
    for (const act of [
      () =>
        composedGrain({ ...outer, cores: [finCore({ count: 6, thickness: '16 mm', tipDiameter: '20 mm' })] }),
      () =>
        finocyl({
          ...outer,
          boreDiameter: '4 mm',
          fins: 6,
          finThickness: '3 mm',
          finTipDiameter: '30 mm',
          aft: { finThickness: '4 mm', finTipDiameter: '40 mm' },
        }),
    ])
      expect(act).toThrow(expect.objectContaining({ code: 'grain-measure' }));
  });

  test('the mouth of a tapered fin in a burning end does not burn', () => {
    const { si } = regress(
      finocyl({
        ...outer,
        burningEnds: 'aft',
        boreDiameter: '10 mm',
        fins: 5,
        finThickness: '3 mm',
        finTipDiameter: '30 mm',
        finFrom: '15 mm',
        aft: { finThickness: '4 mm', finTipDiameter: '40 mm' },
      }),
      { stations: 1 },
    );
    // Area is minus the derivative of volume: the first step would miss the mouths' 300 mm².
    const slope = (si.volume[0] - si.volume[1]) / (si.depth[1] - si.depth[0]);
    expect(off((si.area[0] + si.area[1]) / 2, slope)).toBeLessThan(3e-3);
  });
});
