import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  clampedDeflection,
  clampedEdgeStress,
  clampedLargeDeflection,
  clampedRingStress,
  ellipsoidalFactor,
  ellipsoidalHeadStress,
  flatClosureThickness,
  stretchedPlateDeflection,
  supportedCentreStress,
  supportedHubHoleStress,
  supportedHubStress,
  supportedRingStress,
  torisphericalFactor,
  torisphericalHeadStress,
} from '../../src/structures';
import { quantity } from '../../src/units';
import { codeAndPathOf } from '../error-code';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const near = (value: number, wanted: number, relative = 1e-9) =>
  expect(Math.abs(value - wanted)).toBeLessThanOrEqual(relative * Math.abs(wanted));

describe('stepped plates', () => {
  const load = { pressure: 7e6, radius: 0.04 };
  test('a hub that fills the plate is the solid plate (limit of the derivation)', () => {
    fc.assert(
      fc.property(between(0.002, 0.02), between(0.2, 0.4), (thickness, poissonRatio) => {
        const hub = { ...load, hubRadius: 0.04 * (1 - 1e-9), hubThickness: thickness, poissonRatio };
        near(
          supportedHubStress.si(hub),
          supportedCentreStress.si({ ...load, thickness, poissonRatio }),
          1e-7,
        );
      }),
    );
  });
  test('a vanishing hub raises a supported plate by 2/(1 + ν) and leaves the edge of a clamped one (rigid inclusion)', () => {
    fc.assert(
      fc.property(between(0.002, 0.02), between(0.2, 0.4), (t, poissonRatio) => {
        const ring = { ...load, hubRadius: 1e-9, ringThickness: t };
        const solid = { ...load, thickness: t };
        near(
          supportedRingStress.si({ ...ring, poissonRatio }),
          (2 / (1 + poissonRatio)) * supportedCentreStress.si({ ...solid, poissonRatio }),
        );
        near(clampedRingStress.si(ring), clampedEdgeStress.si(solid));
      }),
    );
  });
  test('a small hole doubles the stress of the hub; a larger one adds to it', () => {
    fc.assert(
      fc.property(between(0.3, 0.9), between(0.05, 0.7), (hubShare, holeShare) => {
        const hub = { ...load, hubRadius: 0.04 * hubShare, hubThickness: 0.02, poissonRatio: 0.33 };
        const solid = supportedHubStress.si(hub);
        near(supportedHubHoleStress.si({ ...hub, holeRadius: 1e-7 }), 2 * solid, 1e-6);
        expect(supportedHubHoleStress.si({ ...hub, holeRadius: hub.hubRadius * holeShare })).toBeGreaterThan(
          2 * solid,
        );
      }),
    );
  });
  test('a ring of full thickness with a rigid hub is above the solid plate there, and less ring carries less', () => {
    fc.assert(
      fc.property(between(0.05, 0.9), between(0.01, 0.09), (share, more) => {
        const ring = (hub: number) =>
          supportedRingStress.si({ ...load, hubRadius: 0.04 * hub, ringThickness: 0.01, poissonRatio: 0.33 });
        // Moment of the uniform supported plate at b: q·(3 + ν)·(a² − b²)/16 (Timoshenko, circular plates).
        const uniform = (6 * 7e6 * 3.33 * (0.04 ** 2 - (0.04 * share) ** 2)) / (16 * 0.01 ** 2);
        expect(ring(share)).toBeGreaterThan(uniform);
        expect(ring(share + more)).toBeLessThan(ring(share));
      }),
    );
  });
  test('a hub larger than the plate, a hole larger than the hub: refused', () => {
    const hub = {
      pressure: '7 MPa',
      radius: '40 mm',
      hubRadius: '41 mm',
      hubThickness: '9 mm',
      poissonRatio: 0.3,
    } as const;
    expect(codeAndPathOf(() => supportedHubStress(hub))).not.toBe('no error');
    expect(
      codeAndPathOf(() => supportedHubHoleStress({ ...hub, hubRadius: '20 mm', holeRadius: '21 mm' })),
    ).not.toBe('no error');
  });
});

describe('dished heads', () => {
  test('a torisphere of one radius and an ellipsoid of equal axes are the hemisphere', () => {
    fc.assert(
      fc.property(between(0.01, 1), between(0.0005, 0.01), (radius, thickness) => {
        expect(torisphericalFactor.si({ crownRadius: radius, knuckleRadius: radius })).toBe(1);
        const sphere = torisphericalHeadStress.si({
          pressure: 1e6,
          crownRadius: radius,
          thickness,
          stressFactor: 1,
        });
        const factor = ellipsoidalFactor.si({ insideDiameter: 2 * radius, depth: radius });
        near(
          ellipsoidalHeadStress.si({
            pressure: 1e6,
            insideDiameter: 2 * radius,
            thickness,
            stressFactor: factor,
          }),
          sphere,
        );
        // Thin sphere: p·r/(2·t) (any text on strength of materials), within 0.1·p.
        expect(Math.abs(sphere - (1e6 * radius) / (2 * thickness))).toBeLessThanOrEqual(1.0001e5);
      }),
    );
  });
  test('the thickness of the code gives the allowable back, t = P·L·M/(2·S·E − 0.2·P) (ASME, from memory)', () => {
    const [p, l, m, s] = [7e6, 0.075, 1.54, 150e6];
    const thickness = (p * l * m) / (2 * s - 0.2 * p);
    near(torisphericalHeadStress.si({ pressure: p, crownRadius: l, thickness, stressFactor: m }), s);
    const head = (p * 0.075) / (2 * s - 0.2 * p);
    near(
      ellipsoidalHeadStress.si({ pressure: p, insideDiameter: 0.075, thickness: head, stressFactor: 1 }),
      s,
    );
  });
  test('a sharper knuckle is worse; one below 6 % and a thin head are cautioned', () => {
    const factor = (knuckleRadius: number) => torisphericalFactor.si({ crownRadius: 1, knuckleRadius });
    expect(factor(0.06)).toBeGreaterThan(factor(0.1));
    expect(torisphericalFactor.cautions({ crownRadius: '1 m', knuckleRadius: '0.05 m' })).toHaveLength(1);
    expect(
      torisphericalHeadStress
        .cautions({ pressure: '1 MPa', crownRadius: '1 m', thickness: '1.9 mm', stressFactor: 1.5 })
        .join(),
    ).toContain('buckle');
  });
});

describe('deflection beyond plate theory', () => {
  test('small deflections are linear, large ones less, and the cubic stays within 3 % above the exact solution', () => {
    fc.assert(
      fc.property(between(0.01, 1), (fraction) => {
        const plate = { radius: 0.05, thickness: 0.001, elasticModulus: 70e9, poissonRatio: 0.3 };
        const pressure = (fraction * 0.001) / clampedDeflection.si({ ...plate, pressure: 1 });
        const exact =
          clampedLargeDeflection({
            pressure: quantity('pressure difference', `${pressure} Pa`),
            radius: '50 mm',
            thickness: '1 mm',
            elasticModulus: '70 GPa',
            poissonRatio: 0.3,
          }).si / 0.001;
        const cubic = stretchedPlateDeflection.si({ linearDeflection: fraction });
        expect(exact).toBeLessThan(fraction);
        expect(exact).toBeGreaterThan(fraction - 0.6 * fraction ** 3);
        expect(cubic / exact).toBeGreaterThan(1);
        expect(cubic / exact).toBeLessThan(1.03);
        // Chien’s cubic coefficient of the perturbation solution, (1 + ν)·(173 − 73·ν)/360 (from memory), for small deflections.
        const chien = exact + ((1.3 * (173 - 73 * 0.3)) / 360) * exact ** 3;
        expect(Math.abs(chien / fraction - 1)).toBeLessThan(0.006);
      }),
      { numRuns: 40 },
    );
  });
  test('a membrane is refused', () => {
    const thin = {
      radius: '50 mm',
      thickness: '0.1 mm',
      elasticModulus: '70 GPa',
      poissonRatio: 0.3,
    } as const;
    expect(codeAndPathOf(() => clampedLargeDeflection({ ...thin, pressure: '1 MPa' }))).toBe(
      'out-of-domain pressure',
    );
  });
});

test('the thickness of a flat closure is that at which the plate reaches the allowable', () => {
  fc.assert(
    fc.property(
      between(1e5, 2e7),
      between(0.02, 0.2),
      between(5e7, 5e8),
      (pressure, sealDiameter, allowable) => {
        const nu = 0.3;
        const flat = { pressure, sealDiameter, allowable, weldEfficiency: 1 };
        const supported = flatClosureThickness.si({ ...flat, attachmentFactor: (3 * (3 + nu)) / 32 });
        const plate = { pressure, radius: sealDiameter / 2, poissonRatio: nu };
        near(supportedCentreStress.si({ ...plate, thickness: supported }), allowable);
        const clamped = flatClosureThickness.si({ ...flat, attachmentFactor: 3 / 16 });
        near(clampedEdgeStress.si({ ...plate, thickness: clamped }), allowable);
      },
    ),
  );
});
