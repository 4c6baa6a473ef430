import { type Argument, inputs, list, MeopError, molarEnergy, named, optional, ratio } from '../../units';
import { partName, parts } from '../gas-inputs';
import { amountsByName } from './amounts-by-name';
import type { ProductsProblem } from './gibbs-minimum';
import { atomicWeights, molarMassOf, type Species, species, speciesTable } from './species-table';

const reactant = /* @__PURE__ */ inputs(
  {
    name: partName,
    elements: amountsByName('atoms of each element in its formula', {
      what: 'atoms by element',
      find: (element, at) => {
        if (Object.hasOwn(atomicWeights, element)) return element;
        const expected = `one of ${Object.keys(atomicWeights).join(', ')}`;
        throw new MeopError({ ...at, code: 'out-of-domain', given: element, expected });
      },
      amount: ratio('a', 'atoms', { min: 0 }),
      example: { K: 1, N: 1, O: 3 },
    }),
    parts,
    enthalpyOfFormation: optional(
      molarEnergy(
        'ΔH_f',
        'molar enthalpy of formation at 298.15 K; required unless a temperature is specified',
        {
          example: '-494.63 kJ/mol',
        },
      ),
    ),
  },
  {
    meaning: 'reactant',
    checks: [
      ({ elements }) =>
        elements.some(([, atoms]) => atoms > 0)
          ? undefined
          : {
              path: 'elements',
              problem: 'contains no atoms',
              remedy: 'Give at least one, { K: 1, N: 1, O: 3 }',
            },
    ],
  },
);

/** Reactants. */
export const reactantList = /* @__PURE__ */ list('reactants', reactant);
/** Possible species of the products. */
export const productSpecies = /* @__PURE__ */ list(
  'species that the products may contain; assumed every one that the elements allow',
  /* @__PURE__ */ named('name of a species', species, { example: 'CO2' }),
);
/** One reactant of {@link equilibriumProducts}. */
export type EquilibriumReactant = Argument<typeof reactant>;

/** Reactants in the form of the solver. */
export interface ReactantTotals {
  /** Moles of each element per kilogram. */
  readonly elements: ReadonlyMap<string, number>;
  /** Enthalpy per kilogram at 298.15 K, where every reactant has a heat of formation. */
  readonly enthalpy: number | undefined;
}

/** Elements and enthalpy of a kilogram of reactants. */
export function reactantTotals(
  reactants: ReturnType<typeof reactantList.read>,
  by: 'mole' | 'mass',
): ReactantTotals {
  const elements = new Map<string, number>();
  let mass = 0;
  let enthalpy: number | undefined = 0;
  for (const { elements: atoms, parts, enthalpyOfFormation } of reactants) {
    const molarMass = molarMassOf(Object.fromEntries(atoms));
    const moles = by === 'mole' ? parts : parts / molarMass;
    mass += moles * molarMass;
    for (const [element, n] of atoms) elements.set(element, (elements.get(element) ?? 0) + n * moles);
    if (enthalpyOfFormation === undefined) enthalpy = undefined;
    else if (enthalpy !== undefined) enthalpy += moles * enthalpyOfFormation.si;
  }
  for (const [element, n] of elements) {
    if (n === 0) elements.delete(element);
    else elements.set(element, n / mass);
  }
  return { elements, enthalpy: enthalpy === undefined ? undefined : enthalpy / mass };
}

const conflict = (names: readonly string[], expected: string): MeopError =>
  new MeopError({
    code: 'out-of-domain',
    procedure: 'equilibriumProducts',
    path: 'species',
    given: names,
    expected,
  });

/** The possible species, with the elements that are conserved independently of one another. */
export function productsProblem(
  elements: ReadonlyMap<string, number>,
  species: readonly Species[] = [...speciesTable('nasa7').values()],
): ProductsProblem {
  const all = [...new Set(species)].filter((one) => Object.keys(one.elements).every((e) => elements.has(e)));
  const gas = all.filter(({ phase }) => phase === 'gas');
  const condensed = all.filter(({ phase }) => phase !== 'gas');
  if (gas.length === 0)
    throw conflict(
      species.map(({ name }) => name),
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
      throw conflict(
        species.map(({ name }) => name),
        `species that can take up all the ${element} of the reactants`,
      );
  }
  return kept;
}
