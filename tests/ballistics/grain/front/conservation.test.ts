import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  crack,
  debond,
  finocyl,
  internalTube,
  regress,
  voidBubble,
  withFlaws,
} from '../../../../src/ballistics/grain';

const mm = (v: number): `${number} mm` => `${v} mm`;
const size = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const outer = { outerDiameter: '50 mm', length: '60 mm' } as const;

describe('what burns is what was cast', () => {
  test('the same flaw twice counts once', () => {
    const tube = internalTube({ ...outer, boreDiameter: '16 mm' });
    const loose = debond({ from: '0 mm', to: '10 mm', angle: '10 deg', width: '80 deg' });
    const split = crack({
      plane: 'radial',
      angle: '0 deg',
      innerRadius: '7 mm',
      outerRadius: '16 mm',
      from: '30 mm',
      to: '50 mm',
    });
    const once = regress(withFlaws(tube, { flaws: [loose, split] }), { stations: 1 });
    const twice = regress(withFlaws(tube, { flaws: [loose, split, loose, split] }), { stations: 1 });
    expect(Math.abs(twice.si.volume[0] / once.si.volume[0] - 1)).toBeLessThan(1e-6);
    expect(Math.abs(twice.si.area[0] / once.si.area[0] - 1)).toBeLessThan(1e-6);
  });

  test('areaAt is minus the derivative of volumeAt', () => {
    const grain = finocyl({
      ...outer,
      boreDiameter: '16 mm',
      fins: 5,
      finThickness: '3 mm',
      finTipDiameter: '32 mm',
    });
    const { si } = regress(grain);
    fc.assert(
      fc.property(size(0.01, 0.98), (share) => {
        const w = share * si.burnout;
        const h = 1e-6 * si.burnout;
        const slope = (si.volumeAt(w - h) - si.volumeAt(w + h)) / (2 * h);
        expect(Math.abs(slope / si.areaAt(w) - 1)).toBeLessThan(1e-4);
      }),
    );
  });

  test('scaling all lengths by k scales area by k² and volume by k³', () => {
    const at = (k: number) =>
      regress(
        withFlaws(internalTube({ outerDiameter: mm(50 * k), boreDiameter: mm(16 * k), length: mm(60 * k) }), {
          flaws: [voidBubble({ diameter: mm(4 * k), distanceFromAxis: mm(16 * k), position: mm(20 * k) })],
        }),
        { stations: 1 },
      ).si;
    const [one, ten] = [at(1), at(10)];
    one.area.forEach((a, k) => {
      expect(Math.abs(ten.area[k] - 100 * a)).toBeLessThan(1e-7 * 100 * one.area[0]);
      expect(Math.abs(ten.volume[k] - 1000 * one.volume[k])).toBeLessThan(1e-7 * 1000 * one.volume[0]);
    });
  });
});
