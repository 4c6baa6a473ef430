import {
  type AnyFormula,
  type Arguments,
  type Formula,
  type Parameters as FormulaInputs,
  isQuantity,
  type NamedKind,
  readInput,
  type SiArguments,
} from '../../units';

/** A formula evaluated on plain SI numbers. Each argument is a number or the step that it is the result of. */
export interface Step {
  readonly formula: AnyFormula;
  readonly given: Readonly<Record<string, number | Step | undefined>>;
  /** The result in SI. */
  readonly value: number;
}

/** A value that no formula gives: the pressure itself, a handbook strength, a rated load. In SI. */
export interface GivenValue {
  readonly kind: NamedKind;
  readonly value: number;
}

/** A chain of formulas that ends in this step, or a given value. */
export type Calculation = Step | GivenValue;

/** What a formula takes in a calculation: numbers, and results of earlier steps. */
export type StepArguments<I extends FormulaInputs, V> = From<SiArguments<I>, V>;
type From<A, V> = { readonly [F in keyof A]: A[F] | V };

/** Evaluates a formula: to a {@link Step} to be shown, or to a mere number in a search. */
export type Evaluate<V> = <I extends FormulaInputs, K extends NamedKind>(
  formula: Formula<I, K>,
  given: StepArguments<I, V>,
) => V;

/** Evaluates a formula and records it: the working shown is the working done. */
export const step: Evaluate<Step> = (formula, given) => {
  const values: Record<string, number | undefined> = {};
  for (const [field, value] of Object.entries<number | Step | undefined>(given))
    values[field] = value === undefined ? undefined : numberOf(value);
  // True: the fields are those of the formula, with steps replaced by their results.
  return { formula, given, value: formula.si(values as Parameters<typeof formula.si>[0]) };
};

/** Evaluates a formula on quantities, with the checks of its call, and records it. */
export function checkedStep<I extends FormulaInputs, K extends NamedKind>(
  formula: Formula<I, K>,
  values: Arguments<I>,
): Step {
  const given: Record<string, number> = {};
  for (const [field, value] of Object.entries<unknown>(values))
    given[field] = readInput(formula.inputs[field].kind, field, value, formula.id).si;
  const result: unknown = formula(values);
  return { formula, given, value: isQuantity(result) ? result.si : Number(result) };
}

/** Evaluates a formula and records nothing. */
export const evaluated: Evaluate<number> = (formula, given) =>
  formula.si(given as Parameters<typeof formula.si>[0]); // true: numbers in place of steps are what `.si` takes

/** The number that stands for a step. */
export const numberOf = (value: number | Step): number => (typeof value === 'number' ? value : value.value);

/** A given value in SI. */
export const given = (kind: NamedKind, value: number): GivenValue => ({ kind, value });

/** Whether a calculation has steps to show. */
const isStep = (calculation: Calculation): calculation is Step => 'formula' in calculation;

/** The kind of the result of a calculation. */
export const kindOf = (calculation: Calculation): NamedKind =>
  isStep(calculation) ? calculation.formula.output.kind : calculation.kind;

/** The steps of calculations in the order in which they feed each other, each once. */
export function stepsOf(...calculations: readonly Calculation[]): readonly Step[] {
  const found = new Set<Step>();
  const add = (one: Step): void => {
    if (found.has(one)) return;
    for (const value of Object.values(one.given)) if (typeof value === 'object') add(value);
    found.add(one);
  };
  for (const calculation of calculations) if (isStep(calculation)) add(calculation);
  return [...found];
}
