import { describe, expect, test } from 'vitest';
import {
  crack,
  debond,
  endBurner,
  internalTube,
  regress,
  tubularSegment,
  voidBubble,
  withFlaws,
} from '../../../../src/ballistics/grain';
import { off } from '../grain-case';

const outer = { outerDiameter: '50 mm', length: '60 mm' } as const;
// Closed forms here are elementary geometry (spheres, planes, cylinders), worked out beside each test.
describe('buried flaws', () => {
  // A slab of radius R burning from its aft end, a void of radius a with its centre h above that end: the plane reaches it at
  // c = h - a. After that the front is the plane outside the ball of radius ρ = a + (w - c), and the ball above the plane.
  const R = 0.05;
  const a = 0.005;
  const h = 0.02;
  const exact = (w: number): number => {
    const c = h - a;
    if (w < c) return Math.PI * R * R;
    const rho = a + w - c;
    const over = w - h;
    return Math.PI * R * R - Math.PI * (rho * rho - over * over) + 2 * Math.PI * rho * (rho - over);
  };
  const slab = endBurner({ outerDiameter: '100 mm', length: '40 mm' });

  test.each([
    ['on the axis', 0, 1e-6],
    ['off the axis', 10, 1e-3],
  ])('a sphere in a slab, %s: lights when the plane touches it, not before', (_, r, tolerance) => {
    const result = regress(
      withFlaws(slab, {
        flaws: [voidBubble({ diameter: '10 mm', distanceFromAxis: `${r} mm`, position: '20 mm' })],
      }),
    );
    expect(result.flawLighting[0].depth.si).toBeCloseTo(h - a, 12);
    for (const w of [0, 0.005, 0.0149, 0.0151, 0.017, 0.02, 0.022, 0.0249])
      expect(off(result.si.areaAt(w), exact(w)), `${w}`).toBeLessThan(tolerance);
    expect(Array.from(result.si.breaks).some((b) => Math.abs(b - (h - a)) < 1e-9)).toBe(true);
  });

  test('one void lights the next: depths add up along the shortest way', () => {
    const result = regress(
      withFlaws(slab, {
        flaws: [
          voidBubble({ diameter: '4 mm', distanceFromAxis: '10 mm', position: '7 mm' }),
          voidBubble({ diameter: '10 mm', distanceFromAxis: '10 mm', position: '20 mm' }),
        ],
      }),
      { accuracy: 5e-3 },
    );
    // From the aft end (z = 40 mm): 20 - 5 = 15 mm to the large void; from its far side (z = 15) to the small one (z = 9): 6 mm.
    expect(result.flawLighting.map((f) => f.depth.si)).toEqual([
      expect.closeTo(0.021, 9),
      expect.closeTo(0.015, 9),
    ]);
  });

  test('a void beside the bore, and a buried crack, light at their distance from the bore', () => {
    const tube = internalTube({ outerDiameter: '50 mm', boreDiameter: '16 mm', length: '100 mm' });
    const result = regress(
      withFlaws(tube, {
        flaws: [
          voidBubble({ diameter: '4 mm', distanceFromAxis: '17 mm', angle: '40 deg', position: '30 mm' }),
          crack({
            plane: 'radial',
            angle: '200 deg',
            innerRadius: '14 mm',
            outerRadius: '20 mm',
            from: '40 mm',
            to: '60 mm',
          }),
          crack({ plane: 'free', centre: ['0 mm', '-20 mm', '80 mm'], normal: [0, 1, 0], size: '6 mm' }),
        ],
      }),
      { accuracy: 1e-2 },
    );
    // 17 - 2 - 8; 14 - 8; the disc's plane stands 20 mm from the axis, its nearest point is its centre: 20 - 8.
    const depths = result.flawLighting.map((f) => f.depth.si);
    [0.007, 0.006, 0.012].forEach((expected, i) => {
      expect(depths[i]).toBeCloseTo(expected, 8);
    });
    const sound = regress(tube);
    for (const w of [0, 0.003, 0.0059])
      expect(off(result.si.areaAt(w), sound.si.areaAt(w))).toBeLessThan(1e-3);
    expect(result.si.areaAt(0.0061)).toBeGreaterThan(1.01 * sound.si.areaAt(0.0061));
  });

  test('a void that the front reaches last adds nothing before', () => {
    const tube = internalTube({ outerDiameter: '50 mm', boreDiameter: '16 mm', length: '100 mm' });
    const late = withFlaws(tube, {
      flaws: [voidBubble({ diameter: '1 mm', distanceFromAxis: '24.2 mm', position: '50 mm' })],
    });
    const result = regress(late, { accuracy: 1e-2 });
    expect(result.flawLighting[0].depth.si).toBeCloseTo(0.0157, 9);
    expect(off(result.si.areaAt(0.01), regress(tube).si.areaAt(0.01))).toBeLessThan(1e-3);
  });

  test('open or buried: a debond at an end burns from the start, one inside only when reached, and both can be told', () => {
    const tube = internalTube({ outerDiameter: '50 mm', boreDiameter: '16 mm', length: '100 mm' });
    const depth = (options: Parameters<typeof debond>[0]): number =>
      regress(withFlaws(tube, { flaws: [debond(options)] }), { accuracy: 1e-2 }).flawLighting[0].depth.si;
    expect(depth({ from: '0 mm', to: '30 mm' })).toBe(0);
    expect(depth({ from: '40 mm', to: '60 mm', width: '60 deg' })).toBeCloseTo(0.017, 9);
    expect(depth({ from: '40 mm', to: '60 mm', open: true })).toBe(0);
    expect(depth({ from: '0 mm', to: '30 mm', open: false })).toBeCloseTo(0.017, 9);
  });

  test('a buried ring across the grain lights from its inner edge', () => {
    const tube = internalTube({ outerDiameter: '50 mm', boreDiameter: '16 mm', length: '100 mm' });
    const ring = crack({
      plane: 'transverse',
      position: '50 mm',
      innerRadius: '12 mm',
      outerRadius: '20 mm',
    });
    expect(regress(withFlaws(tube, { flaws: [ring] })).flawLighting[0].depth.si).toBeCloseTo(0.004, 9);
  });

  test('overlapping flaws light together', () => {
    const tube = tubularSegment({ outerDiameter: '50 mm', boreDiameter: '16 mm', length: '80 mm' });
    const result = regress(
      withFlaws(tube, {
        flaws: [
          crack({
            plane: 'radial',
            angle: '0 deg',
            innerRadius: '7 mm',
            outerRadius: '16 mm',
            from: '30 mm',
            to: '50 mm',
          }),
          voidBubble({ diameter: '6 mm', distanceFromAxis: '17 mm', position: '40 mm' }),
        ],
      }),
      { accuracy: 1e-2 },
    );
    expect(result.flawLighting.map((f) => f.depth.si)).toEqual([0, 0]);
  });

  test('every narrow flaw brings its caution', () => {
    const tube = internalTube({ outerDiameter: '50 mm', boreDiameter: '16 mm', length: '100 mm' });
    const cracked = withFlaws(tube, {
      flaws: [crack({ plane: 'transverse', position: '50 mm', outerRadius: '15 mm' })],
    });
    expect(regress(cracked).cautions.join()).toMatch(/the effect of the flaw may exceed the computed one/);
    expect(regress(tube).cautions).toEqual([]);
  });
});

describe('a buried void', () => {
  test('is no part of the port, and lays no wall bare, before it lights', () => {
    const tube = internalTube({ ...outer, boreDiameter: '16 mm' });
    const burned = regress(
      withFlaws(tube, {
        flaws: [voidBubble({ diameter: '6 mm', distanceFromAxis: '16 mm', position: '30 mm' })],
      }),
      { stations: 1 },
    );
    // The front reaches it at 16 - 3 - 8 = 5 mm; its section at 30 mm from the head is a circle of radius 3 mm.
    const { area } = burned.portArea[0];
    const depth = burned.depth.si;
    const at = (w: number): number => area.si[depth.findIndex((d) => d >= w)] * 1e6;
    const exact = (w: number): number => Math.PI * (8 + w) ** 2;
    for (const w of [0.001, 0.003, 0.0049]) {
      const own = depth[depth.findIndex((d) => d >= w)] * 1e3;
      expect(off(at(w), exact(own)), `${w}`).toBeLessThan(1e-3);
    }
    const after = depth.findIndex((d) => d > 0.00501);
    expect(1e6 * area.si[after] - exact(1e3 * depth[after])).toBeGreaterThan(0.9 * Math.PI * 9);
    const out = regress(
      withFlaws(tube, {
        flaws: [voidBubble({ diameter: '6 mm', distanceFromAxis: '24 mm', position: '30 mm' })],
      }),
      { accuracy: 1e-2, stations: 1 },
    );
    expect(Math.min(...out.wallExposure.depth.si)).toBeCloseTo(0.013, 9);
  });
});
