import { describe, expect, test } from 'vitest';
import { designJoint, type JointSearch, reviewJoint } from '../../src/structures/joint';

// Every pattern that a search lists is reviewed as a user reviews it: with its drilled holes, from the option alone.

const tubes = [
  ['54 mm by 1.5 mm', { outsideDiameter: '54 mm', wall: '1.5 mm', material: '6061-T6 drawn tube' }],
  ['76 mm by 3 mm', { outsideDiameter: '76 mm', wall: '3 mm', material: '6061-T6 drawn tube' }],
  ['98 mm by 4 mm', { outsideDiameter: '98 mm', wall: '4 mm', material: '6061-T6 extruded tube' }],
  ['3 in by 1/8 in', { outsideDiameter: '3 in', wall: '1/8 in', material: '6061-T6 drawn tube' }],
  ['60 mm of stainless steel', { outsideDiameter: '60 mm', wall: '1.5 mm', material: '304 annealed' }],
] as const;
const variants: readonly Omit<JointSearch, 'pressure' | 'tube'>[] = [
  { boltClass: '8.8', closureMaterial: '6061-T6 bar' },
  { boltClass: 'A2-70', closureMaterial: '2024-T351 plate', shearPlane: 'root', fit: 'close' },
  { boltClass: '12.9', closureMaterial: '6061-T6 bar', fit: 'free', leastMargin: 0.1, gap: '0.1 mm' },
  { boltClass: '8.8', closureMaterial: '6061-T6 bar', preload: '1.5 kN', washer: 'soft' },
  { boltClass: '10.9', closureMaterial: '6061-T6 bar', positionTolerance: '0.1 mm', sealToHoles: '8 mm' },
];

describe.each(tubes)('%s', (_, tube) => {
  test.each(['2 MPa', '4 MPa', '7 MPa'] as const)(
    'at %s every pattern listed holds in review',
    (pressure) => {
      let reviewed = 0;
      for (const { leastMargin = 0, fit = 'medium', ...rest } of variants) {
        const parts = { pressure, tube, ...rest };
        for (const { bolts, marginOfSafety, governing } of designJoint({ ...parts, fit, leastMargin })
          .feasible) {
          const { passes, governing: least } = reviewJoint({ ...parts, ...bolts });
          const what = `${bolts.count} ${bolts.thread} at ${bolts.edgeDistance}`;
          expect(passes, what).toBe(true);
          expect(least.marginOfSafety, what).toBeGreaterThanOrEqual(Number(leastMargin) - 1e-12);
          expect(least.marginOfSafety, what).toBeCloseTo(marginOfSafety, 9);
          expect(least.id, what).toBe(governing);
          reviewed += 1;
        }
      }
      if (pressure === '2 MPa') expect(reviewed).toBeGreaterThan(100);
    },
  );
});
