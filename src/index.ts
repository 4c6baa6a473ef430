/**
 * The whole library under one name. Each folder is also a subpath: `meop/units`, `meop/structures`, …
 * The symbols for declaring formulas (`length`, `stress`, …) are in `meop/units` only.
 *
 * @module
 */
export * from './ballistics';
export * from './firing';
export * from './motor';
export * from './nozzle';
export * from './structures';
export * from './thermo';
export {
  type AnyCalculation,
  type AnyFormula,
  type Arguments,
  absolute,
  type CalculationList,
  type CalculationMetadata,
  type Cell,
  type ComparisonTolerance,
  type Constant,
  calculations,
  constants,
  type ErrorFacts,
  type Explanation,
  type FormatOptions,
  type Formula,
  type FormulaMetadata,
  formatNumber,
  formula,
  fromSiArray,
  fromSiValue,
  gauge,
  isClose,
  isQuantity,
  type Kind,
  MeopError,
  type NamedKind,
  type Procedure,
  type Quantity,
  type QuantityInput,
  q,
  quantity,
  type Result,
  type Series,
  type SubjectProcedure,
  series,
  seriesOf,
  table,
  type UnitOf,
  type Working,
} from './units';
