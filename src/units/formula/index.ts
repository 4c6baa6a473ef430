/** The formula builder: one declaration per equation. */
export type {
  Arguments,
  Declaration,
  Domain,
  FormulaMetadata,
  FormulaParameter,
  Givens,
  Result,
  SiArguments,
  SiValues,
} from './declaration';
export type { ExplainedParameter, Explanation } from './explain';
export { type Formula, formula, type SolveArguments } from './formula';
export { optional } from './given';
export * from './givens';
export { type AnyFormula, type FormulaList, formulas } from './registry';
export * from './thermal-givens';
