import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { drillGuideBore, type HolePatternInput, holePattern, wrapTemplate } from '../../src/structures/holes';
import { codeAndPathOf } from '../error-code';

// Checks are geometry: relations that any pattern must satisfy.

const runs = { numRuns: 80 };
const pattern: HolePatternInput = {
  outsideDiameter: '76 mm',
  wall: '3 mm',
  count: 8,
  holeDiameter: '6.4 mm',
  edgeDistance: '12 mm',
};
const cases = fc.record({
  count: fc.integer({ min: 2, max: 16 }),
  diameter: fc.integer({ min: 60, max: 200 }),
  rows: fc.constantFrom(1, 2, 3, 4),
  first: fc.integer({ min: 0, max: 359 }),
});

describe('holePattern', () => {
  test('the arcs close on the circumference, and a chord is shorter than its arc', () => {
    fc.assert(
      fc.property(cases, ({ count, diameter, first }) => {
        const made = holePattern({
          ...pattern,
          count,
          outsideDiameter: `${diameter} mm`,
          firstAngle: `${first} deg`,
        });
        expect(made.arcSpacing.si * count).toBeCloseTo(Math.PI * diameter * 1e-3, 12);
        expect(made.circumference.si).toBeCloseTo(Math.PI * diameter * 1e-3, 12);
        expect(made.chord.si).toBeLessThan(made.arcSpacing.si);
        // The chord of points on a circle, from their coordinates.
        const at = (i: number): readonly [number, number] => {
          const angle = made.holes[i].angle.si;
          return [Math.cos(angle) * diameter * 0.5e-3, Math.sin(angle) * diameter * 0.5e-3];
        };
        const [[x1, y1], [x2, y2]] = [at(0), at(1)];
        expect(made.chord.si).toBeCloseTo(Math.hypot(x2 - x1, y2 - y1), 12);
      }),
      runs,
    );
  });

  test('no two holes are nearer than the ligament says, measured on the bore', () => {
    fc.assert(
      fc.property(cases, ({ count, diameter, rows }) => {
        const made = holePattern({
          ...pattern,
          count,
          rows,
          rowSpacing: '15 mm',
          outsideDiameter: `${diameter} mm`,
        });
        const inside = (diameter * 1e-3) / 2 - 3e-3;
        let least = Number.POSITIVE_INFINITY;
        made.holes.forEach((a, i) => {
          for (const b of made.holes.slice(i + 1)) {
            const turn = Math.abs(a.angle.si - b.angle.si);
            const around = inside * Math.min(turn, 2 * Math.PI - turn);
            least = Math.min(least, Math.hypot(around, a.along.si - b.along.si) - 6.4e-3);
          }
        });
        expect(made.ligament.si).toBeCloseTo(least, 12);
      }),
      runs,
    );
  });

  test('the second row stands between the holes of the first', () => {
    const made = holePattern({ ...pattern, rows: 2, rowSpacing: '15 mm' });
    expect(made.holes).toHaveLength(16);
    expect(made.holes[8].angle.in('deg')).toBeCloseTo(22.5, 10);
    expect(made.holes[8].along.in('mm')).toBeCloseTo(27, 10);
  });

  test('a lone hole has no neighbour: no chord, in one hole', () => {
    const lone = holePattern({ ...pattern, count: 1 });
    expect(lone.chord.si).toBe(0);
    expect(String(lone)).toContain('1 hole of');
  });

  test('short edges and narrow ligaments are cautioned', () => {
    expect(holePattern({ ...pattern, edgeDistance: '8 mm' }).cautions.join()).toContain('1.5 hole diameters');
    expect(holePattern({ ...pattern, count: 20 }).cautions.join()).toContain('one hole diameter of metal');
    // 16 holes on a bore of 70 mm leave 7.3 mm, more than their 6.4 mm; 18 leave 5.8 mm.
    expect(holePattern({ ...pattern, count: 16 }).cautions).toEqual([]);
    expect(holePattern({ ...pattern, count: 18 }).cautions).toHaveLength(1);
    expect(holePattern(pattern).cautions).toEqual([]);
  });

  test.each<[string, Partial<HolePatternInput>, string]>([
    ['more holes than fit', { count: 35 }, 'out-of-domain count'],
    ['no holes', { count: 0 }, 'out-of-domain count'],
    ['a hole over the end', { edgeDistance: '3.2 mm' }, 'out-of-domain edgeDistance'],
    ['a negative wall', { wall: '-1 mm' }, 'out-of-domain wall'],
    ['a wall that fills the tube', { wall: '38 mm' }, 'out-of-domain wall'],
    ['rows that clash', { rows: 2, rowSpacing: '6 mm', staggered: false }, 'out-of-domain rowSpacing'],
    ['rows without spacing', { rows: 2 }, 'missing-field rowSpacing'],
    // Staggered, rows one and three stand in line: 2 x 3 mm for holes of 6.4 mm.
    ['rows one and three that clash', { rows: 3, rowSpacing: '3 mm' }, 'out-of-domain rowSpacing'],
    [
      'a hole as wide as the bore',
      { count: 1, holeDiameter: '70 mm', edgeDistance: '60 mm' },
      'out-of-domain holeDiameter',
    ],
    [
      'two holes that would halve the tube',
      { count: 2, holeDiameter: '75 mm', edgeDistance: '60 mm' },
      'out-of-domain holeDiameter',
    ],
  ])('%s: refused by name', (_, change, expected) =>
    expect(codeAndPathOf(() => holePattern({ ...pattern, ...change }))).toBe(expected),
  );
});

describe('wrapTemplate', () => {
  // 3 mm sans serif runs at about 1.5 mm a letter, measured on a page drawn by Chromium 156.
  test('the lines to read fit on the narrowest sheet, and labels side by side do not run into each other', () => {
    const [narrow] = wrapTemplate({
      ...pattern,
      outsideDiameter: '20 mm',
      count: 4,
      holeDiameter: '3 mm',
    }).sheets;
    const [, width] = /width="([\d.]+)mm"/.exec(narrow) ?? [];
    const written = [...narrow.matchAll(/<text [^>]*>([^<]*)</g)].map(([, text]) => text);
    expect(written.some((text) => text.startsWith('print at 100 %'))).toBe(true);
    for (const text of written) expect(text.length * 1.55).toBeLessThan(Number(width));
    const labels = (count: number): boolean =>
      wrapTemplate({ ...pattern, wall: '1 mm', count }).sheets[0].includes('rotate(-90');
    expect([labels(8), labels(24)]).toEqual([false, true]);
  });

  const numbers = (svg: string, pick: RegExp): number[] =>
    [...svg.matchAll(pick)].map(([, text]) => Number(text));

  test('is drawn in millimetres: page and view agree', () => {
    for (const diameter of [40, 76, 101.6, 150]) {
      for (const sheet of wrapTemplate({ ...pattern, outsideDiameter: `${diameter} mm` }).sheets) {
        const [, width, height] = /width="([\d.]+)mm" height="([\d.]+)mm"/.exec(sheet) ?? [];
        expect(sheet).toContain(`viewBox="0 0 ${width} ${height}"`);
      }
    }
  });

  test('has a check line of 100 mm and one of 4 in', () => {
    const [sheet] = wrapTemplate(pattern).sheets;
    const lines = [...sheet.matchAll(/<line x1="([\d.]+)" y1="([\d.]+)" x2="([\d.]+)" y2="([\d.]+)"/g)].map(
      ([, x1, y1, x2, y2]) => (y1 === y2 ? Number(x2) - Number(x1) : 0),
    );
    const has = (length: number): boolean => lines.some((line) => Math.abs(line - length) < 1e-9);
    expect([has(100), has(101.6)]).toEqual([true, true]);
  });

  test('the holes stand as far apart as their arcs on paper that lies outside the tube', () => {
    const [sheet] = wrapTemplate({ ...pattern, paperThickness: '0.2 mm' }).sheets;
    const centres = numbers(sheet, /<circle cx="([\d.]+)"/g);
    expect(centres).toHaveLength(8);
    // Paper of 0.2 mm on 76 mm: its middle lies on 76.2 mm.
    const apart = (Math.PI * 76.2) / 8;
    expect(centres[0]).toBeCloseTo(apart / 2, 2); // the seam lies half way between two holes
    for (let i = 1; i < centres.length; i++) expect(centres[i] - centres[i - 1]).toBeCloseTo(apart, 2);
    expect(numbers(sheet, /r="([\d.]+)"/g).every((r) => Math.abs(r - 3.2) < 1e-9)).toBe(true);
  });

  test('a strip longer than a sheet is cut over several that overlap, and each hole is whole on one of them', () => {
    const template = wrapTemplate({ ...pattern, outsideDiameter: '150 mm', count: 16, sheetWidth: '200 mm' });
    expect(template.sheets.length).toBe(3);
    for (const [i, sheet] of template.sheets.entries()) expect(sheet).toContain(`sheet ${i + 1} of 3`);
    const from = template.sheets.map((sheet) => 5 - Number(/translate\((-?[\d.]+) /.exec(sheet)?.[1]));
    expect(from).toEqual([0, 190, 380]);
    const centres = numbers(template.sheets[0], /<circle cx="([\d.]+)"/g);
    for (const x of centres) expect(from.some((left) => x - 3.2 >= left && x + 3.2 <= left + 200)).toBe(true);
  });

  test('the title is text, whatever is in it', () => {
    const [sheet] = wrapTemplate({ ...pattern, title: 'a < b & "c"' }).sheets;
    expect(sheet).toContain('a &lt; b &amp; &quot;c&quot;');
  });

  test('a sheet too small for the check lines is refused', () =>
    expect(codeAndPathOf(() => wrapTemplate({ ...pattern, sheetWidth: '90 mm' }))).toBe(
      'out-of-domain sheetWidth',
    ));
});

describe('drillGuideBore', () => {
  test('the flanks touch the circle and nothing of them is inside it', () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 20 }), fc.integer({ min: 15, max: 75 }), (diameter, degrees) => {
        const bore = drillGuideBore({ diameter: `${diameter} mm`, flankAngle: `${degrees} deg` });
        const [x, y, top] = [
          bore.tangentOffset.in('mm'),
          bore.tangentHeight.in('mm'),
          bore.topHeight.in('mm'),
        ];
        expect(Math.hypot(x, y)).toBeCloseTo(diameter / 2, 9); // the flank starts on the circle
        // and at a right angle to the radius: (x, y)·((0, top) − (x, y)) = 0
        expect(x * (0 - x) + y * (top - y)).toBeCloseTo(0, 8);
        expect(Math.atan2(x, top - y)).toBeCloseTo((degrees * Math.PI) / 180, 9); // leaning as asked
        expect(bore.bridge.si).toBe(0);
      }),
      runs,
    );
  });

  test('a flat top is as wide as the flanks are apart there', () => {
    const bore = drillGuideBore({ diameter: '6 mm', flankAngle: '45 deg', flatTop: '3.5 mm' });
    // Flanks at 45° meet at 3·√2 above the centre: 2·(3·√2 − 3.5) wide at 3.5.
    expect(bore.bridge.in('mm')).toBeCloseTo(2 * (3 * Math.SQRT2 - 3.5), 9);
    expect(bore.path.match(/L/g)).toHaveLength(2);
  });

  test('the path runs the long way round under the centre and closes', () => {
    expect(drillGuideBore({ diameter: '2 mm' }).path).toBe(
      'M -0.7071 0.7071 A 1 1 0 1 1 0.7071 0.7071 L 0 1.4142 Z',
    );
  });

  test.each([
    ['a flank that lies down', { diameter: '6 mm', flankAngle: '90 deg' }, 'out-of-domain flankAngle'],
    ['a top inside the circle', { diameter: '6 mm', flatTop: '2.9 mm' }, 'out-of-domain flatTop'],
    ['no diameter', { diameter: '0 mm' }, 'out-of-domain diameter'],
  ] as const)('%s: refused by name', (_, input, expected) =>
    expect(codeAndPathOf(() => drillGuideBore(input))).toBe(expected),
  );
});
