// U.S. Standard Atmosphere 1976 against a published table; source and provenance stand in tests/cases/atmosphere.json.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as thermo from '../../src/thermo';
import { MeopError, series } from '../../src/units';
import table from '../cases/atmosphere.json';
import { recordChecks } from '../cases/record-check';

const metres = (z: number) => series([z], 'm').at(0);
const near = (found: number, printed: number, rel: number): void =>
  expect(Math.abs(found - printed)).toBeLessThanOrEqual(rel * Math.abs(printed));

describe(`standard atmosphere [${table.source}]`, () => {
  test.each(table.checkPoints)('at $zM m', ({ zM, T, P, rho, a, mu }) => {
    const air = thermo.standardAtmosphere({ altitude: metres(zM) });
    // The table has five significant figures, and gives the molecular-scale temperature, which the speed of sound implies.
    const scaled = air.soundSpeed.si ** 2 / (1.4 * (8314.32 / 28.9644));
    recordChecks(`atmosphere at ${zM} m`, {
      T: scaled,
      P: air.pressure.si,
      rho: air.density.si,
      a: air.soundSpeed.si,
      mu: air.dynamicViscosity.si,
    });
    expect(Math.abs(scaled - T)).toBeLessThanOrEqual(0.0051);
    near(air.pressure.si, P, 6e-5);
    near(air.density.si, rho, 6e-5);
    near(air.soundSpeed.si, a, 2e-5);
    near(air.dynamicViscosity.si, mu, 4e-5);
  });

  test('prints the kinetic temperature 186.87 K at 86 km [U.S. Standard Atmosphere 1976, from memory]', () => {
    expect(thermo.standardAtmosphere({ altitude: '86 km' }).temperature.si).toBeCloseTo(186.87, 2);
  });

  test('pressure falls with height, and altitude comes back from pressure', () => {
    fc.assert(
      fc.property(fc.double({ min: -5000, max: 85900, noNaN: true }), (z) => {
        expect(thermo.standardAtmosphere.si({ altitude: z + 1 }).pressure).toBeLessThan(
          thermo.standardAtmosphere.si({ altitude: z }).pressure,
        );
        expect(
          Math.abs(
            thermo.standardAltitude.si({ pressure: thermo.standardAtmosphere.si({ altitude: z }).pressure }) -
              z,
          ),
        ).toBeLessThan(1e-6);
      }),
    );
  });

  test('is continuous across every layer', () => {
    for (const h of [11000, 20000, 32000, 47000, 51000, 71000]) {
      const at = (d: number) =>
        thermo.standardAtmosphere({ altitude: metres(h + d), measure: 'geopotential' });
      near(at(1e-6).pressure.si, at(-1e-6).pressure.si, 1e-9);
      near(at(1e-6).temperature.si, at(-1e-6).temperature.si, 1e-9);
    }
  });

  test.each(['87 km', '-5.1 km'] as const)('refuses %s and says the range', (altitude) => {
    expect(() => thermo.standardAtmosphere({ altitude })).toThrowError(/at least -5 km and at most 86 km/);
  });
});

describe('station pressure', () => {
  test('at a standard setting is the pressure of the standard atmosphere at that geopotential height', () => {
    fc.assert(
      fc.property(fc.double({ min: -400, max: 10900, noNaN: true }), (h) => {
        const air = thermo.standardAtmosphere({ altitude: metres(h), measure: 'geopotential' });
        near(thermo.stationPressure.si({ altimeterSetting: 101325, elevation: h }), air.pressure.si, 1e-12);
      }),
    );
  });

  test('at sea level is the setting itself', () => {
    expect(thermo.stationPressure.si({ altimeterSetting: 98765, elevation: 0 })).toBeCloseTo(98765, 8);
  });

  test('is refused above the lapse-rate layer', () => {
    expect(() => thermo.stationPressure({ altimeterSetting: '1013 hPa', elevation: '60 km' })).toThrowError(
      MeopError,
    );
  });
});
