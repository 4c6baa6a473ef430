import { type AnyFormula, isQuantity } from '../../src/units';
import { inDomain } from '../../src/units/declare/domain';
import { readInput } from '../../src/units/input';

/** A formula as the tests drive it: any fields, every door. */
export interface TestedFormula extends AnyFormula {
  (values: object): unknown;
  readonly si: (values: Readonly<Record<string, number>>) => number;
  solveFor(field: string, values: object): unknown;
}

/** SI numbers by field name. */
export type Values = Readonly<Record<string, number>>;

/** Whether an exported value is a formula. */
export function isFormula(value: unknown): value is TestedFormula {
  return typeof value === 'function' && 'equation' in value && value.equation !== undefined;
}

/** Every formula that a module exports, by the name it is exported under. */
export function formulasOf(module: object): readonly (readonly [string, TestedFormula])[] {
  return Object.entries(module).flatMap(([name, value]) =>
    isFormula(value) ? [[name, value] as const] : [],
  );
}

/** The SI values of the formula's example, with the standard value of each field that it leaves out. */
export function exampleValues({ id, inputs, example }: TestedFormula): Values {
  return Object.fromEntries(
    Object.entries(inputs).map(([field, given]) => {
      const value = example[field];
      if (value === undefined && given.standard !== undefined) return [field, given.standard];
      return [field, readInput(given.kind, field, value, id).si];
    }),
  );
}

/** The example with each value multiplied by its factor; a value that would leave its domain stays as it is. */
export function nearExample(formula: TestedFormula, factors: readonly number[]): Values {
  return Object.fromEntries(
    Object.entries(exampleValues(formula)).map(([field, value], i) => {
      const { domain } = formula.inputs[field];
      const scaled = domain.whole ? Math.round(value * factors[i]) : value * factors[i];
      return [field, inDomain(scaled, domain) ? scaled : value];
    }),
  );
}

/** The SI number of what a formula returned. */
export function siOf(result: unknown): number {
  if (typeof result === 'number') return result;
  if (isQuantity(result)) return result.si;
  throw new TypeError(`a formula returned ${String(result)}, neither a number nor a quantity`);
}
