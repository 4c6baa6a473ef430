import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as thermo from '../../src/thermo';

const near = (found: number, wanted: number, rel: number): void =>
  expect(Math.abs(found - wanted)).toBeLessThanOrEqual(rel * Math.abs(wanted));

describe('the γ that belongs in c* of a smoky exhaust', () => {
  // Potassium nitrate with sorbitol, 65/35 by mass, 6.895 MPa: temperature, mass of all products for each mole of gas and both γ
  // from an equilibrium calculation; c* computed with Python 3.11 from c* = √(R·T/(M·γ))·((γ+1)/2)^((γ+1)/(2(γ−1))).
  const at = (gamma: number): number =>
    thermo.gas({ gamma, molarMass: '39.8617 g/mol', temperature: '1599.69 K' }).characteristicVelocity.si;
  test('is that of the mixture: 908.547 m/s', () => near(at(1.13592), 908.547, 5e-5));
  test('that of the gas alone is 3 % low: 880.625 m/s', () => near(at(1.23871), 880.625, 5e-5));
});

describe('heat to a nozzle wall', () => {
  // Huzel & Huang, NASA SP-125, eq. 4-13 to 4-16 (formulas from memory), computed with scipy 1.10.1 / Python 3.11.
  test('gas viscosity and Prandtl number estimates', () => {
    near(
      thermo.combustionGasViscosity({ molarMass: '22.46 g/mol', temperature: '1600 K' }).si,
      4.6941645e-5,
      2e-5,
    );
    near(thermo.prandtlEstimate({ gamma: 1.2387 }), 0.8058813, 2e-5);
  });
  test('Bartz coefficient of a small nozzle', () => {
    const sigma = thermo.bartzSigma({ wallOverStagnation: 0.5, mach: 1, gamma: 1.1359 });
    near(sigma, 1.1882774, 3e-5);
    const h = thermo.bartzCoefficient({
      throatDiameter: '12 mm',
      throatCurvatureRadius: '12 mm',
      viscosity: '4.69416e-5 Pa*s',
      specificHeat: '1742 J/(kg*K)',
      prandtl: 0.82,
      chamberPressure: '4 MPa',
      characteristicVelocity: '905 m/s',
      sigma,
    });
    near(h.si, 16498.923, 3e-5);
  });
  test('Bartz coefficient of a first-stage engine: 0.00273 Btu/(in²·s·°F) [NASA SP-125, sample calculation 4-3, from memory]', () => {
    const h = thermo.bartzCoefficient({
      throatDiameter: '24.9 in',
      throatCurvatureRadius: '11.71 in',
      viscosity: `${(4.18e-6 * 0.45359237) / 0.0254} Pa*s`,
      specificHeat: '0.485 Btu/(lb*degF)',
      prandtl: 0.816,
      chamberPressure: '1000 psi',
      characteristicVelocity: '5660 ft/s',
    });
    near(h.in('Btu/(s*in^2*degF)'), 0.00273, 0.004);
  });
  test('adiabatic wall temperature', () => {
    const wall = thermo.adiabaticWallTemperature({
      stagnationTemperature: '1600 K',
      gamma: 1.1359,
      mach: 1,
      prandtl: 0.82,
    });
    near(wall.si, 1593.4836, 1e-6);
  });
  test('the steady wall passes on what it takes in, and lies between gas and coolant', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 0.5, noNaN: true }),
        fc.integer({ min: 50, max: 5000 }),
        (e, h) => {
          const wall = thermo.steadyWallHeat({
            gasTemperature: '1500 K',
            gasCoefficient: `${h} W/(m^2*K)`,
            coolantTemperature: '300 K',
            coolantCoefficient: '20000 W/(m^2*K)',
            wallThickness: '3 mm',
            wallConductivity: '40 W/(m*K)',
            gasEmissivity: e,
          });
          near(wall.convectionFlux.si, h * (1500 - wall.gasSideWall.si), 1e-9);
          near(wall.totalFlux.si, (40 / 0.003) * (wall.gasSideWall.si - wall.coolantSideWall.si), 1e-9);
          expect(wall.gasSideWall.si).toBeGreaterThan(wall.coolantSideWall.si);
        },
      ),
    );
  });
});

describe('mixtures', () => {
  const species = [
    { molarMass: '28.014 g/mol', specificHeat: '1040 J/(kg*K)', parts: 3 },
    { molarMass: '44.01 g/mol', specificHeat: '846 J/(kg*K)', parts: 1 },
  ] as const;
  test('by mole and by the masses of the same moles are one mixture', () => {
    const byMole = thermo.gasMixture({ by: 'mole', species });
    const byMass = thermo.gasMixture({
      by: 'mass',
      species: [
        { ...species[0], parts: 3 * 28.014 },
        { ...species[1], parts: 44.01 },
      ],
    });
    near(byMass.molarMass.si, byMole.molarMass.si, 1e-14);
    near(byMass.gamma, byMole.gamma, 1e-14);
    near(byMole.molarMass.in('g/mol'), (3 * 28.014 + 44.01) / 4, 1e-14);
  });
  test('of one gas is that gas', () => {
    const one = thermo.gasMixture({ by: 'mass', species: [species[0]] });
    near(one.specificHeat.si, 1040, 1e-14);
    expect(one.moleFractions).toEqual([1]);
  });
  test('without droplets a two-phase mixture is its gas', () => {
    const mixture = thermo.twoPhaseMixture({
      condensedMassFraction: 0,
      gasSpecificHeat: '1960 J/(kg*K)',
      condensedSpecificHeat: '1550 J/(kg*K)',
      gasMolarMass: '36 g/mol',
    });
    near(mixture.gamma, mixture.gasGamma, 1e-15);
    near(mixture.effectiveMolarMass.in('g/mol'), 36, 1e-15);
  });
  test('γ of the mixture falls as droplets are added', () => {
    let last = Infinity;
    for (let x = 0; x < 0.99; x += 0.05) {
      const gamma = thermo.twoPhaseGamma.si({
        condensedMassFraction: x,
        gasSpecificHeat: 1960,
        condensedSpecificHeat: 1550,
        gasConstant: 231,
      });
      expect(gamma).toBeLessThan(last);
      expect(gamma).toBeGreaterThan(1);
      last = gamma;
    }
  });
});

describe('orifice', () => {
  const at = (back: number) =>
    thermo.orificeFlow({
      stagnationPressure: '1 MPa',
      stagnationTemperature: '300 K',
      backPressure: `${back} Pa`,
      area: '1 mm^2',
      gamma: 1.4,
      gasConstant: '287 J/(kg*K)',
    });
  test('flow is the same below the critical pressure, falls above it, and is nothing without a difference', () => {
    const choked = at(0);
    expect(at(5e5).massFlow.si).toBe(choked.massFlow.si);
    let last = choked.massFlow.si;
    for (let back = 5.3e5; back < 1e6; back += 1e4) {
      const { massFlow } = at(back);
      expect(massFlow.si).toBeLessThan(last);
      last = massFlow.si;
    }
    expect(at(1e6).massFlow.si).toBe(0);
  });
  test('is continuous where it unchokes', () => {
    const limit = at(0).maxChokedBackPressure.si;
    near(at(limit * (1 + 1e-9)).massFlow.si, at(limit * (1 - 1e-9)).massFlow.si, 1e-12);
  });
});
