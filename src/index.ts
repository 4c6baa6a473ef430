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
  type AnyFormula,
  type Arguments,
  absolute,
  type Cell,
  type ComparisonTolerance,
  type Constant,
  constants,
  type Declaration,
  type Explanation,
  type FormatOptions,
  type Formula,
  type FormulaList,
  type FormulaMetadata,
  formatNumber,
  formula,
  formulas,
  fromSiArray,
  fromSiValue,
  gauge,
  isClose,
  isQuantity,
  type Kind,
  MeopError,
  type MeopErrorDetails,
  type NamedKind,
  type Quantity,
  type QuantityInput,
  q,
  quantity,
  type Result,
  type Series,
  series,
  seriesOf,
  table,
  type UnitOf,
} from './units';
