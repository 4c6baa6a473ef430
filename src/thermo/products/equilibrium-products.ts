import {
  constants,
  fromSiValue,
  type Quantity,
  type QuantityInput,
  readInput,
  table,
  unitOf,
} from '../../units';
import { type FieldsOf, requireFields } from '../../units/known-fields';
import { refusal } from '../../units/refusal';
import { vandenkerckhoveSi } from '../isentropic-kernels';
import type { ProductsProblem } from './gibbs-minimum';
import { equilibriumCharacteristicVelocityOf, equilibriumGammaOf } from './products-flow';
import { productsProblem, reactantTotals } from './products-problem';
import { type ProductsState, productsRange, stateAt, stateWith } from './products-state';
import { formationTemperature } from './species-properties';

/** One reactant of {@link equilibriumProducts}. */
export interface EquilibriumReactant {
  readonly name?: string;
  /** Atoms of each element in its formula: `{ K: 1, N: 1, O: 3 }`. */
  readonly elements: Readonly<Record<string, number>>;
  /** Parts by mole or by mass, in any scale. */
  readonly parts: number;
  /** Molar enthalpy of formation at 298.15 K; needed unless a temperature is given. */
  readonly enthalpyOfFormation?: QuantityInput<'molar energy'>;
}

/** What {@link equilibriumProducts} needs. */
export interface EquilibriumProductsOptions {
  readonly reactants: readonly EquilibriumReactant[];
  /** What the parts count. */
  readonly by: 'mole' | 'mass';
  readonly pressure: QuantityInput<'absolute pressure'>;
  /** Temperature of the products; without it the flame temperature of reactants at 298.15 K is found, no heat lost. */
  readonly temperature?: QuantityInput<'temperature'>;
  /** Names of the species that the products may be; default every one of {@link speciesNames} that the elements allow. */
  readonly species?: readonly string[];
}

/** Products at equilibrium: composition, and what a throat sees of them. */
export interface EquilibriumProducts {
  readonly temperature: Quantity<'temperature'>;
  readonly pressure: Quantity<'absolute pressure'>;
  /** Of the gas, from the most to the least; shares below 1e-12 are left out. */
  readonly moleFractions: Readonly<Record<string, number>>;
  /** Share of all mass of each condensed species that is there. */
  readonly condensedMassFractions: Readonly<Record<string, number>>;
  readonly condensedMassFraction: number;
  /** Of the gas alone. */
  readonly gasMolarMass: Quantity<'molar mass'>;
  /** Mass of everything for each mole of gas: it goes with R in c* and density, since only gas pushes. */
  readonly effectiveMolarMass: Quantity<'molar mass'>;
  /** Molar gas constant over the effective molar mass. */
  readonly gasConstant: Quantity<'specific gas constant'>;
  /** For each unit of mass of the gas alone, composition frozen. */
  readonly gasSpecificHeat: Quantity<'specific heat'>;
  /** For each unit of mass of the condensed matter; absent where there is none. */
  readonly condensedSpecificHeat?: Quantity<'specific heat'>;
  /** Ratio of specific heats of the whole exhaust, composition frozen, no lag: the γ for c* and the thrust coefficient. */
  readonly gamma: number;
  /** Of the gas alone: not for c*. */
  readonly gasGamma: number;
  /** −(∂ln p/∂ln V) at constant entropy while the composition follows: sound speed and expansion of a slow flow. */
  readonly equilibriumGamma: number;
  /** Ideal c* with frozen composition. */
  readonly characteristicVelocity: Quantity<'speed'>;
  /** Ideal c* while the composition follows the equilibrium: the better end. */
  readonly equilibriumCharacteristicVelocity: Quantity<'speed'>;
  /** Of gas and condensed matter together, the volume of the latter left out. */
  readonly density: Quantity<'density'>;
  readonly cautions: readonly string[];
  toString(): string;
}

const procedure = 'equilibriumProducts';
const equilibriumProductsFields: FieldsOf<EquilibriumProductsOptions> = {
  reactants: 'required',
  by: 'required',
  pressure: 'required',
  temperature: 'optional',
  species: 'optional',
};

/**
 * Products of a reaction at chemical equilibrium: flame temperature at constant pressure, composition of gas and smoke, and the
 * γ, gas constant and ideal c* that the rest of the library takes. Condensed species are pure, do not mix with each other,
 * and keep the velocity and temperature of the gas.
 *
 * Source: least Gibbs energy with the polynomials of NASA TM-4513 (1993); ideal gas.
 *
 * @throws MeopError `out-of-domain` for unknown elements or species, species that cannot take up the reactants, or values
 * without sense; `missing-field` for no heat of formation where the flame temperature is asked; `no-solution` where it would lie outside 300 K to 5000 K
 * @example equilibriumProducts({ by: 'mole', reactants: [{ elements: { H: 2 }, parts: 2, enthalpyOfFormation: '0 J/mol' }, { elements: { O: 2 }, parts: 1, enthalpyOfFormation: '0 J/mol' }], pressure: '1 atm' }).temperature.in('K') // => 3078.67
 */
export function equilibriumProducts(options: EquilibriumProductsOptions): EquilibriumProducts {
  requireFields(procedure, options, equilibriumProductsFields);
  const { by } = options;
  if (by !== 'mole' && by !== 'mass') throw refusal(procedure, 'by', by, "'mole' or 'mass'");
  const pressure = readInput('absolute pressure', 'pressure', options.pressure, procedure).si;
  if (!(pressure >= 100 && pressure <= 1e9))
    throw refusal(procedure, 'pressure', options.pressure, 'from 100 Pa to 1000 MPa');
  const { elements, enthalpy } = reactantTotals(options.reactants, by);
  const problem = productsProblem(elements, options.species);
  let state: ProductsState;
  if (options.temperature !== undefined) {
    const t = readInput('temperature', 'temperature', options.temperature, procedure).si;
    if (!(t >= productsRange.from && t <= productsRange.to))
      throw refusal(
        procedure,
        'temperature',
        options.temperature,
        `from ${productsRange.from} K to ${productsRange.to} K, where the fits of the species hold,`,
      );
    state = stateAt(problem, t, pressure);
  } else {
    const unknown = options.reactants.findIndex((one) => one.enthalpyOfFormation === undefined);
    if (enthalpy === undefined)
      throw refusal(
        procedure,
        `reactants[${unknown}].enthalpyOfFormation`,
        'nothing',
        `a molar enthalpy of formation at ${formationTemperature} K, or else a temperature of the products,`,
      );
    state = stateWith(problem, pressure, 'enthalpy', enthalpy, { guess: 2000, stride: 0.85 });
  }

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
    pressure: fromSiValue(pressure, 'absolute pressure', unitOf('MPa')),
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
    density: fromSiValue(pressure / (gasMoles * r * state.temperature), 'density', unitOf('kg/m^3')),
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
  const text = (): string => textOf(facts, result);
  return { ...result, toString: text, ...{ [Symbol.for('nodejs.util.inspect.custom')]: text } };
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
          'condensed matter is pure, unmixed, and keeps up with the gas: c* is an upper bound, and small motors deliver several per cent less',
        ]
      : []),
    ...(elements.has('K')
      ? [
          'species with potassium rest on tables of 1963 to 1971 and gaseous K2CO3 is not among them: KOH may be off by a factor of 2, the temperature by some kelvin',
        ]
      : []),
    ...(state.atTransition
      ? ['two phases of one substance are there together and hold the temperature']
      : []),
    ...(there.some(({ phase, ranges }) => phase === 'liquid' && ranges[0].from > throat)
      ? [
          'droplets freeze before the throat if they have the time: the c* of equilibrium counts on their heat, and droplets that stay liquid give the frozen one',
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
