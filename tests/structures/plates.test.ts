import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  clampedCentreStress,
  clampedEdgeStress,
  clampedHoleEdgeStress,
  clampedHoleStress,
  clampedPlate,
  plugShearStress,
  simplySupportedPlate,
  supportedCentreStress,
  supportedHoleStress,
} from '../../src/structures';
import { codeOf } from '../error-code';

const plate = { pressure: 7e6, radius: 0.04, thickness: 0.01, poissonRatio: 0.33 };

describe('plugged central hole', () => {
  test('a vanishing hole doubles the centre stress: equal biaxial bending (Timoshenko, Theory of Plates and Shells)', () => {
    const tiny = { ...plate, holeRadius: 1e-7 };
    expect(supportedHoleStress.si(tiny) / supportedCentreStress.si(plate)).toBeCloseTo(2, 8);
    expect(clampedHoleStress.si(tiny) / clampedCentreStress.si(plate)).toBeCloseTo(2, 8);
    expect(clampedHoleEdgeStress.si(tiny) / clampedEdgeStress.si(plate)).toBeCloseTo(1, 8);
  });
  test('a hole as large as the plate leaves the ring of Roark: supported rim q·a²·6/(2·t²) of the plug force', () => {
    // b → a: (3 + ν + 1 − ν) = 4, so σ = 3·q·a²/t², whatever ν.
    const ring = { ...plate, holeRadius: plate.radius * (1 - 1e-9) };
    expect(
      supportedHoleStress.si(ring) / ((3 * plate.pressure * plate.radius ** 2) / plate.thickness ** 2),
    ).toBeCloseTo(1, 6);
  });
  test('scaling all lengths leaves the stresses unchanged', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 100, noNaN: true }),
        fc.double({ min: 0.01, max: 0.9, noNaN: true }),
        (s, share) => {
          const at = (k: number) => ({
            ...plate,
            radius: plate.radius * k,
            thickness: plate.thickness * k,
            holeRadius: plate.radius * share * k,
          });
          for (const formula of [supportedHoleStress, clampedHoleStress, clampedHoleEdgeStress])
            expect(Math.abs(formula.si(at(s)) - formula.si(at(1)))).toBeLessThan(
              1e-9 * supportedHoleStress.si(at(1)),
            );
        },
      ),
    );
  });
  test('a hole larger than the plate is refused', () => {
    expect(
      codeOf(() =>
        simplySupportedPlate({
          pressure: '1 MPa',
          radius: '20 mm',
          thickness: '5 mm',
          poissonRatio: 0.3,
          holeRadius: '21 mm',
        }),
      ),
    ).toBe('out-of-domain');
  });
});

describe('closures', () => {
  test('supported is worse than clamped, and deflects more: by (5 + ν)/(1 + ν)', () => {
    const given = {
      pressure: '7 MPa',
      radius: '40 mm',
      thickness: '8 mm',
      poissonRatio: 0.33,
      elasticModulus: '70 GPa',
    } as const;
    const [clamped, supported] = [clampedPlate(given), simplySupportedPlate(given)];
    expect(supported.maxStress.si).toBeGreaterThan(clamped.maxStress.si);
    expect((supported.deflection?.si ?? 0) / (clamped.deflection?.si ?? 1)).toBeCloseTo(5.33 / 1.33, 10);
    expect(clamped.at).toBe('edge');
    expect(supported.at).toBe('centre');
    expect(simplySupportedPlate({ ...given, holeRadius: '5 mm' }).at).toBe('hole');
    expect(clamped.cautions.join()).toContain('clamped edge is rare');
    expect(clampedPlate({ ...given, thickness: '15 mm' }).cautions.join()).toContain('thick');
    expect(String(supported)).toContain('deflection');
  });
  test('punching shear is the force over the cylinder', () => {
    const { pressure, thickness } = plate;
    const shear = plugShearStress.si({ pressure, thickness, diameter: 0.08 });
    expect(shear * Math.PI * 0.08 * thickness).toBeCloseTo((pressure * Math.PI * 0.08 ** 2) / 4, 6);
  });
});
