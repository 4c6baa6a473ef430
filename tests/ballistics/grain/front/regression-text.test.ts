import { inspect } from 'node:util';
import { expect, test } from 'vitest';
import {
  crack,
  grainColumn,
  regress,
  regressColumn,
  tubularSegment,
  withFlaws,
} from '../../../../src/ballistics';

const segment = tubularSegment({ outerDiameter: '50 mm', boreDiameter: '16 mm', length: '85 mm' });

test('a grain and a column print what they are', () => {
  expect(inspect(segment)).toBe('tubular segment, 50 mm × 85 mm, both ends burning');
  expect(inspect(grainColumn({ segments: [segment, segment] })).split('\n')).toEqual([
    'column of 2 grains',
    '  tubular segment, 50 mm × 85 mm, both ends burning',
    '  tubular segment, 50 mm × 85 mm, both ends burning',
  ]);
});

test('a regression prints its burn from first to last', () => {
  const lines = inspect(regress(segment)).split('\n');
  // By hand, mm: at the start the bore π·16·85 and two rings π/4·(50² − 16²); at the end, 17 mm deep, the wall
  // π·50·(85 − 34) with no ring left; the propellant π/4·(50² − 16²)·85.
  const ring = (Math.PI / 4) * (50 ** 2 - 16 ** 2);
  expect(lines[3]).toMatch(
    new RegExp(`^ +0 mm +${Math.round(Math.PI * 16 * 85 + 2 * ring)} mm² +${(ring * 0.085).toFixed(1)} cm³$`),
  );
  expect(lines[8]).toMatch(new RegExp(`^ +17 mm +${Math.round(Math.PI * 50 * 51)} mm² +0 cm³$`));
  expect(lines).toContain('method: closed form');
  expect(lines.at(-1)).toMatch(/^at a depth of 17 mm the burning area changes by -/);
});

test('a cracked grain prints the ignition depth of the crack and its caution', () => {
  const flaw = crack({
    plane: 'radial',
    angle: '20 deg',
    innerRadius: '8 mm',
    outerRadius: '25 mm',
    from: '10 mm',
    to: '40 mm',
  });
  const text = inspect(regress(withFlaws(segment, { flaws: [flaw] }), { accuracy: 1e-2 }));
  expect(text).toContain('crack at 20° burns from a depth of 0 mm');
  expect(text).toMatch(/\ncaution: Narrow cracks/);
  expect(text).toMatch(/\nestimated relative error of the burning area .*, \d+ cells\n/);
  expect(inspect(regressColumn(grainColumn({ segments: [segment] })))).toContain('\nmethod: closed form\n');
});
