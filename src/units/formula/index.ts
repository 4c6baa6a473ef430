/** The formula builder: one declaration per equation. */
export type {
  Arguments,
  Declaration,
  Domain,
  FormulaFacts,
  Given,
  Givens,
  Result,
  SiArguments,
  SiValues,
} from './declaration';
export type { ExplainedGiven, Explanation } from './explain';
export { type Formula, formula, type SolveArguments } from './formula';
export { optional } from './given';
export * from './givens';
export { type AnyFormula, type FormulaList, formulas } from './registry';
export * from './thermal-givens';
