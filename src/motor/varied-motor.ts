import {
  caseFields,
  fromSiValue,
  type Input,
  type Inputs,
  isGroup,
  isList,
  isParameter,
  isVariants,
  type Quantity,
  unitFor,
  type Worse,
} from '../units';
import type { Motor } from './document';
import { motorInputs } from './document/motor-inputs';
import { isMeasured } from './document/nominal';
import { pathText } from './document/problems';

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
  /** The declared worst-case limit of its tolerance. */
  readonly worse: Worse | undefined;
}

/** The parts of a motor that are declared. */
export type MotorPart = keyof (typeof motorInputs)['fields'];

/** Every value of a motor, in the order of its declaration. */
export const placedValues = (motor: Motor, parts: readonly MotorPart[] = everyPart): readonly PlacedValue[] =>
  parts.flatMap((part) => walk(motorInputs.fields[part], motor[part], [part]));

const everyPart = Object.keys(motorInputs.fields) as MotorPart[]; // true: the keys of a record of exactly these fields

/** The values of a part of a motor, found by its declaration. */
function walk(input: Input, node: unknown, path: ValuePath): readonly PlacedValue[] {
  if (node === undefined) return [];
  if (isParameter(input))
    return isMeasured(node) ? [{ path, name: pathText(path), ...node, worse: input.worse }] : [];
  const fields = (of: Inputs): readonly PlacedValue[] =>
    Object.entries(of).flatMap(([field, one]) =>
      walk(one, Reflect.get(Object(node), field), [...path, field]),
    );
  if (isGroup(input)) return fields(input.fields);
  if (isVariants(input)) {
    const { cases, discriminator, standard } = input;
    return fields(caseFields(cases[String(Reflect.get(Object(node), discriminator) ?? standard)]));
  }
  if (!isList(input) || !Array.isArray(node)) return [];
  return node.flatMap((item: unknown, i) => walk(input.item, item, [...path, i]));
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
