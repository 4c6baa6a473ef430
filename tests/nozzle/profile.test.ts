// The profile to turn: pieces join, curves are what they say, bodies have the volumes of their frusta.
import { describe, expect, test } from 'vitest';
import * as nozzle from '../../src/nozzle';
import { pointOn } from '../../src/nozzle/contour-path';
import { errorOf } from '../error-code';

const near = (found: number, wanted: number, rel: number): void =>
  expect(Math.abs(found - wanted)).toBeLessThanOrEqual(rel * Math.abs(wanted));

describe('profile', () => {
  const cone = {
    throatDiameter: '12 mm',
    exitDiameter: '32 mm',
    inletDiameter: '40 mm',
    entranceRadius: '5 mm',
    throatRadius: '9 mm',
    downstreamRadius: '4 mm',
    throatLength: '2 mm',
    divergent: { shape: 'cone', halfAngle: '12 deg' },
  } as const;
  const bell = { ...cone, divergent: { shape: 'bell', initialAngle: '24 deg', exitAngle: '9 deg' } } as const;

  test.each([
    ['cone', cone],
    ['bell', bell],
  ] as const)(
    'of a %s: pieces join, tangents turn nowhere sharply, the throat is the narrowest place',
    (_, options) => {
      const contour = nozzle.nozzleContour(options);
      const { pieces } = contour;
      const slope = (piece: nozzle.ContourPiece, u: number): number => {
        const step = 1e-6;
        const [a, b] =
          u === 0 ? [pointOn(piece, 0), pointOn(piece, step)] : [pointOn(piece, 1 - step), pointOn(piece, 1)];
        return Math.atan2(b.r - a.r, b.x - a.x);
      };
      for (let i = 1; i < pieces.length; i++) {
        expect(
          Math.hypot(pieces[i].from.x - pieces[i - 1].to.x, pieces[i].from.r - pieces[i - 1].to.r),
        ).toBeLessThan(1e-15);
        expect(Math.abs(slope(pieces[i], 0) - slope(pieces[i - 1], 1))).toBeLessThan(1e-5);
      }
      near(contour.radius.min().in('mm'), 6, 1e-12);
      near(contour.radius.at(-1).in('mm'), 16, 1e-12);
      near(contour.radius.at(0).in('mm'), 20, 1e-12);
      const x = contour.x.si;
      for (let i = 1; i < x.length; i++) expect(x[i]).toBeGreaterThan(x[i - 1]);
      expect(contour.svgPath.startsWith('M ')).toBe(true);
      // The path ends at the lip: its last two numbers are the end of the profile, in millimetres.
      const numbers = contour.svgPath.split(' ').map(Number);
      near(numbers[numbers.length - 1], -16, 1e-9);
      near(numbers[numbers.length - 2], contour.x.at(-1).in('mm'), 1e-5);
    },
  );

  test('stations say all a lathe needs: the profile drawn from them alone is the profile', () => {
    const contour = nozzle.nozzleContour(cone);
    const { stations, pieces } = contour;
    for (let i = 1; i < stations.length; i++) {
      const [before, at] = [stations[i - 1], stations[i]];
      near(at.fromInlet.in('mm'), at.x.in('mm') - stations[0].x.in('mm'), 1e-12);
      const [rise, run] = [(at.diameter.si - before.diameter.si) / 2, at.x.si - before.x.si];
      if (at.radius === undefined || at.centre === undefined) {
        near(Math.abs(rise), Math.tan(at.halfAngle?.si ?? Number.NaN) * run, 1e-9);
        expect(pieces[i - 1].kind).toBe('line');
        continue;
      }
      expect(at.halfAngle).toBeUndefined();
      for (const end of [before, at])
        near(
          Math.hypot(end.x.si - at.centre.x.si, end.diameter.si / 2 - at.centre.fromAxis.si),
          at.radius.si,
          1e-9,
        );
    }
    expect(stations.map(({ radius }) => radius?.in('mm')).filter((r) => r !== undefined)).toEqual([5, 9, 4]);
    // The lip, by hand: land 2 + arc 4·sin 12° + ((16 − 6) − 4·(1 − cos 12°))/tan 12° = 49.4667; printed to the micrometre.
    expect(String(contour)).toMatch(/end of divergent cone +49\.467 +\d+\.\d{3} +32\.000/);
  });

  test('arcs and parabola lie on their curves: every arc point at its radius, the bell ends at its angles', () => {
    for (const piece of nozzle.nozzleContour(bell).pieces) {
      if (piece.kind === 'arc')
        for (const u of [0, 0.3, 0.7, 1]) {
          const { x, r } = pointOn(piece, u);
          near(Math.hypot(x - piece.centre.x, r - piece.centre.r), piece.radius, 1e-12);
        }
      if (piece.kind === 'parabola') {
        const angle = (a: nozzle.ContourPoint, b: nozzle.ContourPoint) => Math.atan2(b.r - a.r, b.x - a.x);
        near((angle(piece.from, piece.control) * 180) / Math.PI, 24, 1e-12);
        near((angle(piece.control, piece.to) * 180) / Math.PI, 9, 1e-11);
      }
    }
  });

  test('sharp-cornered cones have the volume and surface of frusta', () => {
    const plain = nozzle.nozzleContour({
      throatDiameter: '12 mm',
      exitDiameter: '32 mm',
      inletDiameter: '40 mm',
      throatRadius: '0 mm',
      downstreamRadius: '0 mm',
      divergent: { shape: 'cone', halfAngle: '12 deg' },
    });
    const solid = nozzle.insertSolid({ contour: plain, outerDiameter: '50 mm', density: '1780 kg/m^3' });
    const frustum = (r1: number, r2: number, angle: number) => {
      const l = (r2 - r1) / Math.tan((angle * Math.PI) / 180);
      return {
        l,
        v: (Math.PI / 3) * l * (r1 * r1 + r1 * r2 + r2 * r2),
        s: Math.PI * (r1 + r2) * Math.hypot(l, r2 - r1),
      };
    };
    const front = frustum(6, 20, 45);
    const back = frustum(6, 16, 12);
    near(solid.boreVolume.in('mm^3'), front.v + back.v, 1e-9);
    near(solid.wettedArea.in('mm^2'), front.s + back.s, 1e-9);
    near(solid.volume.in('mm^3'), Math.PI * 25 * 25 * (front.l + back.l) - front.v - back.v, 1e-9);
    near(solid.mass.in('g'), solid.volume.in('cm^3') * 1.78, 1e-9);
    near(solid.minWall.in('mm'), 5, 1e-9);
  });

  test('two stretches of a body make the whole', () => {
    const contour = nozzle.nozzleContour(cone);
    const of = (part: object) =>
      nozzle.insertSolid({ contour, outerDiameter: '50 mm', density: '1780 kg/m^3', ...part });
    near(of({ to: '3.3 mm' }).volume.si + of({ from: '3.3 mm' }).volume.si, of({}).volume.si, 1e-12);
  });

  test('a finer tolerance changes the volume by no more than the tolerance allows', () => {
    const volume = (tolerance: '0.01 mm' | '0.0001 mm'): number => {
      const contour = nozzle.nozzleContour({ ...bell, tolerance });
      return nozzle
        .insertSolid({ contour, outerDiameter: '50 mm', density: '1 g/cm^3' })
        .boreVolume.in('mm^3');
    };
    const surface = 1e4; // mm², more than the wetted surface
    expect(Math.abs(volume('0.01 mm') - volume('0.0001 mm'))).toBeLessThan(0.01 * surface);
  });

  test.each([
    [{ exitDiameter: '10 mm' }, /exitDiameter must be at least the throat diameter/],
    [{ inletDiameter: '10 mm' }, /at least the throat diameter/],
    [{ entranceRadius: '80 mm' }, /all that fits between inlet and throat/],
    [{ convergentHalfAngle: '90 deg' }, /below 90°/],
    [{ divergent: { shape: 'bell', initialAngle: '9 deg', exitAngle: '24 deg' } }, /below the initial angle/],
    [{ divergent: { shape: 'bell', initialAngle: '12 deg', exitAngle: '9 deg' } }, /mean slope/],
  ] as const)('refuses %o', (change, message) => {
    expect(() => nozzle.nozzleContour({ ...cone, ...change })).toThrowError(message);
  });
});

describe('profiles at the edge', () => {
  test('of one diameter without a throat length there is none', () => {
    const error = errorOf(() =>
      nozzle.nozzleContour({
        throatDiameter: '12 mm',
        exitDiameter: '12 mm',
        inletDiameter: '12 mm',
        divergent: { shape: 'cone', halfAngle: '12 deg' },
      }),
    );
    expect(error?.path).toBe('throatLength');
  });

  test('a radius that does not fit is named, the default as well', () => {
    const small = {
      throatDiameter: '12 mm',
      exitDiameter: '14 mm',
      inletDiameter: '16 mm',
      divergent: { shape: 'cone', halfAngle: '12 deg' },
    } as const;
    expect(errorOf(() => nozzle.nozzleContour(small))?.message).toMatch(
      /throatRadius must be at most 6\.8284 mm.*, got 'the default of 12 mm'/, // rise 2 mm over 1 − cos 45°
    );
    expect(errorOf(() => nozzle.nozzleContour({ ...small, throatRadius: '30 mm' }))?.path).toBe(
      'throatRadius',
    );
  });

  test('an arc that reaches the exit leaves no cone behind it', () => {
    const halfAngle = `${(Math.acos(1 - 1 / 10) * 180) / Math.PI} deg` as const;
    const { stations } = nozzle.nozzleContour({
      throatDiameter: '12 mm',
      exitDiameter: '14 mm',
      inletDiameter: '20 mm',
      throatRadius: '3 mm',
      downstreamRadius: '9.9999999999999 mm',
      tolerance: '0.01 mm',
      divergent: { shape: 'cone', halfAngle },
    });
    expect(stations[stations.length - 1].name).toBe('end of downstream throat radius');
    near(stations[stations.length - 1].diameter.in('mm'), 14, 1e-9);
  });
});
