import { MeopError, readInput } from '../../units';
import { requireFields } from '../../units/known-fields';
import { readNotNegative, refusal } from '../../units/refusal';
import type { ProductsProblem } from './gibbs-minimum';
import { knownSpecies } from './species-properties';
import { atomicWeights, molarMassOf, type Species, speciesTable } from './species-table';

/** Reactants as the solver wants them. */
export interface ReactantTotals {
  /** Moles of each element per kilogram. */
  readonly elements: ReadonlyMap<string, number>;
  /** Enthalpy per kilogram at 298.15 K, where every reactant has a heat of formation. */
  readonly enthalpy?: number;
}

/** A reactant as {@link reactantTotals} reads it. */
interface Reactant {
  readonly name?: string;
  readonly elements: Readonly<Record<string, number>>;
  readonly parts: number;
  readonly enthalpyOfFormation?: unknown;
}

const procedure = 'equilibriumProducts';

/** Elements and enthalpy of a kilogram of reactants. */
export function reactantTotals(reactants: readonly Reactant[], by: 'mole' | 'mass'): ReactantTotals {
  if (!Array.isArray(reactants) || reactants.length === 0)
    throw new MeopError(
      'missing-field',
      `${procedure}: reactants: none given; at least one is expected`,
      'reactants',
    );
  const elements = new Map<string, number>();
  let mass = 0;
  let enthalpy: number | undefined = 0;
  reactants.forEach((reactant: Reactant, i) => {
    const path = `reactants[${i}]`;
    requireFields(`${procedure}: ${path}`, reactant, {
      name: 'optional',
      elements: 'required',
      parts: 'required',
      enthalpyOfFormation: 'optional',
    });
    if (typeof reactant.elements !== 'object' || reactant.elements === null)
      throw refusal(
        procedure,
        `${path}.elements`,
        reactant.elements,
        'atoms by element, { K: 1, N: 1, O: 3 },',
      );
    for (const [element, atoms] of Object.entries(reactant.elements)) {
      const field = `${path}.elements.${element}`;
      if (!Object.hasOwn(atomicWeights, element))
        throw refusal(procedure, field, element, `one of ${Object.keys(atomicWeights).join(', ')}`);
      readNotNegative('dimensionless', field, atoms, procedure);
    }
    const molarMass = molarMassOf(reactant.elements);
    if (!(molarMass > 0)) throw refusal(procedure, `${path}.elements`, 'no atoms', 'at least one atom');
    const parts = readNotNegative('dimensionless', `${path}.parts`, reactant.parts, procedure).si;
    const moles = by === 'mole' ? parts : parts / molarMass;
    mass += moles * molarMass;
    for (const [element, n] of Object.entries(reactant.elements))
      elements.set(element, (elements.get(element) ?? 0) + n * moles);
    if (reactant.enthalpyOfFormation === undefined) enthalpy = undefined;
    else if (enthalpy !== undefined)
      enthalpy +=
        moles *
        readInput('molar energy', `${path}.enthalpyOfFormation`, reactant.enthalpyOfFormation, procedure).si;
  });
  if (!(mass > 0)) throw refusal(procedure, 'reactants', 'parts that are all 0', 'at least one part above 0');
  for (const [element, n] of elements) {
    if (n === 0) elements.delete(element);
    else elements.set(element, n / mass);
  }
  return { elements, ...(enthalpy !== undefined && { enthalpy: enthalpy / mass }) };
}

/** The species offered, with the elements that are conserved independently of one another. */
export function productsProblem(
  elements: ReadonlyMap<string, number>,
  names: readonly string[] | undefined,
): ProductsProblem {
  const offered = (
    names?.map((name, i) => knownSpecies(procedure, `species[${i}]`, name, 'nasa7')) ?? [
      ...speciesTable('nasa7').values(),
    ]
  ).filter((species) => Object.keys(species.elements).every((element) => elements.has(element)));
  const all = [...new Set(offered)];
  const gas = all.filter(({ phase }) => phase === 'gas');
  const condensed = all.filter(({ phase }) => phase !== 'gas');
  if (gas.length === 0)
    throw refusal(
      procedure,
      'species',
      String(names),
      'at least one gas made of the elements of the reactants',
    );
  const kept = independentElements([...elements], all);
  const atomsOf = ({ elements: atoms }: Species): Float64Array =>
    Float64Array.from(kept, (element) => atoms[element] ?? 0);
  return {
    amounts: Float64Array.from(kept, (element) => elements.get(element) ?? 0),
    gas,
    condensed,
    gasAtoms: gas.map(atomsOf),
    condensedAtoms: condensed.map(atomsOf),
  };
}

// Where every species holds two elements in one proportion (steam alone), their balances are one equation. Rows are reduced by
// elimination; a row that vanishes must vanish with its amount, or the species cannot hold the reactants.
function independentElements(
  elements: readonly (readonly [string, number])[],
  species: readonly Species[],
): string[] {
  const rows: { readonly lead: number; readonly row: readonly number[] }[] = [];
  const kept: string[] = [];
  for (const [element, amount] of elements) {
    let row: readonly number[] = [...species.map(({ elements: atoms }) => atoms[element] ?? 0), amount];
    for (const { lead, row: above } of rows) {
      const factor = row[lead] / above[lead];
      row = row.map((x, i) => x - factor * above[i]);
    }
    const lead = row.slice(0, -1).findIndex((x) => Math.abs(x) > 1e-9);
    if (lead >= 0) {
      rows.push({ lead, row });
      kept.push(element);
    } else if (Math.abs(row[row.length - 1]) > 1e-9 * amount)
      throw refusal(
        procedure,
        'species',
        species.map(({ name }) => name).join(', '),
        `species that can take up all the ${element} of the reactants`,
      );
  }
  return kept;
}
