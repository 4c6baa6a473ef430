import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  flangeMoment,
  insertShearStress,
  lipBendingStress,
  lipShearStress,
  seatBearingStress,
  seatOverlap,
} from '../../src/structures';

const size = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const load = size(100, 50_000);
const near = (found: number, wanted: number, relative = 1e-9): void =>
  expect(Math.abs(found - wanted), `${found}, expected ${wanted}`).toBeLessThanOrEqual(
    relative * Math.abs(wanted),
  );

describe('a seat', () => {
  test('bearing stress times the area in contact is the force', () => {
    fc.assert(
      fc.property(
        load,
        size(0.01, 0.1),
        size(0.1, 0.95),
        size(0.1, 1),
        (f, insertDiameter, share, contact) => {
          const opening = share * insertDiameter;
          const stress = seatBearingStress.si({ load: f, insertDiameter, opening, contactShare: contact });
          near(stress * contact * (Math.PI / 4) * (insertDiameter ** 2 - opening ** 2), f);
          // A narrower contact bears more.
          const less = { load: f, insertDiameter, opening, contactShare: contact / 2 };
          near(seatBearingStress.si(less), 2 * stress);
        },
      ),
    );
  });
  test('shear stress times the cylinder that shears is the force, of the lip outside and of the insert inside', () => {
    fc.assert(
      fc.property(load, size(0.01, 0.1), size(0.1, 0.95), size(0.002, 0.03), (f, diameter, share, t) => {
        const lip = lipShearStress.si({ load: f, insertDiameter: diameter, lipThickness: t });
        near(lip * Math.PI * diameter * t, f);
        const opening = share * diameter;
        const insert = insertShearStress.si({ load: f, opening, insertThickness: t });
        near(insert * Math.PI * opening * t, f);
        expect(insert).toBeGreaterThan(lip);
      }),
    );
  });
  test('bending of a narrow lip is that of a straight cantilever with the force at its end', () => {
    fc.assert(
      fc.property(
        load,
        size(0.02, 0.1),
        size(0.5, 0.99),
        size(0.001, 0.01),
        (f, pocketDiameter, share, t) => {
          const opening = share * pocketDiameter;
          const width = (pocketDiameter - opening) / 2;
          const perLength = f / (Math.PI * pocketDiameter); // line load on the circumference of the root
          const section = t ** 2 / 6; // of a strip of unit width
          near(
            lipBendingStress.si({ load: f, pocketDiameter, opening, lipThickness: t }),
            (perLength * width) / section,
          );
        },
      ),
    );
  });
  test('an overlap loses the radial play, half of the growth and the whole erosion', () => {
    // By hand: (30 − 26)/2 − (30.2 − 30)/2 − 0.1/2 − 0.3 = 1.55 mm.
    const overlap = seatOverlap({
      insertDiameter: '30 mm',
      pocketDiameter: '30.2 mm',
      opening: '26 mm',
      growth: '0.1 mm',
      erosion: '0.3 mm',
    });
    expect(overlap.in('mm')).toBeCloseTo(1.55, 10);
    // An insert as wide as the opening of its seat has none.
    const none = seatOverlap.si({
      insertDiameter: 0.026,
      pocketDiameter: 0.026,
      opening: 0.026,
      growth: 0,
      erosion: 0,
    });
    expect(none).toBe(0);
  });
});

describe('a ring', () => {
  const ring = { f: load, outer: size(0.01, 0.08), share: size(0.05, 0.98) };

  test('of vanishing width carries the couple of load and support, F/(2·π) per unit of length, whatever its material', () => {
    fc.assert(
      fc.property(ring.f, ring.outer, size(0, 0.5), (f, outer, poissonRatio) => {
        const innerRadius = outer * (1 - 1e-6);
        near(
          flangeMoment.si({ load: f, outerRadius: outer, innerRadius, poissonRatio }),
          f / (2 * Math.PI),
          1e-5,
        );
      }),
    );
  });
  test('carries a moment that falls as its opening widens and rises with the ratio of Poisson', () => {
    fc.assert(
      fc.property(ring.f, ring.outer, ring.share, size(0, 0.4), (f, outerRadius, share, nu) => {
        const at = (wide: number, poissonRatio: number): number =>
          flangeMoment.si({ load: f, outerRadius, innerRadius: wide * outerRadius, poissonRatio });
        expect(at(share * 1.01, nu)).toBeLessThan(at(share, nu));
        expect(at(share, nu + 0.1)).toBeGreaterThan(at(share, nu));
      }),
    );
  });
  test('refuses an opening as wide as itself', () => {
    expect(() =>
      flangeMoment({ load: '8 kN', outerRadius: '30 mm', innerRadius: '30 mm', poissonRatio: 0.33 }),
    ).toThrow('the opening must be narrower than the ring');
    expect(() =>
      seatBearingStress({ load: '8 kN', insertDiameter: '30 mm', opening: '31 mm', contactShare: 1 }),
    ).toThrow('falls through');
  });
});
