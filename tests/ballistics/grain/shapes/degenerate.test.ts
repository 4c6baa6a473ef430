import { describe, expect, test } from 'vitest';
import {
  crack,
  endBurner,
  extrudedCore,
  finocyl,
  internalTube,
  offsetBore,
  regress,
  rodAndTube,
  slottedTube,
  star,
  voidBubble,
  wagonWheel,
  withFlaws,
} from '../../../../src/ballistics/grain';
import { codeOf } from '../../../error-code';

describe('degenerate input: right, or a typed error', () => {
  test('measures that do not fit are named', () => {
    const tube = { outerDiameter: '50 mm', boreDiameter: '16 mm', length: '100 mm' } as const;
    for (const act of [
      () => internalTube({ ...tube, boreDiameter: '50 mm' }),
      () => offsetBore({ ...tube, offset: '20 mm' }),
      () =>
        rodAndTube({
          outerDiameter: '60 mm',
          tubeBoreDiameter: '40 mm',
          rodDiameter: '40 mm',
          length: '1 m',
        }),
      () => endBurner({ outerDiameter: '40 mm', length: '60 mm', burningEnds: 'none' }),
      () => finocyl({ ...tube, fins: 6, finThickness: '20 mm', finTipDiameter: '30 mm' }),
      () => finocyl({ ...tube, fins: 6, finThickness: '2 mm', finTipDiameter: '10 mm' }),
      () => slottedTube({ ...tube, slots: 4, slotWidth: '2 mm', slotFrom: '100 mm', slotTo: '120 mm' }),
      () =>
        star({
          outerDiameter: '50 mm',
          length: '100 mm',
          points: 5,
          webThickness: '24 mm',
          filletRadius: '3 mm',
          angularFraction: 0.75,
          openingAngle: '60 deg',
        }),
      () =>
        wagonWheel({
          outerDiameter: '50 mm',
          length: '100 mm',
          spokes: 12,
          ringInnerDiameter: '40 mm',
          spokeThickness: '9 mm',
          spokeTipDiameter: '10 mm',
        }),
      () => extrudedCore({ outerDiameter: '50 mm', length: '100 mm', outline: 'M 100 0 L 110 0 L 110 5 Z' }),
      () => extrudedCore({ outerDiameter: '50 mm', length: '100 mm', outline: 'M 0 0 W 3' }),
      () => extrudedCore({ outerDiameter: '50 mm', length: '100 mm', outline: 'M 0 0 A 3 4 0 0 1 5 5 Z' }),
      () =>
        withFlaws(internalTube(tube), {
          flaws: [voidBubble({ diameter: '2 mm', distanceFromAxis: '30 mm', position: '10 mm' })],
        }),
      () =>
        withFlaws(internalTube(tube), {
          flaws: [
            crack({
              plane: 'radial',
              angle: '0 deg',
              innerRadius: '8 mm',
              outerRadius: '6 mm',
              from: '0 mm',
              to: '10 mm',
            }),
          ],
        }),
    ])
      expect(codeOf(act), String(act)).toBe('grain-measure');
    for (const act of [
      () => internalTube({ ...tube, length: '0 mm' }),
      () => internalTube({ ...tube, outerDiameter: '-50 mm' }),
      () => finocyl({ ...tube, fins: 2.5, finThickness: '2 mm', finTipDiameter: '30 mm' }),
      () => regress(internalTube(tube), { accuracy: 0 }),
      () => regress(internalTube(tube), { steps: 3 }),
    ])
      expect(codeOf(act), String(act)).toBe('out-of-domain');
    expect(codeOf(() => internalTube({ ...tube, length: Number.NaN as never }))).not.toBe('no error');
  });

  test('a length in the wrong unit, or none, is refused by the door', () => {
    expect(
      codeOf(() => internalTube({ outerDiameter: '50 mm', boreDiameter: '16 s' as '16 mm', length: '1 m' })),
    ).toBe('wrong-kind');
    expect(
      codeOf(() => internalTube({ outerDiameter: '50 mm', boreDiameter: 16 as never, length: '1 m' })),
    ).toBe('bare-number');
  });
});
