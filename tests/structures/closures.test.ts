import { describe, expect, test } from 'vitest';
import { type RetainingRingJoint, reviewRetainingRing, ringShearStress } from '../../src/structures/closures';
import { MeopError } from '../../src/units';

const ring: RetainingRingJoint = {
  pressure: '4 MPa',
  boreDiameter: '60 mm',
  grooveDepth: '1.5 mm',
  landLength: '6 mm',
  caseWall: '5 mm',
  caseMaterial: '6061-T6 drawn tube',
  ringThickness: '2 mm',
  ringShearStrength: '800 MPa',
};
const code = (run: () => unknown): string => {
  try {
    run();
  } catch (error) {
    if (error instanceof MeopError) return `${error.code} ${error.path}`;
    throw error;
  }
  return 'no error';
};

describe('retaining ring', () => {
  const review = reviewRetainingRing(ring);
  const stress = (mode: string): number =>
    review.margins.find((one) => one.mode === mode)?.applied.si ?? Number.NaN;

  test('each area times its stress is the end force', () => {
    const force = (4e6 * Math.PI * 0.06 ** 2) / 4;
    expect(review.endForce.si).toBeCloseTo(force, 6);
    const carried = [
      stress('shear of the ring') * Math.PI * 0.06 * 0.002,
      stress('bearing of the groove, yield') * Math.PI * 0.06 * 0.0015,
      stress('shear of the land') * Math.PI * 0.063 * 0.006,
      stress('tension of the wall under the groove') * (Math.PI / 4) * (0.07 ** 2 - 0.063 ** 2),
    ];
    for (const one of carried) expect(one / force).toBeCloseTo(1, 9);
  });

  test('margins fall with pressure and heat; a deeper groove helps its bearing and hurts the wall', () => {
    const margin = (change: Partial<RetainingRingJoint>, mode: string): number =>
      reviewRetainingRing({ ...ring, ...change }).margins.find((one) => one.mode === mode)?.marginOfSafety ??
      Number.NaN;
    const groove = 'bearing of the groove, yield';
    const wall = 'tension of the wall under the groove';
    expect(margin({ pressure: '5 MPa' }, groove)).toBeLessThan(margin({}, groove));
    expect(margin({ caseTemperature: '150 degC' }, groove)).toBeLessThan(margin({}, groove));
    expect(margin({ grooveDepth: '2 mm' }, groove)).toBeGreaterThan(margin({}, groove));
    expect(margin({ grooveDepth: '2 mm' }, wall)).toBeLessThan(margin({}, wall));
  });

  test('inverts to the load that a ring shears at', () => {
    const load = ringShearStress.solveFor('load', {
      boreDiameter: '60 mm',
      ringThickness: '2 mm',
      result: '800 MPa',
    });
    expect(load.si).toBeCloseTo(800e6 * Math.PI * 0.06 * 0.002, 3);
  });

  test('a seal smaller than the bore is cautioned: the O-ring of a closure seals on the bore', () => {
    expect(reviewRetainingRing({ ...ring, sealDiameter: '50 mm' }).cautions.join()).toContain(
      'less than the bore',
    );
    expect(reviewRetainingRing(ring).cautions.join()).not.toContain('less than the bore');
  });

  test('a short land is cautioned', () => {
    expect(reviewRetainingRing({ ...ring, landLength: '4 mm' }).cautions.join()).toContain(
      'three groove depths',
    );
    expect(review.cautions.join()).not.toContain('three groove depths');
  });

  test.each<[string, Partial<RetainingRingJoint>, string]>([
    ['a groove through the wall', { grooveDepth: '5 mm' }, 'out-of-domain grooveDepth'],
    ['a negative wall', { caseWall: '-5 mm' }, 'out-of-domain caseWall'],
    ['a factor below one', { factors: { yieldFactor: 0.9 } }, 'out-of-domain factors.yieldFactor'],
    ['a factor of zero', { factors: { ultimateFactor: 0 } }, 'out-of-domain factors.ultimateFactor'],
  ])('%s: refused by name', (_, change, expected) =>
    expect(code(() => reviewRetainingRing({ ...ring, ...change }))).toBe(expected),
  );
});
