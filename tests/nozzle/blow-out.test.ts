import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { nozzleBlowOut } from '../../src/nozzle';
import { integrate } from '../../src/numerics';
import { isentropicPressureRatio, machFromAreaRatio } from '../../src/thermo';
import { fromSiValue, unitOf } from '../../src/units';

const nozzle = fc.record({
  pressure: fc.double({ min: 1e6, max: 1e7, noNaN: true }),
  gamma: fc.double({ min: 1.1, max: 1.4, noNaN: true }),
  seal: fc.double({ min: 2, max: 6, noNaN: true }), // over the throat
  exit: fc.double({ min: 1.3, max: 3, noNaN: true }),
});
const throat = 0.012;
const ambient = 101325;
const area = (diameter: number): number => (Math.PI / 4) * diameter ** 2;
const length = (si: number) => fromSiValue<'length'>(si, 'length', unitOf('mm'));
const pascal = (si: number) => fromSiValue<'absolute pressure'>(si, 'absolute pressure', unitOf('MPaa'));

interface Drawn {
  readonly pressure: number;
  readonly gamma: number;
  readonly seal: number;
  readonly exit: number;
}
const blowOut = ({ pressure, gamma, seal, exit }: Drawn) =>
  nozzleBlowOut({
    chamberPressure: pascal(pressure),
    gamma,
    sealDiameter: length(seal * throat),
    throatDiameter: length(throat),
    exitDiameter: length(exit * throat),
    ambientPressure: pascal(ambient),
  });

/** The force on a wall from the throat to a diameter: the integral of the gas pressure over the projected area. */
const wallForce = ({ pressure, gamma }: Drawn, wide: number, branch: 'subsonic' | 'supersonic'): number =>
  integrate(
    (diameter) => {
      const mach = machFromAreaRatio.si({ areaRatio: (diameter / throat) ** 2, gamma, branch });
      return pressure * isentropicPressureRatio.si({ mach, gamma }) * (Math.PI / 2) * diameter;
    },
    { lower: throat, upper: wide * throat, relativeTolerance: 1e-9 },
  ).value;

describe('the force on the retention of a nozzle', () => {
  test('by control volume is the integral of the wall pressure', () => {
    fc.assert(
      fc.property(nozzle, (drawn) => {
        const found = blowOut(drawn);
        const convergent = wallForce(drawn, drawn.seal, 'subsonic');
        const divergent = wallForce(drawn, drawn.exit, 'supersonic');
        const scale = found.blocked.si;
        expect(Math.abs(found.convergent.si - convergent)).toBeLessThan(1e-6 * scale);
        // Ambient pressure acts on the outside, over what the sealed area exceeds the exit by.
        const outside = ambient * (area(drawn.seal * throat) - area(drawn.exit * throat));
        expect(Math.abs(found.flowing.si - (convergent - divergent - outside))).toBeLessThan(1e-6 * scale);
      }),
      { numRuns: 40 },
    );
  });

  test('is greatest with the throat blocked, and the wall of the convergent carries less than the plain bound', () => {
    fc.assert(
      fc.property(nozzle, (drawn) => {
        const { blocked, annulus, flowing, convergent } = blowOut(drawn);
        expect(blocked.si).toBeGreaterThan(annulus.si);
        expect(blocked.si).toBeGreaterThan(flowing.si);
        const throughout = drawn.pressure * (area(drawn.seal * throat) - area(throat));
        expect(convergent.si).toBeLessThan(throughout);
      }),
    );
  });

  test('scales with the area and, in a vacuum, with the pressure', () => {
    const at = (pressure: `${number} MPa`, scale: number) =>
      nozzleBlowOut({
        chamberPressure: pressure,
        gamma: 1.2,
        sealDiameter: length(0.04 * scale),
        throatDiameter: length(0.012 * scale),
        exitDiameter: length(0.03 * scale),
        ambientPressure: '0 Pa',
      }).flowing.si;
    expect(at('6 MPa', 2) / at('6 MPa', 1)).toBeCloseTo(4, 10);
    expect(at('12 MPa', 1) / at('6 MPa', 1)).toBeCloseTo(2, 10);
  });

  test('refuses a seal or an exit inside the throat, and a chamber below ambient pressure', () => {
    const sound = blowOutInput;
    expect(() => nozzleBlowOut({ ...sound, sealDiameter: '12 mm' })).toThrow('sealDiameter must be above');
    expect(() => nozzleBlowOut({ ...sound, exitDiameter: '11 mm' })).toThrow('exitDiameter must be above');
    expect(() => nozzleBlowOut({ ...sound, chamberPressure: '0.1 MPa' })).toThrow('ambientPressure must be');
  });
});

const blowOutInput = {
  chamberPressure: '6 MPa',
  gamma: 1.2,
  sealDiameter: '40 mm',
  throatDiameter: '12 mm',
  exitDiameter: '30 mm',
  ambientPressure: '101325 Pa',
} as const;
