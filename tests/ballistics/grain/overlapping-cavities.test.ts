import { describe, expect, test } from 'vitest';
import {
  composedGrain,
  cylinderCore,
  extrudedCore,
  finCore,
  finocyl,
  internalTube,
  regress,
  voidBubble,
  withFlaws,
} from '../../../src/ballistics/grain';
import { off } from './grain-case';

const outer = { outerDiameter: '50 mm', length: '60 mm' } as const;
const deg = (v: number): number => (v * Math.PI) / 180;
const NOTCH = 9 * Math.cos(deg(30)) + Math.sqrt(81 * Math.cos(deg(30)) ** 2 - 45);

// Expected values here are elementary geometry, worked out beside each test.
describe('cavities that share space count it once', () => {
  test('fins without a bore: what they share about the axis is cast away once, and so are their flat ends', () => {
    const half = 2.5;
    const tip = 12;
    for (const count of [2, 3, 4, 6]) {
      const grain = composedGrain({
        ...outer,
        cores: [
          finCore({
            count,
            thickness: `${2 * half} mm`,
            tipDiameter: `${2 * tip} mm`,
            from: '20 mm',
            to: '45 mm',
          }),
        ],
      });
      // A sector of 180 deg/N beside a fin's middle line: the half fin less the triangle beyond the line to its neighbour.
      const beyond = count > 2 ? (half * half) / Math.tan(deg(180 / count)) : 0;
      const section = count * (2 * half * tip - beyond);
      const root = count > 2 ? half / Math.tan(deg(180 / count)) : 0;
      const perimeter = 2 * count * (half + tip - root);
      const { si } = regress(grain, { stations: 1 });
      expect(off(1e9 * si.volume[0], Math.PI * 625 * 60 - 25 * section), `${count}`).toBeLessThan(1e-3);
      expect(off(1e6 * si.area[0], 25 * perimeter + 2 * section), `${count}`).toBeLessThan(2e-3);
    }
  });

  test('two round fins back to back are a plate with round edges: no face between them', () => {
    const plate = composedGrain({
      ...outer,
      cores: [finCore({ count: 2, thickness: '3 mm', tipDiameter: '40 mm', tip: 'round' })],
    });
    // Two flats of 2 × 18.5 mm and two half circles of radius 1.5 mm.
    expect(off(1e6 * regress(plate).si.area[0], 60 * (4 * 18.5 + 2 * Math.PI * 1.5))).toBeLessThan(1e-6);
  });

  test.each([
    // Half width 5: sides meet at 5 / tan 30°, then a rectangle and a quarter circle to the fin's middle line.
    [
      'by their sides',
      5,
      12 * (12.5 / Math.tan(deg(30)) + 5 * (10 - 5 / Math.tan(deg(30))) + 6.25 * Math.PI),
    ],
    // Half width 6: the circles about (9, 0) and its turns meet on the line at 30° at ρ with ρ² - 18 ρ cos 30° + 81 = 36;
    // to the middle line there is a triangle and a sector.
    ['by their tips', 6, 12 * (0.25 * 9 * NOTCH + 18 * Math.acos((NOTCH * Math.cos(deg(30)) - 9) / 6))],
  ])('wide round fins meet %s', (_, half, port) => {
    const fins = finCore({ count: 6, thickness: `${2 * half} mm`, tipDiameter: '30 mm', tip: 'round' });
    const { castVolume } = regress(composedGrain({ ...outer, cores: [fins] }));
    expect(off(castVolume.in('mm^3'), 60 * (Math.PI * 625 - port))).toBeLessThan(1e-4);
  });

  test('square fins that fill everything between them are refused', () => {
    for (const act of [
      () =>
        composedGrain({ ...outer, cores: [finCore({ count: 6, thickness: '16 mm', tipDiameter: '20 mm' })] }),
      () =>
        finocyl({
          ...outer,
          boreDiameter: '4 mm',
          fins: 6,
          finThickness: '3 mm',
          finTipDiameter: '30 mm',
          aft: { finThickness: '4 mm', finTipDiameter: '40 mm' },
        }),
    ])
      expect(act).toThrow(expect.objectContaining({ code: 'grain-measure' }));
  });

  test('the mouth of a tapered fin in a burning end does not burn', () => {
    const { si } = regress(
      finocyl({
        ...outer,
        burningEnds: 'aft',
        boreDiameter: '10 mm',
        fins: 5,
        finThickness: '3 mm',
        finTipDiameter: '30 mm',
        finFrom: '15 mm',
        aft: { finThickness: '4 mm', finTipDiameter: '40 mm' },
      }),
      { stations: 1 },
    );
    // Area is minus the derivative of volume: the first step would miss the mouths' 300 mm².
    const slope = (si.volume[0] - si.volume[1]) / (si.depth[1] - si.depth[0]);
    expect(off((si.area[0] + si.area[1]) / 2, slope)).toBeLessThan(3e-3);
  });

  test.each([
    ['overlap', 'M -6 -9 H 6 V 9 H -6 Z M 3 -3 H 13 V 3 H 3 Z'],
    ['cross themselves', 'M -8 -8 L 8 8 L 8 -8 L -8 8 Z'],
    ['stand on each other', 'M -6 -9 H 6 V 9 H -6 Z M -6 -9 H 6 V 9 H -6 Z'],
    ['cross by an arc', 'M 8 0 A 8 8 0 0 1 -8 0 A 8 8 0 0 1 8 0 Z M 0 -2 H 12 V 2 H 0 Z'],
  ])('loops that %s are refused', (_, outline) => {
    expect(() => extrudedCore({ ...outer, outline })).toThrow(/crosses or retraces itself/);
  });

  test('loops that only touch at a corner, and nested ones, are not', () => {
    const { castVolume } = regress(
      extrudedCore({ ...outer, outline: 'M 0 0 H 10 V 10 H 0 Z M 0 0 H -10 V -10 H 0 Z' }),
    );
    expect(off(castVolume.in('mm^3'), 60 * (Math.PI * 625 - 200))).toBeLessThan(1e-4);
    const ring = regress(
      extrudedCore({ ...outer, outline: 'M -12 -12 H 12 V 12 H -12 Z M -8 -8 H 8 V 8 H -8 Z' }),
    );
    expect(off(ring.castVolume.in('mm^3'), 60 * (Math.PI * 625 - 24 * 24 + 16 * 16))).toBeLessThan(1e-4);
  });
});

describe('a buried void', () => {
  test('is no part of the port, and lays no wall bare, before it lights', () => {
    const tube = internalTube({ ...outer, boreDiameter: '16 mm' });
    const burned = regress(
      withFlaws(tube, voidBubble({ diameter: '6 mm', distanceFromAxis: '16 mm', position: '30 mm' })),
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
      withFlaws(tube, voidBubble({ diameter: '6 mm', distanceFromAxis: '24 mm', position: '30 mm' })),
      { accuracy: 1e-2, stations: 1 },
    );
    expect(Math.min(...out.wallExposure.depth.si)).toBeCloseTo(0.013, 9);
  });
});

describe('mass properties late in the burn', () => {
  test('the centre follows a front of even depth that burns through in one part first', () => {
    // Wide bore aft of 30 mm: it is gone at 10 mm depth; then only the head half is left, less what burns into it from there.
    const grain = composedGrain({
      ...outer,
      cores: [cylinderCore({ diameter: '10 mm' }), cylinderCore({ diameter: '30 mm', from: '30 mm' })],
    });
    const burned = regress(grain, { stations: 1 });
    const { centreAxial } = burned.massProperties('1700 kg/m^3');
    // At depth w > 10 mm: ρ = 5 + w inside, and beside the step what is farther than w from the rim circle (15, 30) and the step's face:
    // z < 30 - w for r < 15, z < 30 - sqrt(w² - (r - 15)²) for 15 < r < 15 + w. Midpoint sums over r.
    const exact = (w: number): number => {
      let [m, mz] = [0, 0];
      const [from, to, n] = [5 + w, 25, 20000];
      for (let i = 0; i < n; i++) {
        const r = from + ((to - from) * (i + 0.5)) / n;
        const top = 30 - (r < 15 ? w : Math.sqrt(Math.max(0, w * w - (r - 15) ** 2)));
        m += r * top;
        mz += (r * top * top) / 2;
      }
      return mz / m;
    };
    for (const w of [12, 15]) {
      const k = burned.depth.si.findIndex((d) => d >= 1e-3 * w);
      expect(off(1e3 * centreAxial.si[k], exact(1e3 * burned.depth.si[k])), `${w}`).toBeLessThan(5e-3);
    }
    // Not round: the hunt found this one 17 % off with a tenth of the propellant left. Its centre by sampling the distances
    // of a million points, quasi-random, computed with numpy 1.24.2.
    const finned = composedGrain({
      ...outer,
      cores: [
        cylinderCore({ diameter: '12 mm' }),
        finCore({ count: 4, thickness: '4 mm', tipDiameter: '50 mm', from: '20 mm' }),
      ],
    });
    const late = regress(finned, { accuracy: 3e-3, stations: 1 });
    const z = late.massProperties('1 kg/m^3').centreAxial;
    const k = late.depth.si.findIndex((d) => d >= 0.01339);
    expect(Math.abs(1e3 * z.si[k] - 11.56)).toBeLessThan(0.15);
  });
});
