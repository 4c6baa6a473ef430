import fc from 'fast-check';
import { expect, test } from 'vitest';
import { faceSeal, oRing, oRingGland, oRingStretch, stretchedCrossSection } from '../../src/structures';
import { codeAndPathOf, errorOf } from '../error-code';

const gland = (grooveInches: number) =>
  oRingGland({
    ring: '228', // inside diameter 2.234 in
    bore: `${grooveInches + 0.222} in`,
    grooveDiameter: `${grooveInches} in`,
    grooveWidth: '0.19 in',
    closureDiameter: `${grooveInches + 0.218} in`,
  });

test('a ring three times too large for its groove is refused, with the rings that fit', () => {
  // 2.234 in on 0.715 in: −68 %, by the definition of stretch
  const error = errorOf(() => gland(0.715));
  expect(error?.code).toBe('out-of-domain');
  expect(error?.path).toBe('ring');
  expect(error?.message).toContain('-68 %');
  expect(codeAndPathOf(() => gland(4.6))).toBe('out-of-domain ring');
});

test('a ring is tabulated from 5 % of clearance to twice its size, and refused beyond', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.2, max: 3, noNaN: true }), (ratio) => {
      fc.pre(Math.abs(ratio - 0.95) > 1e-6 && Math.abs(ratio - 2) > 1e-6);
      const fits = ratio > 0.95 && ratio < 2;
      const make = () => gland(2.234 * ratio);
      if (fits) expect(make().stretch.nominal).toBeCloseTo(ratio - 1, 9);
      else expect(codeAndPathOf(make)).toBe('out-of-domain ring');
    }),
  );
});

test('a ring with a little clearance is tabulated, and its stretch fails', () => {
  const loose = gland(2.2);
  expect(loose.checks.find(({ check }) => check === 'stretch')?.passes).toBe(false);
});

test('a face seal refuses a ring that does not enter its groove', () => {
  const face = {
    grooveOutsideDiameter: '2.5 in',
    grooveInsideDiameter: '2.136 in',
    grooveDepth: '0.104 in',
  } as const;
  expect(faceSeal({ ring: '228', ...face }).ring.size).toContain('228');
  for (const ring of ['240', '214']) {
    expect(codeAndPathOf(() => faceSeal({ ring, ...face }))).toBe('out-of-domain ring');
    expect(codeAndPathOf(() => faceSeal({ ring, ...face, pressureSide: 'outside' }))).toBe(
      'out-of-domain ring',
    );
  }
});

test('the formulas state that a ring with clearance is not stretched', () => {
  const { insideDiameter, crossSection } = oRing('228');
  const loose = oRingStretch({ insideDiameter, grooveDiameter: '0.715 in' });
  expect(oRingStretch.cautions({ insideDiameter, grooveDiameter: '0.715 in' }).join()).toContain(
    'does not lie',
  );
  expect(loose).toBeCloseTo(0.715 / 2.234 - 1, 9);
  expect(
    stretchedCrossSection.cautions({ crossSection, insideDiameter, grooveDiameter: '2.2 in' }),
  ).toHaveLength(1);
});
