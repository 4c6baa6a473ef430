import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demoMotor, type MotorDocument, motorProblems, parseMotor } from '../../src/motor';
import { boreOf } from '../../src/motor/document/case-size';
import { weakestCase } from '../../src/motor/review/worst-sizes';
import { atWorstCaseTolerances } from '../../src/motor/worst-case-tolerances';

const mm = (size: number): `${number} mm` => `${size} mm`;

/** The demo motor with a bore of a tolerance instead of its wall. */
function bored(insideDiameter: number, plusMinus: number): MotorDocument {
  const { case: tube, ...rest } = demoMotor();
  const { wall: _, ...others } = tube;
  return {
    ...rest,
    case: { ...others, insideDiameter: { value: mm(insideDiameter), plusMinus: mm(plusMinus) } },
  };
}

describe('the bore of a case', () => {
  test('replaces the wall, which follows from it with the tolerances of both diameters', () => {
    const { case: tube } = parseMotor(bored(51.04, 0.01));
    // (54 − 51.04)/2 mm and (0.02 + 0.01)/2 mm, by hand.
    expect(tube.wall.value.in('mm')).toBeCloseTo(1.48, 12);
    expect(tube.wall.plusMinus).toBeCloseTo(0.015e-3, 12);
    expect(boreOf(tube).value.in('mm')).toBeCloseTo(51.04, 12);
    expect(boreOf(tube).plusMinus).toBeCloseTo(0.01e-3, 12);
  });

  test('follows from the wall with the tolerances of diameter and wall', () => {
    const bore = boreOf(parseMotor(demoMotor()).case);
    // 54 − 2·1.5 mm and 0.02 + 2·0.02 mm, by hand.
    expect(bore.value.in('mm')).toBeCloseTo(51, 12);
    expect(bore.plusMinus).toBeCloseTo(0.06e-3, 12);
  });

  test('is at its maximum in the worst case, with the minimum wall', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 50.95, max: 51.4, noNaN: true }),
        fc.double({ min: 0, max: 0.1, noNaN: true }),
        (d, t) => {
          const { bore, wall, outsideDiameter } = weakestCase(atWorstCaseTolerances(parseMotor(bored(d, t))));
          // Statics of the drawing: D + t; (54 − 0.02 − D − t)/2; the outside diameter closes the chain.
          expect(bore.in('mm')).toBeCloseTo(d + t, 9);
          expect(wall.in('mm')).toBeCloseTo((53.98 - d - t) / 2, 9);
          expect(outsideDiameter.in('mm')).toBeCloseTo(53.98, 9);
        },
      ),
    );
  });

  test('is given, or the wall, and not both', () => {
    const { case: tube, ...rest } = demoMotor();
    const { wall: _, ...neither } = tube;
    const found = (value: object): readonly string[] =>
      motorProblems({ ...rest, case: value }).map(({ path, code }) => `${path} ${code}`);
    expect(found(neither)).toEqual(['case.wall missing-field']);
    expect(found({ ...tube, insideDiameter: '51 mm' })).toEqual(['case.insideDiameter contradiction']);
    expect(found({ ...neither, insideDiameter: '54 mm' })).toEqual(['case.insideDiameter does-not-fit']);
  });
});
