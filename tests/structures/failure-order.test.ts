import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { designJoint, reviewJoint } from '../../src/structures';
import {
  type FailureOrder,
  failureOrder,
  failureOrderText,
  orderOf,
  requiredWarningRatio,
} from '../../src/structures/failure-mode/failure-order';

const joint = {
  pressure: '4 MPa',
  tube: { outsideDiameter: '54 mm', wall: '1.5 mm', material: '6061-T6 drawn tube' },
  closureMaterial: '6061-T6 bar',
  thread: 'M5',
  boltClass: '12.9',
  count: 8,
  edgeDistance: '15 mm',
} as const;

// A thin wall under strong bolts yields in bearing long before anything breaks; a thick wall under few weak bolts shears them.
const bearingFirst = reviewJoint(joint);
const shearFirst = reviewJoint({
  ...joint,
  tube: { ...joint.tube, wall: '5 mm' },
  thread: 'M3',
  boltClass: '4.6',
  engagement: '8 mm',
});
const pressureOf = (review: typeof bearingFirst, id: string): number =>
  review.modes.find((mode) => mode.id === id)?.failurePressure.si ?? Number.NaN;

describe('the failure order of a joint', () => {
  test('bearing first: the holes stretch, and the joint warns', () => {
    const { failureOrder: order } = bearingFirst;
    expect(order.firstStretch?.id).toBe('case-bearing-yield');
    expect(order.firstWarning?.id).toBe('case-bearing-yield');
    expect(order.warns).toBe(true);
    const separation = order.firstSeparation?.failurePressure.si ?? Number.NaN;
    expect(order.warningRatio).toBe(separation / pressureOf(bearingFirst, 'case-bearing-yield'));
    expect(String(bearingFirst)).toContain('the joint warns before it separates');
  });

  test('shear first: the bolts go with no measurable set before', () => {
    const { failureOrder: order } = shearFirst;
    expect(order.firstSeparation?.id).toMatch(/^bolt-(shear|bending)$/);
    expect(pressureOf(shearFirst, 'case-bearing-yield')).toBeGreaterThan(
      order.firstSeparation?.failurePressure.si ?? Number.NaN,
    );
    // The bolts themselves yield before, which nobody can measure on a joint.
    expect(order.firstStretch?.id).toMatch(/^bolt-/);
    expect(order.warns).toBe(false);
    expect(String(shearFirst)).toContain('the joint separates without warning');
  });

  test('a separation soon after the stretch is not a warning', () => {
    const near = [
      { id: 'case-bearing-yield', limit: 'yield', at: 10 },
      { id: 'bolt-shear', limit: 'ultimate', at: 11 },
    ] as const;
    expect(orderOf(near)).toMatchObject({ warningRatio: 1.1, warns: false });
    expect(orderOf([near[0], { ...near[1], at: 12 }]).warns).toBe(true);
  });

  test('the set of a bolt is not a warning, and a folding wall separates', () => {
    const order = orderOf([
      { id: 'bolt-shear-yield', limit: 'yield', at: 5 },
      { id: 'groove-wall-folding-yield', limit: 'yield', at: 8 },
      { id: 'groove-bearing-yield', limit: 'yield', at: 9 },
    ]);
    expect(order.firstStretch?.id).toBe('bolt-shear-yield');
    expect(order.firstSeparation?.id).toBe('groove-wall-folding-yield');
    expect(order.warns).toBe(false);
  });

  test('without a mode that separates the order is not known', () => {
    const order = failureOrder(bearingFirst.modes.filter(({ limit }) => limit === 'yield'));
    expect(order.warns).toBe(false);
    expect(failureOrderText(order)).toContain(
      'First separation: none evaluated. The failure order is not known.',
    );
  });

  test('the sentence agrees with the sorted failure pressures', () => {
    const agree = (order: FailureOrder, modes: typeof bearingFirst.modes): void => {
      const sorted = [...modes].sort((a, b) => a.failurePressure.si - b.failurePressure.si);
      const stretch = sorted.find(({ consequence }) => consequence === 'stretches');
      const separation = sorted.find(({ consequence }) => consequence === 'separates');
      const text = failureOrderText(order);
      expect(text).toContain(`First permanent set: ${stretch?.mode}, at ${stretch?.failurePressure}.`);
      expect(text).toContain(`First separation: ${separation?.mode}, at ${separation?.failurePressure}.`);
      const before = sorted.slice(0, separation === undefined ? 0 : sorted.indexOf(separation));
      const holes = before.find(({ id }) => /^(case|closure)-bearing-yield$|^hole-row-hoop-yield$/.test(id));
      const ratio =
        (separation?.failurePressure.si ?? Number.NaN) /
        (holes?.failurePressure.si ?? Number.POSITIVE_INFINITY);
      expect(order.warns).toBe(ratio >= requiredWarningRatio);
      expect(text.endsWith('the joint warns before it separates.')).toBe(order.warns);
    };
    fc.assert(
      fc.property(
        fc.double({ min: 1.2, max: 6, noNaN: true }),
        fc.integer({ min: 4, max: 10 }),
        fc.constantFrom('M3', 'M4', 'M5', 'M6'),
        fc.constantFrom('4.6', '8.8', '12.9'),
        fc.double({ min: 8, max: 20, noNaN: true }),
        (wall, count, thread, boltClass, edge) => {
          const one = reviewJoint({
            ...joint,
            tube: { ...joint.tube, wall: `${wall} mm` },
            thread,
            boltClass,
            count,
            edgeDistance: `${edge} mm`,
            engagement: '6 mm',
          });
          agree(one.failureOrder, one.modes);
        },
      ),
    );
  });

  test('does not depend on the pressure of the review', () => {
    const twice = reviewJoint({ ...joint, pressure: '8 MPa' });
    expect(twice.failureOrder.warningRatio).toBeCloseTo(bearingFirst.failureOrder.warningRatio ?? 0, 9);
  });

  test('a design lists whether each option warns', () => {
    const { thread: _, count: __, edgeDistance: ___, ...parts } = joint;
    for (const { bolts, warns } of designJoint({ ...parts, pressure: '2 MPa' }).feasible.slice(0, 20))
      expect(reviewJoint({ ...parts, pressure: '2 MPa', ...bolts }).failureOrder.warns).toBe(warns);
  });
});
