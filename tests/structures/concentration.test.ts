import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bendingEdgeMargin, landBendingStress } from '../../src/structures/closures';
import {
  barGrooveConcentration,
  grooveConcentration,
  sharpGrooveConcentration,
  sharpShoulderConcentration,
  shoulderConcentration,
  threadConcentration,
  wideGrooveConcentration,
  wideShoulderConcentration,
} from '../../src/structures/concentration';
import { fromSiValue, unitOf } from '../../src/units';
import { codeAndPathOf } from '../error-code';

const mm = (size: number) => fromSiValue<'length'>(size / 1000, 'length', unitOf('mm'));
const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('concentration of a groove and a shoulder', () => {
  // Table 17.1 has both rows at a ratio of 2; fits of one curve do not differ by more than the reading of a chart.
  test('the two rows meet at a depth of two radii, within 2 %', () => {
    fc.assert(
      fc.property(within(0.02, 0.5), (fraction) => {
        const groove = { diameter: 1, depth: fraction / 2, rootRadius: fraction / 4 };
        expect(wideGrooveConcentration.si(groove) / sharpGrooveConcentration.si(groove)).toBeCloseTo(1, 1.7);
        const step = { largeDiameter: 1, smallDiameter: 1 - fraction, filletRadius: fraction / 4 };
        expect(wideShoulderConcentration.si(step) / sharpShoulderConcentration.si(step)).toBeCloseTo(1, 1.7);
      }),
    );
  });
  test('vanish where nothing is left of the bar: the coefficients of each row add to 1, 0 and 0', () => {
    fc.assert(
      fc.property(within(0.3, 40), (ratio) => {
        const formula = ratio <= 2 ? wideGrooveConcentration : sharpGrooveConcentration;
        expect(formula.si({ diameter: 2, depth: 1, rootRadius: 1 / ratio })).toBeCloseTo(1, 1);
      }),
    );
  });
  test('rise with sharpness and depend on proportions only', () => {
    fc.assert(
      fc.property(within(0.1, 2), within(0.05, 0.95), within(0.1, 10), (radius, less, scale) => {
        const at = (root: number, size = 1) =>
          barGrooveConcentration({
            diameter: mm(30 * size),
            depth: mm(2 * size),
            rootRadius: mm(root * size),
          }).factor;
        expect(at(radius * less)).toBeGreaterThan(0.99 * at(radius));
        expect(at(radius, scale)).toBeCloseTo(at(radius), 9);
        const step = (root: number) =>
          shoulderConcentration({
            largeDiameter: '30 mm',
            smallDiameter: '26 mm',
            filletRadius: mm(root),
          }).factor;
        expect(step(radius * less)).toBeGreaterThan(0.99 * step(radius));
      }),
    );
  });
  test('an internal groove: the bar of twice the wall, never below 2.5', () => {
    const sharp = barGrooveConcentration({ diameter: '12 mm', depth: '1.25 mm', rootRadius: '0.1 mm' });
    const inside = grooveConcentration({ grooveDepth: '1.25 mm', wall: '6 mm' });
    expect(inside.factor).toBe(sharp.factor);
    expect(inside.cautions.join()).toContain('rootRadius not specified; assumed 0.1 mm');
    expect(inside.provenance).toBe('engineering practice, no published source');
    // hardware note of practice: no credit below 2.5.
    expect(grooveConcentration({ grooveDepth: '1 mm', rootRadius: '2 mm', wall: '6 mm' }).factor).toBe(2.5);
  });
  test('extrapolation is cautioned', () => {
    const of = (rootRadius: `${number} mm`) =>
      barGrooveConcentration({ diameter: '30 mm', depth: '2 mm', rootRadius }).cautions.join();
    expect(of('0.03 mm')).toContain('extrapolated');
    expect(of('10 mm')).toContain('extrapolated');
    expect(of('0.2 mm')).toBe('');
  });
  test.each([
    [
      () => barGrooveConcentration({ diameter: '4 mm', depth: '2 mm', rootRadius: '1 mm' }),
      'out-of-domain depth',
    ],
    [() => grooveConcentration({ grooveDepth: '6 mm', wall: '6 mm' }), 'out-of-domain grooveDepth'],
    [
      () => shoulderConcentration({ largeDiameter: '4 mm', smallDiameter: '4 mm', filletRadius: '1 mm' }),
      'out-of-domain smallDiameter',
    ],
  ])('%s: rejected', (call, expected) => expect(codeAndPathOf(call)).toBe(expected));
});

// Shigley, table 8-16: quoted from memory, not verified.
describe('a thread', () => {
  test('2.2 and 3.0 rolled, 2.8 and 3.8 cut; the maximum where the steel is not named', () => {
    const of = (forming: 'cut' | 'rolled', steel?: 'low strength' | 'high strength') =>
      threadConcentration({ forming, ...(steel && { steel }) }).factor;
    expect([of('rolled', 'low strength'), of('rolled', 'high strength')]).toEqual([2.2, 3]);
    expect([of('cut', 'low strength'), of('cut', 'high strength')]).toEqual([2.8, 3.8]);
    expect([of('rolled'), of('cut')]).toEqual([3, 3.8]);
    expect(threadConcentration({ forming: 'cut' }).provenance).toBe('from memory');
  });
});

test('a land of the edge margin for bending is bent to the yield strength over the factor', () => {
  fc.assert(
    fc.property(within(1e3, 1e5), within(1, 4), (load, factor) => {
      const groove = { load, grooveDiameter: 0.05, grooveDepth: 0.0015 };
      const edgeMargin = bendingEdgeMargin.si({ ...groove, yieldStrength: 241e6, factor });
      expect((landBendingStress.si({ ...groove, edgeMargin }) * factor) / 241e6).toBeCloseTo(1, 9);
    }),
  );
});
