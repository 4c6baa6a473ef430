import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { clearanceHole, drillSize, tapDrill, threadPercentage } from '../../src/structures/holes';
import { clearanceSeries } from '../../src/structures/holes/clearance-table';
import { metricTapDrills, unifiedTapDrills } from '../../src/structures/holes/tap-drill-table';
import { customThread, threadGeometry } from '../../src/structures/threads';
import { codeAndPathOf } from '../error-code';

const fits = ['close', 'medium', 'free'] as const;
const letters = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZ'];

describe('drills', () => {
  test('rise from #80 to #1 and on from A to Z', () => {
    const names = [...Array.from({ length: 80 }, (_, i) => `#${80 - i}`), ...letters];
    const sizes = names.map((name) => drillSize(name).si);
    sizes.forEach((size, i) => {
      if (i > 0) expect(size, names[i]).toBeGreaterThan(sizes[i - 1]);
    });
  });
  // Machine-screw charts: #7 for 1/4-20 and F for 5/16-18 in thousandths of an inch; E is a quarter of an inch.
  test.each([
    ['#7', 0.201],
    ['F', 0.257],
    ['E', 0.25],
    ['17/64', 17 / 64],
  ])('%s', (name, inches) => expect(drillSize(name).in('in')).toBeCloseTo(inches, 12));
  test.each(['#81', '#0', 'AA', '0/64', '3/7', ''])('%s is refused', (name) =>
    expect(codeAndPathOf(() => drillSize(name))).toMatch(/^unknown-name/),
  );
});

describe('clearance holes', () => {
  const metric = clearanceSeries['ISO 273'].rows.map(([size]) => `M${size}`);
  // #12 and sizes above 1/2 in are not in the series.
  const unified = ['#0-80', '#1-64', '#2-56', '#3-48', '#4-40', '#5-40', '#6-32', '#8-32', '#10-24'].concat([
    '1/4-20',
    '5/16-18',
    '3/8-16',
    '7/16-14',
    '1/2-13',
  ]);
  test.each([...metric, ...unified])(
    '%s: the screw fits, and each fit is wider than the one before',
    (thread) => {
      const [close, medium, free] = fits.map((fit) => clearanceHole({ thread, fit }));
      expect(close.clearance.si).toBeGreaterThan(0);
      expect(medium.diameter.si).toBeGreaterThan(close.diameter.si);
      expect(free.diameter.si).toBeGreaterThan(medium.diameter.si);
      expect(medium.diameter.si - medium.clearance.si).toBeCloseTo(
        threadGeometry(thread).majorDiameter.si,
        12,
      );
      // The loosest hole of #0 is 3/32 in for a screw of 0.060 in.
      expect(free.clearance.si / threadGeometry(thread).majorDiameter.si).toBeLessThan(0.6);
    },
  );
  test('the pitch does not matter, the system does', () => {
    expect(clearanceHole({ thread: 'M8x1' }).diameter.si).toBe(clearanceHole({ thread: 'M8' }).diameter.si);
    expect(clearanceHole({ thread: '1/4-28' }).standard).toBe('ASME B18.2.8');
    expect(clearanceHole({ thread: 'M8' }).tolerance).toBe('H13');
  });
  // Machinery's Handbook, 31st ed., page 1743: normal drill #2 for #10, 9/32 for 1/4 in.
  test.each([
    ['#10-32', '#2'],
    ['1/4-20', '9/32'],
  ])('the normal drill of %s', (thread, drill) => expect(clearanceHole({ thread }).drill).toBe(drill));
  test('a drill quoted from memory has a caution, one that is published has none', () => {
    expect(clearanceHole({ thread: '1/4-20', fit: 'close' }).cautions.join()).toMatch(/from memory/);
    expect(clearanceHole({ thread: '1/4-20' }).cautions).toEqual([]);
  });
  test('machine-screw practice is a series of two fits, with #12', () => {
    const standard = 'machine-screw practice';
    expect(clearanceHole({ thread: '#12-24', standard, fit: 'free' }).diameter.in('in')).toBeCloseTo(
      0.228,
      9,
    );
    expect(codeAndPathOf(() => clearanceHole({ thread: '#12-24', standard }))).toBe('out-of-domain fit');
  });
  test.each(['M22', '#12-24', '9/16-12'])('%s is not in its series', (thread) =>
    expect(codeAndPathOf(() => clearanceHole({ thread }))).toBe('out-of-domain thread'),
  );
});

describe('tap drills', () => {
  const all = [...metricTapDrills, ...unifiedTapDrills].map(([thread]) => thread);
  test.each(all)('%s: the hole is below the pitch diameter and leaves 65 to 81 % of the thread', (name) => {
    const thread = threadGeometry(name);
    const { diameter, threadHeight } = tapDrill({ thread: name });
    expect(thread.name).toBe(name);
    expect(diameter.si).toBeLessThan(thread.pitchDiameter.si);
    // The range of the charts: #1-64 with #53 to #0-80 with 3/64.
    expect(threadHeight).toBeGreaterThan(0.65);
    expect(threadHeight).toBeLessThan(0.81);
  });
  test('the full height of the profile is cut from the basic minor diameter of a sharp thread', () => {
    // ISO 68-1: 2·(3/4)·H with H = √3/2·P; D1 = D − 5/4·H leaves 5/6 of it.
    const thread = threadGeometry('M10');
    const left = threadPercentage({
      diameter: thread.majorDiameter,
      pitch: thread.pitch,
      drill: thread.minorDiameter,
    });
    expect(left).toBeCloseTo(5 / 6, 9);
  });
  test('a smaller drill leaves more, and the drill for a height leaves that height', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.3, max: 0.9, noNaN: true }),
        fc.double({ min: 2, max: 30, noNaN: true }),
        (height, size) => {
          const thread = { diameter: `${size} mm`, pitch: `${size / 8} mm` } as const;
          const drill = threadPercentage.solveFor('drill', { ...thread, result: height });
          expect(threadPercentage({ ...thread, drill })).toBeCloseTo(height, 9);
          expect(threadPercentage({ ...thread, drill: drill.times(0.99) })).toBeGreaterThan(height);
        },
      ),
      { numRuns: 40 },
    );
  });
  test('a thread that is not in the tables is refused', () =>
    expect(
      codeAndPathOf(() => tapDrill({ thread: customThread({ majorDiameter: '40 mm', pitch: '2 mm' }) })),
    ).toBe('out-of-domain thread'));
});
