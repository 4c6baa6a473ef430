import { describe, expect, test } from 'vitest';
import {
  composedGrain,
  coneCore,
  cylinderCore,
  finCore,
  finocyl,
  regress,
  sphereCore,
  taperedCore,
} from '../../../../src/ballistics/grain';
import { off } from '../grain-case';

const outer = { outerDiameter: '50 mm', length: '90 mm' } as const;
// Elementary volumes and areas, worked out beside each check.
const cast = (cavity: number): number => Math.PI * 0.025 ** 2 * 0.09 - cavity;

describe('cores', () => {
  test('a composed grain is the named shape of the same cores', () => {
    const fins = { fins: 4, finThickness: '3 mm', finTipDiameter: '32 mm', finFrom: '50 mm' } as const;
    const named = regress(finocyl({ ...outer, boreDiameter: '14 mm', ...fins })).si;
    const composed = regress(
      composedGrain({
        ...outer,
        cores: [
          cylinderCore({ diameter: '14 mm' }),
          finCore({ count: 4, thickness: '3 mm', tipDiameter: '32 mm', from: '50 mm' }),
        ],
      }),
    ).si;
    for (const w of [0, 0.003, 0.009, 0.015])
      expect(off(composed.areaAt(w), named.areaAt(w))).toBeLessThan(1e-9);
    const cone = regress(
      composedGrain({ ...outer, cores: [coneCore({ headDiameter: '12 mm', aftDiameter: '20 mm' })] }),
    );
    const draft = regress(taperedCore({ ...outer, headBoreDiameter: '12 mm', aftBoreDiameter: '20 mm' }));
    expect(off(cone.si.areaAt(0.004), draft.si.areaAt(0.004))).toBeLessThan(1e-9);
  });

  test('a domed blind bore: cylinder and half ball grow together', () => {
    const { si } = regress(
      composedGrain({
        ...outer,
        cores: [coneCore({ headDiameter: '16 mm', aftDiameter: '16 mm', from: '40 mm', dome: 'head' })],
      }),
    );
    expect(
      off(si.volume[0], cast(Math.PI * 0.008 ** 2 * 0.05 + (2 / 3) * Math.PI * 0.008 ** 3)),
    ).toBeLessThan(1e-5);
    for (const w of [0, 0.005, 0.012]) {
      const r = 0.008 + w;
      expect(off(si.areaAt(w), 2 * Math.PI * r * 0.05 + 2 * Math.PI * r * r)).toBeLessThan(1e-5);
    }
  });

  test('a pointed core and a ball on the axis have their volumes', () => {
    const cone = regress(
      composedGrain({
        ...outer,
        cores: [coneCore({ headDiameter: '0 mm', aftDiameter: '20 mm', from: '40 mm' })],
      }),
    );
    expect(off(cone.si.volume[0], cast((Math.PI * 0.01 ** 2 * 0.05) / 3))).toBeLessThan(1e-5);
    const bulb = regress(
      composedGrain({
        ...outer,
        cores: [cylinderCore({ diameter: '10 mm' }), sphereCore({ diameter: '30 mm', position: '45 mm' })],
      }),
    );
    // Ball and bore less what they share: the bore's length in the ball and two caps beyond it.
    const h = Math.sqrt(0.015 ** 2 - 0.005 ** 2);
    const cap = (Math.PI * (0.015 - h) ** 2 * (3 * 0.015 - (0.015 - h))) / 3;
    const shared = Math.PI * 0.005 ** 2 * 2 * h + 2 * cap;
    const cavity = (4 / 3) * Math.PI * 0.015 ** 3 + Math.PI * 0.005 ** 2 * 0.09 - shared;
    expect(off(bulb.si.volume[0], cast(cavity))).toBeLessThan(1e-5);
  });

  test('an inhibited face does not burn; a sleeve over part of a bore leaves the rest', () => {
    const sleeved = regress(
      composedGrain({
        ...outer,
        cores: [cylinderCore({ diameter: '16 mm', burningSide: { from: '30 mm', to: '60 mm' } })],
      }),
    ).si;
    // From the edge of the sleeve the front is a quarter torus: 2π (r w π/2 + w²) at each edge.
    for (const w of [0, 0.004, 0.01]) {
      const exact = 2 * Math.PI * ((0.008 + w) * 0.03 + 2 * ((0.008 * w * Math.PI) / 2 + w * w));
      expect(off(sleeved.areaAt(w), exact)).toBeLessThan(1e-5);
    }
    const blind = (inhibited: readonly ('side' | 'head')[]) =>
      regress(
        composedGrain({ ...outer, cores: [cylinderCore({ diameter: '16 mm', from: '40 mm', inhibited })] }),
      ).si.areaAt(0);
    expect(off(blind([]), Math.PI * (0.016 * 0.05 + 0.008 ** 2))).toBeLessThan(1e-5);
    expect(off(blind(['head']), Math.PI * 0.016 * 0.05)).toBeLessThan(1e-5);
    expect(off(blind(['side']), Math.PI * 0.008 ** 2)).toBeLessThan(1e-5);
  });

  test('two bores beside each other count what they share once', () => {
    const twin = regress(
      composedGrain({
        ...outer,
        cores: [
          cylinderCore({ diameter: '10 mm', offset: '3 mm', angle: '0 deg' }),
          cylinderCore({ diameter: '10 mm', offset: '3 mm', angle: '180 deg' }),
        ],
      }),
    );
    // Two circles of radius r, centres 2e apart: r² (2π - 2a + sin 2a) with cos a = e/r.
    const a = Math.acos(3 / 5);
    const section = 0.005 ** 2 * (2 * Math.PI - 2 * a + Math.sin(2 * a));
    expect(off(twin.si.volume[0], cast(section * 0.09))).toBeLessThan(1e-6);
    expect(twin.accuracy.symmetry).toBeGreaterThanOrEqual(2);
    // The last propellant is on the wall, square to the line of the two axes; it is found between samples of the crease there.
    expect(off(twin.burnout.si, Math.hypot(0.025, 0.003) - 0.005)).toBeLessThan(1e-5);
  });
});
