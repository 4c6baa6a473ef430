import { MeopError, type NamedTable, type Place } from '../../units';
import { aluminiumChlorineSpecies } from './aluminium-chlorine-species';
import { chonSpecies } from './chon-species';
import { nineCoefficientSpecies } from './nine-coefficient-species';
import { potassiumSpecies } from './potassium-species';

/** Which of the two NASA forms a species' polynomials have. */
export type PolynomialForm = 'nasa7' | 'nasa9';

/** One temperature range of a species: coefficients a, then the two integration constants. */
export interface SpeciesRange {
  readonly from: number;
  readonly to: number;
  readonly coefficients: readonly number[];
}

/** A species as the table has it, in SI. */
export interface Species {
  readonly name: string;
  readonly phase: 'gas' | 'solid' | 'liquid';
  readonly elements: Readonly<Record<string, number>>;
  readonly molarMass: number;
  readonly form: PolynomialForm;
  readonly ranges: readonly SpeciesRange[];
  readonly source: string;
}

/**
 * Atomic weights in g/mol of the elements that the species are made of, conventional values.
 *
 * Source: IUPAC conventional atomic weights (2013 to 2021).
 */
export const atomicWeights: Readonly<Record<string, number>> = {
  H: 1.008,
  C: 12.011,
  N: 14.007,
  O: 15.999,
  Al: 26.9815385,
  Cl: 35.45,
  Ar: 39.948,
  K: 39.0983,
};

const reports = { nasa7: 'NASA TM-4513 (1993)', nasa9: 'NASA TP-2002-211556 (2002)' } as const;
const tables = /* @__PURE__ */ new Map<PolynomialForm, ReadonlyMap<string, Species>>();

/** The species of a form by name. The text is read on the first call. */
export function speciesTable(form: PolynomialForm): ReadonlyMap<string, Species> {
  const known = tables.get(form);
  if (known !== undefined) return known;
  const text =
    form === 'nasa9' ? nineCoefficientSpecies : chonSpecies + potassiumSpecies + aluminiumChlorineSpecies;
  const table = new Map(readSpecies(text, form).map((species) => [species.name, species]));
  tables.set(form, table);
  return table;
}

/** The temperature range of the data of a species, in kelvin. Data that begin at 300 K are as accurate two kelvin below it. */
export function fitRange({ ranges }: Species): { readonly from: number; readonly to: number } {
  const { from } = ranges[0];
  return { from: from === 300 ? 298.15 : from, to: ranges[ranges.length - 1].to };
}

/**
 * Names of the species that {@link speciesProperties} and {@link equilibriumProducts} know.
 *
 * @example speciesNames().includes('K2CO3(l)') // => true
 */
export function speciesNames(form: PolynomialForm = 'nasa7'): readonly string[] {
  return [...speciesTable(form).keys()];
}

/** The species by name. */
export const species = {
  what: 'species',
  names: speciesNames,
  usual: ['CO', 'CO2', 'H2', 'H2O', 'N2', 'O2', 'KOH', 'K2CO3(l)', 'Al2O3(l)', 'HCl'],
  find: (name) => speciesOf(name, 'nasa7'),
  is: (value): value is Species => [...speciesTable('nasa7').values()].some((known) => known === value),
} as const satisfies NamedTable<Species>;

/** The species of a name. @throws MeopError `out-of-domain`, which lists species with a similar name */
export function speciesOf(name: string, form: PolynomialForm, at: Partial<Place> = {}): Species {
  const found = speciesTable(form).get(name);
  if (found !== undefined) return found;
  const letters = lettersOf(name);
  const near = speciesNames(form).filter((each) => lettersOf(each).startsWith(letters.slice(0, 2)));
  const such = near.length > 0 && letters !== '' ? `, such as ${near.slice(0, 8).join(', ')}` : '';
  throw new MeopError({
    ...at,
    code: 'out-of-domain',
    given: name,
    expected: `a name of speciesNames(${form === 'nasa7' ? '' : `'${form}'`})${such}`,
  });
}

const lettersOf = (name: string): string => name.replace(/[^A-Za-z]/g, '').toLowerCase();

function readSpecies(text: string, form: PolynomialForm): Species[] {
  return text
    .trim()
    .split(/\n(?! )/)
    .filter((block) => block !== '')
    .map((block) => {
      const [head, ...lines] = block.split('\n');
      const [name, phase, formula, code] = head.split(' | ');
      const elements = Object.fromEntries(
        Array.from(formula.matchAll(/([A-Z][a-z]?)(\d+)/g), ([, element, count]) => [element, Number(count)]),
      );
      return {
        name,
        phase: phase === 'solid' || phase === 'liquid' ? phase : 'gas',
        elements,
        molarMass: molarMassOf(elements),
        form,
        ranges: lines.map((line) => {
          const [from, to, ...coefficients] = line.trim().split(' ').map(Number);
          return { from, to, coefficients };
        }),
        source: `${reports[form]}, ${code}`,
      };
    });
}

/** Molar mass in kg/mol of so many atoms of each element. */
export function molarMassOf(elements: Readonly<Record<string, number>>): number {
  return Object.entries(elements).reduce((sum, [element, n]) => sum + n * atomicWeights[element], 0) / 1000;
}
