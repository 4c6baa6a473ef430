import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  counterboredHoleWidth,
  countersinkDepth,
  countersunkHoleWidth,
  type JointReview,
  type RadialBoltJoint,
  reviewJoint,
} from '../../src/structures/joint';
import { codeAndPathOf } from '../error-code';

// What the heads of the fasteners take from the wall is geometry, and what it does to the modes follows from statics.

const runs = { numRuns: 60 };
const decimals = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const joint: RadialBoltJoint = {
  pressure: '6 MPa',
  tube: { outsideDiameter: '90 mm', wall: '5 mm', material: '6061-T6 drawn tube' },
  closureMaterial: '6061-T6 bar',
  thread: 'M5',
  boltClass: '8.8',
  count: 10,
  edgeDistance: '14 mm',
  holeDiameter: '5.5 mm',
};
const flush = { fastener: 'countersunk', headDiameter: '10 mm', headAngle: '90 deg' } as const;
const bored = { headDiameter: '9 mm', counterboreDepth: '2 mm' } as const;
const pins = { fastener: 'pin', shearPlane: 'shank' } as const;
const review = (change: Partial<RadialBoltJoint>): JointReview => reviewJoint({ ...joint, ...change });
const applied = (found: JointReview, id: string): number =>
  found.modes.find((mode) => mode.id === id)?.applied.si ?? Number.NaN;

describe('a countersunk hole', () => {
  test('its width is that of the area of its section over the wall', () => {
    fc.assert(
      fc.property(
        decimals(3, 8),
        decimals(1.2, 2.2),
        decimals(1, 2.4),
        decimals(1.01, 3),
        (d, k, a, more) => {
          const [holeDiameter, headDiameter] = [d, k * d];
          const depth = countersinkDepth.si({ headDiameter, holeDiameter, headAngle: a });
          const wall = depth * more;
          // Slices of the section: a trapezium of the cone on a rectangle.
          const slices = 2000;
          let area = 0;
          for (let i = 0; i < slices; i++) {
            const below = ((i + 0.5) / slices) * wall; // from the surface
            const width = below < depth ? headDiameter - 2 * below * Math.tan(a / 2) : holeDiameter;
            area += (width * wall) / slices;
          }
          const mean = countersunkHoleWidth.si({ wall, depth, holeDiameter, headDiameter });
          expect(Math.abs(mean * wall - area) / area).toBeLessThan(1e-3);
          // A counterbore of the same depth takes more.
          expect(
            counterboredHoleWidth.si({ wall, depth, holeDiameter, counterbore: headDiameter }),
          ).toBeGreaterThan(mean);
        },
      ),
      runs,
    );
  });
  test('bears on the wall less half of the cone, and takes its section from the net section', () => {
    // 90°: (10 − 5.5)/2 = 2.25 mm deep; 5 − 1.125 mm credited; 5.5 + 4.5·2.25/10 = 6.5125 mm wide.
    const [plain, found] = [review({}), review(flush)];
    expect(applied(found, 'case-bearing') / applied(plain, 'case-bearing')).toBeCloseTo(5 / 3.875, 9);
    expect(applied(found, 'case-tear-out') / applied(plain, 'case-tear-out')).toBeCloseTo(5 / 3.875, 9);
    const left = (width: number): number => Math.PI * 85 - 10 * width;
    expect(applied(found, 'net-section') / applied(plain, 'net-section')).toBeCloseTo(
      left(5.5) / left(6.5125),
      9,
    );
    for (const id of ['bolt-shear', 'closure-bearing', 'hole-row-hoop'])
      expect(applied(found, id)).toBe(applied(plain, id));
    expect(found.cautions.join()).toMatch(/Flush heads/);
  });
  test('concentrates up to 1.4 times as much as a plain one', () => {
    const peak = (found: JointReview): number =>
      found.modes.find(({ id }) => id === 'case-bearing')?.peak?.concentration ?? Number.NaN;
    expect(peak(review(flush)) / peak(review({}))).toBeCloseTo(1.4, 9);
  });
});

describe('a counterbore', () => {
  test('leaves what is under it for bearing', () => {
    const [plain, found] = [review({}), review(bored)];
    expect(applied(found, 'case-bearing') / applied(plain, 'case-bearing')).toBeCloseTo(5 / 3, 9);
    // 5.5 + 3.5·2/5 = 6.9 mm wide.
    const left = (width: number): number => Math.PI * 85 - 10 * width;
    expect(applied(found, 'net-section') / applied(plain, 'net-section')).toBeCloseTo(
      left(5.5) / left(6.9),
      9,
    );
  });
});

describe('pins', () => {
  test('shear at their full section, have no thread, and must be secured', () => {
    const [bolts, found] = [review({ shearPlane: 'shank' }), review(pins)];
    expect(applied(found, 'bolt-shear')).toBeCloseTo(found.boltLoad.si / ((Math.PI / 4) * 0.005 ** 2), 3);
    expect(bolts.modes.some(({ id }) => id === 'closure-hole-thread-shear')).toBe(true);
    expect(found.modes.some(({ id }) => id === 'closure-hole-thread-shear')).toBe(false);
    expect(found.modes).toHaveLength(bolts.modes.length - 1);
    expect(found.cautions.join()).toMatch(/Secure each against walking out/);
  });
});

describe('checks', () => {
  const failing = (change: Partial<RadialBoltJoint>): readonly string[] =>
    review(change)
      .checks.filter(({ passes }) => !passes)
      .map(({ check }) => check);
  test('screws on the wall have none, good flush heads satisfy theirs', () => {
    expect(review({}).checks).toEqual([]);
    expect(review(flush).checks).toHaveLength(2);
    expect(failing(flush)).toEqual([]);
    expect(review(bored).checks).toHaveLength(1);
    expect(failing(bored)).toEqual([]);
  });
  test.each<[string, Partial<RadialBoltJoint>, string]>([
    // 2/3 of 3 mm is 2 mm; the cone is 2.25 mm deep.
    ['a knife edge', { ...flush, tube: { ...joint.tube, wall: '3 mm' } }, 'depth of the countersink'],
    ['12.4 mm of edge for M5', { ...flush, edgeDistance: '12.4 mm' }, 'edge distance of countersunk screws'],
    [
      'an 82° countersink for a 90° head',
      { ...flush, countersinkAngle: '82 deg' },
      'included angle of the countersink',
    ],
    [
      'a counterbore of more than half of the wall',
      { ...bored, counterboreDepth: '2.6 mm' },
      'wall left under',
    ],
  ])('%s does not pass', (_, change, check) => {
    expect(failing(change)).toEqual([expect.stringContaining(check)]);
    const found = review({ ...change, pressure: '1 MPa' });
    expect(found.governing.marginOfSafety).toBeGreaterThan(0);
    expect(found.passes).toBe(false);
    expect(String(found)).toContain('a check is not satisfied');
  });
  test('at its limit a check is satisfied', () => {
    expect(failing({ ...flush, edgeDistance: '12.5 mm' })).toEqual([]);
    expect(failing({ ...bored, counterboreDepth: '2.5 mm' })).toEqual([]);
    // A cone of 2 mm in a wall of 3 mm.
    expect(failing({ ...flush, headDiameter: '9.5 mm', tube: { ...joint.tube, wall: '3 mm' } })).toEqual([]);
  });
});

describe('short engagement', () => {
  test('has a caution below one diameter', () => {
    expect(review({ engagement: '4.9 mm' }).cautions.join()).toMatch(/less than one bolt diameter/);
    expect(review({ engagement: '5 mm' }).cautions.join()).not.toMatch(/less than one bolt diameter/);
    expect(review({ ...pins, engagement: '4 mm' }).cautions.join()).not.toMatch(
      /less than one bolt diameter/,
    );
  });
});

test.each<[string, Partial<RadialBoltJoint>, string]>([
  ['no head diameter', { fastener: 'countersunk', headAngle: '90 deg' }, 'missing-field headDiameter'],
  ['no head angle', { fastener: 'countersunk', headDiameter: '10 mm' }, 'missing-field headAngle'],
  ['a head as narrow as the hole', { ...flush, headDiameter: '5.5 mm' }, 'out-of-domain headDiameter'],
  ['a cone through the wall', { ...flush, headDiameter: '15.6 mm' }, 'out-of-domain headDiameter'],
  ['heads that overlap', { ...flush, headDiameter: '10 mm', count: 29 }, 'out-of-domain headDiameter'],
  ['a counterbore without diameter', { counterboreDepth: '1 mm' }, 'missing-field headDiameter'],
  [
    'a counterbore through the wall',
    { ...bored, counterboreDepth: '5 mm' },
    'out-of-domain counterboreDepth',
  ],
  ['an angle of a socket head', { headAngle: '90 deg' }, 'out-of-domain headAngle'],
  [
    'a counterbore for a flush head',
    { ...flush, counterboreDepth: '1 mm' },
    'out-of-domain counterboreDepth',
  ],
  ['a thread in the shear plane of a pin', { fastener: 'pin' }, 'out-of-domain shearPlane'],
  ['a tightened pin', { ...pins, preload: '1 kN' }, 'out-of-domain preload'],
  ['another fastener', { fastener: 'rivet' as never }, 'unknown-name fastener'],
])('%s: refused', (_, change, expected) => expect(codeAndPathOf(() => review(change))).toBe(expected));
