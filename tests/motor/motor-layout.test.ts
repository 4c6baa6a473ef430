import { describe, expect, test } from 'vitest';
import { demoMotor, type MotorDocument, parseMotor } from '../../src/motor';
import { motorLayout } from '../../src/motor/layout';

const mm = (si: number | undefined): number => Number(((si ?? Number.NaN) * 1000).toFixed(6));
const span = (of: { readonly from: number; readonly to: number } | undefined) => [mm(of?.from), mm(of?.to)];

/** A motor of round numbers, from the demo motor: 400 mm of case, closures 30 and 40 mm deep. */
function drawn(): MotorDocument {
  const { closures, case: tube, nozzle, ...rest } = demoMotor();
  const { head, aft } = closures ?? {};
  if (head === undefined || aft === undefined || nozzle.insert === undefined) throw new Error('no closures');
  return {
    ...rest,
    case: { ...tube, length: '400 mm', chamberLength: '330 mm' },
    nozzle: {
      ...nozzle,
      insert: {
        ...nozzle.insert,
        outsideDiameter: '30 mm',
        length: '24 mm',
        seat: { insertedFrom: 'inside', pocketDiameter: '30.1 mm', pocketDepth: '20 mm' },
      },
    },
    closures: {
      head: {
        ...head,
        layout: {
          innerFace: '30 mm',
          length: '34 mm',
          diameter: '50.9 mm',
          shoulder: { diameter: '54 mm', thickness: '3 mm' },
          recess: { diameter: '30 mm', depth: '5 mm' },
        },
        seals: [{ ...head.seals[0], position: '22 mm' } as (typeof head.seals)[number]],
      },
      aft: {
        ...aft,
        layout: {
          innerFace: '40 mm',
          length: '38 mm',
          diameter: '50.9 mm',
          cavity: { diameter: '36 mm', depth: '6 mm' },
        },
        seals: [{ ...aft.seals[0], position: '30 mm' } as (typeof aft.seals)[number]],
      },
    },
  };
}

// Expected: sums of the dimensions above, by hand. The aft end is measured back from 400 mm.
describe('the layout of a motor along its axis', () => {
  const { head, aft, chamber, nozzle, segments, ...rest } = motorLayout(parseMotor(drawn()));

  test('places the head closure and its features from the head end of the case', () => {
    expect(span(head?.closure.span)).toEqual([-4, 30]);
    expect(span(head?.shoulder?.span)).toEqual([-3, 0]);
    expect(span(head?.recess?.span)).toEqual([-4, 1]);
    expect(span(head?.opening?.span)).toEqual([1, 30]);
    expect(span(head?.grooves[0].span)).toEqual([22, 25.7]);
    expect(head?.holeRows.map(({ position }) => mm(position))).toEqual([12]);
  });

  test('places the aft closure and the insert back from the aft end', () => {
    expect([mm(aft?.innerFace), mm(aft?.outerFace)]).toEqual([360, 398]);
    expect(span(aft?.cavity?.span)).toEqual([360, 366]);
    expect(span(aft?.pocket?.span)).toEqual([366, 386]);
    expect(span(nozzle.insert?.span)).toEqual([362, 386]);
    expect(span(aft?.opening?.span)).toEqual([386, 398]);
    expect(span(aft?.grooves[0].span)).toEqual([366.3, 370]);
    expect(aft?.holeRows.map(({ position }) => mm(position))).toEqual([388]);
    expect(mm(nozzle.exit)).toBe(398);
  });

  test('places chamber, liner and grain column between the inner faces', () => {
    expect([mm(chamber.from), mm(chamber.to), chamber.isAssumed]).toEqual([30, 360, false]);
    expect(span(rest.liner?.span)).toEqual([30, 360]);
    expect([rest.liner?.outsideDiameter, rest.liner?.insideDiameter].map(mm)).toEqual([51, 48.6]);
    expect(segments.map((one) => span(one.span))).toEqual([
      [30, 106],
      [108, 184],
      [186, 262],
      [264, 340],
    ]);
    expect(segments.map(({ copy }) => copy)).toEqual([1, 2, 3, 4]);
  });
});
