import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  crack,
  finocyl,
  regress,
  slottedTube,
  star,
  tubularSegment,
  voidBubble,
  withFlaws,
} from '../../../../src/ballistics/grain';
import { regressShape } from '../../../../src/ballistics/grain/front/regress-shape';

const deg = (v: number): `${number} deg` => `${v} deg`;
const finned = finocyl({
  outerDiameter: '76 mm',
  boreDiameter: '20 mm',
  length: '90 mm',
  fins: 6,
  finThickness: '4 mm',
  finTipDiameter: '44 mm',
  finFrom: '40 mm',
});

describe('symmetry', () => {
  test('a six-finned grain is worked out in a twelfth, with the same result', () => {
    const options = { accuracy: 1e-3, steps: 100, spacing: 0.038 / 8 };
    const wedge = regressShape(finned.shape, options);
    const whole = regressShape(finned.shape, { ...options, ignoreSymmetry: true });
    expect(wedge.wedge.copies).toBe(12);
    expect(whole.cells / wedge.cells).toBeGreaterThan(8);
    // The two sample different points: they agree within twice the estimated error of one of them.
    expect(Math.abs(whole.volume[0] / wedge.volume[0] - 1)).toBeLessThan(2 * wedge.achieved);
  });

  test('round grains are bodies of revolution; a single void leaves one mirror', () => {
    const round = tubularSegment({ outerDiameter: '50 mm', boreDiameter: '16 mm', length: '60 mm' });
    expect(regress(round, { stations: 1 }).accuracy.symmetry).toBe(Number.POSITIVE_INFINITY);
    const withVoid = withFlaws(round, {
      flaws: [
        voidBubble({ diameter: '4 mm', distanceFromAxis: '16 mm', angle: '77 deg', position: '30 mm' }),
      ],
    });
    expect(regress(withVoid, { stations: 1 }).accuracy.symmetry).toBe(2);
    const mixed = star({
      points: 5,
      outerDiameter: '60 mm',
      webThickness: '10 mm',
      filletRadius: '1.5 mm',
      angularFraction: 0.75,
      openingAngle: '62.26 deg',
      length: '100 mm',
    });
    expect(regress(mixed, { stations: 1 }).accuracy.symmetry).toBe(10);
  });

  test('turning a flaw about the axis changes nothing beyond rounding', () => {
    const tube = tubularSegment({ outerDiameter: '50 mm', boreDiameter: '16 mm', length: '60 mm' });
    const at = (angle: number) =>
      regress(
        withFlaws(tube, {
          flaws: [
            crack({
              plane: 'radial',
              angle: deg(angle),
              innerRadius: '7 mm',
              outerRadius: '18 mm',
              from: '20 mm',
              to: '40 mm',
            }),
          ],
        }),
        { accuracy: 5e-3, stations: 1, steps: 60 },
      );
    const first = at(0);
    fc.assert(
      fc.property(fc.double({ min: 1, max: 359, noNaN: true }), (angle) => {
        const turned = at(angle);
        turned.si.area.forEach((a, k) => {
          expect(Math.abs(a - first.si.area[k])).toBeLessThan(1e-5 * first.si.area[0]);
        });
      }),
      { numRuns: 6, seed: 3 },
    );
  });

  test('a flaw and its mirror image give the same grain', () => {
    const at = (angle: number, other: number) =>
      regress(
        withFlaws(finned, {
          flaws: [
            voidBubble({ diameter: '4 mm', distanceFromAxis: '28 mm', angle: deg(angle), position: '30 mm' }),
            voidBubble({ diameter: '3 mm', distanceFromAxis: '26 mm', angle: deg(other), position: '50 mm' }),
          ],
        }),
        { accuracy: 5e-3, stations: 1, steps: 60 },
      );
    const [left, right] = [at(17, 100), at(-17, -100)];
    expect(Math.abs(left.si.volume[0] / right.si.volume[0] - 1)).toBeLessThan(2e-3);
    left.flawLighting.forEach((f, i) => {
      expect(Math.abs(f.depth.si - right.flawLighting[i].depth.si)).toBeLessThan(1e-9);
    });
    expect(left.massProperties('1700 kg/m^3').centreY.si[0]).toBeCloseTo(
      -right.massProperties('1700 kg/m^3').centreY.si[0],
      7,
    );
  });

  test('turning the grain end for end leaves area and volume', () => {
    const make = (from: number, to: number, burningEnds: 'head' | 'aft') =>
      regress(
        slottedTube({
          outerDiameter: '50 mm',
          boreDiameter: '18 mm',
          length: '80 mm',
          slots: 4,
          slotWidth: '3 mm',
          slotFrom: `${from} mm`,
          slotTo: `${to} mm`,
          burningEnds,
        }),
        { accuracy: 3e-3, stations: 1, steps: 60 },
      ).si;
    const [a, b] = [make(0, 30, 'head'), make(50, 80, 'aft')];
    a.area.forEach((v, k) => {
      expect(Math.abs(v - b.area[k])).toBeLessThan(1e-6 * a.area[0]);
    });
  });
});
