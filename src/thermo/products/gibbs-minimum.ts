import { luFactor, luSolve } from '../../numerics';
import { MeopError } from '../../units';
import { reducedProperties } from './species-polynomials';
import type { Species } from './species-table';

/** Elements of the products and the possible species, per kilogram; plain numbers. */
export interface ProductsProblem {
  /** Moles of each independently conserved element. */
  readonly amounts: Float64Array;
  readonly gas: readonly Species[];
  readonly condensed: readonly Species[];
  /** Atoms of each such element in a species: by species, then by element. */
  readonly gasAtoms: readonly Float64Array[];
  readonly condensedAtoms: readonly Float64Array[];
}

/** Amounts at equilibrium, per kilogram of products. */
export interface Composition {
  /** Natural logarithm of the moles of each gas. */
  readonly logMoles: Float64Array;
  /** Moles of gas. */
  readonly gasMoles: number;
  /** Moles of each condensed species, 0 where it is absent. */
  readonly condensed: Float64Array;
  readonly iterations: number;
}

/** Standard pressure of the polynomials, 1 bar. */
export const standardPressure = 1e5;

/** Phase of a substance at a transition temperature: that below, or that above. */
export type TransitionSide = 'below' | 'above';

const mostIterations = 200;

/**
 * Composition of minimum Gibbs energy at a temperature and pressure; plain numbers, unchecked. Newton's method on
 * the conditions of a minimum with the element potentials, the moles of gas and those of each condensed species as
 * unknowns; the gases follow from their own condition. A condensed species enters where its potential is below
 * that of its elements, and leaves where its amount turns negative.
 *
 * Source: any textbook on chemical equilibrium by element potentials; ideal gas, pure condensed phases that do not
 * mix.
 */
export function gibbsMinimum(
  problem: ProductsProblem,
  t: number,
  pressure: number,
  side: TransitionSide,
  start?: Composition,
): Composition {
  // Cold products of exact proportions, steam without a trace of hydrogen or oxygen, leave the separate potentials of the elements
  // undetermined. An excess of 1e-8 determines them.
  for (const excess of [0, 1e-8, -1e-8]) {
    const amounts = problem.amounts.map((b, i) => b * (1 + excess * i));
    const found = newtonMinimum({ ...problem, amounts }, t, pressure, side, excess === 0 ? start : undefined);
    if (found !== undefined) return found;
  }
  throw new MeopError({
    code: 'not-converged',
    procedure: 'equilibriumProducts',
    path: 'species',
    problem: `no equilibrium found at ${t.toPrecision(6)} K and ${pressure.toPrecision(6)} Pa; products without gas have none`,
    remedy: 'Offer fewer species, or another temperature',
  });
}

function newtonMinimum(
  problem: ProductsProblem,
  t: number,
  pressure: number,
  side: TransitionSide,
  start: Composition | undefined,
): Composition | undefined {
  const { amounts, gas, gasAtoms, condensed, condensedAtoms } = problem;
  const count = amounts.length;
  const potentialOf = (species: Species): number => {
    const { enthalpy, entropy } = reducedProperties(species, t);
    return enthalpy - entropy;
  };
  const lift = Math.log(pressure / standardPressure);
  const gasPotential = gas.map((species) => potentialOf(species) + lift);
  const condensedPotential = condensed.map((species) =>
    stableAt(species, t, side) ? potentialOf(species) : Number.POSITIVE_INFINITY,
  );

  const logMoles = Float64Array.from(gas, (_, j) => start?.logMoles[j] ?? 0);
  let gasMoles = start?.gasMoles ?? amounts.reduce((sum, b) => sum + b, 0) / 2;
  if (start === undefined) logMoles.fill(Math.log(gasMoles / gas.length));
  const moles = new Float64Array(condensed.length);
  let present: number[] = [];
  for (let c = 0; c < condensed.length; c++)
    if ((start?.condensed[c] ?? 0) > 0 && condensedPotential[c] < Infinity) {
      present.push(c);
      moles[c] = start?.condensed[c] ?? 0;
    }
  // An element that no gas can carry must be in a condensed species from the start.
  for (let i = 0; i < count; i++)
    if (gasAtoms.every((atoms) => atoms[i] === 0) && !present.some((c) => condensedAtoms[c][i] > 0)) {
      const carrier = condensed.findIndex(
        (_, c) => condensedPotential[c] < Infinity && condensedAtoms[c][i] > 0,
      );
      if (carrier >= 0) present.push(carrier);
    }
  const refusedEntry = new Set<number>();
  const potentials = new Float64Array(count);

  for (let iteration = 1; iteration <= mostIterations; iteration++) {
    const step = newtonStep();
    if (step === 'singular') {
      const last = present.pop();
      if (last === undefined) break;
      refusedEntry.add(last);
      moles[last] = 0;
      continue;
    }
    if (step === 'settled') {
      const drowned = present.filter((c) => moles[c] < 0).sort((a, b) => moles[a] - moles[b])[0];
      if (drowned !== undefined) {
        present = present.filter((c) => c !== drowned);
        moles[drowned] = 0;
        continue;
      }
      const entering = mostWanted();
      if (entering === undefined)
        return balanced() ? { logMoles, gasMoles, condensed: moles, iterations: iteration } : undefined;
      present.push(entering);
    }
  }
  return undefined;

  // Where the equations are all but singular the steps may die away before every atom is accounted for.
  function balanced(): boolean {
    return amounts.every((wanted, i) => {
      const held = gasAtoms.reduce((sum, atoms, j) => sum + atoms[i] * Math.exp(logMoles[j]), 0);
      const total = condensedAtoms.reduce((sum, atoms, c) => sum + atoms[i] * moles[c], held);
      return Math.abs(total - wanted) < 1e-9 * wanted;
    });
  }

  function mostWanted(): number | undefined {
    let best: number | undefined;
    let most = 1e-9;
    for (let c = 0; c < condensed.length; c++) {
      if (present.includes(c) || refusedEntry.has(c) || condensedPotential[c] === Infinity) continue;
      let gain = -condensedPotential[c];
      for (let i = 0; i < count; i++) gain += potentials[i] * condensedAtoms[c][i];
      if (gain > most) {
        most = gain;
        best = c;
      }
    }
    return best;
  }

  function newtonStep(): 'settled' | 'moving' | 'singular' {
    const size = count + present.length + 1;
    const last = size - 1;
    const matrix = new Float64Array(size * size);
    const rhs = new Float64Array(size);
    rhs.set(amounts);
    const logTotal = Math.log(gasMoles);
    let sum = 0;
    let sumPotential = 0;
    for (let j = 0; j < gas.length; j++) {
      const n = Math.exp(logMoles[j]);
      const potential = gasPotential[j] + logMoles[j] - logTotal;
      const atoms = gasAtoms[j];
      sum += n;
      sumPotential += n * potential;
      for (let i = 0; i < count; i++) {
        if (atoms[i] === 0) continue;
        const an = atoms[i] * n;
        rhs[i] += an * (potential - 1);
        matrix[i * size + last] += an;
        matrix[last * size + i] += an;
        for (let k = 0; k < count; k++) matrix[i * size + k] += an * atoms[k];
      }
    }
    matrix[last * size + last] = sum - gasMoles;
    rhs[last] = gasMoles - sum + sumPotential;
    for (let p = 0; p < present.length; p++) {
      const c = present[p];
      rhs[count + p] = condensedPotential[c];
      for (let i = 0; i < count; i++) {
        matrix[i * size + count + p] = condensedAtoms[c][i];
        matrix[(count + p) * size + i] = condensedAtoms[c][i];
        rhs[i] -= condensedAtoms[c][i] * moles[c];
      }
    }
    const pivots = new Int32Array(size);
    if (!luFactor(matrix, size, pivots)) return 'singular';
    luSolve(matrix, size, pivots, rhs);
    if (!rhs.every(Number.isFinite)) return 'singular';

    const growth = rhs[last];
    const change = new Float64Array(gas.length);
    let share = Math.min(1, 0.4 / Math.abs(growth));
    let settled = Math.abs(growth) < 1e-12;
    for (let j = 0; j < gas.length; j++) {
      let d = growth - (gasPotential[j] + logMoles[j] - logTotal);
      for (let i = 0; i < count; i++) d += gasAtoms[j][i] * rhs[i];
      change[j] = d;
      const level = logMoles[j] - logTotal;
      // No gas that counts moves by more than e², and no trace leaps above a share of 1e-4.
      if (level > -18) share = Math.min(share, 2 / Math.abs(d));
      else if (d - growth > 0) share = Math.min(share, Math.max(0, -9.2 - level) / (d - growth));
      if (Math.abs(d) * Math.exp(level) > 1e-12 || (level > -27 && Math.abs(d) > 1e-5)) settled = false;
    }
    for (let p = 0; p < present.length; p++) if (Math.abs(rhs[count + p]) > 1e-12 * gasMoles) settled = false;
    for (let j = 0; j < gas.length; j++) logMoles[j] += share * change[j];
    gasMoles *= Math.exp(share * growth);
    for (let p = 0; p < present.length; p++) moles[present[p]] += share * rhs[count + p];
    potentials.set(rhs.subarray(0, count));
    return settled ? 'settled' : 'moving';
  }
}

/** Whether a condensed species is the one offered at a temperature. */
export function stableAt({ ranges }: Species, t: number, side: TransitionSide): boolean {
  const { from } = ranges[0];
  const { to } = ranges[ranges.length - 1];
  return side === 'below' ? t > from && t <= to : t >= from && t < to;
}
