import { describe, expect, test } from 'vitest';
import {
  endBurner,
  type Grain,
  offsetBore,
  regress,
  star,
  tubularSegment,
  voidBubble,
  withFlaws,
} from '../../../../src/ballistics/grain';
import { depthField } from '../../../../src/ballistics/grain/front/field';
import { litSources, regressShape } from '../../../../src/ballistics/grain/front/regress-shape';
import { flawedGrain, tubeWithVoids } from '../random-grains';

/**
 * Volume between two depths without rays: on spokes through the grain, the stretches that the distance puts between
 * them. Neither cells nor tables of the library take part.
 */
function burnedBetween(grain: Grain, from: number, to: number): number {
  const { radius, length } = grain.shape.envelope;
  const lit = litSources(grain.shape);
  const front = depthField(lit);
  const solid = depthField(lit.map(({ source }) => ({ source, litAt: 0 })));
  const [spokes, slices, rings] = [90, 60, 60];
  // Stretch of a step in which a value that is linear from a to b exceeds a limit, in r².
  const above = (a: number, b: number, limit: number, r0: number, r1: number): number => {
    if (a > limit === b > limit) return a > limit ? r1 * r1 - r0 * r0 : 0;
    const cut = r0 + ((r1 - r0) * (limit - a)) / (b - a);
    return a > limit ? cut * cut - r0 * r0 : r1 * r1 - cut * cut;
  };
  let sum = 0;
  for (let i = 0; i < spokes; i++)
    for (let j = 0; j < slices; j++) {
      const a = (2 * Math.PI * (i + ((j * 0.7548777) % 1))) / spokes;
      const z = (length * (j + ((i * 0.618034) % 1))) / slices;
      const [c, s] = [Math.cos(a), Math.sin(a)];
      const at = (r: number): readonly [number, number] => {
        const burns = front.depth(r * c, r * s, z);
        const hole = solid.depth(r * c, r * s, z);
        return [Math.min(burns - from, hole), Math.min(burns - to, hole)];
      };
      let last = at(0);
      for (let k = 1; k <= rings; k++) {
        const [r0, r1] = [(radius * (k - 1)) / rings, (radius * k) / rings];
        const next = at(r1);
        sum += above(last[0], next[0], 0, r0, r1) - above(last[1], next[1], 0, r0, r1);
        last = next;
      }
    }
  return (sum * Math.PI * length) / (spokes * slices);
}

describe('area and volume of flawed grains', () => {
  test('a void in an end burner: the lens that the plane front cuts from the sphere', () => {
    // The front is the plane at depth w; the void of radius 3 mm, centre 20 mm deep, lights at 17 mm and burns as a
    // sphere of radius 3 mm + (w - 17 mm) = w - 14 mm about its centre. Plane and sphere meet at the height
    // h = 20 mm - w above the centre; beyond it the sphere, of area 2 π ρ (ρ + h), takes a disc of radius sqrt(ρ² - h²).
    const grain = withFlaws(endBurner({ outerDiameter: '60 mm', length: '60 mm' }), {
      flaws: [voidBubble({ diameter: '6 mm', distanceFromAxis: '2 mm', position: '40 mm' })],
    });
    const { si, accuracy } = regress(grain);
    expect(accuracy.achieved).toBeLessThan(1e-3);
    for (const w of [5, 18, 20, 24, 28]) {
      const rho = w - 14;
      const h = 20 - w;
      const disc = rho * rho - h * h;
      const expected = Math.PI * 900 + (w < 17 ? 0 : 2 * Math.PI * rho * (rho + h) - Math.PI * disc);
      expect(Math.abs((1e6 * si.areaAt(w / 1e3)) / expected - 1), `${w} mm`).toBeLessThan(2e-3);
    }
    expect(Math.abs(si.volume[0] * 1e9 - (Math.PI * 900 * 60 - 36 * Math.PI))).toBeLessThan(1e-4);
  });

  test('random grains: what burns between depths, against the distances alone', () => {
    for (const seed of [3, 7, 31, 38]) {
      const grain = flawedGrain(seed);
      const found = regressShape(grain.shape, { accuracy: 2e-3, steps: 120 });
      const { burnout } = found;
      for (const [from, to] of [
        [0, 0.3],
        [0.3, 0.6],
        [0.6, 0.9],
      ] as const) {
        const { volume } = found.tableAt(Float64Array.of(0, from * burnout, to * burnout, burnout));
        // 5,400 spokes are good to about 2e-3 of the cast volume.
        expect(
          Math.abs(volume[1] - volume[2] - burnedBetween(grain, from * burnout, to * burnout)) / volume[0],
          `${grain} ${from}`,
        ).toBeLessThan(4e-3);
      }
    }
  });

  test('many voids: a neighbour is found by its place, as by trying all', () => {
    const grain = tubeWithVoids(60, 3);
    const lit = litSources(grain.shape);
    const field = depthField(lit);
    for (let i = 0; i < 500; i++) {
      const a = 2.4 * i;
      const r = 0.038 * Math.sqrt((i + 0.5) / 500);
      const [x, y, z] = [r * Math.cos(a), r * Math.sin(a), 0.18 * ((0.618034 * i) % 1)];
      const foot = new Float64Array(3);
      const least = Math.min(...lit.map((l) => l.litAt + l.source.nearest(x, y, z, foot)));
      expect(field.depth(x, y, z)).toBe(least);
      expect(lit[field.footSource()]?.litAt).toBe(field.footLitAt());
    }
  });
});

describe('closed forms, at and beside the depths where the front meets the wall', () => {
  test('an offset bore: the circle of notes on sections, whole up to contact', () => {
    // R 25, bore 8, offset 5, length 100 mm: contact at 12 mm, where the perimeter is 2 π 20 mm.
    const { si } = regress(
      offsetBore({ outerDiameter: '50 mm', boreDiameter: '16 mm', length: '100 mm', offset: '5 mm' }),
    );
    expect(si.areaAt(0.012) / (2 * Math.PI * 0.02 * 0.1)).toBeCloseTo(1, 12);
    for (const w of [0.0119, 0.0121, 0.015, 0.0219]) {
      const rho = 0.008 + w;
      const inside =
        rho <= 0.02
          ? Math.PI
          : Math.PI - Math.acos((0.025 ** 2 - 0.005 ** 2 - rho * rho) / (2 * 0.005 * rho));
      expect(si.areaAt(w) / (2 * rho * inside * 0.1)).toBeCloseTo(1, 10);
    }
    expect(si.depth).toContain(si.breaks[0]);
  });

  test('a star: the sides at contact, and the limit at burnout', () => {
    // Phases of Barrere et al. (1960), from memory: 2N ((l + s) land + s (b + arcsin(l sin b/s))) up to contact.
    const measures = { points: 5, outerDiameter: '80 mm', length: '100 mm', webThickness: '12 mm' } as const;
    const { si } = regress(
      star({ ...measures, filletRadius: '2 mm', angularFraction: 0.6, openingAngle: '70 deg' }),
    );
    const [l, b, s] = [26, (0.6 * Math.PI) / 5, 14];
    const perimeter = 10 * ((l + s) * (Math.PI / 5 - b) + s * (b + Math.asin((l * Math.sin(b)) / s)));
    expect((si.areaAt(0.012) * 1e6) / (100 * perimeter)).toBeCloseTo(1, 10);
  });

  test('a tube: all of its area at burnout, none beyond', () => {
    const { si } = regress(
      tubularSegment({
        outerDiameter: '50 mm',
        boreDiameter: '16 mm',
        length: '100 mm',
        burningEnds: 'none',
      }),
    );
    expect(si.areaAt(0.017) / (2 * Math.PI * 0.025 * 0.1)).toBeCloseTo(1, 10);
    expect(si.areaAt(0.017 * (1 + 1e-6))).toBe(0);
    expect(si.volumeAt(0.017)).toBe(0);
  });
});
