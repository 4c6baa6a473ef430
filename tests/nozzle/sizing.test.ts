import { describe, expect, test } from 'vitest';
import * as nozzle from '../../src/nozzle';
import { errorOf } from '../error-code';

const near = (found: number, wanted: number, rel: number): void =>
  expect(Math.abs(found - wanted)).toBeLessThanOrEqual(rel * Math.abs(wanted));

describe('sizing', () => {
  const common = {
    chamberPressure: '5 MPa',
    ambientPressure: '101325 Pa',
    gamma: 1.13,
    characteristicVelocity: '880 m/s',
    efficiency: 0.96,
  } as const;
  test('the nozzle delivers the thrust it was sized for, and is ideally expanded unless specified otherwise', () => {
    const sized = nozzle.sizeNozzle({ ...common, target: { thrust: '750 N' } });
    near(sized.thrust.si, 750, 1e-14);
    near(sized.exitPressure.si, 101325, 1e-12);
    near(sized.specificImpulse.si, 750 / sized.massFlow.si, 1e-14);
    near((sized.exitDiameter.si / sized.throatDiameter.si) ** 2, sized.expansionRatio, 1e-14);
  });
  test('from a burning surface the throat passes what burns', () => {
    const sized = nozzle.sizeNozzle({
      ...common,
      target: { burningArea: '300 cm^2', burnRate: '8 mm/s', propellantDensity: '1800 kg/m^3' },
      expansionRatio: 6,
    });
    near(sized.massFlow.si, 300e-4 * 8e-3 * 1800, 1e-13); // ṁ = A_b·r·ρ
  });
  test.each([
    [{ expansionRatio: 0.5 }, /expansionRatio must be at least 1, got 0\.5/],
    [{ gamma: 1 }, /gamma must be above 1, got 1/],
    [{ chamberPressure: '0.1 MPa', expansionRatio: 4 }, /where the throat chokes/],
    [{ ambientPressure: '0 Pa' }, /optimum in a vacuum is infinite/],
    [{ inletDiameter: '2 mm' }, /above the throat diameter/],
    [{ halfAngle: '95 deg' }, /below 90°/],
  ] as const)('refuses %o', (change, message) => {
    expect(() => nozzle.sizeNozzle({ ...common, target: { thrust: '750 N' }, ...change })).toThrowError(
      message,
    );
  });
});

describe('sizing at the edge', () => {
  const rest = {
    chamberPressure: '5 MPa',
    ambientPressure: '101325 Pa',
    gamma: 1.13,
    characteristicVelocity: '900 m/s',
  } as const;
  const burning = { burningArea: '150 cm^2', propellantDensity: '1750 kg/m^3' } as const;

  test('by a burn law is sizing by its rate at the chamber pressure', () => {
    const law = { referenceRate: '7 mm/s', referencePressure: '1 MPa', exponent: 0.32 } as const;
    const rate = 7 * 5 ** 0.32;
    near(
      nozzle.sizeNozzle({ ...rest, target: { ...burning, burnLaw: law } }).throatArea.si,
      nozzle.sizeNozzle({ ...rest, target: { ...burning, burnRate: `${rate} mm/s` } }).throatArea.si,
      1e-13,
    );
  });

  test('passes on what the burning surface makes: ṁ = ρ·A_b·r', () => {
    const sized = nozzle.sizeNozzle({ ...rest, target: { ...burning, burnRate: '10 mm/s' } });
    near(sized.massFlow.si, 1750 * 150e-4 * 10e-3, 1e-13);
  });

  test('refuses an expansion at which no thrust is left, and names the remedy', () => {
    const error = errorOf(() =>
      nozzle.sizeNozzle({
        ...rest,
        chamberPressure: '1 MPa',
        target: { thrust: '1 kN' },
        expansionRatio: 100,
      }),
    );
    expect(error?.path).toBe('expansionRatio');
    expect(error?.message).toMatch(/near the optimum/);
  });

  test('refuses a burn law without a stable pressure', () => {
    const burnLaw = { referenceRate: '7 mm/s', referencePressure: '1 MPa', exponent: 1 } as const;
    expect(errorOf(() => nozzle.sizeNozzle({ ...rest, target: { ...burning, burnLaw } }))?.path).toBe(
      'target.burnLaw.exponent',
    );
  });
});
