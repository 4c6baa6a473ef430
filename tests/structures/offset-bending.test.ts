import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  offsetFoldingStress,
  offsetMomentShare,
  offsetWallStress,
  type RadialBoltJoint,
  reviewJoint,
} from '../../src/structures/joint';

const runs = { numRuns: 60 };
const decimals = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const joint: RadialBoltJoint = {
  pressure: '6 MPa',
  tube: { outsideDiameter: '76 mm', wall: '3 mm', material: '6061-T6 drawn tube' },
  closureMaterial: '6061-T6 bar',
  thread: 'M6',
  boltClass: '8.8',
  count: 12,
  edgeDistance: '13.2 mm',
  holeDiameter: '6.6 mm',
};

describe('the part of the moment on the side of the pressure', () => {
  // Computed with SciPy 1.17.1, solve_bvp at a tolerance of 1e-9: a beam on an elastic foundation, free at one end and 20 edge lengths long,
  // with a jump of the moment at c.
  test.each([
    [0.05, 0.9975852144],
    [0.3, 0.9293469979],
    [0.5, 0.8387196584],
    [1, 0.629197654],
    [1.5, 0.5284065099],
    [2, 0.5022271588],
    [3, 0.5008930752],
  ])('%d edge lengths from the end', (distance, part) =>
    expect(offsetMomentShare.si({ distance, edgeLength: 1 })).toBeCloseTo(part, 9),
  );
  test('is between half and all, and half at two edge lengths as the rule of practice has it', () => {
    fc.assert(
      fc.property(decimals(0, 50), decimals(0.1, 20), (distance, edgeLength) => {
        const part = offsetMomentShare.si({ distance, edgeLength });
        expect(part).toBeGreaterThanOrEqual(0.5);
        expect(part).toBeLessThanOrEqual(1);
        if (distance > 2 * edgeLength) expect(part).toBeLessThan(0.503);
      }),
      runs,
    );
  });
});

describe('tension with bending', () => {
  test('an offset of half the wall quadruples the tension of a strip (flat lap, M = N·t/2)', () => {
    expect(offsetWallStress.si({ tension: 1, offset: 1.5, wall: 3, momentShare: 1 })).toBe(4);
    expect(offsetWallStress.si({ tension: 1, offset: 0, wall: 3, momentShare: 1 })).toBe(1);
  });
  test('the section is plastic throughout where the equivalent tension is the yield strength', () => {
    fc.assert(
      fc.property(decimals(0.01, 3), decimals(0, 3), decimals(0.5, 1), (wall, offset, momentShare) => {
        const yieldStrength = 240e6;
        const unit = offsetFoldingStress.si({ tension: 1, offset, wall, momentShare });
        const tension = yieldStrength / unit;
        // M/M_p + (N/N_p)² = 1 for a rectangle: N_p = S_y·t, M_p = S_y·t²/4.
        const [n, m] = [tension * wall, tension * wall * offset * momentShare];
        const used = m / ((yieldStrength * wall ** 2) / 4) + (n / (yieldStrength * wall)) ** 2;
        expect(used).toBeCloseTo(1, 9);
      }),
      runs,
    );
  });
  test('the surface reaches its yield strength before the section folds', () => {
    fc.assert(
      fc.property(decimals(0.1, 3), decimals(0.5, 1), (offset, momentShare) => {
        const given = { tension: 1, offset, wall: 3, momentShare };
        expect(offsetWallStress.si(given)).toBeGreaterThan(offsetFoldingStress.si(given));
      }),
      runs,
    );
  });
});

describe('in the review of a joint', () => {
  test('the stress at the surface is between its bounds and falls with the distance to the end', () => {
    const at = (edgeDistance: `${number} mm`) => reviewJoint({ ...joint, edgeDistance }).offsetBending;
    const [near, far] = [at('9 mm'), at('40 mm')];
    for (const { surface, none, farFromEnd, freeEdge } of [near, far]) {
      expect(surface.si).toBeGreaterThanOrEqual(farFromEnd.si);
      expect(surface.si).toBeLessThan(freeEdge.si);
      expect(farFromEnd.si / none.si).toBeCloseTo(2.5, 9);
      expect(freeEdge.si / none.si).toBeCloseTo(4, 9);
    }
    expect(near.surface.si).toBeGreaterThan(far.surface.si);
    expect(far.surface.si / far.farFromEnd.si).toBeCloseTo(1, 4);
  });
  test('folds earlier than the net section yields, and a gap makes it worse', () => {
    const folding = (change: Partial<RadialBoltJoint>) =>
      reviewJoint({ ...joint, ...change }).modes.find(({ id }) => id === 'case-folding-yield');
    const net = reviewJoint(joint).modes.find(({ id }) => id === 'net-section-yield');
    expect(folding({})?.marginOfSafety).toBeLessThan(net?.marginOfSafety ?? Number.NaN);
    expect(folding({ gap: '0.3 mm' })?.marginOfSafety).toBeLessThan(
      folding({})?.marginOfSafety ?? Number.NaN,
    );
  });
  test('a caution states where the surface yields', () => {
    expect(reviewJoint(joint).cautions.join()).not.toMatch(/surface of the case/);
    expect(reviewJoint({ ...joint, pressure: '12 MPa' }).cautions.join()).toMatch(
      /surface of the case .* yields/,
    );
  });
});
