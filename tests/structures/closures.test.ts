import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  grooveWallCollapseLoad,
  type RetainingRingJoint,
  reviewRetainingRing,
  reviewThreadedClosure,
  ringShearStress,
  type ThreadedClosure,
  threadRadialPressure,
} from '../../src/structures/closures';
import { customThread, threadGeometry, threadStripping } from '../../src/structures/threads';
import { codeAndPathOf } from '../error-code';

const ring: RetainingRingJoint = {
  pressure: '4 MPa',
  tube: { outsideDiameter: '70 mm', wall: '5 mm', material: '6061-T6 drawn tube' },
  ring: { grooveDepth: '1.5 mm', edgeMargin: '6 mm', thickness: '2 mm', shearStrength: '800 MPa' },
};
describe('retaining ring', () => {
  const review = reviewRetainingRing(ring);
  const stress = (mode: string): number =>
    review.margins.find((one) => one.mode === mode)?.applied.si ?? Number.NaN;

  test('each area times its stress is the end force', () => {
    const force = (4e6 * Math.PI * 0.06 ** 2) / 4;
    // Lamé at the bore of 30 mm in 35 mm, open ends, E 68.9 GPa and ν 0.33 of 6061: the bore opens by u.
    const u = (0.03 / 68.9e9) * ((4e6 * (35 ** 2 + 30 ** 2)) / (35 ** 2 - 30 ** 2) + 0.33 * 4e6);
    const engaged = 0.0015 - u;
    expect(review.endForce.si).toBeCloseTo(force, 6);
    const carried = [
      stress('shear of the ring') * 0.9 * Math.PI * 0.06 * 0.002,
      stress('bearing of the groove, yield') * 0.9 * Math.PI * 0.06 * engaged,
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
    expect(margin({ tube: { ...ring.tube, wallTemperature: '150 degC' } }, groove)).toBeLessThan(
      margin({}, groove),
    );
    expect(margin({ ring: { ...ring.ring, grooveDepth: '2 mm' } }, groove)).toBeGreaterThan(
      margin({}, groove),
    );
    expect(margin({ ring: { ...ring.ring, grooveDepth: '2 mm' } }, wall)).toBeLessThan(margin({}, wall));
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

  test('a short land does not satisfy the ring tables: three groove depths', () => {
    const short = reviewRetainingRing({ ...ring, ring: { ...ring.ring, edgeMargin: '4 mm' } });
    expect(short.passes).toBe(false);
    expect(String(short)).toContain(
      'NOT SATISFIED: edge margin of the groove. The edge margin is 4 mm (required ≥ 4.5 mm, three groove depths).',
    );
    expect(review.checks.map(({ passes }) => passes)).toEqual([true, true]);
  });

  test.each<[string, Partial<RetainingRingJoint>, string]>([
    [
      'a groove through the wall',
      { ring: { ...ring.ring, grooveDepth: '5 mm' } },
      'out-of-domain ring.grooveDepth',
    ],
    ['a negative wall', { tube: { ...ring.tube, wall: '-5 mm' } }, 'out-of-domain tube.wall'],
    ['a factor below one', { factors: { yieldFactor: 0.9 } }, 'out-of-domain factors.yieldFactor'],
    ['a factor of zero', { factors: { ultimateFactor: 0 } }, 'out-of-domain factors.ultimateFactor'],
  ])('%s: refused by name', (_, change, expected) =>
    expect(codeAndPathOf(() => reviewRetainingRing({ ...ring, ...change }))).toBe(expected),
  );
});

describe('a wall folds under a groove', () => {
  const load = (arm: number): number =>
    grooveWallCollapseLoad.si({ yieldStrength: 241e6, wall: 3.5e-3, arm, diameter: 66.5e-3 });
  test('at yield in tension without an arm, and at the plastic moment alone with a long one', () => {
    // Statics: F = π·D·t·S_y; F·a/(π·D) = S_y·t²/4.
    expect(load(0)).toBeCloseTo(Math.PI * 66.5e-3 * 3.5e-3 * 241e6, 3);
    expect(load(1) / ((Math.PI * 66.5e-3 * 241e6 * 3.5e-3 ** 2) / 4)).toBeCloseTo(1, 5);
  });
  test('where tension and bending use the section up together: M/M_p + (N/N_p)² = 1', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 0.05, noNaN: true }), (arm) => {
        const perLength = load(arm) / (Math.PI * 66.5e-3);
        const [moment, tension] = [perLength * arm, perLength];
        const used = moment / ((241e6 * 3.5e-3 ** 2) / 4) + (tension / (241e6 * 3.5e-3)) ** 2;
        expect(used).toBeCloseTo(1, 9);
      }),
    );
  });
  test('and the review of a ring counts it, with the ring on the middle of the groove', () => {
    const found = reviewRetainingRing(ring).margins.find(({ mode }) => mode.startsWith('folding'));
    // Mean diameter 63 + 3.5 mm, arm half of the 5 mm wall, 35 ksi of the drawn tube (MIL-HDBK-5J table 3.6.2.0(c1)).
    const folds = grooveWallCollapseLoad.si({
      yieldStrength: 241.3165e6,
      wall: 3.5e-3,
      arm: 2.5e-3,
      diameter: 66.5e-3,
    });
    const end = (4e6 * Math.PI * 0.06 ** 2) / 4;
    expect(found?.marginOfSafety).toBeCloseTo(folds / (1.5 * end) - 1, 5);
  });
});

describe('threaded closure', () => {
  const screwed: ThreadedClosure = {
    pressure: '5 MPa',
    thread: customThread({ majorDiameter: '70 mm', pitch: '2 mm' }),
    engagement: '12 mm',
    tube: { outsideDiameter: '78 mm', material: '6061-T6 drawn tube' },
    closureMaterial: '6061-T6 bar',
  };
  const marginOf = (change: Partial<ThreadedClosure>, mode: string): number =>
    reviewThreadedClosure({ ...screwed, ...change }).margins.find((one) => one.mode === mode)
      ?.marginOfSafety ?? Number.NaN;

  test('by hand: end force, flanks, opening, wall and threads', () => {
    // Each stress written out from its equation; roots of a sharp V at 70 + 2·√3/8 = 70.433 mm, E 68.9 GPa and ν 0.33 of 6061.
    const review = reviewThreadedClosure(screwed);
    const end = (5e6 * Math.PI * 0.07 ** 2) / 4;
    expect(review.endForce.si).toBeCloseTo(end, 6);
    const { limits, pitchDiameter } = customThread({ majorDiameter: '70 mm', pitch: '2 mm' });
    const wedge = (end * Math.tan(Math.PI / 6)) / (Math.PI * pitchDiameter.si * 12e-3);
    const [a, b] = [0.070433013 / 2, 0.078 / 2];
    const hoop = ((5e6 + wedge) * (b * b + a * a)) / (b * b - a * a);
    const growth = (2 * a * (hoop + 0.33 * (5e6 + wedge))) / 68.9e9;
    expect(review.growth.si).toBeCloseTo(growth, 9);
    const applied = (mode: string): number =>
      review.margins.find((one) => one.mode === mode)?.applied.si ?? Number.NaN;
    const near = (found: number, wanted: number): void =>
      expect(Math.abs(found / wanted - 1)).toBeLessThan(1e-6);
    near(applied('hoop at the thread'), hoop);
    near(applied('tension of the wall under the thread'), end / (Math.PI * (b * b - a * a)));
    const [d, e] = [limits.externalMajorMin.si, limits.internalPitchMax.si + growth];
    near(
      applied("shear of the case's thread"),
      end / (Math.PI * 12e-3 * d * (0.5 + (d - e) / (Math.sqrt(3) * 2e-3))),
    );
    const [k, s] = [limits.internalMinorMax.si + growth, limits.externalPitchMin.si];
    near(
      applied("shear of the closure's thread"),
      end / (Math.PI * 12e-3 * k * (0.5 + (s - k) / (Math.sqrt(3) * 2e-3))),
    );
  });
  test('without growth the threads strip at what a screw in a tapped hole does', () => {
    const stiff = reviewThreadedClosure({ ...screwed, pressure: '1 Pa' });
    const strip = threadStripping({
      thread: customThread({ majorDiameter: '70 mm', pitch: '2 mm' }),
      engagement: '12 mm',
      screwUltimate: '290 MPa',
      holeShear: '186 MPa',
    });
    const area =
      stiff.endForce.si /
      (stiff.margins.find(({ mode }) => mode === "shear of the case's thread")?.applied.si ?? Number.NaN);
    expect(area / strip.internalArea.si).toBeCloseTo(1, 6);
  });
  test('margins fall with pressure and heat; a hot case opens and takes thread away', () => {
    const mode = "shear of the closure's thread";
    expect(marginOf({ pressure: '6 MPa' }, mode)).toBeLessThan(marginOf({}, mode));
    expect(marginOf({ tube: { ...screwed.tube, wallTemperature: '120 degC' } }, mode)).toBeLessThan(
      marginOf({}, mode),
    );
    expect(marginOf({ engagement: '6 mm' }, mode)).toBeLessThan(marginOf({}, mode));
    expect(marginOf({ reliefDiameter: '71.5 mm' }, 'hoop at the thread')).toBeLessThan(
      marginOf({}, 'hoop at the thread'),
    );
    const hot = reviewThreadedClosure({ ...screwed, tube: { ...screwed.tube, wallTemperature: '120 degC' } });
    // α·D·ΔT of the bore: 23.6e-6 · 70.433 mm · 100 K.
    expect(hot.growth.si - reviewThreadedClosure(screwed).growth.si).toBeCloseTo(
      23.6e-6 * 0.070433013 * 100,
      9,
    );
    expect(hot.cautions.join()).toContain('closureTemperature');
  });
  test('flanks push by the tangent of their angle', () => {
    const push = threadRadialPressure({
      load: '10 kN',
      pitchDiameter: '50 mm',
      engagement: '10 mm',
      flankAngle: '45 deg',
    });
    expect(push.si).toBeCloseTo(10e3 / (Math.PI * 0.05 * 0.01), 6);
  });
  test.each<[string, Partial<ThreadedClosure>, string]>([
    [
      'a thread as wide as the case',
      { tube: { ...screwed.tube, outsideDiameter: '70 mm' } },
      'out-of-domain tube.outsideDiameter',
    ],
    ['no engagement', { engagement: '0 mm' }, 'out-of-domain engagement'],
    ['a thread that is in no list', { thread: 'M70x2' }, 'unknown-name thread'],
    [
      'a fine thread in a case that opens beyond it',
      {
        thread: customThread({ majorDiameter: '70 mm', pitch: '0.5 mm' }),
        tube: { ...screwed.tube, wallTemperature: '200 degC' },
      },
      'out-of-domain thread',
    ],
    ['a misspelt field', { sealDiametre: '60 mm' } as Partial<ThreadedClosure>, 'unknown-field sealDiametre'],
    ['a factor below one', { factors: { yieldFactor: 0.9 } }, 'out-of-domain factors.yieldFactor'],
  ])('%s: refused by name', (_, change, expected) =>
    expect(codeAndPathOf(() => reviewThreadedClosure({ ...screwed, ...change }))).toBe(expected),
  );
});

describe("a thread of one's own", () => {
  test('is the standard one where there is one', () => {
    const [own, known] = [customThread({ majorDiameter: '36 mm', pitch: '3 mm' }), threadGeometry('M36x3')];
    expect(own.limits.internalPitchMax.si).toBeCloseTo(known.limits.internalPitchMax.si, 12);
    expect(own.tensileStressArea.si).toBeCloseTo(known.tensileStressArea.si, 12);
    expect(customThread({ majorDiameter: '1 in', pitch: '1/8 in' }).rootDiameter.si).toBeCloseTo(
      threadGeometry('1-8').rootDiameter.si,
      12,
    );
  });
  test('is named by diameter and pitch, or threads per inch', () => {
    expect(customThread({ majorDiameter: '70 mm', pitch: '2 mm' }).name).toBe('M70x2');
    expect(customThread({ majorDiameter: '2.75 in', pitch: '1/16 in' }).name).toBe('2.75-16 UNS');
    expect(() => threadGeometry('M70x2')).toThrow(/customThread/);
  });
  test('is refused with a pitch that is none', () => {
    expect(codeAndPathOf(() => customThread({ majorDiameter: '10 mm', pitch: '3 mm' }))).toBe(
      'out-of-domain pitch',
    );
    expect(codeAndPathOf(() => customThread({ majorDiameter: '10 mm', pitch: '0 mm' }))).toBe(
      'out-of-domain pitch',
    );
    expect(codeAndPathOf(() => customThread({ majorDiameter: '-1 mm', pitch: '1 mm' }))).toBe(
      'out-of-domain majorDiameter',
    );
  });
});
