// Species and products at equilibrium: every value of tests/cases/thermo.json with its source in the name of its check, and
// what must hold of any products.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as thermo from '../../src/thermo';
import { constants } from '../../src/units';
import { checkValue } from '../cases/check-value';
import { caseFiles } from '../cases/every-case';
import { type Case, si } from '../cases/read-case';

const cases = caseFiles.find(({ file }) => file === 'thermo.json')?.cases ?? [];
const near = (found: number, wanted: number, rel: number): void =>
  expect(Math.abs(found - wanted), `${found} against ${wanted}`).toBeLessThanOrEqual(rel * Math.abs(wanted));

// 'K1 N1 O3, 0.64 mol, -494630 J/mol' → a reactant.
function reactantsOf({ inputs }: Case): thermo.EquilibriumReactant[] {
  return Object.entries(inputs.reactants ?? {}).map(([name, text]) => {
    const [formula, parts, formation] = String(text).split(', ');
    const elements = Object.fromEntries(
      Array.from(formula.matchAll(/([A-Z][a-z]?)(\d+)/g), ([, element, n]) => [element, Number(n)]),
    );
    return {
      name,
      elements,
      parts: Number.parseFloat(parts),
      ...(formation !== undefined && {
        enthalpyOfFormation: `${Number.parseFloat(formation)} J/mol` as const,
      }),
    };
  });
}

const kelvin = (value: Case['inputs'][string] | undefined): `${number} K` => `${si(value)} K`;

function species({ inputs }: Case): Readonly<Record<string, number | undefined>> {
  const found = thermo.speciesProperties({
    species: String(inputs.species),
    temperature: kelvin(inputs.temperature),
    form: inputs.form === 'nasa9' ? 'nasa9' : 'nasa7',
  });
  return {
    cpJPerMolK: found.molarHeatCapacity.in('J/(mol*K)'),
    hJPerMol: found.molarEnthalpy.in('J/mol'),
    sJPerMolK: found.molarEntropy.in('J/(mol*K)'),
    hMinusH298JPerMol: found.sensibleEnthalpy?.in('J/mol'),
  };
}

function reaction({ inputs }: Case): Readonly<Record<string, number | undefined>> {
  const side = (value: unknown): Record<string, number> =>
    Object.fromEntries(Object.entries(Object(value)).map(([name, n]) => [name, Number(n)]));
  return {
    lnKp: thermo.equilibriumConstant({
      reactants: side(inputs.reactants),
      products: side(inputs.products),
      temperature: kelvin(inputs.temperature),
    }).lnKp,
  };
}

function products(one: Case): Readonly<Record<string, number | undefined>> {
  const { inputs } = one;
  const found = thermo.equilibriumProducts({
    by: 'mole',
    reactants: reactantsOf(one),
    pressure: `${si(inputs.pressure)} Pa`,
    ...(inputs.temperature !== undefined && { temperature: kelvin(inputs.temperature) }),
    ...(Array.isArray(inputs.species) && { species: inputs.species.map(String) }),
  });
  const molPerKg = Object.entries(found.condensedMassFractions).map(([name, share]) => [
    `molPerKg ${name}`,
    share / thermo.speciesProperties({ species: name, temperature: found.temperature }).molarMass.si,
  ]);
  return {
    flameTemperatureK: found.temperature.in('K'),
    gasMolarMass: found.gasMolarMass.in('g/mol'),
    mixtureMassPerMolGas: found.effectiveMolarMass.in('g/mol'),
    gasMolPerKg: 1 / found.effectiveMolarMass.si,
    condensedMassFraction: found.condensedMassFraction,
    gammaFrozenGas: found.gasGamma,
    gammaFrozenMixture: found.gamma,
    gammaEquilibrium: found.equilibriumGamma,
    cStarFrozen: found.characteristicVelocity.in('m/s'),
    cStarEquilibrium: found.equilibriumCharacteristicVelocity.in('m/s'),
    ...Object.fromEntries(molPerKg),
    ...Object.fromEntries(
      Object.entries(found.moleFractions).map(([name, share]) => [`moleFraction ${name}`, share]),
    ),
  };
}

function characteristicVelocity({ inputs }: Case): Readonly<Record<string, number | undefined>> {
  const gasConstant = thermo.gasConstantOf({ molarMass: `${si(inputs.massPerMolGas)} g/mol` });
  const at = (gamma: number): number =>
    thermo
      .idealCharacteristicVelocity({ gamma, gasConstant, temperature: kelvin(inputs.temperature) })
      .in('m/s');
  return {
    cStarMixtureGamma: at(si(inputs.gammaMixture)),
    cStarGasOnlyGamma: at(si(inputs.gammaGasOnly)),
  };
}

const checks: Readonly<Record<string, (one: Case) => Readonly<Record<string, number | undefined>>>> = {
  'nasa-polynomial': species,
  'equilibrium-constant': reaction,
  'equilibrium-tp': products,
  'equilibrium-hp': products,
  'characteristic-velocity': characteristicVelocity,
};

describe('published and computed values', () => {
  for (const one of cases)
    test(`${one.id}: ${one.what} [${one.source}; ${one.provenance}]`, () => {
      const found = checks[one.topic](one);
      for (const name of Object.keys(one.expected)) checkValue(one, name, found[name] ?? Number.NaN);
    });
});

describe('species', () => {
  test.each(thermo.speciesNames())(
    '%s: its ranges meet, and its specific heat is the slope of its enthalpy',
    (name) => {
      const at = (t: number) => thermo.speciesProperties({ species: name, temperature: `${t} K` });
      const r = constants.molarGasConstant.value;
      for (const t of [250, 320, 400, 700, 1100, 1500, 2500, 4500]) {
        let before: thermo.SpeciesProperties;
        let after: thermo.SpeciesProperties;
        try {
          [before, after] = [at(t - 0.5), at(t + 0.5)];
        } catch {
          continue; // outside the fit
        }
        const [cp, slope] = [at(t).molarHeatCapacity.si, after.molarEnthalpy.si - before.molarEnthalpy.si];
        near(slope, cp, 1e-5);
        near(t * (after.molarEntropy.si - before.molarEntropy.si), cp, 1e-5);
        if (before.phase === 'gas') expect(cp).toBeGreaterThan(2 * r);
      }
      let joined: readonly thermo.SpeciesProperties[];
      try {
        joined = [at(999.999999), at(1000.000001)];
      } catch {
        return;
      }
      // The two ranges of a fit meet at 1000 K to the digits of the coefficients.
      expect(Math.abs(joined[0].molarEnthalpy.si - joined[1].molarEnthalpy.si)).toBeLessThan(2e-4 * r * 1000);
      expect(Math.abs(joined[0].molarEntropy.si - joined[1].molarEntropy.si)).toBeLessThan(5e-4 * r);
    },
  );

  test('molar masses: CO2 44.009, K2CO3 138.2046 g/mol from the conventional atomic weights, by hand', () => {
    const of = (name: string, t: '500 K' | '1500 K') =>
      thermo.speciesProperties({ species: name, temperature: t }).molarMass.in('g/mol');
    near(of('CO2', '500 K'), 12.011 + 2 * 15.999, 1e-12);
    near(of('K2CO3(l)', '1500 K'), 2 * 39.0983 + 12.011 + 3 * 15.999, 1e-12);
  });

  test('the two forms agree within half a per cent where both hold', () => {
    for (const name of thermo.speciesNames('nasa9'))
      for (const t of [300, 900, 1100, 3000, 5000]) {
        const at = (form: 'nasa7' | 'nasa9') =>
          thermo.speciesProperties({ species: name, temperature: `${t} K`, form });
        near(at('nasa7').molarHeatCapacity.si, at('nasa9').molarHeatCapacity.si, 5e-3);
        near(at('nasa7').molarEntropy.si, at('nasa9').molarEntropy.si, 5e-4);
      }
  });

  test.each([
    [
      () => thermo.speciesProperties({ species: 'KNO3', temperature: '400 K' }),
      /species must be a name of speciesNames\(\).*, got 'KNO3'/,
    ],
    [() => thermo.speciesProperties({ species: 'co2', temperature: '400 K' }), /such as .*CO2/],
    [() => thermo.speciesProperties({ species: 'CO2', temperature: '100 K' }), /from 200 K to 6000 K/],
    [
      () =>
        thermo.equilibriumConstant({
          reactants: { CO2: 1 },
          products: { CO: 1, O2: 1 },
          temperature: '2000 K',
        }),
      /1 mol of O too much/,
    ],
    [
      () =>
        thermo.equilibriumConstant({ reactants: { CO2: -1 }, products: { CO: 1 }, temperature: '2000 K' }),
      /reactants\.CO2 must be above 0/,
    ],
  ] as const)('refuses %#', (act, message) => {
    expect(act).toThrowError(message);
  });
});

type ProductsOptions = Parameters<typeof thermo.equilibriumProducts>[0];
const sugar = {
  by: 'mass',
  pressure: '1000 psi',
  reactants: [
    { elements: { K: 1, N: 1, O: 3 }, parts: 65, enthalpyOfFormation: '-494.63 kJ/mol' },
    { elements: { C: 6, H: 14, O: 6 }, parts: 35, enthalpyOfFormation: '-1353.7 kJ/mol' },
  ],
} as const satisfies ProductsOptions;

describe('products', () => {
  test('by mass and by mole are the same products', () => {
    const [salt, polyol] = [101.1023, 182.172]; // g/mol of KNO3 and C6H14O6, by hand
    const byMole = thermo.equilibriumProducts({
      ...sugar,
      by: 'mole',
      reactants: [
        { ...sugar.reactants[0], parts: 65 / salt },
        { ...sugar.reactants[1], parts: 35 / polyol },
      ],
    });
    near(byMole.temperature.si, thermo.equilibriumProducts(sugar).temperature.si, 1e-9);
  });

  test('γ, gas constant and c* are those of the two-phase mixture made of its parts', () => {
    const found = thermo.equilibriumProducts(sugar);
    const mixture = thermo.twoPhaseMixture({
      condensedMassFraction: found.condensedMassFraction,
      gasSpecificHeat: found.gasSpecificHeat,
      condensedSpecificHeat: found.condensedSpecificHeat ?? '1 J/(kg*K)',
      gasMolarMass: found.gasMolarMass,
      temperature: found.temperature,
    });
    near(mixture.gamma, found.gamma, 1e-12);
    near(mixture.gasConstant.si, found.gasConstant.si, 1e-12);
    near(mixture.characteristicVelocity?.si ?? 0, found.characteristicVelocity.si, 1e-12);
    expect(found.equilibriumCharacteristicVelocity.si).toBeGreaterThan(found.characteristicVelocity.si);
  });

  test('atoms are kept, every reaction among the gases is at its equilibrium constant, and smoke is at its saturation', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.35, max: 0.7, noNaN: true }),
        fc.double({ min: 3, max: 8, noNaN: true }),
        fc.double({ min: 900, max: 3500, noNaN: true }),
        (share, logPressure, t) => {
          const [first, second] = sugar.reactants;
          const pressure = 10 ** logPressure;
          const { moleFractions: x, ...found } = thermo.equilibriumProducts({
            by: 'mass',
            reactants: [
              { ...first, parts: share },
              { ...second, parts: 1 - share },
            ],
            pressure: `${pressure} Pa`,
            temperature: `${t} K`,
          });
          const gasMoles = 1 / found.effectiveMolarMass.si;
          const carbon =
            gasMoles * Object.entries(x).reduce((sum, [name, part]) => sum + part * carbonIn(name), 0) +
            Object.entries(found.condensedMassFractions).reduce(
              (sum, [name, part]) =>
                sum +
                (part * carbonIn(name)) /
                  thermo.speciesProperties({ species: name, temperature: `${t} K` }).molarMass.si,
              0,
            );
          near(carbon, (6 * (1 - share)) / 0.182172, 1e-7);
          const lnBar = (name: string): number => Math.log((x[name] * pressure) / 1e5);
          const ln = (reactants: Record<string, number>, made: Record<string, number>): number =>
            thermo.equilibriumConstant({ reactants, products: made, temperature: `${t} K` }).lnKp;
          const shift = lnBar('CO2') + lnBar('H2') - lnBar('CO') - lnBar('H2O');
          expect(Math.abs(shift - ln({ CO: 1, H2O: 1 }, { CO2: 1, H2: 1 }))).toBeLessThan(1e-6);
          // Liquid carbonate is there if and only if what the gas would make of it is saturated.
          if (t < 1174) return;
          const made = ln({ KOH: 2, CO2: 1 }, { 'K2CO3(l)': 1, H2O: 1 });
          const needed = lnBar('H2O') - 2 * lnBar('KOH') - lnBar('CO2');
          if (found.condensedMassFractions['K2CO3(l)'] !== undefined)
            expect(Math.abs(needed - made)).toBeLessThan(1e-6);
          else expect(needed).toBeGreaterThan(made - 1e-6);
        },
      ),
      { numRuns: 25 },
    );
  });

  test('at the melting point both phases are there, and the temperature waits until all is melted', () => {
    const at = (share: number) =>
      thermo.equilibriumProducts({
        ...sugar,
        pressure: '5 MPa',
        reactants: [
          { ...sugar.reactants[0], parts: share },
          { ...sugar.reactants[1], parts: 1 - share },
        ],
      });
    const found = at(0.54);
    near(found.temperature.in('K'), 1174, 1e-9); // the fits of solid and liquid carbonate meet there, NASA TM-4513
    expect(Object.keys(found.condensedMassFractions).sort()).toEqual(['K2CO3(l)', 'K2CO3(s)']);
    expect(found.cautions.join()).toMatch(/fix the temperature/);
    expect(Object.keys(at(0.52).condensedMassFractions)).toEqual(['K2CO3(s)']);
    expect(Object.keys(at(0.55).condensedMassFractions)).toEqual(['K2CO3(l)']);
  });

  test('cold products of exact proportions are found too', () => {
    const steam = thermo.equilibriumProducts({
      by: 'mole',
      reactants: [{ elements: { C: 1, H: 4, O: 4 }, parts: 1 }],
      pressure: '1 atm',
      temperature: '500 K',
    });
    near(steam.moleFractions.H2O, 2 / 3, 1e-6);
    near(steam.moleFractions.CO2, 1 / 3, 1e-6);
  });

  test('says what it is', () => {
    const text = String(thermo.equilibriumProducts(sugar));
    expect(text).toMatch(/mole fraction H2O +0\.36974/); // the same digits as the case of this mixture
    expect(text).toMatch(/caution: species with potassium/);
  });

  test.each([
    [{ ...sugar, reactants: [] }, /reactants must be a list of 1 or more/],
    [{ ...sugar, reactants: [{ elements: { Xx: 1 }, parts: 1 }] }, /one of H, C, N, O/],
    [
      { ...sugar, reactants: [{ elements: { H: 2 }, parts: 1 }] },
      /missing required field reactants\.0\.enthalpyOfFormation/,
    ],
    [{ ...sugar, reactants: [{ elements: { H: -2 }, parts: 1 }] }, /elements\.H must be at least 0/],
    [{ ...sugar, temperature: '200 K' }, /at least 300 K and at most 5000 K/],
    [{ ...sugar, pressure: '0 Pa' }, /at least 100 Pa and at most/],
    [{ ...sugar, species: ['CO2', 'H2O', 'N2'] }, /take up all the/],
    [{ ...sugar, species: ['K2CO3(l)'] }, /at least one gas/],
    [{ ...sugar, species: ['carbon dioxide'] }, /species\.0 must be .*, got 'carbon dioxide'/],
    [
      { ...sugar, reactants: [{ elements: { H: 2 }, parts: 1, enthalpyOfFormation: '900 kJ/mol' }] },
      /between 300 K and 5000 K/,
    ],
  ] as const)('refuses %#', (options, message) => {
    expect(() => thermo.equilibriumProducts(options as ProductsOptions)).toThrowError(message);
  });
});

function carbonIn(name: string): number {
  const atoms: Readonly<Record<string, number>> = { 'C(graphite)': 1, HNCO: 1, K2C2N2: 2 };
  return atoms[name] ?? Number(/C(?![a-z])(\d*)/.exec(name)?.[1]?.replace(/^$/, '1') ?? 0);
}
