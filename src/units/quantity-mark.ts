import type { Quantity } from './quantity';

/** Mark of every quantity, recognised by every copy of the library that a program loads. */
export const mark = Symbol.for('meop.quantity');

/** True if a value is a quantity, of this copy of the library or of another. */
export function isQuantity(value: unknown): value is Quantity {
  return typeof value === 'object' && value !== null && mark in value;
}
