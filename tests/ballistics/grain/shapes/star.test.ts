import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { neutralStarAngle, regress, star } from '../../../../src/ballistics/grain';
import { regressShape } from '../../../../src/ballistics/grain/front/regress-shape';
import { starClosedForm } from '../../../../src/ballistics/grain/shapes/star-closed-form';
import { recordCheck } from '../../../cases/record-check';
import { grainCase, off } from '../grain-case';

describe('closed forms', () => {
  test('star-neutral-angle', () => {
    // Source and provenance: tests/cases/ballistics.json.
    const c = grainCase('star-neutral-angle');
    c.inputs('points').forEach((points, i) => {
      recordCheck(c.id, `halfAngle[${i}]`, neutralStarAngle({ points: points }).si / 2);
      expect(off(neutralStarAngle({ points: points }).si / 2, c.expectedList('halfAngle')[i])).toBeLessThan(
        c.relTol,
      );
    });
  });

  test('a neutral star keeps its area while the sides last', () => {
    const grain = star({
      points: 6,
      outerDiameter: '80 mm',
      webThickness: '14 mm',
      filletRadius: '2 mm',
      angularFraction: 0.7,
      openingAngle: neutralStarAngle({ points: 6 }),
      length: '100 mm',
    });
    const { si } = regress(grain);
    expect(off(si.areaAt(0.004), si.areaAt(0))).toBeLessThan(1e-9);
  });

  test('random stars: the closed form is the distance method, and its area the derivative of its section', () => {
    const size = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(
        fc.integer({ min: 4, max: 9 }),
        size(0.008, 0.014),
        size(0.0005, 0.002),
        size(0.5, 0.95),
        size(0.9, 1.3),
        (points, web, fillet, angularFraction, openingAngle) => {
          const measures = { points, outerRadius: 0.03, web, fillet, angularFraction, openingAngle };
          const form = starClosedForm(measures);
          let grain: ReturnType<typeof star>;
          try {
            grain = star({
              points,
              outerDiameter: '60 mm',
              webThickness: `${1e3 * web} mm`,
              filletRadius: `${1e3 * fillet} mm`,
              angularFraction,
              openingAngle: `${openingAngle} rad`,
              length: '1000 mm',
            });
          } catch {
            fc.pre(false);
            return;
          }
          fc.pre(form !== undefined);
          if (form === undefined) return;
          const found = regressShape(grain.shape, { accuracy: 1e-3, steps: 60 });
          for (let k = 3; k < found.depth.length - 3; k += 7) {
            const w = found.depth[k];
            expect(Math.abs(found.area[k] - form.perimeter(w))).toBeLessThan(1e-3 * form.perimeter(0));
            expect(Math.abs(found.volume[k] - form.section(w))).toBeLessThan(1e-4 * form.section(0));
          }
        },
      ),
      { numRuns: 25, seed: 7 },
    );
  });
});
