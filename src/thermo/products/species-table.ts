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

/** The species of a form by name. The text is read when it is first asked for. */
export function speciesTable(form: PolynomialForm): ReadonlyMap<string, Species> {
  const known = tables.get(form);
  if (known !== undefined) return known;
  const text =
    form === 'nasa9' ? nineCoefficientSpecies : chonSpecies + potassiumSpecies + aluminiumChlorineSpecies;
  const table = new Map(readSpecies(text, form).map((species) => [species.name, species]));
  tables.set(form, table);
  return table;
}

/** From where to where the fit of a species holds, in kelvin. One that begins at 300 K is as good two kelvin below it. */
export function fitRange({ ranges }: Species): { readonly from: number; readonly to: number } {
  const { from } = ranges[0];
  return { from: from === 300 ? 298.15 : from, to: ranges[ranges.length - 1].to };
}

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
