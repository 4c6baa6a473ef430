/**
 * Quantities, units, parsing, formatting, declared inputs, formulas and procedures. Imports nothing but decimal.js.
 *
 * @example q('1000 psi').in('MPa') // => 6.894757293168361
 * @module
 */
export * from './calculation';
export * from './constants';
export * from './declare';
export type { ErrorFacts } from './error-message';
export * from './errors';
export { type FormatOptions, formatNumber } from './format';
export * from './input';
export * from './is-close';
export { type Kind, type NamedKind, namedKinds } from './kinds';
export type { SiInput } from './parse';
export * from './pressure-reference';
export { printable } from './printable';
export * from './q';
export { fromSiValue, type Quantity, type QuantityInput } from './quantity';
export { isQuantity } from './quantity-mark';
export { fromSiArray, isSeries, type Series, series, seriesOf } from './series';
export { type Cell, table } from './table';
export { type Unit, unitFor, unitOf } from './unit';
export type { UnitOf } from './unit-names';
