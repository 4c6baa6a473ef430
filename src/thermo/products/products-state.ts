import { findRoot } from '../../numerics';
import { constants, MeopError } from '../../units';
import {
  type Composition,
  gibbsMinimum,
  type ProductsProblem,
  standardPressure,
  type TransitionSide,
} from './gibbs-minimum';
import { reducedProperties } from './species-polynomials';

/** Products at equilibrium per kilogram; plain numbers. */
export interface ProductsState {
  readonly temperature: number;
  readonly pressure: number;
  readonly gas: Float64Array;
  readonly condensed: Float64Array;
  readonly gasMoles: number;
  readonly enthalpy: number;
  readonly entropy: number;
  /** Heat capacity at constant pressure and composition, of the gas and of the condensed species. */
  readonly gasHeatCapacity: number;
  readonly condensedHeatCapacity: number;
  /** Two phases of one substance coexist and fix the temperature. */
  readonly atTransition: boolean;
  /** Starting point for a neighbouring state. */
  readonly composition: Composition;
}

const gasConstant = constants.molarGasConstant.value;

/** Temperature range of the data of every species, in kelvin. */
export const productsRange = { from: 300, to: 5000 } as const;

/** The state at a temperature and pressure. */
export function stateAt(
  problem: ProductsProblem,
  t: number,
  pressure: number,
  start?: Composition,
  side: TransitionSide = 'above',
): ProductsState {
  const composition = gibbsMinimum(problem, t, pressure, side, start);
  return stateOf(
    problem,
    t,
    pressure,
    {
      gas: composition.logMoles.map(Math.exp),
      condensed: composition.condensed,
      composition,
    },
    false,
  );
}

function stateOf(
  problem: ProductsProblem,
  t: number,
  pressure: number,
  parts: Pick<ProductsState, 'gas' | 'condensed' | 'composition'>,
  atTransition: boolean,
): ProductsState {
  const { gas, condensed } = parts;
  const gasMoles = gas.reduce((sum, n) => sum + n, 0);
  let enthalpy = 0;
  let entropy = 0;
  let gasHeatCapacity = 0;
  let condensedHeatCapacity = 0;
  problem.gas.forEach((species, j) => {
    const n = gas[j];
    if (n === 0) return;
    const at = reducedProperties(species, t);
    enthalpy += n * at.enthalpy * t;
    entropy += n * (at.entropy - Math.log(n / gasMoles) - Math.log(pressure / standardPressure));
    gasHeatCapacity += n * at.specificHeat;
  });
  problem.condensed.forEach((species, c) => {
    const n = condensed[c];
    if (n === 0) return;
    const at = reducedProperties(species, t);
    enthalpy += n * at.enthalpy * t;
    entropy += n * at.entropy;
    condensedHeatCapacity += n * at.specificHeat;
  });
  return {
    temperature: t,
    pressure,
    ...parts,
    gasMoles,
    enthalpy: enthalpy * gasConstant,
    entropy: entropy * gasConstant,
    gasHeatCapacity: gasHeatCapacity * gasConstant,
    condensedHeatCapacity: condensedHeatCapacity * gasConstant,
    atTransition,
  };
}

/**
 * The state at a pressure that has an enthalpy or an entropy: both grow with temperature, and jump where a
 * substance melts or changes its crystal. Where the value lies within a jump, both phases coexist at the
 * temperature of the change; the gas is the same with either, so the two states mix in a straight line.
 */
export function stateWith(
  problem: ProductsProblem,
  pressure: number,
  which: 'enthalpy' | 'entropy',
  wanted: number,
  bracket: { readonly guess: number; readonly stride: number; readonly start?: Composition },
): ProductsState {
  let { start } = bracket;
  const excess = (t: number): number => {
    const state = stateAt(problem, t, pressure, start);
    start = state.composition;
    return state[which] - wanted;
  };
  // From the guess outwards: cold products of exact proportions leave some element potentials undetermined.
  let lower = bracket.guess;
  let upper = bracket.guess;
  if (excess(bracket.guess) > 0)
    do {
      upper = lower;
      if (lower === productsRange.from) throw outOfReach();
      lower = Math.max(productsRange.from, lower * bracket.stride);
    } while (excess(lower) > 0);
  else
    do {
      lower = upper;
      if (upper === productsRange.to) throw outOfReach();
      upper = Math.min(productsRange.to, upper / bracket.stride);
    } while (excess(upper) < 0);
  const changes = new Set(
    problem.condensed
      .flatMap(({ ranges }) => [ranges[0].from, ranges[ranges.length - 1].to])
      .filter((t) => t > lower && t < upper),
  );
  for (const change of changes) {
    if (!(change > lower && change < upper)) continue;
    const below = stateAt(problem, change, pressure, start, 'below');
    const above = stateAt(problem, change, pressure, start, 'above');
    if (wanted < below[which]) upper = change * (1 - 1e-12);
    else if (wanted > above[which]) lower = change;
    else if (above[which] > below[which])
      return mixed(problem, below, above, (wanted - below[which]) / (above[which] - below[which]));
    else return below;
  }
  const { root } = findRoot(excess, { lower, upper, tolerance: 1e-9 });
  return stateAt(problem, root, pressure, start);
}

const outOfReach = (): MeopError =>
  new MeopError({
    code: 'no-solution',
    procedure: 'equilibriumProducts',
    path: 'reactants',
    problem: `the temperature of the products is not between ${productsRange.from} K and ${productsRange.to} K, the range of the data of the species`,
    remedy: 'Check the heats of formation and their signs, or give the temperature',
  });

function mixed(
  problem: ProductsProblem,
  below: ProductsState,
  above: ProductsState,
  share: number,
): ProductsState {
  const blend = (a: Float64Array, b: Float64Array): Float64Array =>
    a.map((x, i) => (1 - share) * x + share * b[i]);
  return stateOf(
    problem,
    above.temperature,
    above.pressure,
    {
      gas: blend(below.gas, above.gas),
      condensed: blend(below.condensed, above.condensed),
      composition: above.composition,
    },
    share > 0 && share < 1,
  );
}
