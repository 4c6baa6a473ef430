import {
  absolutePressure,
  constants,
  fromSiValue,
  optional,
  printable,
  procedure,
  type Quantity,
  table,
  temperature,
  unitOf,
} from '../../units';
import { partsBy, someParts } from '../gas-inputs';
import { vandenkerckhoveSi } from '../isentropic-kernels';
import type { ProductsProblem } from './gibbs-minimum';
import { equilibriumCharacteristicVelocityOf, equilibriumGammaOf } from './products-flow';
import { productSpecies, productsProblem, reactantList, reactantTotals } from './products-problem';
import { type ProductsState, productsRange, stateAt, stateWith } from './products-state';

/** Products at equilibrium: composition, and the properties of the flow through a throat. */
export interface EquilibriumProducts {
  readonly temperature: Quantity<'temperature'>;
  readonly pressure: Quantity<'absolute pressure'>;
  /** Of the gas, in descending order; fractions below 1e-12 are omitted. */
  readonly moleFractions: Readonly<Record<string, number>>;
  /** Mass fraction of each condensed species. */
  readonly condensedMassFractions: Readonly<Record<string, number>>;
  readonly condensedMassFraction: number;
  /** Of the gas alone. */
  readonly gasMolarMass: Quantity<'molar mass'>;
  /** Mass of all products for each mole of gas: for the gas constant in c* and density. */
  readonly effectiveMolarMass: Quantity<'molar mass'>;
  /** Molar gas constant divided by the effective molar mass. */
  readonly gasConstant: Quantity<'specific gas constant'>;
  /** For each unit of mass of the gas alone, composition frozen. */
  readonly gasSpecificHeat: Quantity<'specific heat'>;
  /** For each unit of mass of the condensed matter; absent where there is none. */
  readonly condensedSpecificHeat?: Quantity<'specific heat'>;
  /**
   * Ratio of specific heats of the whole exhaust, composition frozen, no lag: the γ for c* and the thrust
   * coefficient.
   */
  readonly gamma: number;
  /** Of the gas alone: not for c*. */
  readonly gasGamma: number;
  /** −(∂ln p/∂ln V) at constant entropy with shifting composition: sound speed and expansion of a slow flow. */
  readonly equilibriumGamma: number;
  /** Ideal c* with frozen composition. */
  readonly characteristicVelocity: Quantity<'speed'>;
  /** Ideal c* with shifting equilibrium: the upper limit. */
  readonly equilibriumCharacteristicVelocity: Quantity<'speed'>;
  /** Of gas and condensed matter together, neglecting the volume of the latter. */
  readonly density: Quantity<'density'>;
  readonly cautions: readonly string[];
  toString(): string;
}

/**
 * Products of a reaction at chemical equilibrium: flame temperature at constant pressure, composition of gas and
 * condensed products, and the γ, gas constant and ideal c* that other calculations take. Condensed species are
 * pure, do not mix with each other, and have the velocity and temperature of the gas.
 *
 * @example equilibriumProducts({ by: 'mole', reactants: [{ elements: { H: 2 }, parts: 2, enthalpyOfFormation: '0 J/mol' }, { elements: { O: 2 }, parts: 1, enthalpyOfFormation: '0 J/mol' }], pressure: '1 atm' }).temperature.in('K') // => 3078.67
 */
export const equilibriumProducts = /* @__PURE__ */ procedure({
  name: 'equilibriumProducts',
  title: 'Products of a reaction at chemical equilibrium',
  source: 'Minimum Gibbs energy with the polynomials of NASA TM-4513 (1993); ideal gas',
  inputs: {
    reactants: reactantList,
    by: partsBy,
    pressure: absolutePressure('p', 'pressure of the products', { min: 100, max: 1e9 }),
    temperature: optional(
      temperature(
        'T',
        'temperature of the products; assumed the adiabatic flame temperature of reactants at 298.15 K',
        { min: productsRange.from, max: productsRange.to },
      ),
    ),
    species: optional(productSpecies),
  },
  gives:
    'temperature, composition, ratios of specific heats, gas constant and ideal characteristic velocities',
  example: {
    by: 'mole',
    reactants: [
      { elements: { H: 2 }, parts: 2, enthalpyOfFormation: '0 J/mol' },
      { elements: { O: 2 }, parts: 1, enthalpyOfFormation: '0 J/mol' },
    ],
    pressure: '1 atm',
  },
  checks: [
    ({ reactants }) => someParts('reactants', reactants),
    ({ reactants, temperature }) => {
      const unknown = reactants.findIndex((one) => one.enthalpyOfFormation === undefined);
      if (temperature !== undefined || unknown < 0) return undefined;
      return {
        code: 'missing-field',
        path: `reactants.${unknown}.enthalpyOfFormation`,
        expected: 'molar enthalpy of formation at 298.15 K',
        remedy: 'Give it, or the temperature of the products',
      };
    },
  ],
  run: ({ reactants, by, pressure, temperature, species }): EquilibriumProducts => {
    const { elements, enthalpy } = reactantTotals(reactants, by);
    const problem = productsProblem(elements, species);
    const state =
      temperature === undefined
        ? stateWith(problem, pressure.si, 'enthalpy', enthalpy ?? 0, { guess: 2000, stride: 0.85 })
        : stateAt(problem, temperature.si, pressure.si);
    return resultOf(problem, state, elements);
  },
});

function resultOf(
  problem: ProductsProblem,
  state: ProductsState,
  elements: ReadonlyMap<string, number>,
): EquilibriumProducts {
  const r = constants.molarGasConstant.value;
  const { gasMoles, gasHeatCapacity, condensedHeatCapacity } = state;
  const condensed = problem.condensed
    .map(({ name, molarMass }, c) => [name, state.condensed[c] * molarMass] as const)
    .filter(([, share]) => share > 0);
  const condensedMass = condensed.reduce((sum, [, share]) => sum + share, 0);
  const heatCapacity = gasHeatCapacity + condensedHeatCapacity;
  const gamma = heatCapacity / (heatCapacity - gasMoles * r);
  const specific = (si: number): Quantity<'specific heat'> =>
    fromSiValue(si, 'specific heat', unitOf('J/(kg*K)'));
  const speed = (si: number): Quantity<'speed'> => fromSiValue(si, 'speed', unitOf('m/s'));
  const facts = {
    temperature: fromSiValue(state.temperature, 'temperature', unitOf('K')),
    pressure: fromSiValue(state.pressure, 'absolute pressure', unitOf('MPa')),
    condensedMassFraction: condensedMass,
    gasMolarMass: fromSiValue((1 - condensedMass) / gasMoles, 'molar mass', unitOf('g/mol')),
    effectiveMolarMass: fromSiValue(1 / gasMoles, 'molar mass', unitOf('g/mol')),
    gasConstant: fromSiValue(gasMoles * r, 'specific gas constant', unitOf('J/(kg*K)')),
    gasSpecificHeat: specific(gasHeatCapacity / (1 - condensedMass)),
    ...(condensedMass > 0 && { condensedSpecificHeat: specific(condensedHeatCapacity / condensedMass) }),
    gamma,
    gasGamma: gasHeatCapacity / (gasHeatCapacity - gasMoles * r),
    equilibriumGamma: equilibriumGammaOf(problem, state),
    characteristicVelocity: speed(Math.sqrt(gasMoles * r * state.temperature) / vandenkerckhoveSi(gamma)),
    equilibriumCharacteristicVelocity: speed(equilibriumCharacteristicVelocityOf(problem, state, r)),
    density: fromSiValue(state.pressure / (gasMoles * r * state.temperature), 'density', unitOf('kg/m^3')),
  } satisfies Partial<EquilibriumProducts>;
  const moleFractions = Object.fromEntries(
    problem.gas
      .map(({ name }, j) => [name, state.gas[j] / gasMoles] as const)
      .filter(([, share]) => share >= 1e-12)
      .sort(([, a], [, b]) => b - a),
  );
  const result = {
    ...facts,
    moleFractions,
    condensedMassFractions: Object.fromEntries([...condensed].sort(([, a], [, b]) => b - a)),
    cautions: cautionsFor(problem, state, elements),
  };
  return printable(result, () => textOf(facts, result));
}

function cautionsFor(
  problem: ProductsProblem,
  state: ProductsState,
  elements: ReadonlyMap<string, number>,
): readonly string[] {
  const there = problem.condensed.filter((_, c) => state.condensed[c] > 0);
  const throat = 0.9 * state.temperature; // a little below that at Mach 1
  return [
    ...(there.length > 0
      ? [
          'assumed that condensed matter is pure, unmixed, and has the velocity of the gas: c* is an upper bound, and small motors deliver several per cent less',
        ]
      : []),
    ...(elements.has('K')
      ? [
          'species with potassium are from tables of 1963 to 1971, without gaseous K2CO3: KOH may be wrong by a factor of 2, the temperature by some kelvin',
        ]
      : []),
    ...(state.atTransition ? ['two phases of one substance coexist and fix the temperature'] : []),
    ...(there.some(({ phase, ranges }) => phase === 'liquid' && ranges[0].from > throat)
      ? [
          'droplets freeze before the throat if time permits: the equilibrium c* includes their heat of fusion; with droplets that stay liquid use the frozen c*',
        ]
      : []),
  ];
}

function textOf(
  facts: Readonly<Record<string, unknown>>,
  result: Pick<EquilibriumProducts, 'moleFractions' | 'condensedMassFractions' | 'cautions'>,
): string {
  const shown = (value: unknown): string =>
    typeof value === 'number' ? value.toPrecision(5) : String(value);
  const rows = table([
    ...Object.entries(facts).map(([property, value]) => ({ property, value: shown(value) })),
    ...Object.entries(result.moleFractions)
      .filter(([, share]) => share >= 1e-5)
      .map(([name, share]) => ({ property: `mole fraction ${name}`, value: shown(share) })),
    ...Object.entries(result.condensedMassFractions).map(([name, share]) => ({
      property: `mass fraction ${name}`,
      value: shown(share),
    })),
  ]);
  return [rows, ...result.cautions.map((caution) => `caution: ${caution}`)].join('\n');
}
