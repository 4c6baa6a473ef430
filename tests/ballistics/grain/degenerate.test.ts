import { describe, expect, test } from 'vitest';
import {
  crack,
  endBurner,
  extrudedCore,
  finocyl,
  internalTube,
  offsetBore,
  regress,
  rodAndTube,
  slottedTube,
  star,
  tubularSegment,
  voidBubble,
  wagonWheel,
  withFlaws,
} from '../../../src/ballistics/grain';
import { ball } from '../../../src/ballistics/grain/ball';
import { circleOutline } from '../../../src/ballistics/grain/outline-shapes';
import { prism } from '../../../src/ballistics/grain/prism';
import { regressShape } from '../../../src/ballistics/grain/regress-shape';
import { MeopError } from '../../../src/units';
import { off } from './grain-case';

const codeOf = (act: () => unknown): string => {
  try {
    act();
  } catch (error) {
    if (error instanceof MeopError) return error.code;
    throw error;
  }
  return 'no error';
};

describe('degenerate input: right, or a typed error', () => {
  test('measures that do not fit are named', () => {
    const tube = { outerDiameter: '50 mm', boreDiameter: '16 mm', length: '100 mm' } as const;
    for (const act of [
      () => internalTube({ ...tube, length: '0 mm' }),
      () => internalTube({ ...tube, boreDiameter: '50 mm' }),
      () => internalTube({ ...tube, outerDiameter: '-50 mm' }),
      () => offsetBore({ ...tube, offset: '20 mm' }),
      () =>
        rodAndTube({
          outerDiameter: '60 mm',
          tubeBoreDiameter: '40 mm',
          rodDiameter: '40 mm',
          length: '1 m',
        }),
      () => endBurner({ outerDiameter: '40 mm', length: '60 mm', burningEnds: 'none' }),
      () => finocyl({ ...tube, fins: 2.5, finThickness: '2 mm', finTipDiameter: '30 mm' }),
      () => finocyl({ ...tube, fins: 6, finThickness: '20 mm', finTipDiameter: '30 mm' }),
      () => finocyl({ ...tube, fins: 6, finThickness: '2 mm', finTipDiameter: '10 mm' }),
      () => slottedTube({ ...tube, slots: 4, slotWidth: '2 mm', slotFrom: '100 mm', slotTo: '120 mm' }),
      () =>
        star({
          outerDiameter: '50 mm',
          length: '100 mm',
          points: 5,
          webThickness: '24 mm',
          filletRadius: '3 mm',
          angularFraction: 0.75,
          openingAngle: '60 deg',
        }),
      () =>
        wagonWheel({
          outerDiameter: '50 mm',
          length: '100 mm',
          spokes: 12,
          ringInnerDiameter: '40 mm',
          spokeThickness: '9 mm',
          spokeTipDiameter: '10 mm',
        }),
      () => extrudedCore({ outerDiameter: '50 mm', length: '100 mm', outline: 'M 100 0 L 110 0 L 110 5 Z' }),
      () => extrudedCore({ outerDiameter: '50 mm', length: '100 mm', outline: 'M 0 0 W 3' }),
      () => extrudedCore({ outerDiameter: '50 mm', length: '100 mm', outline: 'M 0 0 A 3 4 0 0 1 5 5 Z' }),
      () =>
        withFlaws(
          internalTube(tube),
          voidBubble({ diameter: '2 mm', distanceFromAxis: '30 mm', position: '10 mm' }),
        ),
      () =>
        withFlaws(
          internalTube(tube),
          crack({
            plane: 'radial',
            angle: '0 deg',
            innerRadius: '8 mm',
            outerRadius: '6 mm',
            from: '0 mm',
            to: '10 mm',
          }),
        ),
      () => regress(internalTube(tube), { accuracy: 0 }),
      () => regress(internalTube(tube), { steps: 3 }),
    ])
      expect(codeOf(act), String(act)).toBe('grain-measure');
    expect(codeOf(() => internalTube({ ...tube, length: Number.NaN as never }))).not.toBe('no error');
  });

  test('a length in the wrong unit, or none, is refused by the door', () => {
    expect(
      codeOf(() => internalTube({ outerDiameter: '50 mm', boreDiameter: '16 s' as '16 mm', length: '1 m' })),
    ).toBe('wrong-kind');
    expect(
      codeOf(() => internalTube({ outerDiameter: '50 mm', boreDiameter: 16 as never, length: '1 m' })),
    ).toBe('bare-number');
  });

  test('fins that touch or pass the wall are cut off there', () => {
    const options = {
      outerDiameter: '50 mm',
      boreDiameter: '16 mm',
      length: '50 mm',
      fins: 4,
      finThickness: '4 mm',
    } as const;
    const touching = regress(finocyl({ ...options, finTipDiameter: '49.999999 mm' }), { stations: 1 });
    const passing = regress(finocyl({ ...options, finTipDiameter: '70 mm' }), { stations: 1 });
    // The clipped fins differ by the slivers between a flat tip and the wall: h³/(3R) a fin and half, some 0.2 mm².
    expect(off(touching.si.volume[0], passing.si.volume[0])).toBeLessThan(1e-3);
    expect(passing.web.si).toBeCloseTo(0, 9);
  });

  test('no burning surface, or nothing left to burn, is an error', () => {
    const envelope = { form: 'cylinder', radius: 0.025, length: 0.1 } as const;
    const shape = { envelope, ports: [], inert: [], flaws: [], headBurns: false, aftBurns: false };
    const options = { accuracy: 1e-3, steps: 50 };
    expect(codeOf(() => regressShape(shape, options))).toBe('grain-nothing-burns');
    const flaw = { source: ball({ name: 'void', x: 0, y: 0, z: 0.05, radius: 0.004 }), open: undefined };
    expect(codeOf(() => regressShape({ ...shape, flaws: [flaw] }, options))).toBe('grain-nothing-burns');
    const bore = prism({
      name: 'bore',
      outline: circleOutline(0.03),
      from: 0,
      to: 0.1,
      faces: { side: [0, 0.1], start: 'through', end: 'through' },
    });
    expect(codeOf(() => regressShape({ ...shape, ports: [bore] }, options))).toBe('grain-no-propellant');
  });

  test('an inhibited cavity in the way is refused, one at the side of the way is not', () => {
    const envelope = { form: 'cylinder', radius: 0.03, length: 0.1 } as const;
    const core = (
      side: readonly [number, number] | undefined,
      start: 'burning' | 'inhibited',
      from: number,
    ) =>
      prism({
        name: 'core',
        outline: circleOutline(0.008),
        from,
        to: 0.1,
        faces: { side, start, end: 'through' },
      });
    const hole = prism({
      name: 'hole',
      outline: circleOutline(0.003, 0.02),
      from: 0,
      to: 0.1,
      faces: { side: [0, 0.1], start: 'through', end: 'through' },
    });
    const shape = {
      envelope,
      ports: [core([0.03, 0.1], 'burning', 0.03)],
      inert: [],
      flaws: [],
      headBurns: false,
      aftBurns: false,
    };
    const options = { accuracy: 1e-3, steps: 50 };
    expect(codeOf(() => regressShape({ ...shape, inert: [hole] }, options))).toBe('grain-path-blocked');
    // Below an inhibited floor beside an inhibited stretch of side, the front would have to burn around the corner.
    const corner = core([0.05, 0.08], 'inhibited', 0.03);
    expect(codeOf(() => regressShape({ ...shape, ports: [corner] }, options))).toBe('grain-path-blocked');
    // A blind bore whose floor, or whose side, is inhibited: every way is straight, and all propellant burns in the end.
    const cast = Math.PI * (0.03 ** 2 * 0.1 - 0.008 ** 2 * 0.07);
    for (const port of [core([0.03, 0.1], 'inhibited', 0.03), core(undefined, 'burning', 0.03)])
      expect(off(regressShape({ ...shape, ports: [port] }, options).volume[0], cast)).toBeLessThan(1e-6);
  });

  test('a free crack that sticks out of the wall where it would mislead is refused', () => {
    const tube = internalTube({ outerDiameter: '50 mm', boreDiameter: '16 mm', length: '100 mm' });
    const across = crack({
      plane: 'free',
      centre: ['20 mm', '0 mm', '50 mm'],
      normal: [1, 0, 0],
      size: '20 mm',
      width: '40 mm',
    });
    expect(codeOf(() => regress(withFlaws(tube, across)))).toBe('grain-surface-outside');
  });

  test('a circle drawn as SVG path data or as two bulged corners is the tube', () => {
    const outer = { outerDiameter: '50 mm', length: '80 mm' } as const;
    const tube = regress(internalTube({ ...outer, boreDiameter: '16 mm' })).si;
    for (const outline of [
      'M 8 0 A 8 8 0 0 1 -8 0 A 8 8 0 0 1 8 0 Z',
      'M8,0 a8,8 0 0 0 -16,0 a8 8 0 0 0 16 0z',
      [
        { x: '8 mm', y: '0 mm', bulge: 1 },
        { x: '-8 mm', y: '0 mm', bulge: 1 },
      ] as const,
    ]) {
      const drawn = regress(extrudedCore({ ...outer, outline })).si;
      for (const w of [0, 0.004, 0.016]) expect(off(drawn.areaAt(w), tube.areaAt(w))).toBeLessThan(1e-6);
    }
    // A ring: the inner loop is propellant again, so this is the rod and tube.
    const ring =
      'M 20 0 A 20 20 0 0 1 -20 0 A 20 20 0 0 1 20 0 Z M 10 0 A 10 10 0 0 1 -10 0 A 10 10 0 0 1 10 0 Z';
    const gap = regress(extrudedCore({ outerDiameter: '60 mm', length: '100 mm', outline: ring })).si;
    expect(off(gap.areaAt(0.005), 2 * Math.PI * 0.03 * 0.1)).toBeLessThan(1e-6);
  });
});

describe('long work', () => {
  const grain = finocyl({
    outerDiameter: '76 mm',
    boreDiameter: '20 mm',
    length: '90 mm',
    fins: 6,
    finThickness: '4 mm',
    finTipDiameter: '44 mm',
    finFrom: '40 mm',
  });

  test('tells how far it is, never backwards, and ends at 1', () => {
    const told: number[] = [];
    regress(grain, { accuracy: 5e-3, onProgress: (f) => told.push(f) });
    expect(told.length).toBeGreaterThan(10);
    expect(told.at(-1)).toBe(1);
    told.slice(1).forEach((f, i) => {
      expect(f).toBeGreaterThanOrEqual(told[i]);
    });
  });

  test('stops when told, with the reason given', () => {
    const controller = new AbortController();
    const reason = new Error('enough');
    const run = () =>
      regress(grain, {
        signal: controller.signal,
        onProgress: (f) => {
          if (f > 0.2) controller.abort(reason);
        },
      });
    expect(run).toThrow(reason);
  });
});

describe('what a regression says', () => {
  test('the wall of a segment is exposed by distance from bore and ends', () => {
    const r = regress(tubularSegment({ outerDiameter: '50 mm', boreDiameter: '16 mm', length: '80 mm' }));
    const { position, depth } = r.wallExposure;
    position.si.forEach((z, j) => {
      expect(depth.si[j]).toBeCloseTo(Math.min(0.017, z, 0.08 - z), 9);
    });
  });

  test('mass, centre and inertia of a tube are those of a hollow cylinder', () => {
    // Elementary: J = m (R² + r²)/2 about the axis, m (3 (R² + r²) + L²)/12 across it.
    const r = regress(
      tubularSegment({ outerDiameter: '50 mm', boreDiameter: '16 mm', length: '80 mm', burningEnds: 'aft' }),
    );
    const m = r.massProperties('1800 kg/m^3');
    const depth = r.depth.si;
    for (const k of [0, 100, 200]) {
      const [inner, length] = [0.008 + depth[k], 0.08 - depth[k]];
      const mass = 1800 * Math.PI * (0.025 ** 2 - inner ** 2) * length;
      const radii = 0.025 ** 2 + inner ** 2;
      expect(off(m.mass.si[k], mass)).toBeLessThan(1e-6);
      expect(off(m.centreAxial.si[k], length / 2)).toBeLessThan(1e-6);
      expect(off(m.axialInertia.si[k], (mass * radii) / 2)).toBeLessThan(2e-3);
      expect(off(m.inertiaX.si[k], (mass * (3 * radii + length ** 2)) / 12)).toBeLessThan(2e-3);
    }
  });

  test('the port at a station beside a burning end opens to the wall when the end has passed it', () => {
    const r = regress(tubularSegment({ outerDiameter: '50 mm', boreDiameter: '16 mm', length: '40 mm' }), {
      stations: 4,
    });
    const first = r.portArea[0];
    const k = r.depth.si.findIndex((w) => w > first.position.si);
    expect(off(first.area.si[k], Math.PI * 0.025 ** 2)).toBeLessThan(1e-9);
    expect(first.perimeter.si[k]).toBe(0);
    expect(off(first.perimeter.si[0], Math.PI * 0.016)).toBeLessThan(1e-6);
  });
});
