import { fromSiValue, isQuantity, type Quantity, unitFor } from '../units';
import type { Measured, Motor } from './document';

/** Path of a value in a motor: `['grain', 'segments', 0, 'boreDiameter']`. */
export type ValuePath = readonly (string | number)[];

/** A value of a motor with its path. */
export interface PlacedValue {
  readonly path: ValuePath;
  /** Path as a string: `grain.segments[0].boreDiameter`. */
  readonly name: string;
  readonly value: Quantity;
  /** Half of the tolerance range [SI]; zero where none is given. */
  readonly plusMinus: number;
}

/** Every value of a motor, in the order of the document. */
export function placedValues(motor: Motor, parts: readonly (keyof Motor)[]): readonly PlacedValue[] {
  return parts.flatMap((part) => walk(motor[part], [String(part)]));
}

function walk(node: unknown, path: ValuePath): PlacedValue[] {
  if (isMeasured(node)) return [{ path, name: nameOf(path), value: node.value, plusMinus: node.plusMinus }];
  if (Array.isArray(node)) return node.flatMap((item, i) => walk(item, [...path, i]));
  if (typeof node !== 'object' || node === null || isQuantity(node)) return [];
  return Object.entries(node).flatMap(([key, value]) => walk(value, [...path, key]));
}

const nameOf = (path: ValuePath): string =>
  path.reduce<string>(
    (text, key) => (typeof key === 'number' ? `${text}[${key}]` : text === '' ? key : `${text}.${key}`),
    '',
  );

function isMeasured(node: unknown): node is Measured {
  return (
    typeof node === 'object' &&
    node !== null &&
    'plusMinus' in node &&
    'value' in node &&
    isQuantity(node.value)
  );
}

/** Returns the motor with other values at some paths [SI]; its document is unchanged. */
export function withValues(
  motor: Motor,
  changes: readonly { readonly path: ValuePath; readonly si: number }[],
): Motor {
  return changes.reduce<Motor>((varied, { path, si }) => replaced(varied, path, si), motor);
}

/** Copies the objects along the path and shares the rest. */
function replaced<T>(node: T, path: ValuePath, si: number): T {
  const [key, ...rest] = path;
  if (key === undefined) {
    if (!isMeasured(node)) return node;
    const { value } = node;
    return { ...node, value: fromSiValue(si, value.kind, unitFor(value.kind, value.unit)) };
  }
  if (typeof node !== 'object' || node === null) return node;
  const copy = Array.isArray(node) ? [...node] : { ...node };
  const child: unknown = Reflect.get(node, key);
  Reflect.set(copy, key, replaced(child, rest, si));
  return copy as T; // valid: the same shape, with one value of the same kind replaced
}
