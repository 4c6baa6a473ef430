// What is true of every retaining ring.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type RetainingRingJoint, reviewRetainingRing } from '../../src/structures/closures';
import type { FailureModeId } from '../../src/structures/failure-mode';
import { fromSiValue, unitOf } from '../../src/units';

const mm = (size: number) => fromSiValue<'length'>(size / 1000, 'length', unitOf('mm'));
const MPa = (size: number) => fromSiValue<'gauge pressure'>(size * 1e6, 'gauge pressure', unitOf('MPa'));
const kN = (size: number) => fromSiValue<'force'>(size * 1000, 'force', unitOf('kN'));

const sizes = fc.record({
  bore: fc.double({ min: 20, max: 100, noNaN: true }),
  wall: fc.double({ min: 0.08, max: 0.25, noNaN: true }), // of the bore
  depth: fc.double({ min: 0.15, max: 0.4, noNaN: true }), // of the wall
  thickness: fc.double({ min: 0.02, max: 0.06, noNaN: true }), // of the bore
  land: fc.double({ min: 3, max: 6, noNaN: true }), // depths
  pressure: fc.double({ min: 1, max: 8, noNaN: true }),
});
type Sizes = typeof sizes extends fc.Arbitrary<infer S> ? S : never;

const joint = (
  { bore, wall, depth, thickness, land, pressure }: Sizes,
  ring: Partial<RetainingRingJoint['ring']> = {},
  scale = 1,
): RetainingRingJoint => ({
  pressure: MPa(pressure),
  tube: {
    outsideDiameter: mm(bore * (1 + 2 * wall) * scale),
    wall: mm(wall * bore * scale),
    material: '6061-T6 drawn tube',
  },
  ring: {
    grooveDepth: mm(depth * wall * bore * scale),
    thickness: mm(thickness * bore * scale),
    edgeMargin: mm(land * depth * wall * bore * scale),
    shearStrength: '800 MPa',
    ...ring,
  },
});
const marginsOf = (given: RetainingRingJoint): ReadonlyMap<FailureModeId, number> =>
  new Map(reviewRetainingRing(given).margins.map(({ id, marginOfSafety }) => [id, marginOfSafety]));
const of = (given: RetainingRingJoint, id: FailureModeId): number => marginsOf(given).get(id) ?? Number.NaN;
const stated = { dishingCapacity: kN(60), chamfer: mm(0.2), play: mm(0.1) };

describe('every retaining ring', () => {
  test('has no larger margin at a higher pressure, and fails where its failure pressure says', () => {
    fc.assert(
      fc.property(sizes, (size) => {
        const low = reviewRetainingRing(joint(size, stated));
        const high = marginsOf(joint({ ...size, pressure: 1.1 * size.pressure }, stated));
        for (const { id, marginOfSafety, failurePressure, factor } of low.margins) {
          expect(high.get(id), id).toBeLessThan(marginOfSafety);
          // At that pressure the margin with its factor is 1/factor − 1.
          const there = of(joint({ ...size, pressure: failurePressure.in('MPa') }, stated), id);
          expect((1 + there) * factor, id).toBeCloseTo(1, 6);
        }
      }),
      { numRuns: 40 },
    );
  });

  test('has the same stresses at any size', () => {
    fc.assert(
      fc.property(sizes, fc.double({ min: 0.3, max: 3, noNaN: true }), (size, scale) => {
        const [one, other] = [marginsOf(joint(size)), marginsOf(joint(size, {}, scale))];
        for (const [id, margin] of one)
          expect((1 + (other.get(id) ?? 0)) / (1 + margin), id).toBeCloseTo(1, 9);
      }),
      { numRuns: 40 },
    );
  });

  test('tilts sooner with more chamfer, more play and less capacity; a stated chamfer is not credited below itself', () => {
    fc.assert(
      fc.property(sizes, fc.double({ min: 0.01, max: 2, noNaN: true }), (size, more) => {
        const at = (change: Partial<RetainingRingJoint['ring']>) =>
          of(joint(size, { ...stated, ...change }), 'ring-dishing');
        expect(at({ chamfer: mm(0.2 + more) })).toBeLessThan(at({}));
        // Play acts as a chamfer of the same size.
        expect(at({ play: mm(0.1 + more) })).toBeCloseTo(at({ chamfer: mm(0.2 + more) }), 9);
        expect(at({ dishingCapacity: kN(60 / (1 + more)) })).toBeLessThan(at({}));
        const small = { dishingChamfer: mm(3), chamfer: mm(more) };
        expect(at(small)).toBe(at({ ...small, chamfer: mm(0) }));
      }),
      { numRuns: 40 },
    );
  });

  test('bears on less of a groove with less contact, in proportion', () => {
    fc.assert(
      fc.property(sizes, fc.double({ min: 0.3, max: 1, noNaN: true }), (size, contactFactor) => {
        for (const id of ['groove-bearing-yield', 'ring-shear'] as const) {
          const [part, whole] = [contactFactor, 1].map((one) => of(joint(size, { contactFactor: one }), id));
          expect((1 + part) / (1 + whole)).toBeCloseTo(contactFactor, 9);
        }
      }),
      { numRuns: 40 },
    );
  });

  test('satisfies the checks on the land and the wall exactly where the numbers do', () => {
    fc.assert(
      fc.property(sizes, fc.double({ min: 0.1, max: 0.9, noNaN: true }), (size, depth) => {
        const [wall] = reviewRetainingRing(joint({ ...size, depth, pressure: 1 })).checks;
        expect(wall.passes).toBe(1 - depth >= 0.6);
      }),
      { numRuns: 40 },
    );
  });
});
