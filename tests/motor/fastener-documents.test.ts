import { expect, test } from 'vitest';
import { demoMotor, review } from '../../src/motor';
import { errorOf } from '../error-code';

// The fasteners of a radial joint in the motor document: what their heads take from the wall must reach the verdict.

const document = demoMotor();
const { closures } = document;
if (closures?.head?.joint === undefined) throw new Error('the demo motor has radial bolts');
const { head } = closures;
const { joint } = closures.head;
type Joint = typeof joint;
const reviewed = (change: Partial<Joint>) =>
  review({
    ...document,
    closures: { ...closures, head: { ...head, joint: { ...joint, ...change } } },
  });

test('a knife edge under countersunk heads does not hold, whatever the margins', () => {
  // 90°: a cone of (7.9 − 5.4)/2 = 1.25 mm in a wall of 1.48 mm at its limits, of which 2/3 are 0.99 mm.
  const found = reviewed({ fastener: 'countersunk', headDiameter: '7.9 mm', headAngle: '90 deg' });
  const failing = found.checks.filter(({ passes }) => !passes).map(({ check }) => check);
  expect(failing).toContain('depth of the countersink');
  expect(found.verdict).toBe('does not hold');
});

test('a counterbore is seen by the bearing of the wall', () => {
  const bearing = (change: Partial<Joint>): number =>
    reviewed(change).margins.find(({ id, part }) => id === 'case-bearing' && part === 'head-joint')?.applied
      .si ?? Number.NaN;
  const depth = 0.5;
  // 1.48 mm of wall at its limit, 0.98 mm of it left.
  expect(bearing({ counterboreDepth: `${depth} mm`, headDiameter: '9 mm' }) / bearing({})).toBeCloseTo(
    1.48 / (1.48 - depth),
    6,
  );
});

test('pins have a caution that they must be secured', () => {
  const found = reviewed({ fastener: 'pin', shearPlane: 'shank' });
  expect(found.cautions.map((line) => JSON.stringify(line)).join()).toMatch(/walking out/);
});

test.each<[string, Partial<Joint>, string]>([
  ['no head diameter', { fastener: 'countersunk', headAngle: '90 deg' }, 'headDiameter'],
  [
    'a cone through the wall',
    { fastener: 'countersunk', headDiameter: '9 mm', headAngle: '90 deg' },
    'headDiameter',
  ],
  [
    'a counterbore through the wall',
    { headDiameter: '9 mm', counterboreDepth: '1.6 mm' },
    'counterboreDepth',
  ],
  ['a pin with a thread in the shear plane', { fastener: 'pin' }, 'shearPlane'],
])('%s is reported at its place', (_, change, field) =>
  expect(errorOf(() => reviewed(change))?.message).toContain(`closures.head.joint.${field}`),
);
