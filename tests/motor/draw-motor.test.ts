import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demoMotor, drawMotor, type MotorDocument, parseMotor, report, review } from '../../src/motor';
import { axialDimensions, rowsOf } from '../../src/motor/drawing/dimension-lines';
import { caseOutline, closureOutline } from '../../src/motor/drawing/end-section';
import { insertOutline } from '../../src/motor/drawing/nozzle-section';
import { outlineOf, turnedVolume } from '../../src/motor/drawing/turned-part';
import { motorLayout } from '../../src/motor/layout';

/** A motor with a layout of each end; sizes of the test alone. */
const drawn = (): MotorDocument => {
  const base = demoMotor();
  const { head, aft } = base.closures ?? {};
  if (head === undefined || aft === undefined) throw new Error('the demo motor has two closures');
  const [headSeal] = head.seals;
  const [aftSeal] = aft.seals;
  const { insert } = base.nozzle;
  if (insert === undefined) throw new Error('the demo motor has an insert');
  return {
    ...base,
    case: { ...base.case, length: '384 mm' },
    closures: {
      head: {
        ...head,
        layout: {
          innerFace: '28 mm',
          length: '28 mm',
          diameter: '50.9 mm',
          recess: { diameter: '30 mm', depth: '14 mm' },
        },
        seals: [{ ...headSeal, position: '19 mm' }],
      },
      aft: {
        ...aft,
        layout: {
          innerFace: '34 mm',
          length: '38 mm',
          diameter: '50.9 mm',
          cavity: { diameter: '38 mm', depth: '5 mm' },
        },
        seals: [{ ...aftSeal, position: '24 mm' }],
      },
    },
    nozzle: {
      ...base.nozzle,
      insert: {
        ...insert,
        seat: { insertedFrom: 'inside', pocketDiameter: '30.1 mm', pocketDepth: '24 mm' },
      },
    },
  } as MotorDocument; // true: positions added to a document of the library
};

const disc = (diameter: number, height: number): number => (Math.PI / 4) * diameter ** 2 * height;

describe('outlines of turned parts', () => {
  const layout = motorLayout(parseMotor(drawn()));

  test('the closures as drawn have the volume of blank less cuts (cylinders, by hand)', () => {
    if (layout.head === undefined || layout.aft === undefined) throw new Error('both ends have a layout');
    const groove = disc(0.0509, 0.0037) - disc(0.0468, 0.0037);
    expect(turnedVolume(closureOutline(layout.head))).toBeCloseTo(
      disc(0.0509, 0.028) - disc(0.03, 0.014) - disc(0.0097, 0.014) - groove,
      12,
    );
    expect(turnedVolume(closureOutline(layout.aft))).toBeCloseTo(
      disc(0.0509, 0.038) - disc(0.038, 0.005) - disc(0.0301, 0.024) - disc(0.02, 0.009) - groove,
      12,
    );
    expect(turnedVolume(caseOutline(layout))).toBeCloseTo(disc(0.054, 0.384) - disc(0.051, 0.384), 12);
  });

  test('the insert has its throat, and its exit cone the half angle of the document', () => {
    const outline = insertOutline(layout) ?? [];
    const radii = outline.map(([, r]) => r);
    expect(Math.min(...radii)).toBeCloseTo(0.0053, 12);
    expect(Math.max(...radii)).toBeCloseTo(0.013, 12);
    const [, , lip, throat] = outline;
    expect(Math.atan2(lip[1] - throat[1], lip[0] - throat[0])).toBeCloseTo((12 * Math.PI) / 180, 9);
  });

  test('the volume is that of the cylinders, whatever the cuts', () => {
    const size = fc.double({ min: 0.001, max: 1, noNaN: true });
    fc.assert(
      fc.property(size, size, fc.tuple(size, size, size), (from, depth, [a, b, c]) => {
        const [to, outer] = [from + depth, 1];
        const [inner, cut] = [0.9 * Math.min(a, b), 0.9 * Math.max(a, b)];
        const half = { from: from - 1, to: from + c * depth };
        const outline = outlineOf({
          from,
          to,
          outer,
          inner,
          cuts: [{ ...half, radius: cut, side: 'inside' }],
        });
        const expected = Math.PI * (depth - c * depth * cut ** 2 - (1 - c) * depth * inner ** 2);
        expect(turnedVolume(outline)).toBeCloseTo(expected, 9);
      }),
    );
  });
});

describe('dimension lines', () => {
  test('no two of a row overlap, and none is lost', () => {
    const interval = fc
      .tuple(fc.integer({ min: 0, max: 100 }), fc.integer({ min: 1, max: 60 }))
      .map(([low, size]) => ({ low, high: low + size }));
    fc.assert(
      fc.property(fc.array(interval, { maxLength: 12 }), (all) => {
        const rows = rowsOf(all);
        expect(rows.flat()).toHaveLength(all.length);
        for (const row of rows)
          for (const a of row)
            for (const b of row) expect(a === b || a.high <= b.low || b.high <= a.low).toBe(true);
      }),
    );
  });

  test('a length is drawn as long as its scale says, and states its millimetres', () => {
    const view = { scale: 500, from: 0, to: 0.3, left: 10, axis: 40 };
    const { svg } = axialDimensions(view, [{ from: 0.02, to: 0.25 }], 60, 0.03);
    // 230 mm at 1 : 2 from 10 mm + 0.5 · 20 mm.
    expect(svg).toContain('>230<');
    expect(svg).toMatch(/M20 [\d.]+L135 /);
  });
});

describe('drawMotor', () => {
  const texts = (svg: string): readonly string[] =>
    [...svg.matchAll(/<text[^>]*>([^<]*)</g)].map(([, text]) => text);

  test('states each dimension of the document, at scales of the paper', () => {
    const svg = drawMotor(drawn());
    const stated = texts(svg);
    for (const one of [
      '384 case',
      '322 chamber',
      '⌀54',
      '⌀51',
      '⌀50.9',
      '⌀46.8',
      '⌀30.1',
      '⌀10.6',
      '12',
      '19',
      '24',
      '28',
      '34',
      '38',
      '3.7',
      '14',
      '5',
    ])
      expect(stated, one).toContain(one);
    expect(stated.join('\n')).toContain('8 × M5, class A2-70, holes ⌀5.3');
    expect(stated.join('\n')).toContain('The radial crack of segment 1 is assumed.');
    expect(svg).toMatch(/^<svg [^>]*width="180mm"/);
    // The case at 1 : 3 is 128 mm long.
    expect(stated).toContain('Whole motor, scale 1 : 3');
  });

  test('fits narrow paper: nothing is drawn beyond its edges', () => {
    for (const width of [80, 92, 180, 400]) {
      const svg = drawMotor(drawn(), { width: `${width} mm` });
      const height = Number(/viewBox="0 0 \S+ (\S+)"/.exec(svg)?.[1]);
      expect(svg).toContain(`width="${width}mm"`);
      let [x0, y0] = [0, 0];
      for (const [, moved, path] of svg.matchAll(
        /<g transform="translate\(([^)]*)\)">|class="(?:dimension|extension|arrow)" d="([^"]*)"/g,
      )) {
        if (moved !== undefined) [x0, y0] = moved.split(' ').map(Number);
        else
          for (const [, x, y] of path.matchAll(/([\d.-]+) ([\d.-]+)/g)) {
            expect(x0 + Number(x)).toBeGreaterThanOrEqual(0);
            expect(x0 + Number(x)).toBeLessThanOrEqual(width);
            expect(y0 + Number(y)).toBeLessThanOrEqual(height);
          }
      }
    }
  });

  test('an end without a layout is named, not invented', () => {
    const { layout: _, ...head } = drawn().closures?.head ?? {};
    const motor = { ...drawn(), closures: { ...drawn().closures, head } } as MotorDocument; // true: one field left out
    expect(texts(drawMotor(motor)).join('\n')).toContain('head end: the document gives no layout');
    expect(drawMotor(drawn())).not.toContain('gives no layout');
  });

  test('stands in the HTML report without a plotting package, for a sheet and for a telephone', () => {
    const page = report(review({ ...drawn(), meop: { samples: 100, seed: 1 } }), { format: 'html' });
    expect(page).toContain('<figure class="to-scale"><div class="wide"');
    expect(page.match(/id="motor-section-[wn]-clip-whole"/g)).toHaveLength(2);
    expect(page).toContain('width="92mm"');
  });
});
