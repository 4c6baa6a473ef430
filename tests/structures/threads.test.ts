import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  pipeThread,
  preloadFromTorque,
  preloadRange,
  straightPort,
  strippingRatio,
  taperPort,
  threadGeometry,
  threadNames,
  threadStripping,
} from '../../src/structures';
import { quantity } from '../../src/units';
import { codeOf } from '../error-code';

describe('thread sizes', () => {
  test.each(threadNames())('%s: root < minor < pitch < major, areas between their circles', (name) => {
    const t = threadGeometry(name);
    const [root, minor, pitch, major] = [
      t.rootDiameter.si,
      t.minorDiameter.si,
      t.pitchDiameter.si,
      t.majorDiameter.si,
    ];
    expect(root).toBeLessThan(minor);
    expect(minor).toBeLessThan(pitch);
    expect(pitch).toBeLessThan(major);
    const circle = (d: number) => (Math.PI / 4) * d * d;
    expect(t.rootArea.si).toBeLessThan(t.tensileStressArea.si);
    expect(t.tensileStressArea.si).toBeLessThan(circle(pitch));
    const { limits } = t;
    expect(limits.externalMajorMin.si).toBeLessThan(major);
    expect(limits.externalPitchMin.si).toBeLessThan(pitch);
    expect(limits.internalPitchMax.si).toBeGreaterThan(pitch);
    expect(limits.internalMinorMax.si).toBeGreaterThan(minor);
    // Worst limits still overlap.
    expect(limits.internalMinorMax.si).toBeLessThan(limits.externalMajorMin.si);
  });
  test('covers M1.6 to M36 and #0 to 1 in, coarse and fine', () => {
    expect(threadNames().length).toBeGreaterThan(100);
    expect(codeOf(() => threadGeometry('#0-64'))).toBe('unknown-name'); // there is no coarse #0
    for (const name of [
      'M1.6',
      'M36x1.5',
      '#0-80',
      '1-12',
      'M2',
      'M2x0.25',
      'M20',
      'M20x1.5',
      '#2-56',
      '2-64 UNF',
      '3/4-10',
      '3/4-16 UNF',
      'm8×1',
      '1/4-20 unc',
      'M5 x 0.8',
      '1/4"-20',
    ])
      expect(threadGeometry(name).pitch.si).toBeGreaterThan(0);
  });
  // Tensile stress areas: ISO 898-1, coarse pitch, mm² (read in a reproduction); Shigley 9th ed. table 8-2, in² (read in a
  // transcription).
  test.each([
    ['M22', 303],
    ['M24', 353],
    ['M27', 459],
    ['M30', 561],
    ['M33', 694],
    ['M36', 817],
    ['#0-80', 0.0018],
    ['#1-72', 0.00278],
    ['7/8-9', 0.462],
    ['7/8-14', 0.509],
    ['1-8', 0.606],
    ['1-12', 0.663],
  ] as const)('%s has a stress area of %d', (name, area) => {
    const { tensileStressArea } = threadGeometry(name);
    const found = tensileStressArea.in(name.startsWith('M') ? 'mm^2' : 'in^2');
    expect(Math.abs(found / area - 1)).toBeLessThan(0.003); // three figures
  });
  // Pitch and minor diameters, ISO 724, in mm; from memory: M6 5.350/4.917, M8 7.188/6.647, M10 9.026/8.376, M12x1.25 11.188/10.647.
  test.each([
    ['M6', 5.35, 4.917],
    ['M8', 7.188, 6.647],
    ['M10', 9.026, 8.376],
    ['M12x1.25', 11.188, 10.647],
  ] as const)('%s: pitch and minor diameter', (name, pitch, minor) => {
    expect(threadGeometry(name).pitchDiameter.in('mm')).toBeCloseTo(pitch, 3);
    expect(threadGeometry(name).minorDiameter.in('mm')).toBeCloseTo(minor, 3);
  });
  // Limits of class 6g/6H, ISO 965-2 tables (from memory): external major min, external pitch min, internal pitch max, minor max.
  test.each([
    ['M6', 5.794, 5.212, 5.5, 5.153],
    ['M8', 7.76, 7.042, 7.348, 6.912],
    ['M10', 9.732, 8.862, 9.206, 8.676],
  ] as const)(
    '%s: limits are on the safe side of the table by at most 0.03 mm',
    (name, major, pitchMin, pitchMax, minor) => {
      const { limits } = threadGeometry(name);
      const slack = 1e-3; // the table prints micrometres
      const safe = (margin: number) => {
        expect(margin).toBeGreaterThanOrEqual(-slack);
        expect(margin).toBeLessThanOrEqual(0.03);
      };
      safe(major - limits.externalMajorMin.in('mm'));
      safe(pitchMin - limits.externalPitchMin.in('mm'));
      safe(limits.internalPitchMax.in('mm') - pitchMax);
      safe(limits.internalMinorMax.in('mm') - minor);
    },
  );
  test('an unknown size names those of its diameter', () => {
    expect(codeOf(() => threadGeometry('M6x0.3'))).toBe('unknown-name');
    expect(() => threadGeometry('M6x0.3')).toThrow(/M6x1, M6x0.75/);
    expect(() => threadGeometry('1/4-32')).toThrow(/1\/4-20 UNC, 1\/4-28 UNF/);
    expect(codeOf(() => threadGeometry(''))).toBe('unknown-name');
  });
});

describe('stripping', () => {
  const joint = { thread: 'M6', screwUltimate: '800 MPa', holeShear: '186 MPa' } as const;
  const engaged = (value: number) =>
    threadStripping({ ...joint, engagement: quantity('length', `${value} mm`) });
  test('strip loads are proportional to engagement; breaking is not touched by it', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 30, noNaN: true }), (length) => {
        const [one, two] = [engaged(length), engaged(2 * length)];
        expect(two.internalStrippingLoad.si / one.internalStrippingLoad.si).toBeCloseTo(2, 9);
        expect(two.externalStrippingLoad.si / one.externalStrippingLoad.si).toBeCloseTo(2, 9);
        expect(two.screwBreakingLoad.si).toBe(one.screwBreakingLoad.si);
        expect(two.fullStrengthEngagement.si).toBeCloseTo(one.fullStrengthEngagement.si, 12);
      }),
    );
  });
  test('at the engagement for the screw it is the screw that breaks, just below it is not', () => {
    const needed = engaged(10).fullStrengthEngagement.in('mm');
    expect(engaged(needed * 1.001).governingFailure).toBe('screw-breaking');
    expect(engaged(needed * 0.999).governingFailure).not.toBe('screw-breaking');
    expect(engaged(needed * 0.5).cautions.join()).toContain('without warning');
  });
  test('a steel screw in aluminium needs about twice its diameter for a high class (Machinery’s Handbook practice, from memory)', () => {
    const { fullStrengthEngagement } = threadStripping({
      ...joint,
      screwUltimate: '1220 MPa',
      engagement: '10 mm',
    });
    const ratio = fullStrengthEngagement.in('mm') / 6;
    expect(ratio).toBeGreaterThan(1.4);
    expect(ratio).toBeLessThan(2.2);
  });
  test('scaling thread and engagement leaves the load per area unchanged in the ideal thread', () => {
    const [small, large] = [threadGeometry('M4'), threadGeometry('M8')];
    const shape = (t: typeof small) => t.tensileStressArea.si / t.majorDiameter.si ** 2;
    expect(Math.abs(shape(small) / shape(large) - 1)).toBeLessThan(0.05); // M4 × 2 has pitch 1.4, M8 has 1.25
  });
  test('refuses what does not exist', () => {
    expect(codeOf(() => engaged(-3))).toBe('out-of-domain');
    expect(
      codeOf(() => threadStripping({ ...joint, thread: 'M6', engagement: '5 mm', holeShear: '0 MPa' })),
    ).toBe('out-of-domain');
  });
});

describe('threads of unequal strength', () => {
  // Case thread-shear-area-quarter-20: 0.368 and 0.539 in² an inch; 150 against 42 ksi: 0.368·150/(0.539·42) = 2.43838.
  test('the hole strips first where the ratio exceeds 1', () => {
    const j = strippingRatio({
      externalArea: '0.368 in^2',
      internalArea: '0.539 in^2',
      screwStrength: '150 ksi',
      holeStrength: '42 ksi',
    });
    expect(j).toBeCloseTo(2.43838, 5);
    // threadStripping takes half of the tensile strengths as shear: both give the same ratio of loads.
    const { externalStrippingLoad, internalStrippingLoad, externalArea, internalArea } = threadStripping({
      thread: '1/4-20',
      engagement: '0.4 in',
      screwUltimate: '150 ksi',
      holeShear: '21 ksi',
    });
    const loads = externalStrippingLoad.si / internalStrippingLoad.si;
    expect(
      strippingRatio({ externalArea, internalArea, screwStrength: '150 ksi', holeStrength: '42 ksi' }),
    ).toBeCloseTo(loads, 9);
  });
});

describe('preload and ports', () => {
  test('torque and preload invert each other; the range is ±25 %', () => {
    const preload = preloadFromTorque({ torque: '9.396 N*m', nutFactor: 0.18, diameter: '6 mm' });
    expect(
      preloadFromTorque.solveFor('torque', { result: preload, nutFactor: 0.18, diameter: '6 mm' }).in('N*m'),
    ).toBeCloseTo(9.396, 12);
    const {
      min: least,
      max: greatest,
      nominal,
    } = preloadRange({
      torque: '10 N*m',
      finish: 'plain, black',
      diameter: '6 mm',
    });
    expect(least.si / nominal.si).toBeCloseTo(0.75, 12);
    expect(greatest.si / nominal.si).toBeCloseTo(1.25, 12);
  });
  test('a quarter-inch wall cannot hold a full make-up of 1/8 NPT; half an inch can', () => {
    const thin = taperPort({ size: '1/8', wall: '1/4 in' });
    expect(thin.fits).toBe(false);
    expect(thin.cautions.join()).toContain('boss');
    expect(taperPort({ size: '1/8', wall: '1/2 in' }).fits).toBe(true);
    expect(straightPort({ wall: '10 mm', sealDepth: '3 mm', engagement: '8 mm' }).fits).toBe(false);
    expect(codeOf(() => taperPort({ size: '1/8', wall: '0 mm' }))).toBe('out-of-domain');
  });
  // ASME B1.20.1 basic dimensions as reproduced by a pipe supplier: E0 and E1 in inch.
  test.each([
    ['1/8', 0.36351, 0.3736],
    ['1/4', 0.47739, 0.49163],
    ['1/2', 0.75843, 0.77843],
  ] as const)('%s NPT: pitch diameters', (size, e0, e1) => {
    expect(pipeThread(size).pitchDiameterAtEnd.in('in')).toBeCloseTo(e0, 4);
    expect(pipeThread(size).pitchDiameterAtMouth.in('in')).toBeCloseTo(e1, 4);
  });
});
