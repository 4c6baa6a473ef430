import type { Input, Inputs } from '../declare/input';
import { table } from '../table';
import type { CalculationMetadata, FormulaMetadata } from './declaration';
import type { Explanation } from './explain';
import type { Working } from './working';

/** A calculation of any form, for lists, documentation and tests; its arguments are checked when it runs. */
export interface AnyCalculation extends CalculationMetadata {
  (...given: never[]): unknown;
  explain(...given: never[]): Working;
}

/** A formula of any form. */
export interface AnyFormula extends FormulaMetadata {
  evaluate(values: object): unknown;
  explain(values: object): Explanation;
  cautions(values: object): readonly string[];
}

const loaded = new Map<string, AnyCalculation | AnyFormula>();

/** Registers a calculation of this program. */
export function register(calculation: AnyCalculation | AnyFormula): void {
  loaded.set(calculation.id, calculation);
}

/** A list of calculations that prints as an aligned table. */
export type CalculationList = readonly (AnyCalculation | AnyFormula)[];

/**
 * Lists the formulas and procedures that this program has loaded, in alphabetical order. With words, lists those
 * whose card or synonyms contain every word.
 *
 * @example calculations('hoop stress').length > 0 // => true
 */
export function calculations(words = ''): CalculationList {
  const wanted = words.toLowerCase().split(/\s+/).filter(Boolean);
  const found = [...loaded.values()]
    .filter((one) => wanted.every((word) => searchText(one).includes(word)))
    .sort((a, b) => a.id.localeCompare(b.id));
  const text = (): string =>
    found.length === 0
      ? `no calculation contains '${words}'`
      : table(
          found.map(({ id, title, equation, gives }) => ({
            name: id,
            title,
            'equation or result': equation ?? gives,
          })),
        );
  return Object.assign(found, { toString: text, [Symbol.for('nodejs.util.inspect.custom')]: text });
}

const searchText = (one: CalculationMetadata): string =>
  `${one} ${synonymsOf({ ...one.inputs, ...(one.subject && { subject: one.subject }) }).join(' ')}`.toLowerCase();

const synonymsOf = (inputs: Inputs): readonly string[] =>
  Object.values(inputs).flatMap((input: Input) => [
    ...input.synonyms,
    ...('fields' in input ? synonymsOf(Object(input.fields)) : []),
  ]);
