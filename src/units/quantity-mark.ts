import type { Quantity } from './quantity';

/** What every quantity carries, known to every copy of the library that a program may load. */
export const mark = Symbol.for('meop.quantity');

/** Whether a value is a quantity, of this copy of the library or of another that the program loaded. */
export function isQuantity(value: unknown): value is Quantity {
  return typeof value === 'object' && value !== null && mark in value;
}
