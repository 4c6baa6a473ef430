/**
 * The two forms of public calculation: a formula is one closed-form equation; a procedure is any other
 * calculation. Both are made from declared inputs. Imports the declarations and quantities of this module.
 */
export type {
  CalculationMetadata,
  FormulaDeclaration,
  FormulaMetadata,
  SiArguments,
  SiValues,
} from './declaration';
export type { Explanation } from './explain';
export { type Formula, formula, type SolveArguments } from './formula';
export {
  type Procedure,
  type ProcedureDeclaration,
  procedure,
  type SubjectDeclaration,
  type SubjectProcedure,
} from './procedure';
export { type AnyCalculation, type AnyFormula, type CalculationList, calculations } from './registry';
export type { ExplainedParameter, Working } from './working';
